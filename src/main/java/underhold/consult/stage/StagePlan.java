package underhold.consult.stage;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import underhold.consult.scheme.OrderWanted;
import underhold.consult.scheme.Scheme;
import underhold.sizing.Settings;
import underhold.sizing.Stage;

/**
 * One ordered plan for a scheme.
 *
 * @param scheme the scheme
 * @param settings the settings in force
 * @param stages in an order that keeps every link
 * @param limits how much of each wall may be open at once
 * @param schedule when each can begin
 * @param triggers what is done when a reading reaches a level, by zone
 * @param unkept orders between zones that could not be kept because they contradict others
 */
public record StagePlan(
    Scheme scheme,
    Settings settings,
    List<PlanStage> stages,
    List<OpenLimit> limits,
    Schedule schedule,
    Map<String, List<Stage>> triggers,
    List<OrderWanted> unkept) {
  public StagePlan {
    stages = List.copyOf(stages);
    limits = List.copyOf(limits);
    triggers = Collections.unmodifiableMap(new LinkedHashMap<>(triggers));
    unkept = List.copyOf(unkept);
  }

  /** The number of a stage on screens, from 1. */
  public int number(String id) {
    for (int i = 0; i < stages.size(); i++) {
      if (stages.get(i).id().equals(id)) {
        return i + 1;
      }
    }
    throw new IllegalArgumentException("there is no stage " + id);
  }

  /** The stage of that id. */
  public PlanStage stage(String id) {
    return stages.get(number(id) - 1);
  }

  /** How much of the wall of a zone may be open at once, where it is on pits. */
  public Optional<OpenLimit> limit(String zone) {
    return limits.stream().filter(limit -> limit.zone().equals(zone)).findFirst();
  }

  /**
   * What is sure to carry the zone of a stage while it goes on, in words, whatever order is taken:
   * its old footing, supports accepted before, the structure itself over an open pit.
   */
  public List<String> carriers(PlanStage stage) {
    Reach reach = Reach.of(stages);
    Set<String> words = new LinkedHashSet<>();
    if (oldFooting(stage, reach)) {
      words.add("old footing");
    }
    for (PlanStage other : stages) {
      if (other.zone().equals(stage.zone()) && reach.isBefore(other.id(), stage.id())) {
        other.moves().accepts().stream()
            .filter(support -> !isGone(support, stage, reach))
            .forEach(support -> words.add(shortName(support)));
      }
    }
    if (!stage.moves().spans().isEmpty()) {
      words.add(spanWords(stage));
    }
    return List.copyOf(words);
  }

  private static String spanWords(PlanStage stage) {
    boolean pits = stage.kind() == StageKind.PITS;
    return pits
        ? "the wall or face itself over what is open"
        : "the piles or wall, bare to the next brace";
  }

  /** Without the zone, and without the list of its pits. */
  private static String shortName(Support support) {
    String name = support.name();
    int colon = name.indexOf(':');
    String start = colon < 0 ? name : name.substring(0, colon);
    return start.replaceAll(" (of|at) .*", "");
  }

  private boolean oldFooting(PlanStage stage, Reach reach) {
    return stages.stream()
        .filter(other -> other.zone().equals(stage.zone()))
        .filter(other -> loses(other))
        .noneMatch(other -> other == stage || reach.isBefore(other.id(), stage.id()));
  }

  private static boolean loses(PlanStage stage) {
    return !stage.moves().undermines().isEmpty()
        || stage.moves().spans().stream().anyMatch(place -> place.number() > 0);
  }

  private boolean isGone(Support support, PlanStage stage, Reach reach) {
    return stages.stream()
        .filter(other -> other.moves().removes().contains(support))
        .anyMatch(other -> other == stage || reach.isBefore(other.id(), stage.id()));
  }
}
