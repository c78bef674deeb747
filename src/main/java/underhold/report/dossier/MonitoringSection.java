package underhold.report.dossier;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import underhold.advice.Finding;
import underhold.advice.SupportOption;
import underhold.consult.stage.PlanStage;
import underhold.consult.stage.StagePlan;
import underhold.report.MovementLevels;
import underhold.report.ReadingTimes;
import underhold.report.Stages;
import underhold.report.document.Block;
import underhold.report.document.Prose;
import underhold.report.document.Section;
import underhold.sizing.Stage;

/**
 * What is read, with what, where and when, and what is done when a reading reaches a level: in
 * every package, whichever method is built.
 */
final class MonitoringSection {
  /** Of these causes are the rules on survey, limits and watching. */
  private static final Set<String> WATCHING = Set.of("movement", "movement limit");

  /** A duty of another kind, such as when to dig, stands among the conditions. */
  private static boolean watches(Finding finding) {
    return WATCHING.contains(finding.rule().cause())
        || finding.rule().cause().equals("duty") && finding.rule().sentence().contains("watch");
  }

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
    blocks.add(limit(MovementLevels.of(material.site(), zone.advice())));
    Optional<Watching> watching = Watching.of(material, zone);
    watching.ifPresent(watched -> blocks.addAll(watched.instruments()));
    material.madePlan().ifPresent(plan -> plan(plan, zone, blocks));
    List<Stage> own =
        material
            .madePlan()
            .map(plan -> plan.triggers().getOrDefault(zone.name(), List.of()))
            .orElse(List.of());
    watching.ifPresent(watched -> blocks.addAll(watched.levels(own)));
    blocks.add(
        Cells.paragraph(
            "The engineer of record confirms or changes levels, instruments and times in writing"
                + " before work begins: without them there is no work."));
    asked(material, zone, blocks);
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

  /** The limit stated and, where another is stricter, the one that governs with its source. */
  private static Block limit(MovementLevels levels) {
    Prose words =
        levels
            .stated()
            .map(amount -> Prose.of("Stated: ").typed(amount.text()).then("."))
            .orElse(
                Prose.of(
                    "Nobody stated one. Agree it with the owner and the engineer of record before"
                        + " any work."));
    return new Block.Notice(
        levels.stated().isEmpty()
            ? Block.Tone.DOUBT
            : levels.stricter() ? Block.Tone.CAUTION : Block.Tone.PLAIN,
        "Movement limit",
        levels.stricter()
            ? words.then(
                " The limit that governs is "
                    + levels.limit().orElse("")
                    + ": "
                    + levels.whose()
                    + ". Every level here is a share of the limit that governs.")
            : words);
  }

  /** What the rules ask of survey, limits and watching, whichever method or this one is built. */
  private static void asked(Material material, ZonePart zone, List<Block> blocks) {
    List<Block.Row> rows =
        Stream.concat(zone.advice().conditions().stream(), zone.advice().cautions().stream())
            .filter(MonitoringSection::watches)
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
        Cells.paragraph(
            "Each stage is read as its own work asks and, whatever it asks, "
                + ReadingTimes.of(plan.scheme().site()).during()
                + " while work goes on, as above: the stricter holds."));
    blocks.add(
        new Block.Table("Readings, stage by stage", Cells.columns("Readings", "Stages"), rows));
  }
}
