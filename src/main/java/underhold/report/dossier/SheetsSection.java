package underhold.report.dossier;

import java.util.ArrayList;
import java.util.List;
import underhold.report.document.Block;
import underhold.report.document.Prose;
import underhold.report.document.Section;

/** Every calculation sheet: first those of the methods chosen, zone by zone in the ranking. */
final class SheetsSection {
  private SheetsSection() {}

  static Section of(Material material, SheetSection writer) {
    List<Section> parts = new ArrayList<>();
    List<Block.Row> rows = new ArrayList<>();
    for (ZonePart zone : material.zones()) {
      for (ZoneSheet sheet : material.sheets(zone)) {
        parts.add(writer.section(zone, sheet));
        rows.add(row(material, zone, sheet));
      }
    }
    return new Section(
        "sheets",
        "Calculation sheets",
        List.of(
            Cells.paragraph(
                "One sheet for every option still in play, chosen or not, so that the choice can be"
                    + " checked."
                    + " An option ruled out is not sized."
                    + " Each check that rests on what nobody stated is referred to the engineer."),
            Cells.table(
                "The sheets",
                Cells.columns("Zone", "Sheet", "In the scheme", "Verdict"),
                rows,
                "No option is in play, so there is no sheet.")),
        parts);
  }

  private static Block.Row row(Material material, ZonePart zone, ZoneSheet sheet) {
    boolean chosen = material.method(zone).filter(sheet.option()::equals).isPresent();
    return Block.Row.of(
        Prose.of(zone.name()),
        Prose.empty().link(sheet.sheet().title(), sheet.anchor()),
        Prose.of(chosen ? "chosen" : "not chosen"),
        Prose.of(SheetSection.verdict(sheet.sheet())));
  }
}
