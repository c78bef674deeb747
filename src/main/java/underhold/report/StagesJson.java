package underhold.report;

import java.util.List;
import java.util.Map;
import underhold.advice.SupportOption;
import underhold.consult.scheme.Scheme;
import underhold.consult.stage.Moves;
import underhold.consult.stage.PlanOutcome;
import underhold.consult.stage.PlanStage;
import underhold.consult.stage.StagePlan;
import underhold.consult.stage.Support;
import underhold.quantity.UnitSystem;

/** A plan as a graph for JSON: nodes, edges, times. */
public final class StagesJson {
  private StagesJson() {}

  /** The scheme with its plan, or why the plan is refused. */
  public static Map<String, Object> of(Scheme scheme, PlanOutcome outcome) {
    Map<String, Object> root =
        Json.object("site", scheme.site().name(), "scheme", SchemeJson.of(scheme));
    root.put("rulePack", AdviceJson.rulePack(scheme.pack()));
    if (outcome instanceof PlanOutcome.Refused refused) {
      root.put("plan", Json.object("made", false, "problems", refused.problems()));
    }
    if (outcome instanceof PlanOutcome.Made made) {
      root.put("plan", plan(made.plan()));
    }
    root.put("caution", Program.CAUTION);
    return root;
  }

  private static Map<String, Object> plan(StagePlan plan) {
    return Json.object(
        "made",
        true,
        "unit",
        "working days",
        "days",
        plan.schedule().days(),
        "criticalPath",
        plan.schedule().criticalPath(),
        "nodes",
        plan.stages().stream().map(stage -> node(plan, stage)).toList(),
        "edges",
        plan.stages().stream().flatMap(stage -> edges(stage).stream()).toList(),
        "openLimits",
        plan.limits().stream()
            .map(
                limit ->
                    Json.object(
                        "zone", limit.zone(),
                        "mayBeOpenMetres", limit.metres(),
                        "wallMetres", limit.wallMetres()))
            .toList(),
        "ordersNotKept",
        plan.unkept().stream().map(SchemeJson::order).toList());
  }

  private static Map<String, Object> node(StagePlan plan, PlanStage stage) {
    UnitSystem units = plan.scheme().site().units();
    double start = plan.schedule().start(stage.id());
    Map<String, Object> node =
        Json.object(
            "id", stage.id(),
            "number", plan.number(stage.id()),
            "zone", stage.zone(),
            "method", stage.method().map(SupportOption::id).orElse(""),
            "kind", stage.kind().word(),
            "title", stage.title(),
            "days", stage.time().days(),
            "daysSource", stage.time().source(),
            "startDay", start,
            "endDay", start + stage.time().days(),
            "floatDays", plan.schedule().floats().getOrDefault(stage.id(), 0.0),
            "critical", plan.schedule().isCritical(stage.id()));
    node.put("work", stage.work().stream().map(work -> work.in(units)).toList());
    node.put(
        "holdPoints",
        stage.holds().stream()
            .map(
                hold ->
                    Json.object(
                        "condition", hold.condition().in(units), "releasedBy", hold.releasedBy()))
            .toList());
    node.put("open", Stages.open(plan, stage));
    node.put("carriedBy", stage.zone().isEmpty() ? List.of() : plan.carriers(stage));
    node.put("readings", Stages.watch(plan, stage));
    node.put("moves", moves(stage.moves()));
    node.put("told", stage.told().stream().map(one -> FindingJson.of(one, true)).toList());
    node.put(
        "toldOfPairs",
        stage.toldOfPairs().stream()
            .map(one -> Json.object("rule", one.id(), "because", one.reason()))
            .toList());
    node.put("waitsFor", stage.waitsFor());
    return node;
  }

  private static Map<String, Object> moves(Moves moves) {
    return Json.object(
        "undermines", moves.undermines().stream().map(p -> p.zone() + ": " + p.name()).toList(),
        "spans", moves.spans().stream().map(p -> p.zone() + ": " + p.name()).toList(),
        "openMetres", moves.openMetres(),
        "accepts", moves.accepts().stream().map(Support::name).toList(),
        "removes", moves.removes().stream().map(Support::name).toList());
  }

  private static List<Map<String, Object>> edges(PlanStage stage) {
    return stage.after().stream()
        .map(link -> Json.object("from", link.before(), "to", stage.id(), "why", link.why()))
        .toList();
  }
}
