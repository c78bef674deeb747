package underhold.review;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import underhold.advice.Effect;
import underhold.advice.Finding;
import underhold.advice.OptionAdvice;
import underhold.advice.Standing;
import underhold.advice.SupportOption;
import underhold.consult.Weighed;

/**
 * Our answer to one zone of a published job beside what the job calls for.
 *
 * @param job the job
 * @param expected what it calls for in the zone
 * @param answer our answer
 */
public record Agreement(PublishedJob job, Expectation expected, Weighed answer) {

  /** How the two stand to each other; strict, as {@link Outcome} says. */
  public Outcome outcome() {
    if (!expected.scored()) {
      return Outcome.NOT_SCORED;
    }
    List<SupportOption> front = front().stream().map(OptionAdvice::option).toList();
    if (front.isEmpty()) {
      return Outcome.NO_CHOICE;
    }
    if (front.stream().anyMatch(expected.out()::contains)) {
      return Outcome.MISS;
    }
    if (front.stream().anyMatch(expected.target()::contains)) {
      return Outcome.FIRST_CHOICE;
    }
    return expected.alsoFair().contains(front.get(0)) ? Outcome.FAIR : Outcome.MISS;
  }

  /** The leader and the options tied with it, the leader first; empty where nothing leads. */
  public List<OptionAdvice> front() {
    return answer
        .ranking()
        .leader()
        .map(leader -> Stream.concat(Stream.of(leader), tied().stream()).toList())
        .orElse(List.of());
  }

  private List<OptionAdvice> tied() {
    return answer.ranking().tiedWithLeader();
  }

  /** Whether the option the job calls for is only tied with a leader that it does not call for. */
  public boolean byTieOnly() {
    return outcome() == Outcome.FIRST_CHOICE
        && !expected.target().contains(front().get(0).option());
  }

  /**
   * Options that must not lead and are not kept back: not ruled out, not held, and of a score above
   * zero; or held only by questions whose good answers would bring them level with the leader.
   */
  public List<SupportOption> letThrough() {
    List<SupportOption> contenders =
        answer.ranking().heldContenders().stream().map(OptionAdvice::option).toList();
    return expected.out().stream()
        .filter(option -> contenders.contains(option) || inPlay(answer.ranking().of(option)))
        .toList();
  }

  private static boolean inPlay(OptionAdvice advice) {
    return advice.ranked() && (advice.score() > 0 || advice.standing() == Standing.LEADS);
  }

  /** The findings that count for the leader; empty where nothing leads. */
  public List<Finding> leadsBecause() {
    return answer
        .ranking()
        .leader()
        .map(
            leader ->
                leader.findings().stream()
                    .filter(f -> f.effect() == Effect.FOR || f.effect() == Effect.REFER)
                    .filter(f -> !leader.uncounted().contains(f))
                    .toList())
        .orElse(List.of());
  }

  /** How the options that the job calls for stand with us. */
  public List<OptionAdvice> targets() {
    return expected.target().stream().map(answer.ranking()::of).toList();
  }

  /** Rules that must speak in this zone and do not. */
  public List<String> silent() {
    Set<String> heard = new HashSet<>();
    answer.screening().findings().forEach(finding -> heard.add(finding.rule().id()));
    answer
        .screening()
        .holds()
        .values()
        .forEach(holds -> holds.forEach(hold -> heard.add(hold.rule().id())));
    return expected.says().stream().filter(id -> !heard.contains(id)).toList();
  }

  /** Whether the outcome is the one on record: agreement, or the disagreement written down. */
  public boolean asRecorded() {
    Optional<Outcome> known = expected.known().map(Expectation.Departure::outcome);
    Outcome outcome = outcome();
    return known.map(outcome::equals).orElse(outcome.agrees() || outcome == Outcome.NOT_SCORED);
  }
}
