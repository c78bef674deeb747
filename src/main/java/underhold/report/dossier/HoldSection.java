package underhold.report.dossier;

import java.util.ArrayList;
import java.util.List;
import underhold.consult.stage.PlanStage;
import underhold.consult.stage.StagePlan;
import underhold.report.Stages;
import underhold.report.document.Block;
import underhold.report.document.Prose;
import underhold.report.document.Section;
import underhold.sizing.HoldPoint;

/** Every hold point of the plan in one list, to be signed as the work goes on. */
final class HoldSection {
  private HoldSection() {}

  static Section of(Material material) {
    List<Block> blocks = new ArrayList<>();
    if (material.madePlan().isEmpty()) {
      blocks.add(StageSection.none(material));
    } else {
      StagePlan plan = material.madePlan().get();
      blocks.add(
          Cells.paragraph(
              "Work does not pass a hold point before whoever is named has released it in writing."));
      blocks.add(
          Cells.table(
              "Hold points",
              List.of(
                  Block.Column.amounts("Stage"),
                  Block.Column.words("Where"),
                  Block.Column.words("What must be so"),
                  Block.Column.words("Released by"),
                  Block.Column.words("Name,\u00a0date,\u00a0signature")),
              rows(material, plan),
              "The plan has no hold point."));
    }
    return Section.of("holds", "Hold points", blocks);
  }

  private static List<Block.Row> rows(Material material, StagePlan plan) {
    List<Block.Row> rows = new ArrayList<>();
    for (PlanStage stage : plan.stages()) {
      int number = plan.number(stage.id());
      int place = 0;
      for (HoldPoint hold : stage.holds()) {
        rows.add(
            Cells.row(
                Anchor.of("hold", number, ++place),
                Block.Tone.CAUTION,
                Prose.empty().link(String.valueOf(number), Anchor.stage(number)),
                Prose.of(Stages.zone(stage)),
                Prose.of(Cells.sentence(hold.condition().in(material.units()))),
                Prose.of(hold.releasedBy()),
                Prose.empty()));
      }
    }
    return rows;
  }
}
