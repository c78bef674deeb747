package underhold.report.dossier;

import java.util.ArrayList;
import java.util.List;
import underhold.report.document.Block;
import underhold.report.document.Prose;
import underhold.report.document.Section;

/** Every source the package cites, with its basis and where it is cited. */
final class BibliographySection {
  private static final List<Block.Column> COLUMNS =
      Cells.columns("Source", "Cited as", "What it is, how far it was read", "Cited by");

  private BibliographySection() {}

  static Section of(Citations citations) {
    List<Block.Row> rows = citations.all().stream().map(BibliographySection::row).toList();
    return Section.of(
        "sources",
        "Sources",
        List.of(
            Cells.paragraph(
                "Each source with the bases of the rules, limits and steps that cite it."
                    + " Where a rule cites several sources its basis is that of the rule as a whole: how"
                    + " far this one was read stands beside it and is never more than it says."
                    + " From memory, verify: it was not at hand, so look it up before anything rests on"
                    + " it."
                    + " Judgement and statics have no source and are marked where they stand."),
            Cells.table("Sources cited", COLUMNS, rows, "No source is cited.")));
  }

  private static Block.Row row(Citations.Cited cited) {
    List<Prose> places = new ArrayList<>();
    cited.places().forEach((label, anchor) -> places.add(Prose.empty().link(label, anchor)));
    return Cells.row(
        cited.anchor(),
        cited.bases().stream().anyMatch(basis -> basis.startsWith("from memory"))
            ? Block.Tone.DOUBT
            : Block.Tone.PLAIN,
        Prose.of(cited.words()),
        Prose.of(String.join("; ", cited.bases())),
        Prose.of(cited.worth().isEmpty() ? "cited on a sheet; see its basis" : cited.worth()),
        places.isEmpty() ? Prose.of("the stage plan") : Cells.joined(places, ", "));
  }
}
