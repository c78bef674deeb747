package underhold.consult.stage;

import java.util.List;
import java.util.Locale;
import underhold.consult.scheme.ZoneChoice;
import underhold.sizing.Stage;

/** Writes the stages of one zone into the plan, each after the one before. */
final class ZoneWriter {
  private final PlanBuilder plan;
  private final ZoneChoice zone;
  private final int number;
  private final Told told;
  private final ZoneStages stages;
  private String previous;
  private int count;

  ZoneWriter(PlanBuilder plan, ZoneChoice zone, int number, Told told, String survey) {
    this.plan = plan;
    this.zone = zone;
    this.number = number;
    this.told = told;
    this.stages = new ZoneStages(zone.name());
    this.previous = survey;
  }

  void add(StageKind kind, Stage stage, Moves moves, StageTime time) {
    count++;
    String id =
        "z" + number + "." + count + "-" + kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
    plan.add(
        new PlanStage(
            id,
            zone.name(),
            zone.method(),
            kind,
            stage.title(),
            stage.work(),
            stage.holdPoints(),
            moves,
            List.of(new Link(previous, "")),
            time,
            told.take(kind),
            told.takePairs(kind),
            List.of()));
    stages.add(id, kind, !moves.accepts().isEmpty());
    previous = id;
  }

  ZoneStages stages() {
    return stages;
  }
}
