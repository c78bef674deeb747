package underhold.report;

import java.util.Optional;
import underhold.advice.OptionAdvice;
import underhold.advice.Standing;
import underhold.consult.change.ChangedFact;
import underhold.consult.change.Place;
import underhold.consult.change.ZoneChange;

/** What a change comes to, in sentences. */
final class ChangeWords {
  private ChangeWords() {}

  /** Where a fact is stated otherwise. */
  static String where(ChangedFact changed) {
    return changed.zone().map(zone -> "zone " + zone).orElse("the whole site");
  }

  /** What leads, and what led. */
  static String leader(ZoneChange zone) {
    Optional<OptionAdvice> was = zone.leaderBefore();
    Optional<OptionAdvice> is = zone.leaderAfter();
    if (is.isEmpty()) {
      return was.map(advice -> "Nothing leads any more; before, " + name(advice) + " led.")
          .orElse("Nothing leads, as before.");
    }
    OptionAdvice leader = is.get();
    String lead = Words.sentence(name(leader)) + (name(leader).endsWith("s") ? " lead" : " leads");
    if (was.isEmpty()) {
      return lead + tie(leader) + "; before, nothing led.";
    }
    if (was.get().option() != leader.option()) {
      return lead + tie(leader) + "; before, " + name(was.get()) + " led" + tie(was.get()) + ".";
    }
    boolean sameTie = leader.tied() == was.get().tied();
    return lead
        + tie(leader)
        + (sameTie
            ? ", as before."
            : leader.tied() ? ", before without one." : ", no longer in a tie.");
  }

  private static String name(OptionAdvice advice) {
    return advice.option().label();
  }

  private static String tie(OptionAdvice advice) {
    return advice.tied() ? " in a tie" : "";
  }

  /** Rank, standing and score in a few words. */
  static String place(Place place) {
    if (place.standing() == Standing.RULED_OUT) {
      return place.standing().word();
    }
    String rank = place.rank().isPresent() ? place.rank().getAsInt() + ". " : "";
    return rank
        + place.standing().word()
        + (place.tied() ? ", tied" : "")
        + ", "
        + Words.score(place.score());
  }

  /** That nothing is told because nothing changed, and what was looked at. */
  static final String NOTHING =
      "Nothing changes here: no rank, standing, score, finding, condition, caution, hold, verdict"
          + " of a check or derived fact. Numbers on the sheets may differ: size shows them.";
}
