package underhold.consult.stage;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * When each stage of a plan can begin and must begin, in working days from day 0.
 *
 * <p>Forward: a stage begins when the last of those before it is released. Backward from the end: a
 * stage must be released before the first of those after it must begin. Float is the difference;
 * stages without float are critical. Crews and rigs are counted as links of the plan, not here.
 * Critical path method; arithmetic, no source needed.
 *
 * @param starts earliest start of each stage, by id
 * @param floats days by which each may slip without moving the end, by id
 * @param days working days from the first stage to the end of the last
 * @param criticalPath the ids of one longest chain of stages, first to last
 */
public record Schedule(
    Map<String, Double> starts,
    Map<String, Double> floats,
    double days,
    List<String> criticalPath) {
  /** Rounding of sums of days. */
  private static final double ROUNDING = 1e-6;

  public Schedule {
    starts = Collections.unmodifiableMap(new HashMap<>(starts));
    floats = Collections.unmodifiableMap(new HashMap<>(floats));
    criticalPath = List.copyOf(criticalPath);
  }

  /**
   * The schedule of stages.
   *
   * @param ordered every stage once, each after all that come before it
   */
  static Schedule of(List<PlanStage> ordered) {
    Map<String, Double> starts = new HashMap<>();
    Map<String, Double> ends = new HashMap<>();
    Map<String, String> cause = new HashMap<>();
    double end = 0;
    for (PlanStage stage : ordered) {
      double start = 0;
      for (Link link : stage.after()) {
        double done = at(ends, link.before());
        if (done > start || (done == start && !cause.containsKey(stage.id()))) {
          start = done;
          cause.put(stage.id(), link.before());
        }
      }
      starts.put(stage.id(), start);
      ends.put(stage.id(), start + stage.time().days());
      end = Math.max(end, start + stage.time().days());
    }
    return new Schedule(starts, floats(ordered, starts, end), end, path(ordered, ends, cause, end));
  }

  private static Map<String, Double> floats(
      List<PlanStage> ordered, Map<String, Double> starts, double end) {
    Map<String, Double> latest = new HashMap<>();
    Map<String, Double> floats = new HashMap<>();
    for (int i = ordered.size() - 1; i >= 0; i--) {
      PlanStage stage = ordered.get(i);
      double must = latest.getOrDefault(stage.id(), end) - stage.time().days();
      floats.put(stage.id(), Math.max(0, must - at(starts, stage.id())));
      for (Link link : stage.after()) {
        latest.merge(link.before(), must, Math::min);
      }
    }
    return floats;
  }

  private static List<String> path(
      List<PlanStage> ordered, Map<String, Double> ends, Map<String, String> cause, double end) {
    List<String> path = new ArrayList<>();
    String id =
        ordered.stream()
            .map(PlanStage::id)
            .filter(one -> at(ends, one) >= end - ROUNDING)
            .reduce((one, other) -> other)
            .orElse("");
    while (!id.isEmpty()) {
      path.add(id);
      id = cause.getOrDefault(id, "");
    }
    Collections.reverse(path);
    return path;
  }

  private static double at(Map<String, Double> days, String id) {
    Double value = days.get(id);
    if (value == null) {
      throw new IllegalArgumentException(id + " stands before a stage that it comes after");
    }
    return value;
  }

  /** Earliest start of a stage. */
  public double start(String id) {
    return at(starts, id);
  }

  /** Whether a stage may not slip at all. */
  public boolean isCritical(String id) {
    return at(floats, id) < ROUNDING;
  }
}
