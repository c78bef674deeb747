package underhold.advice;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** An order that a rule between two zones may ask for. */
public enum PairOrder {
  /** Every support of the first zone is accepted before the second opens any ground below it. */
  CARRIES_BEFORE_OPENS(
      "first-carries-before-second-opens",
      "every support of {first} is accepted before pits are opened or ground is dug at {second}"),
  /** Every support of the first zone is accepted before the dig goes below the second. */
  CARRIES_BEFORE_DIGS(
      "first-carries-before-second-digs",
      "every support of {first} is accepted before the dig goes down at {second}"),
  /** The wall of pits at the first zone is one piece before the second is dug down. */
  CLOSED_BEFORE_DIGS(
      "first-wall-closed-before-second-digs",
      "the wall of pits at {first} is closed before the dig goes down at {second}"),
  /** Each lift at the second zone waits for the braces of the first that stand above its bottom. */
  BRACES_BEFORE_LIFTS(
      "first-braces-before-second-lifts",
      "each lift at {second} waits for the braces of the wall at {first} down to its level"),
  /** Drilling for the first zone ends before the second opens its first pit. */
  DRILLS_BEFORE_PITS(
      "first-drills-before-second-pits",
      "drilling at {first} is finished before the first pit is opened at {second}"),
  /** The first zone is complete, its supports accepted, before work begins at the second. */
  COMPLETE_BEFORE_STARTS(
      "first-complete-before-second-starts",
      "{first} is supported before any support is built at {second}"),
  /** Pits of the two are never open at one time. */
  NOT_OPEN_TOGETHER(
      "not-open-together", "pits of {first} and of {second} are never open at one time");

  private final String word;
  private final String sentence;

  PairOrder(String word, String sentence) {
    this.word = word;
    this.sentence = sentence;
  }

  /** The word in a rule's action. */
  public String word() {
    return word;
  }

  /** What it asks for, with the names of the zones. */
  public String sentence(String first, String second) {
    return sentence.replace("{first}", first).replace("{second}", second);
  }

  /** The order of that word. */
  public static Optional<PairOrder> find(String word) {
    return Arrays.stream(values()).filter(order -> order.word.equals(word)).findFirst();
  }

  static List<String> words() {
    return Arrays.stream(values()).map(PairOrder::word).toList();
  }
}
