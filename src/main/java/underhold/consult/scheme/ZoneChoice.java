package underhold.consult.scheme;

import java.util.List;
import java.util.Optional;
import underhold.advice.OptionAdvice;
import underhold.advice.SupportOption;
import underhold.consult.ZoneAdvice;

/**
 * A method tried for a zone; or none, where the zone must be decided first.
 *
 * @param zone what was advised of the zone
 * @param option the option tried; empty where nothing may be chosen yet
 * @param undecided why nothing may be chosen; empty where something is
 */
public record ZoneChoice(ZoneAdvice zone, Optional<OptionAdvice> option, String undecided) {
  /** How many options of a zone are tried in combinations. */
  static final int MOST_TRIED = 3;

  public ZoneChoice {
    if (option.isPresent() != undecided.isEmpty()) {
      throw new IllegalArgumentException("a zone has a method, or a reason why it has none");
    }
  }

  /**
   * The options worth trying, best first: those in rank that something speaks for and more than
   * against; a referral is none. Where no option leads, or the referral does, nothing is chosen.
   */
  static List<ZoneChoice> of(ZoneAdvice zone) {
    Optional<OptionAdvice> leader = zone.ranking().leader();
    if (leader.isEmpty()) {
      return List.of(
          new ZoneChoice(zone, Optional.empty(), "no option leads yet: answer its open questions"));
    }
    if (leader.get().option() == SupportOption.REFER) {
      return List.of(new ZoneChoice(zone, Optional.empty(), "it goes to a specialist first"));
    }
    return zone.ranking().options().stream()
        .filter(ZoneChoice::contends)
        .limit(MOST_TRIED)
        .map(advice -> new ZoneChoice(zone, Optional.of(advice), ""))
        .toList();
  }

  private static boolean contends(OptionAdvice advice) {
    return advice.ranked()
        && advice.spokenFor()
        && advice.score() > 0
        && advice.option() != SupportOption.REFER;
  }

  /** The zone's name. */
  public String name() {
    return zone.name();
  }

  /** The method, if one is chosen. */
  public Optional<SupportOption> method() {
    return option.map(OptionAdvice::option);
  }

  /** The id of the method as rules between zones read it. */
  public String methodId() {
    return method().map(SupportOption::id).orElse("undecided");
  }

  /** Its points in the zone's own ranking; none where nothing is chosen. */
  public int points() {
    return option.map(OptionAdvice::score).orElse(0);
  }
}
