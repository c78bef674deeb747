package underhold.report.dossier;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import underhold.advice.SupportOption;
import underhold.consult.stage.PlanStage;
import underhold.consult.stage.StagePlan;
import underhold.report.Decider;
import underhold.report.Words;
import underhold.report.document.Block;
import underhold.report.document.Prose;
import underhold.report.document.Section;
import underhold.sizing.HoldPoint;
import underhold.sizing.Sheet;
import underhold.sizing.Verdict;

/** One page for the site hut: what is built in which order, what stops the work, whom to call. */
final class SiteBriefSection {
  private final Material material;

  private SiteBriefSection(Material material) {
    this.material = material;
  }

  static Section of(Material material) {
    SiteBriefSection brief = new SiteBriefSection(material);
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Block.Notice(
            Block.Tone.CAUTION,
            "Work stops",
            Prose.of(
                "when a reading reaches the stop level; where a hold point is not released in writing;"
                    + " when anyone who is named below says so. Then people leave the part concerned,"
                    + " the contractor makes the face safe, and those below are called"
                    + " (judgement).")));
    List<Section> parts = new ArrayList<>(material.zones().stream().map(brief::zone).toList());
    parts.add(brief.calls());
    return new Section("site-brief", "On one page", blocks, parts);
  }

  private Section zone(ZonePart zone) {
    List<Block> blocks = new ArrayList<>();
    Optional<SupportOption> method = material.method(zone);
    blocks.add(
        new Block.Paragraph(
            method
                .map(
                    option ->
                        Prose.empty()
                            .strong(Words.sentence(option.label()) + ".")
                            .then(" " + MethodWords.of(option).what()))
                .orElse(
                    Prose.empty()
                        .strong("No method yet.")
                        .then(
                            " Only surveys and investigations are planned; nothing is dug here."))));
    material
        .chosen(zone)
        .map(ZoneSheet::sheet)
        .flatMap(SiteBriefSection::open)
        .ifPresent(blocks::add);
    material.madePlan().ifPresent(plan -> order(plan, zone).ifPresent(blocks::add));
    List<Prose> watched = new ArrayList<>();
    Watching.of(material, zone).ifPresent(watching -> watched.addAll(watching.brief()));
    if (!watched.isEmpty()) {
      blocks.add(new Block.Listing(false, watched));
    }
    return Section.of("site-brief-" + zone.number(), "Zone: " + zone.name(), blocks);
  }

  /** How many checks are not passed, which the site must not take for a design. */
  private static Optional<Block> open(Sheet sheet) {
    if (!sheet.complete()) {
      return Optional.of(
          new Block.Notice(
              Block.Tone.BAD,
              "Not calculated yet",
              Prose.of("Facts are missing: nothing of it may be built.")));
    }
    long fails = count(sheet, Verdict.FAILS);
    long refers = count(sheet, Verdict.REFER);
    if (fails + refers == 0) {
      return Optional.empty();
    }
    String words =
        (fails == 0 ? "" : Words.count((int) fails, "check fails", "checks fail") + ", ")
            + Words.count((int) refers, "check waits", "checks wait")
            + " for an engineer: ";
    return Optional.of(
        new Block.Notice(
            fails > 0 ? Block.Tone.BAD : Block.Tone.DOUBT,
            "Not for construction",
            Prose.of(words)
                .link("what is not proved", "not-proved")
                .then(". Nothing is built before that is settled and signed.")));
  }

  private static long count(Sheet sheet, Verdict verdict) {
    return sheet.checks().stream().filter(check -> check.verdict() == verdict).count();
  }

  private static Optional<Block> order(StagePlan plan, ZonePart zone) {
    List<Prose> stages = new ArrayList<>();
    for (PlanStage stage : plan.stages()) {
      if (stage.zone().isEmpty() || stage.zone().equals(zone.name())) {
        int number = plan.number(stage.id());
        stages.add(Prose.empty().link(number + " " + stage.title(), Anchor.stage(number)));
      }
    }
    return stages.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Block.Paragraph(
                Prose.of("In this order: ").then(Cells.joined(stages, ", ")).then(".")));
  }

  private Section calls() {
    Set<String> who = new LinkedHashSet<>();
    who.add(role("the competent person on site"));
    who.add(role("the engineer of record"));
    who.add("surveyor who takes the readings");
    material
        .madePlan()
        .ifPresent(
            plan ->
                plan.stages().stream()
                    .flatMap(stage -> stage.holds().stream())
                    .map(HoldPoint::releasedBy)
                    .map(SiteBriefSection::role)
                    .forEach(who::add));
    for (ZonePart zone : material.zones()) {
      zone.advice().cautions().forEach(finding -> who.add(role(Decider.of(finding).words())));
      material
          .chosen(zone)
          .ifPresent(
              sheet ->
                  sheet.sheet().cautions().forEach(caution -> who.add(role(caution.decidedBy()))));
    }
    who.add("rescue and emergency services");
    return Section.of(
        "calls",
        "Whom to call",
        List.of(
            Cells.paragraph(
                "Names and numbers are written in before work begins; nobody works while a line is"
                    + " empty."),
            new Block.Table(
                "Whom to call",
                Cells.columns("Who", "Name", "By day", "By night"),
                who.stream()
                    .map(
                        one ->
                            Block.Row.of(
                                Prose.of(Words.sentence(one)),
                                Prose.empty(),
                                Prose.empty(),
                                Prose.empty()))
                    .toList())));
  }

  /** One role by one name, however rules and sheets call it. */
  static String role(String words) {
    return words
        .replaceAll("^(the|a|an) ", "")
        .replaceAll("^competent person$", "competent person on site");
  }
}
