package underhold.report.dossier;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import underhold.consult.stage.Place;
import underhold.consult.stage.PlanStage;
import underhold.consult.stage.StageKind;
import underhold.consult.stage.StagePlan;
import underhold.report.document.Block;
import underhold.report.document.Prose;
import underhold.report.document.Section;
import underhold.sizing.Amount;

/** The order in which pits are opened, round by round. */
final class PitOrderSection {
  private PitOrderSection() {}

  /** The section; nothing where the plan has no pits. */
  static Optional<Section> of(Material material) {
    return material.madePlan().flatMap(plan -> of(material, plan));
  }

  private static Optional<Section> of(Material material, StagePlan plan) {
    List<Block.Row> rows = new ArrayList<>();
    for (PlanStage stage : plan.stages()) {
      if (stage.kind() == StageKind.PITS) {
        rows.add(row(material, plan, stage));
      }
    }
    return rows.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Section.of(
                "pit-order",
                "Order of pits",
                List.of(
                    Cells.paragraph(
                        "A round begins only when every pit of the round before carries."
                            + " No pit is opened beside an open one."),
                    new Block.Table(
                        "Rounds of pits",
                        List.of(
                            Block.Column.amounts("Stage"),
                            Block.Column.words("Zone"),
                            Block.Column.words("Pits opened"),
                            Block.Column.amounts("Wall open"),
                            Block.Column.amounts("May be open"),
                            Block.Column.words("Carried meanwhile by")),
                        rows))));
  }

  private static Block.Row row(Material material, StagePlan plan, PlanStage stage) {
    int number = plan.number(stage.id());
    String pits =
        stage.moves().spans().stream()
            .filter(place -> place.number() > 0)
            .map(Place::name)
            .collect(Collectors.joining(", "));
    return Block.Row.of(
        Prose.empty().link(String.valueOf(number), Anchor.stage(number)),
        Prose.of(stage.zone()),
        Prose.of(pits.isEmpty() ? "all pits, in an order still to be set" : pits),
        Prose.of(length(material, stage.moves().openMetres())),
        Prose.of(
            plan.limit(stage.zone())
                .map(limit -> length(material, limit.metres()))
                .orElse("no limit is known")),
        Prose.of(String.join("; ", plan.carriers(stage))));
  }

  private static String length(Material material, double metres) {
    return Amount.length(metres).in(material.units());
  }
}
