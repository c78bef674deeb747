package underhold.consult.turning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import underhold.advice.SupportOption;
import underhold.consult.trial.Outcome;
import underhold.consult.trial.Trials;
import underhold.site.Zone;

/** Finds the turning points of one zone. */
public final class TurningFinder {
  private static final int PAIRS_OF_EACH = 2;
  private static final int PAIRS_ASKED_FOR = 6;

  private final Trying trying;
  private final Singles singles;

  /** A finder for one zone of the site of the trials; every single change is tried here. */
  public TurningFinder(Trials trials, Zone zone) {
    this.trying = new Trying(trials, zone);
    this.singles = new Singles(trying);
  }

  /** How the zone stands as it is. */
  public Outcome base() {
    return trying.base();
  }

  /**
   * What takes the first place away, be it that another option leads or none: every single change,
   * and for the options that no single change puts first, changes of more facts together.
   *
   * @param most how many facts to change together, 1 to 3
   */
  public TurningPoints another(int most) {
    List<TurningPoint> single = singly(this::turned);
    Combined combined = new Combined(trying, singles);
    List<TurningPoint> pairs = new ArrayList<>();
    List<TurningPoint> triples = new ArrayList<>();
    for (Goal goal : Goal.anotherThan(trying.base())) {
      boolean open = single.stream().noneMatch(point -> point.leads(goal.option()));
      if (open && most > 1) {
        List<TurningPoint> two = combined.pairs(goal, PAIRS_OF_EACH);
        pairs.addAll(two);
        if (two.isEmpty() && most > 2) {
          triples.addAll(combined.triples(goal, PAIRS_OF_EACH));
        }
      }
    }
    return new TurningPoints(
        null, trying.base(), single, pairs, triples, singles.all().size(), !combined.spent());
  }

  /**
   * What reaches a goal, by single changes and by changes of more facts together.
   *
   * @param most how many facts to change together, 1 to 3
   */
  public TurningPoints towards(Goal goal, int most) {
    boolean met = goal.met(trying.base());
    List<TurningPoint> single = met ? List.of() : singly(goal);
    Combined combined = new Combined(trying, singles);
    List<TurningPoint> pairs = met || most < 2 ? List.of() : combined.pairs(goal, PAIRS_ASKED_FOR);
    List<TurningPoint> triples =
        met || most < 3 ? List.of() : combined.triples(goal, PAIRS_ASKED_FOR);
    return found(goal, single, pairs, triples, combined);
  }

  /** The fewest changes that reach a goal: single ones, else pairs, else three together. */
  public TurningPoints cheapest(Goal goal) {
    Combined combined = new Combined(trying, singles);
    boolean met = goal.met(trying.base());
    List<TurningPoint> single = met ? List.of() : singly(goal);
    boolean more = !met && single.isEmpty();
    List<TurningPoint> pairs = more ? combined.pairs(goal, PAIRS_ASKED_FOR) : List.of();
    more &= pairs.isEmpty();
    List<TurningPoint> triples = more ? combined.triples(goal, PAIRS_ASKED_FOR) : List.of();
    return found(goal, single, pairs, triples, combined);
  }

  private TurningPoints found(
      Goal goal,
      List<TurningPoint> single,
      List<TurningPoint> pairs,
      List<TurningPoint> triples,
      Combined combined) {
    return new TurningPoints(
        goal, trying.base(), single, pairs, triples, singles.all().size(), !combined.spent());
  }

  private boolean turned(Outcome outcome) {
    return !outcome.leader().equals(trying.base().leader());
  }

  private List<TurningPoint> singly(Goal goal) {
    List<Runs.Turn> turns = new ArrayList<>();
    for (List<Single> fact : singles.byFact()) {
      turns.addAll(new Runs(trying, singles.grid(), fact, goal::met).turns());
    }
    return points(turns, Optional.of(goal.option()));
  }

  /** Run by run for each option that comes first, since one fact may lead to several. */
  private List<TurningPoint> singly(Predicate<Outcome> turned) {
    List<Runs.Turn> turns = new ArrayList<>();
    for (List<Single> fact : singles.byFact()) {
      Set<Optional<SupportOption>> leaders = new LinkedHashSet<>();
      fact.stream()
          .filter(Single::possible)
          .map(Single::outcome)
          .filter(turned)
          .forEach(outcome -> leaders.add(outcome.leader()));
      for (Optional<SupportOption> leader : leaders) {
        Predicate<Outcome> leads = outcome -> outcome.leader().equals(leader);
        turns.addAll(new Runs(trying, singles.grid(), fact, leads).turns());
      }
    }
    return points(turns, Optional.empty());
  }

  private List<TurningPoint> points(List<Runs.Turn> turns, Optional<SupportOption> about) {
    turns.sort(Comparator.comparing(Runs.Turn::cost));
    List<TurningPoint> points = new ArrayList<>();
    for (Runs.Turn turn : turns) {
      Set<SupportOption> concerned = EnumSet.noneOf(SupportOption.class);
      about.ifPresent(concerned::add);
      turn.after().leader().ifPresent(concerned::add);
      points.add(trying.point(List.of(turn.change()), turn.after(), concerned));
    }
    return points;
  }
}
