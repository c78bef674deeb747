package underhold.advice;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What two options are compared by, in the order in which an engineer looks. */
public enum Criterion {
  GROUND,
  WATER,
  LOAD,
  ACCESS,
  STRUCTURE,
  MOVEMENT,
  TIME,
  COST,
  SAFETY;

  /** The word in the rule pack and on screens. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** All words, in order. */
  public static List<String> words() {
    return Arrays.stream(values()).map(Criterion::word).toList();
  }

  /** The criterion of that word. */
  public static Optional<Criterion> find(String word) {
    return Arrays.stream(values()).filter(one -> one.word().equals(word)).findFirst();
  }
}
