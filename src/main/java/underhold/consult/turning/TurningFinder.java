package underhold.consult.turning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import underhold.advice.SupportOption;
import underhold.consult.trial.Outcome;
import underhold.consult.trial.Trials;
import underhold.site.FactValue;
import underhold.site.Zone;
import underhold.threads.AllProcessors;

/** Finds the turning points of one zone. */
public final class TurningFinder {
  private static final int PAIRS_OF_EACH = 2;
  private static final int PAIRS_ASKED_FOR = 6;

  private final Trials trials;
  private final Zone zone;
  private final Trying trying;

  /** A finder for one zone of the site of the trials. */
  public TurningFinder(Trials trials, Zone zone) {
    this.trials = trials;
    this.zone = zone;
    this.trying = new Trying(trials, zone);
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
    Singles singles = new Singles(trying);
    List<TurningPoint> single = turned(singles);
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
    Search search = new Search(goal);
    List<TurningPoint> single = search.singles();
    List<TurningPoint> pairs = most < 2 ? List.of() : search.pairs();
    List<TurningPoint> triples = most < 3 ? List.of() : search.triples();
    return search.found(single, pairs, triples);
  }

  /** The fewest changes that reach a goal: single ones, else pairs, else three together. */
  public TurningPoints cheapest(Goal goal) {
    Search search = new Search(goal);
    List<TurningPoint> single = search.singles();
    List<TurningPoint> pairs = single.isEmpty() ? search.pairs() : List.of();
    boolean more = single.isEmpty() && pairs.isEmpty();
    return search.found(single, pairs, more ? search.triples() : List.of());
  }

  /** The way to one goal; whether an option is ruled out is seen without sizing anything. */
  private final class Search {
    private final Goal goal;
    private final boolean met;
    private final Trying way;
    private final Singles changes;
    private final Combined combined;

    Search(Goal goal) {
      this.goal = goal;
      this.met = goal.met(trying.base());
      boolean plain = !goal.first() && trials.rules().sizingOnlyTakes();
      this.way = plain ? new Trying(trials.unsized(), zone) : trying;
      this.changes = new Singles(way);
      this.combined = new Combined(way, changes);
    }

    List<TurningPoint> singles() {
      List<Runs.Turn> turns = new ArrayList<>();
      if (!met) {
        AllProcessors.each(changes.byFact(), fact -> runs(fact).turns()).forEach(turns::addAll);
      }
      return points(turns, Optional.of(goal.option()));
    }

    private Runs runs(List<Single> fact) {
      return new Runs(way, changes.grid(), fact, goal::met, values -> goal.met(way, values));
    }

    List<TurningPoint> pairs() {
      return met ? List.of() : combined.pairs(goal, PAIRS_ASKED_FOR);
    }

    List<TurningPoint> triples() {
      return met ? List.of() : combined.triples(goal, PAIRS_ASKED_FOR);
    }

    TurningPoints found(
        List<TurningPoint> single, List<TurningPoint> pairs, List<TurningPoint> triples) {
      return new TurningPoints(
          goal,
          trying.base(),
          sized(single),
          sized(pairs),
          sized(triples),
          changes.all().size(),
          !combined.spent());
    }

    /** The points with the options sized, as the whole advice would have them. */
    private List<TurningPoint> sized(List<TurningPoint> points) {
      return points.stream()
          .map(
              point ->
                  trying.point(
                      point.changes(), trying.outcome(point.values()), Set.of(goal.option())))
          .toList();
    }
  }

  /** Run by run for each option that comes first, since one fact may lead to several. */
  private List<TurningPoint> turned(Singles singles) {
    List<Runs.Turn> turns = new ArrayList<>();
    AllProcessors.each(singles.byFact(), fact -> turned(singles, fact)).forEach(turns::addAll);
    return points(turns, Optional.empty());
  }

  private List<Runs.Turn> turned(Singles singles, List<Single> fact) {
    List<Runs.Turn> turns = new ArrayList<>();
    Set<Optional<SupportOption>> leaders = new LinkedHashSet<>();
    fact.stream()
        .filter(single -> !single.outcome().leader().equals(trying.base().leader()))
        .filter(Single::possible)
        .forEach(single -> leaders.add(single.outcome().leader()));
    for (Optional<SupportOption> leader : leaders) {
      Predicate<Outcome> leads = outcome -> outcome.leader().equals(leader);
      Predicate<Map<String, FactValue>> with =
          leader
              .<Predicate<Map<String, FactValue>>>map(one -> values -> trying.leads(values, one))
              .orElse(values -> trying.leading(values).leader().isEmpty());
      turns.addAll(new Runs(trying, singles.grid(), fact, leads, with).turns());
    }
    return turns;
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
