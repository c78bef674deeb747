package underhold.report.dossier;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import underhold.quantity.UnitSystem;
import underhold.report.document.Block;
import underhold.report.document.Prose;
import underhold.report.document.Section;
import underhold.sizing.Check;
import underhold.sizing.Verdict;
import underhold.threads.AllProcessors;

/** The calculation sheets, zone by zone in the ranking: whole, or in short where not asked for. */
final class SheetsSection {
  private static final int MOST_PASSED = 4;

  private static final List<Block.Column> CHECKS =
      List.of(
          Block.Column.words("Check"),
          Block.Column.amounts("Demand"),
          Block.Column.amounts("Capacity"),
          Block.Column.amounts("Used"),
          Block.Column.words("Verdict"));

  private SheetsSection() {}

  static Section of(Material material, WhichSheets which, SheetSection writer) {
    List<Section> parts = new ArrayList<>();
    List<Block.Row> rows = new ArrayList<>();
    for (Drawn one : drawn(material, which.of(material), writer)) {
      parts.add(
          one.whole
              ? writer.section(one.zone, one.sheet, one.drawings)
              : brief(one.zone, one.sheet, writer, material.units()));
      rows.add(row(material, one.zone, one.sheet, one.whole));
    }
    return new Section(
        "sheets",
        "Calculation sheets",
        List.of(
            Cells.paragraph(words(which)),
            Cells.table(
                "The sheets",
                Cells.columns("Zone", "Sheet", "In the scheme", "Set here", "Verdict"),
                rows,
                "No option is in play, so there is no sheet.")),
        parts);
  }

  /** A sheet, whether it is set whole, and the drawings that it then has. */
  private record Drawn(ZonePart zone, ZoneSheet sheet, boolean whole, List<Block> drawings) {}

  /**
   * Drawn side by side, for the drawings take the longest; the rest cites, and is written in order.
   */
  private static List<Drawn> drawn(Material material, List<ZoneSheet> whole, SheetSection writer) {
    List<Supplier<Drawn>> wanted = new ArrayList<>();
    for (ZonePart zone : material.zones()) {
      for (ZoneSheet sheet : material.sheets(zone)) {
        boolean set = whole.contains(sheet);
        wanted.add(
            () -> new Drawn(zone, sheet, set, set ? writer.drawings(zone, sheet) : List.of()));
      }
    }
    return AllProcessors.each(wanted, Supplier::get);
  }

  private static String words(WhichSheets which) {
    String inPlay =
        which == WhichSheets.ALL
            ? "One sheet for every option still in play, chosen or not, so that the choice can be"
                + " checked."
            : "The sheet of the method of each zone is set whole, so that it can be redone by hand;"
                + " where a zone has no method yet, the first of its ranking that has numbers. Each"
                + " other option still in play has a short account of its checks: with --sheets all"
                + " every sheet is set whole.";
    return inPlay
        + " An option ruled out is not sized."
        + " Each check that rests on what nobody stated is referred to the engineer.";
  }

  private static Block.Row row(Material material, ZonePart zone, ZoneSheet sheet, boolean set) {
    boolean chosen = material.method(zone).filter(sheet.option()::equals).isPresent();
    return Block.Row.of(
        Prose.of(zone.name()),
        Prose.empty().link(sheet.sheet().title(), sheet.anchor()),
        Prose.of(chosen ? "chosen" : "not chosen"),
        Prose.of(set ? "whole" : "in short"),
        Prose.of(SheetSection.verdict(sheet.sheet())));
  }

  /** Verdict, the checks that do not pass, and of those that pass the ones nearest to failing. */
  private static Section brief(
      ZonePart zone, ZoneSheet sheet, SheetSection writer, UnitSystem units) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(writer.verdictNotice(zone, sheet, "In short; with --sheets all the whole sheet."));
    SheetSection.missing(sheet.sheet(), blocks);
    List<Check> open = open(sheet);
    List<Check> passed = passed(sheet);
    if (sheet.sheet().complete()) {
      blocks.add(
          Cells.table(
              "Checks that do not pass, then those that pass and use the most",
              CHECKS,
              Stream.concat(open.stream(), passed.stream().limit(MOST_PASSED))
                  .map(check -> row(sheet, check, units))
                  .toList(),
              "The sheet has no check."));
      int more = passed.size() - MOST_PASSED;
      if (more > 0) {
        blocks.add(
            Cells.paragraph(
                more == 1
                    ? "1 more check passes and uses less."
                    : more + " more checks pass and use less."));
      }
    }
    return Section.of(
        sheet.anchor(), sheet.sheet().title() + " in short, zone " + zone.name(), blocks);
  }

  private static List<Check> open(ZoneSheet sheet) {
    return Stream.of(Verdict.FAILS, Verdict.REFER)
        .flatMap(verdict -> sheet.sheet().checks().stream().filter(one -> one.verdict() == verdict))
        .toList();
  }

  private static List<Check> passed(ZoneSheet sheet) {
    return sheet.sheet().checks().stream()
        .filter(check -> check.verdict() == Verdict.PASSES)
        .sorted(
            Comparator.comparingDouble(
                    (Check check) -> check.utilisation().orElse(Double.POSITIVE_INFINITY))
                .reversed())
        .toList();
  }

  private static Block.Row row(ZoneSheet sheet, Check check, UnitSystem units) {
    return Cells.row(
            sheet.anchor("check", check.id()),
            SheetSection.tone(check.verdict()),
            Prose.of(check.title()),
            Prose.of(Cells.amount(check.demand(), units)),
            Prose.of(Cells.amount(check.capacity(), units)),
            Prose.of(SheetSection.used(check)),
            SheetSection.verdict(check))
        .noting(SheetSection.note(check, units));
  }
}
