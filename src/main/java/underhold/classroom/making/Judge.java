package underhold.classroom.making;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underhold.advice.Confirmation;
import underhold.advice.PlainRules;
import underhold.advice.SupportOption;
import underhold.consult.Consultant;
import underhold.consult.QuickSizing;
import underhold.consult.ZoneAdvice;
import underhold.consult.firmness.FirmnessFinder;
import underhold.consult.trial.Trials;
import underhold.site.FactDictionary;
import underhold.site.Site;
import underhold.site.Zone;
import underhold.sizing.Verdict;

/** Says what leads on sites in the making: first by the rules alone, then with sheets. */
final class Judge {
  private static final int DRAWS = 60;
  private static final long SEED = FirmnessFinder.USUAL_SEED;

  private final Consultant consultant;
  private final PlainRules rules;

  Judge(Consultant consultant) {
    this.consultant = consultant;
    this.rules = new PlainRules(consultant.pack(), FactDictionary.standard());
  }

  Consultant consultant() {
    return consultant;
  }

  /** The leader of the first zone by the rules alone, before sheets take points away. */
  Optional<SupportOption> roughly(Site site) {
    Trials trials = new Trials(rules, site, Confirmation.NONE);
    return trials.leading(site.zones().get(0)).leader();
  }

  /** The leader of the first zone with sheets. */
  Optional<SupportOption> leader(Site site) {
    return leader(site, site.zones().get(0));
  }

  Optional<SupportOption> leader(Site site, Zone zone) {
    return consultant.trials(site, zone).leading(zone).leader();
  }

  /**
   * The changes of a theme that can be and take the first place from the leader by the rules alone,
   * before sheets are made.
   */
  List<Change> roughTurns(Wish wish, Theme theme, Sketch sketch) {
    Optional<SupportOption> wanted = Optional.of(wish.leader());
    List<Change> turns = new ArrayList<>();
    for (Change change : new Counterparts(sketch).of(theme)) {
      if (Plausible.can(change, sketch)) {
        Optional<SupportOption> then = sketch.with(change).read().map(this::roughly).orElse(wanted);
        if (!then.equals(wanted) && theme.fits(wish.leader(), then)) {
          turns.add(change);
        }
      }
    }
    return turns;
  }

  /** Those of some changes that take the first place with sheets as well, as far as so many. */
  List<Turned> turns(Wish wish, Theme theme, Sketch sketch, List<Change> changes, int most) {
    List<Turned> turns = new ArrayList<>();
    for (Change change : changes) {
      if (turns.size() == most) {
        break;
      }
      Optional<SupportOption> then = leader(sketch.with(change).read().orElseThrow());
      if (!then.equals(Optional.of(wish.leader())) && theme.fits(wish.leader(), then)) {
        turns.add(new Turned(change, then));
      }
    }
    return turns;
  }

  /** In how many of a hundred draws of weights, limits and open facts the leader stays first. */
  int firm(Site site) {
    Zone zone = site.zones().get(0);
    var firmness = new FirmnessFinder(consultant.trials(site, zone), zone).find(DRAWS, SEED);
    return firmness.perHundred(firmness.stayed());
  }

  /**
   * Whether the sheet of an option can be made of what is known, and no check of it fails but of
   * the boards of edge pits, which a setting makes thicker.
   */
  static boolean sound(ZoneAdvice advice, SupportOption option) {
    if (option == SupportOption.REFER) {
      return true;
    }
    return advice
        .sizing(option)
        .filter(QuickSizing::complete)
        .filter(
            sizing ->
                sizing.sheet().checks().stream()
                    .filter(check -> check.verdict() == Verdict.FAILS)
                    .allMatch(check -> option == SupportOption.EDGE_PITS && ofBoards(check.id())))
        .isPresent();
  }

  private static boolean ofBoards(String check) {
    return check.startsWith("board-") || check.startsWith("approach-");
  }
}
