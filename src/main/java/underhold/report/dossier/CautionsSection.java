package underhold.report.dossier;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underhold.advice.Effect;
import underhold.advice.Finding;
import underhold.consult.scheme.PairFinding;
import underhold.report.Decider;
import underhold.report.Words;
import underhold.report.document.Block;
import underhold.report.document.Prose;
import underhold.report.document.Section;
import underhold.sizing.Caution;

/** The hazards, and who decides about each. */
final class CautionsSection {
  private final Material material;
  private final Commission commission;
  private final Citations citations;

  CautionsSection(Material material, Commission commission, Citations citations) {
    this.material = material;
    this.commission = commission;
    this.citations = citations;
  }

  Section section() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        Cells.paragraph(
            "No number in this package removes a hazard."
                + " Whoever is named decides, and stops the work where in doubt."));
    List<Block.Row> between = between();
    if (!between.isEmpty()) {
      blocks.add(
          new Block.Table(
              "Between the zones",
              Cells.columns("Caution", "Who decides", "Weight, basis and rule"),
              between));
    }
    return new Section(
        "cautions",
        "Cautions and who decides",
        blocks,
        material.zones().stream().map(this::zone).toList());
  }

  private Section zone(ZonePart zone) {
    List<Block> blocks = new ArrayList<>();
    List<Block.Row> rows =
        zone.advice().cautions().stream()
            .filter(finding -> ConditionsSection.isTold(material, commission, zone, finding))
            .map(finding -> row(zone, finding))
            .toList();
    blocks.add(
        Cells.table(
            "By the rules",
            Cells.columns("For", "Caution", "Who decides", "Weight, basis and rule"),
            rows,
            "No rule gives a caution here."));
    Optional<ZoneSheet> sheet = material.chosen(zone);
    sheet
        .filter(one -> !one.sheet().cautions().isEmpty())
        .ifPresent(
            one ->
                blocks.add(
                    sheet(material, citations, one, "By the sheet of " + one.option().label())));
    return Section.of(anchor(zone), "Zone: " + zone.name(), blocks);
  }

  /** The anchor of the cautions of a zone. */
  static String anchor(ZonePart zone) {
    return "cautions-" + zone.number();
  }

  /** The cautions of a sheet. */
  static Block sheet(Material material, Citations citations, ZoneSheet sheet, String caption) {
    return new Block.Table(
        caption,
        Cells.columns("Hazard", "What to do", "Who decides", "Source"),
        sheet.sheet().cautions().stream()
            .map(caution -> row(material, citations, sheet, caution))
            .toList());
  }

  private static Block.Row row(
      Material material, Citations citations, ZoneSheet sheet, Caution caution) {
    return Cells.row(
        "",
        Block.Tone.CAUTION,
        Prose.of(Words.sentence(caution.hazard())),
        Prose.of(caution.advice().in(material.units())),
        Prose.of(caution.decidedBy()),
        citations.of(caution.source(), sheet));
  }

  private static Block.Row row(ZonePart zone, Finding finding) {
    return Cells.row(
        Anchor.caution(zone.number(), finding.rule().id()),
        Block.Tone.CAUTION,
        Prose.of(ConditionsSection.concerns(zone, finding)),
        Prose.of(ConditionsSection.told(finding)),
        Prose.of(Decider.of(finding).words()),
        Cells.tag(zone.number(), finding, true));
  }

  private List<Block.Row> between() {
    return material.madeScheme().stream()
        .flatMap(scheme -> scheme.best().findings().stream())
        .filter(finding -> finding.effect() == Effect.CAUTION)
        .map(CautionsSection::pair)
        .toList();
  }

  private static Block.Row pair(PairFinding finding) {
    return Cells.row(
        "",
        Block.Tone.CAUTION,
        Prose.of(finding.finding().rule().sentence() + " " + finding.reason()),
        Prose.of(Decider.of(finding.finding()).words()),
        SchemeSection.tag(finding.finding()));
  }
}
