package underhold.consult;

import java.util.List;
import java.util.stream.Stream;
import underhold.site.FactDefinition;
import underhold.site.Origin;

/**
 * A fact that nobody knows and that could change the answer.
 *
 * @param fact what the dictionary says of it
 * @param origin assumed or unknown
 * @param answers what each value tried would lead to
 * @param leader the id of the option that leads while it is unknown; empty where none does
 * @param tied the ids of the options tied with the leader while it is unknown
 * @param frees the ids of the options held that wait for it
 */
public record OpenQuestion(
    FactDefinition fact,
    Origin origin,
    List<Answer> answers,
    String leader,
    List<String> tied,
    List<String> frees) {
  public OpenQuestion {
    answers = List.copyOf(answers);
    tied = List.copyOf(tied);
    frees = List.copyOf(frees);
  }

  /**
   * What a value would lead to.
   *
   * @param value the value tried, as text of the dictionary
   * @param leader the id of the option that would lead; empty where none would
   * @param tied the ids of the options that would tie with it
   * @param freed the ids of the options that are held and would be no more
   * @param won the ids of the options worth building that it would bring back
   * @param lost the ids of the options worth building that it would rule out
   * @param scoreMoved the most points by which it would move an option
   */
  public record Answer(
      String value,
      String leader,
      List<String> tied,
      List<String> freed,
      List<String> won,
      List<String> lost,
      int scoreMoved) {
    public Answer {
      tied = List.copyOf(tied);
      freed = List.copyOf(freed);
      won = List.copyOf(won);
      lost = List.copyOf(lost);
    }
  }

  /**
   * What a core fact weighs by itself: alone it may change nothing, yet with the others it decides
   * (judgement). Less than a question that alone puts another option first.
   */
  private static final int CORE_WEIGHT = 600;

  private static final int MOST_CHANGES = 5;
  private static final int TIE_WEIGHT = 700;
  private static final int FREES_WEIGHT = 500;

  /** How many of the values tried put another option first. */
  public int leaderChanges() {
    return (int) answers.stream().filter(answer -> !answer.leader().equals(leader)).count();
  }

  /** How many of the values tried keep the leader and make or split a tie with it. */
  public int tiesChanged() {
    return (int)
        answers.stream()
            .filter(answer -> answer.leader().equals(leader) && !answer.tied().equals(tied))
            .count();
  }

  /** Whether some value frees an option that is held. */
  public boolean freesAlone() {
    return answers.stream().anyMatch(answer -> !answer.freed().isEmpty());
  }

  /** How many options would be ruled out or brought back by some value. */
  public int standingsChanged() {
    return (int)
        answers.stream()
            .flatMap(answer -> Stream.of(answer.won(), answer.lost()))
            .flatMap(List::stream)
            .distinct()
            .count();
  }

  /** The most points by which some value would move an option. */
  public int scoreMoved() {
    return answers.stream().mapToInt(Answer::scoreMoved).max().orElse(0);
  }

  /** How much hangs on it; the larger, the sooner it is asked. */
  int weight() {
    return 1000 * Math.min(leaderChanges(), MOST_CHANGES)
        + (tiesChanged() > 0 ? TIE_WEIGHT : 0)
        + (freesAlone() ? FREES_WEIGHT : 0)
        + 300 * frees.size()
        + 100 * standingsChanged()
        + (fact.core() > 0 ? CORE_WEIGHT : 0)
        + scoreMoved();
  }

  /** Whether some answer would put another option first, or free or rule out an option. */
  public boolean decides() {
    return leaderChanges() > 0 || tiesChanged() > 0 || standingsChanged() > 0 || !frees.isEmpty();
  }

  /** What could change, in one clause. */
  public String stake() {
    if (leaderChanges() > 0) {
      return "could put another option first";
    }
    if (tiesChanged() > 0) {
      return "could make or split a tie for the first place";
    }
    if (freesAlone()) {
      return "frees or rules out " + String.join(", ", frees);
    }
    if (!frees.isEmpty()) {
      return "is one of several facts for which " + String.join(", ", frees) + " waits";
    }
    if (standingsChanged() > 0) {
      return "could rule an option in or out";
    }
    int moved = scoreMoved();
    if (moved == 0) {
      return "decides together with other open facts";
    }
    return "could move a score by " + moved + (moved == 1 ? " point" : " points");
  }
}
