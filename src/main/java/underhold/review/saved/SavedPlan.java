package underhold.review.saved;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import underhold.advice.SupportOption;
import underhold.consult.stage.Link;
import underhold.consult.stage.PlanOutcome;
import underhold.consult.stage.PlanStage;
import underhold.consult.stage.StagePlan;
import underhold.quantity.UnitSystem;
import underhold.sizing.Settings;

/**
 * The plan of the stages.
 *
 * @param problems why there is none; empty where there is one
 * @param settings the settings in force, by name
 * @param days working days from first to last
 * @param criticalPath the ids of the stages that may not slip, in order
 * @param stages the stages in order
 */
public record SavedPlan(
    List<String> problems,
    Map<String, String> settings,
    double days,
    List<String> criticalPath,
    List<SavedStage> stages) {
  public SavedPlan {
    problems = List.copyOf(problems);
    settings = Collections.unmodifiableMap(new LinkedHashMap<>(settings));
    criticalPath = List.copyOf(criticalPath);
    stages = List.copyOf(stages);
  }

  /** No plan, and why. */
  static SavedPlan none(List<String> problems) {
    return new SavedPlan(problems, Map.of(), 0, List.of(), List.of());
  }

  static SavedPlan of(PlanOutcome outcome, UnitSystem units) {
    if (outcome instanceof PlanOutcome.Refused refused) {
      return none(refused.problems());
    }
    StagePlan plan = ((PlanOutcome.Made) outcome).plan();
    return new SavedPlan(
        List.of(),
        settings(plan.settings(), units),
        plan.schedule().days(),
        plan.schedule().criticalPath(),
        plan.stages().stream().map(stage -> stage(plan, stage)).toList());
  }

  private static Map<String, String> settings(Settings settings, UnitSystem units) {
    Map<String, String> words = new LinkedHashMap<>();
    settings.table().numbers().forEach(s -> words.put(s.name(), settings.amount(s).in(units)));
    settings.table().choices().forEach(choice -> words.put(choice.name(), settings.get(choice)));
    return words;
  }

  private static SavedStage stage(StagePlan plan, PlanStage stage) {
    return new SavedStage(
        stage.id(),
        stage.zone(),
        stage.method().map(SupportOption::id).orElse(""),
        stage.kind().word(),
        stage.title(),
        stage.time().days(),
        plan.schedule().start(stage.id()),
        stage.after().stream().map(Link::before).distinct().toList());
  }

  /** The stage of that id. */
  public Optional<SavedStage> stage(String id) {
    return stages.stream().filter(stage -> stage.id().equals(id)).findFirst();
  }
}
