package underhold.consult.stage;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;

/**
 * Plays a plan through, event by event, in an order drawn at random: stages begin as soon as those
 * before them are finished, several may go on at once. After every event it asks of every place
 * whether something carries it. It shares nothing with the checker of the program.
 */
final class WorkSimulation {
  private final List<PlanStage> stages;
  private final List<OpenLimit> limits;
  private final Random random;
  private final Set<String> finished = new LinkedHashSet<>();
  private final List<PlanStage> going = new ArrayList<>();
  private final Set<Place> noGround = new HashSet<>();
  private final Set<Support> standing = new HashSet<>();
  private final List<String> faults = new ArrayList<>();

  WorkSimulation(List<PlanStage> stages, List<OpenLimit> limits, long seed) {
    this.stages = stages;
    this.limits = limits;
    this.random = new Random(seed);
  }

  /** What went wrong; empty where everything stood at every moment. */
  List<String> run() {
    while (finished.size() < stages.size() && faults.isEmpty()) {
      List<PlanStage> ready =
          stages.stream()
              .filter(stage -> !finished.contains(stage.id()) && !going.contains(stage))
              .filter(stage -> stage.after().stream().allMatch(l -> finished.contains(l.before())))
              .toList();
      if (ready.isEmpty() && going.isEmpty()) {
        faults.add("nothing can begin");
      } else if (!ready.isEmpty() && (going.isEmpty() || random.nextInt(3) > 0)) {
        begin(ready.get(random.nextInt(ready.size())));
      } else {
        end(going.get(random.nextInt(going.size())));
      }
      places().forEach(this::look);
      openLength();
    }
    for (Support support : standing) {
      if (support.temporary()) {
        faults.add(support.name() + " is temporary and was left");
      }
    }
    return faults;
  }

  private void begin(PlanStage stage) {
    going.add(stage);
    noGround.addAll(stage.moves().undermines());
    noGround.addAll(stage.moves().spans());
    for (Support support : stage.moves().removes()) {
      if (!standing.remove(support)) {
        faults.add(stage.id() + " takes away what does not stand: " + support.name());
      }
    }
  }

  private void end(PlanStage stage) {
    going.remove(stage);
    finished.add(stage.id());
    standing.addAll(stage.moves().accepts());
  }

  private Set<Place> places() {
    Set<Place> places = new HashSet<>();
    for (PlanStage stage : stages) {
      places.addAll(stage.moves().undermines());
      places.addAll(stage.moves().spans());
    }
    return places;
  }

  private void look(Place place) {
    boolean bridged = going.stream().anyMatch(stage -> stage.moves().spans().contains(place));
    boolean carried = standing.stream().anyMatch(support -> support.carries().contains(place));
    if (noGround.contains(place) && !bridged && !carried) {
      faults.add(place + " stands on nothing while " + going.stream().map(PlanStage::id).toList());
    }
  }

  private void openLength() {
    Map<String, List<Place>> open = new HashMap<>();
    going.stream()
        .flatMap(stage -> stage.moves().spans().stream())
        .filter(place -> place.number() > 0)
        .forEach(place -> open.computeIfAbsent(place.zone(), key -> new ArrayList<>()).add(place));
    open.forEach(
        (zone, pits) -> {
          double metres = pits.stream().mapToDouble(Place::metres).sum();
          limits.stream()
              .filter(limit -> limit.zone().equals(zone))
              .filter(limit -> pits.size() > 1 && metres > limit.metres() + 1e-6)
              .forEach(limit -> faults.add(metres + " m open at " + zone + ", " + limit));
          for (Place one : pits) {
            for (Place other : pits) {
              if (one.number() + 1 == other.number()) {
                faults.add(one + " and " + other + " are open side by side");
              }
            }
          }
        });
  }
}
