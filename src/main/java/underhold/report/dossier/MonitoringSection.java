package underhold.report.dossier;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import underhold.advice.SupportOption;
import underhold.consult.stage.PlanStage;
import underhold.consult.stage.StagePlan;
import underhold.quantity.Quantity;
import underhold.report.Stages;
import underhold.report.document.Block;
import underhold.report.document.Prose;
import underhold.report.document.Section;
import underhold.sizing.HoldPoint;
import underhold.sizing.Stage;

/** What is read, when, and what is done when a reading reaches a level. */
final class MonitoringSection {
  /** Of these causes are the rules on survey, limits and watching. */
  private static final Set<String> WATCHING = Set.of("duty", "movement", "movement limit");

  private MonitoringSection() {}

  static Section of(Material material) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        Cells.paragraph(
            "Readings begin before anything is touched and go on until they are steady."
                + " Whoever reads may stop the work."));
    return new Section(
        "monitoring",
        "Monitoring plan",
        blocks,
        material.zones().stream().map(zone -> zone(material, zone)).toList());
  }

  private static Section zone(Material material, ZonePart zone) {
    List<Block> blocks = new ArrayList<>();
    Optional<Quantity> limit = zone.advice().view().amount("movementLimit");
    blocks.add(
        new Block.Notice(
            limit.isPresent() ? Block.Tone.PLAIN : Block.Tone.DOUBT,
            "Movement limit",
            limit
                .map(amount -> Prose.of("Stated: ").typed(amount.text()).then("."))
                .orElse(
                    Prose.of(
                        "Nobody stated one. Agree it with the owner and the engineer of record before"
                            + " any work."))));
    asked(material, zone, blocks);
    material.madePlan().ifPresent(plan -> plan(plan, zone, blocks));
    levels(material, zone, blocks);
    material
        .sheet(zone, SupportOption.MONITOR)
        .ifPresent(
            sheet ->
                blocks.add(
                    new Block.Paragraph(
                        Prose.of("What movement is forecast, and what limits are usual: ")
                            .link("the monitoring sheet of this zone", sheet.anchor())
                            .then("."))));
    return Section.of("monitoring-" + zone.number(), "Zone: " + zone.name(), blocks);
  }

  /** What the rules ask of survey, limits and watching, whichever method or this one is built. */
  private static void asked(Material material, ZonePart zone, List<Block> blocks) {
    List<Block.Row> rows =
        Stream.concat(zone.advice().conditions().stream(), zone.advice().cautions().stream())
            .filter(finding -> WATCHING.contains(finding.rule().cause()))
            .filter(finding -> material.method(zone).map(finding.rule()::concerns).orElse(true))
            .map(
                finding ->
                    Block.Row.of(
                        Prose.of(ConditionsSection.told(finding)),
                        Cells.tag(zone.number(), finding, true)))
            .toList();
    if (!rows.isEmpty()) {
      blocks.add(
          new Block.Table(
              "What the rules ask", Cells.columns("What", "Weight, basis and rule"), rows));
    }
  }

  private static void plan(StagePlan plan, ZonePart zone, List<Block> blocks) {
    Map<String, List<Prose>> readings = new LinkedHashMap<>();
    for (PlanStage stage : plan.stages()) {
      if (stage.zone().equals(zone.name()) || stage.zone().isEmpty()) {
        int number = plan.number(stage.id());
        readings
            .computeIfAbsent(Stages.watch(plan, stage), key -> new ArrayList<>())
            .add(Prose.empty().link(number + " " + stage.title(), Anchor.stage(number)));
      }
    }
    List<Block.Row> rows = new ArrayList<>();
    readings.forEach(
        (words, stages) -> rows.add(Block.Row.of(Prose.of(words), Cells.joined(stages, "; "))));
    blocks.add(
        new Block.Table("Readings, stage by stage", Cells.columns("Readings", "Stages"), rows));
  }

  private static void levels(Material material, ZonePart zone, List<Block> blocks) {
    List<Stage> levels =
        material
            .madePlan()
            .map(plan -> plan.triggers().getOrDefault(zone.name(), List.of()))
            .orElse(List.of());
    List<Block.Row> rows = new ArrayList<>();
    for (Stage level : levels) {
      List<String> words = new ArrayList<>();
      level.work().forEach(work -> words.add(Cells.sentence(work.in(material.units()))));
      List<String> holds = new ArrayList<>();
      for (HoldPoint hold : level.holdPoints()) {
        holds.add(
            Cells.sentence(hold.condition().in(material.units()))
                + " Released by: "
                + Cells.sentence(hold.releasedBy()));
      }
      rows.add(
          Cells.row(
              "",
              Block.Tone.CAUTION,
              Prose.of(level.title()),
              Prose.of(String.join(" ", words)),
              Prose.of(holds.isEmpty() ? "none" : String.join(" ", holds))));
    }
    blocks.add(
        Cells.table(
            "When a reading reaches a level",
            Cells.columns("Level", "What is done", "Hold points"),
            rows,
            "The method of this zone sets no levels of its own. The engineer of record sets the levels"
                + " at which work is looked at again and at which it stops, in writing, before work"
                + " begins: without them there is no work. With them go points and instruments, how"
                + " often they are read, who reads, and who stops the work (judgement)."));
  }
}
