package underhold.consult.stage;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Goes through a plan for every order of work that its links allow, and says where something could
 * stand on nothing. It knows nothing of how the plan was made.
 *
 * <p>A place is carried by the ground it stands on until a stage takes that away, and by any
 * support that was accepted and not taken away. What carries a place changes only where a stage
 * takes its ground, or takes a support of it. At such a stage the worst order is this: only what
 * always comes before it is done, and everything that does not always come after it may be done. If
 * the place is carried even then, it is carried in every order.
 */
public final class PlanChecker {
  /** Rounding of lengths, m. */
  private static final double ROUNDING = 1e-6;

  private final List<PlanStage> stages;
  private final List<OpenLimit> limits;
  private final Reach reach;
  private final List<String> problems = new ArrayList<>();

  private PlanChecker(List<PlanStage> stages, List<OpenLimit> limits) {
    this.stages = stages;
    this.limits = limits;
    this.reach = Reach.of(stages);
  }

  /** Everything that is wrong with a plan, one sentence each; empty where it holds. */
  public static List<String> problems(List<PlanStage> stages, List<OpenLimit> limits) {
    PlanChecker checker = new PlanChecker(stages, limits);
    checker.form();
    if (checker.problems.isEmpty()) {
      stages.forEach(checker::carried);
      stages.forEach(checker::spanned);
      stages.forEach(checker::openShare);
      checker.temporaryWorks();
    }
    return List.copyOf(checker.problems);
  }

  private void form() {
    Set<String> ids = new HashSet<>();
    for (PlanStage stage : stages) {
      if (!ids.add(stage.id())) {
        problems.add("two stages are called " + stage.id());
      }
    }
    for (PlanStage stage : stages) {
      for (Link link : stage.after()) {
        if (!ids.contains(link.before())) {
          problems.add(stage.id() + " comes after " + link.before() + ", which is no stage");
        }
      }
      if (stage.holds().isEmpty()
          || stage.holds().stream().anyMatch(hold -> hold.releasedBy().isBlank())) {
        problems.add(stage.id() + " has no hold point, or nobody who releases it");
      }
    }
    if (problems.isEmpty() && reach.order().size() < stages.size()) {
      List<String> circle =
          stages.stream().map(PlanStage::id).filter(id -> !reach.order().contains(id)).toList();
      problems.add("stages wait for each other in a circle: " + String.join(", ", circle));
    }
  }

  /** Whatever loses its ground or a support here is carried by something else. */
  private void carried(PlanStage stage) {
    for (Place place : stage.moves().undermines()) {
      if (!held(place, stage, Set.of())) {
        problems.add(
            stage.id()
                + " takes the ground from below "
                + place.name()
                + " of "
                + place.zone()
                + " and nothing accepted before it is sure to carry");
      }
    }
    Set<Support> gone = new HashSet<>(stage.moves().removes());
    for (Support support : gone) {
      if (!always(support, stage)) {
        problems.add(stage.id() + " takes away " + support.name() + ", not accepted before it");
      }
      for (Place place : support.carries()) {
        if (!grounded(place, stage) && !held(place, stage, gone)) {
          problems.add(
              stage.id()
                  + " takes away "
                  + support.name()
                  + " and nothing else is sure to carry "
                  + place.name()
                  + " of "
                  + place.zone());
        }
      }
    }
  }

  private boolean held(Place place, PlanStage stage, Set<Support> gone) {
    return carriers(place, stage).stream().anyMatch(support -> !gone.contains(support));
  }

  /** The supports that are sure to carry a place at a stage, in every order. */
  private List<Support> carriers(Place place, PlanStage stage) {
    return stages.stream()
        .filter(other -> reach.isBefore(other.id(), stage.id()))
        .flatMap(other -> other.moves().accepts().stream())
        .filter(support -> support.carries().contains(place))
        .filter(support -> !mayBeGone(support, stage))
        .toList();
  }

  private boolean always(Support support, PlanStage stage) {
    return stages.stream()
        .anyMatch(
            other ->
                reach.isBefore(other.id(), stage.id())
                    && other.moves().accepts().contains(support));
  }

  /** Whether another stage may have taken it away, in some order. */
  private boolean mayBeGone(Support support, PlanStage stage) {
    return stages.stream()
        .filter(other -> !other.id().equals(stage.id()))
        .filter(other -> other.moves().removes().contains(support))
        .anyMatch(other -> !reach.isBefore(stage.id(), other.id()));
  }

  /** Whether its own ground is sure to be there still. */
  private boolean grounded(Place place, PlanStage stage) {
    return stages.stream()
        .filter(
            other ->
                other.moves().undermines().contains(place) || other.moves().spans().contains(place))
        .allMatch(other -> reach.isBefore(stage.id(), other.id()));
  }

  /** What is bridged for the length of a stage is taken up at its end, and its neighbours stand. */
  private void spanned(PlanStage stage) {
    for (Place place : stage.moves().spans()) {
      if (stage.moves().accepts().stream().noneMatch(s -> s.carries().contains(place))) {
        problems.add(stage.id() + " leaves " + place.name() + " of " + place.zone() + " open");
      }
      for (PlanStage other : stages) {
        boolean together = other == stage || reach.mayOverlap(stage.id(), other.id());
        if (together && other.moves().spans().stream().anyMatch(place::isBeside)) {
          problems.add(
              place.name() + " of " + place.zone() + " may be open beside an open neighbour");
        }
        if (other != stage && other.moves().spans().contains(place)) {
          problems.add(place.name() + " of " + place.zone() + " is opened twice");
        }
      }
    }
  }

  /** The length open at once, by whatever stages may go on together, keeps within the share. */
  private void openShare(PlanStage stage) {
    for (OpenLimit limit : limits) {
      double own = open(stage, limit.zone());
      if (own == 0) {
        continue;
      }
      long pits = pits(stage, limit.zone());
      double together = own;
      for (PlanStage other : stages) {
        if (reach.mayOverlap(stage.id(), other.id())) {
          together += open(other, limit.zone());
          pits += pits(other, limit.zone());
        }
      }
      if (pits > 1 && together > limit.metres() + ROUNDING) {
        problems.add(stage.id() + " opens more of " + limit.zone() + " than may be open at once");
      }
    }
  }

  private static double open(PlanStage stage, String zone) {
    return places(stage, zone).stream().mapToDouble(Place::metres).sum();
  }

  private static long pits(PlanStage stage, String zone) {
    return places(stage, zone).size();
  }

  private static List<Place> places(PlanStage stage, String zone) {
    return stage.moves().spans().stream()
        .filter(place -> place.number() > 0 && place.zone().equals(zone))
        .toList();
  }

  private void temporaryWorks() {
    Map<Support, Integer> removals = new HashMap<>();
    stages.forEach(
        stage -> stage.moves().removes().forEach(s -> removals.merge(s, 1, Integer::sum)));
    for (PlanStage stage : stages) {
      for (Support support : stage.moves().accepts()) {
        int times = removals.getOrDefault(support, 0);
        if (support.temporary() != (times == 1)) {
          problems.add(
              support.name()
                  + (support.temporary()
                      ? " is temporary and is taken away " + times + " times"
                      : " stays and is taken away"));
        }
      }
    }
  }
}
