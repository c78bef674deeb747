package underhold.classroom.making;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import underhold.advice.Effect;
import underhold.advice.OptionAdvice;
import underhold.advice.Ranking;
import underhold.advice.Strength;
import underhold.advice.SupportOption;
import underhold.classroom.CaseFile;
import underhold.classroom.CaseStudy;
import underhold.consult.Consultation;
import underhold.consult.ZoneAdvice;
import underhold.consult.scheme.SchemeDesk;
import underhold.consult.scheme.SchemeOutcome;
import underhold.site.Site;

/**
 * Makes a site as hard as a level asks. At every level the sheet of the leader can be made and no
 * check of it fails, and no option that is held could pass it once all is known.
 *
 * <ul>
 *   <li>First: one change turns the answer; the leader stands alone, four points clear, and stays
 *       first in three of four draws of weights and limits; on day one nothing else leads.
 *   <li>Second: another method leads on day one, on what meets the eye or because a file is
 *       believed that a later stage proves wrong; or two changes of different themes turn the
 *       answer each alone.
 *   <li>Third: the work itself shows a fact that turns the answer; or the facts pull two ways: an
 *       option for which much speaks comes within four points, and something major speaks against
 *       the leader, or the two are tied.
 * </ul>
 *
 * Points and draws are judgement: four points are a major finding, two a tie.
 */
final class Levels {
  private static final int CLEAR = 4;
  private static final int FIRM = 75;
  private static final int TURNS = 6;
  private static final List<Integer> WITHHELD = List.of(8, 4, 1);
  private static final List<Theme> SECOND_THEMES =
      List.of(
          Theme.WATER,
          Theme.ACCESS,
          Theme.SPANNING,
          Theme.FOUNDATION,
          Theme.GROUND,
          Theme.WATCHING);

  private final Wish wish;
  private final Sketch sketch;
  private final Site site;
  private final List<Change> changes;
  private List<Turned> turns = List.of();
  private int firmness = -1;
  private final Judge judge;
  private final ZoneAdvice advice;
  private final OptionAdvice leader;
  private final Optional<String> marriage;

  /**
   * A site of which the leader is the one wished for.
   *
   * @param changes what may turn it, at least one
   */
  Levels(
      Wish wish, Sketch sketch, Site site, List<Change> changes, Judge judge, ZoneAdvice advice) {
    this.wish = wish;
    this.sketch = sketch;
    this.site = site;
    this.changes = changes;
    this.judge = judge;
    this.advice = advice;
    this.leader = advice.ranking().of(wish.leader());
    this.marriage = wish.theme() == Theme.MARRIED ? marriage() : Optional.empty();
  }

  /** The case, if the site can be made as hard as that. */
  Optional<CaseFile> made() {
    if (wish.theme() == Theme.MARRIED && marriage.isEmpty()) {
      return Optional.empty();
    }
    if (!worthSizing()) {
      return Optional.empty();
    }
    turns = judge.turns(wish, wish.theme(), sketch, changes, TURNS);
    if (turns.isEmpty()) {
      return Optional.empty();
    }
    return switch (wish.level()) {
      case FIRST -> first();
      case SECOND -> second();
      case THIRD -> third();
    };
  }

  /** Whether the site alone, without what turns it, allows the level. */
  private boolean worthSizing() {
    return switch (wish.level()) {
      case FIRST -> alone() && lead() >= CLEAR;
      case SECOND -> alone();
      case THIRD ->
          isTorn() || (alone() && changes.stream().anyMatch(one -> Surprises.can(one, sketch)));
    };
  }

  private boolean firm() {
    if (firmness < 0) {
      firmness = judge.firm(site);
    }
    return firmness >= FIRM;
  }

  private Optional<CaseFile> first() {
    for (Turned turn : turns) {
      List<Knowing> ways =
          switch (wish.theme()) {
            case SURPRISE -> List.of(Knowing.surprised(turn.change()));
            case FOUNDATION -> List.of(Knowing.PLAIN);
            default -> List.of(Knowing.PLAIN, Knowing.FILE);
          };
      for (Knowing knowing : ways) {
        Optional<CaseFile> made = built(knowing, List.of(turn), "", this::nothingElseFirst);
        if (made.isPresent()) {
          return made;
        }
      }
    }
    return Optional.empty();
  }

  private boolean nothingElseFirst(Building building, CaseStudy draft) {
    Optional<SupportOption> dayOne = building.leader(draft, 0, sketch.first());
    boolean fits =
        dayOne.isEmpty() || (wish.theme() != Theme.FOUNDATION && dayOne.get() == wish.leader());
    return fits && firm();
  }

  private Optional<CaseFile> second() {
    boolean fileFirst = wish.theme() == Theme.SURPRISE || sketch.draw().chance(0.6);
    List<Supplier<Optional<CaseFile>>> ways =
        wish.theme() == Theme.SURPRISE
            ? List.of(this::misled)
            : fileFirst
                ? List.of(this::misled, this::mistaken, this::twofold)
                : List.of(this::mistaken, this::twofold, this::misled);
    return ways.stream().map(Supplier::get).flatMap(Optional::stream).findFirst();
  }

  /** Another method leads on the little that is known on day one. */
  private Optional<CaseFile> mistaken() {
    Building plain = new Building(wish, sketch, Knowing.PLAIN, judge);
    Optional<SupportOption> dayOne =
        plain.draft().flatMap(draft -> plain.leader(draft, 0, sketch.first()));
    if (dayOne.isEmpty() || dayOne.get() == wish.leader()) {
      return Optional.empty();
    }
    String level =
        "On day one "
            + Methods.words(dayOne)
            + " led, on what meets the eye; what was found out later turned it.";
    return built(Knowing.PLAIN, List.of(turns.get(0)), level, this::somethingElseFirst);
  }

  private boolean somethingElseFirst(Building building, CaseStudy draft) {
    Optional<SupportOption> dayOne = building.leader(draft, 0, sketch.first());
    return dayOne.isPresent() && dayOne.get() != wish.leader();
  }

  /** Another method leads on day one, by a file that is wrong. */
  private Optional<CaseFile> misled() {
    for (Turned turn : turns) {
      if (!Plausible.believed(turn.change()) || turn.then().isEmpty()) {
        continue;
      }
      String then = Methods.words(turn.then());
      String level =
          sketch
              .draw()
              .pick(
                  "On day one "
                      + then
                      + " led, and fairly so on what was told: ask how a fact is known.",
                  "The file spoke for "
                      + then
                      + "; a file is somebody's belief until it is checked.");
      for (int withheld : WITHHELD) {
        Knowing knowing = Knowing.misled(turn.change(), wish.theme() == Theme.SURPRISE, withheld);
        Optional<CaseFile> made = built(knowing, List.of(turn), level, this::somethingElseFirst);
        if (made.isPresent()) {
          return made;
        }
      }
    }
    return Optional.empty();
  }

  /** Two changes of different themes turn the answer, each alone. */
  private Optional<CaseFile> twofold() {
    Turned turn = turns.get(0);
    for (Theme theme : sketch.draw().shuffled(SECOND_THEMES)) {
      if (theme == wish.theme()) {
        continue;
      }
      Optional<Turned> other =
          judge
              .turns(
                  wish,
                  theme,
                  sketch,
                  judge.roughTurns(wish, theme, sketch).stream()
                      .filter(one -> !overlap(one, turn.change()))
                      .toList(),
                  1)
              .stream()
              .findFirst();
      if (other.isPresent()) {
        return built(Knowing.PLAIN, List.of(turn, other.get()), "", (b, d) -> true);
      }
    }
    return Optional.empty();
  }

  private static boolean overlap(Change one, Change other) {
    return (one.ofGround() && other.ofGround())
        || one.facts().keySet().stream().anyMatch(other.facts()::containsKey);
  }

  private Optional<CaseFile> third() {
    boolean workFirst = wish.theme() == Theme.SURPRISE || sketch.draw().chance(0.5);
    Optional<CaseFile> made = workFirst ? surprised() : torn();
    return made.isPresent() || wish.theme() == Theme.SURPRISE
        ? made
        : workFirst ? torn() : surprised();
  }

  /** The work shows a fact that turns the answer. */
  private Optional<CaseFile> surprised() {
    if (!alone()) {
      return Optional.empty();
    }
    for (Turned turn : turns) {
      if (Surprises.can(turn.change(), sketch)) {
        String before = Methods.words(turn.then());
        String level =
            turn.then().isPresent()
                ? "Until the work began, " + before + " had the better reasons."
                : "Until the work began nothing had reason enough.";
        Optional<CaseFile> made =
            built(Knowing.surprised(turn.change()), List.of(turn), level, this::turnsInTheWork);
        if (made.isPresent()) {
          return made;
        }
      }
    }
    return Optional.empty();
  }

  private boolean turnsInTheWork(Building building, CaseStudy draft) {
    int last = draft.stages().size() - 1;
    Turned turn =
        turns.stream()
            .filter(one -> Surprises.can(one.change(), sketch))
            .filter(one -> believed(one, draft))
            .findFirst()
            .orElseThrow();
    return draft.stages().get(last).surprise()
        && building.leader(draft, last - 1, sketch.first()).equals(turn.then());
  }

  private static boolean believed(Turned turn, CaseStudy draft) {
    return draft.stages().stream()
        .flatMap(stage -> stage.believed().stream())
        .anyMatch(one -> one.value().equals(turn.change().facts().get(one.fact())));
  }

  private boolean isTorn() {
    boolean doubt =
        leader.tied()
            || leader.findings(Effect.AGAINST).stream()
                .anyMatch(
                    one ->
                        one.strength().filter(s -> s.compareTo(Strength.MAJOR) <= 0).isPresent());
    return doubt
        && next().isPresent()
        && lead() <= CLEAR
        && advice.ranking().heldContenders().isEmpty();
  }

  /** The facts pull two ways. */
  private Optional<CaseFile> torn() {
    Optional<OptionAdvice> next = next();
    if (next.isEmpty() || !isTorn()) {
      return Optional.empty();
    }
    String other = Methods.words(next.get().option());
    String level =
        leader.tied()
            ? "It is close: no rule parts it from "
                + other
                + ", and either is fair where its dangers are named."
            : "It is close: "
                + other
                + (Methods.lead(Optional.of(next.get().option())).equals("lead")
                    ? " come"
                    : " comes")
                + " within "
                + lead()
                + " points, and not everything speaks for the first.";
    return built(Knowing.PLAIN, List.of(turns.get(0)), level, (building, draft) -> true);
  }

  /** The best of the others for which more speaks than against. */
  private Optional<OptionAdvice> next() {
    return others().filter(option -> option.spokenFor() && option.score() > 0).findFirst();
  }

  private Stream<OptionAdvice> others() {
    return advice.ranking().options().stream()
        .filter(option -> option.ranked() && option.option() != wish.leader());
  }

  /** By how many points it leads; by all it has where nothing else contends. */
  private int lead() {
    return next().map(option -> leader.score() - option.score()).orElse(leader.score());
  }

  private boolean alone() {
    Ranking ranking = advice.ranking();
    return !leader.tied() && ranking.heldContenders().isEmpty();
  }

  /** What a case must be beside. */
  private interface Also {
    boolean holds(Building building, CaseStudy draft);
  }

  private Optional<CaseFile> built(Knowing knowing, List<Turned> decide, String level, Also also) {
    Building building = new Building(wish, sketch, knowing, judge);
    Optional<CaseStudy> draft = building.draft();
    if (draft.isEmpty() || !also.holds(building, draft.get())) {
      return Optional.empty();
    }
    String words = marriage.map(other -> (other + " " + level).strip()).orElse(level);
    return building.whole(draft.get(), leader, decide, words);
  }

  /**
   * Where methods are to be married, the words for the other zone: another method leads there, and
   * the scheme of both zones takes both.
   */
  private Optional<String> marriage() {
    List<ZoneAdvice> zones =
        site.zones().stream().map(zone -> judge.consultant().reasons(site, zone)).toList();
    Optional<SupportOption> there = zones.get(1).ranking().leader().map(OptionAdvice::option);
    if (there.isEmpty() || there.get() == wish.leader()) {
      return Optional.empty();
    }
    SchemeOutcome outcome =
        SchemeDesk.of(judge.consultant().pack())
            .scheme(new Consultation(site, judge.consultant().pack(), zones));
    boolean both =
        outcome instanceof SchemeOutcome.Made made
            && made.scheme()
                .best()
                .of(zones.get(0).name())
                .method()
                .equals(Optional.of(wish.leader()))
            && made.scheme().best().of(zones.get(1).name()).method().equals(there);
    return both
        ? Optional.of(
            "For the "
                + zones.get(1).name()
                + ", "
                + Methods.words(there)
                + " "
                + Methods.lead(there)
                + ".")
        : Optional.empty();
  }
}
