package underhold.report.dossier;

import java.util.List;
import underhold.advice.Finding;
import underhold.report.Words;
import underhold.report.document.Block;
import underhold.report.document.Prose;
import underhold.report.document.Section;

/** What has to be done first, or with it, whichever option is built. */
final class ConditionsSection {
  private ConditionsSection() {}

  static Section of(Material material, Commission commission) {
    return new Section(
        "conditions",
        "Conditions",
        List.of(),
        material.zones().stream().map(zone -> zone(material, commission, zone)).toList());
  }

  private static Section zone(Material material, Commission commission, ZonePart zone) {
    List<Block.Row> rows =
        zone.advice().conditions().stream()
            .filter(finding -> isTold(material, commission, zone, finding))
            .map(finding -> row(zone, finding))
            .toList();
    return Section.of(
        "conditions-" + zone.number(),
        "Zone: " + zone.name(),
        List.of(
            Cells.table(
                "Conditions",
                Cells.columns("For", "What", "Weight, basis and rule"),
                rows,
                "No rule sets a condition here.")));
  }

  private static Block.Row row(ZonePart zone, Finding finding) {
    return Cells.row(
        Anchor.condition(zone.number(), finding.rule().id()),
        Block.Tone.PLAIN,
        Prose.of(concerns(zone, finding)),
        Prose.of(told(finding)),
        Cells.tag(zone.number(), finding, true));
  }

  /** A reviewer reads of every option in play, a site of the methods chosen. */
  static boolean isTold(Material material, Commission commission, ZonePart zone, Finding finding) {
    return commission.audience() == Audience.REVIEWER
        || material.method(zone).map(finding.rule()::concerns).orElse(true);
  }

  /** The options in play that it concerns. */
  static String concerns(ZonePart zone, Finding finding) {
    return Words.concerns(finding, zone.advice().optionsInPlay(finding).toList());
  }

  /** The rule in a sentence, what it assumes, and the reason with the site's numbers. */
  static String told(Finding finding) {
    String assumptions = Words.assumptions(finding);
    return finding.rule().sentence()
        + " "
        + (assumptions.isEmpty() ? "" : Words.sentence(assumptions) + ": ")
        + finding.reason();
  }
}
