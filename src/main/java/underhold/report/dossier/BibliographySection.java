package underhold.report.dossier;

import java.util.ArrayList;
import java.util.List;
import underhold.report.document.Block;
import underhold.report.document.Prose;
import underhold.report.document.Section;

/** Every source the package cites, by its number, with its basis and where it is cited. */
final class BibliographySection {
  private static final List<Block.Column> COLUMNS =
      Cells.columns("No.", "Source", "Cited as; what it is and how far it was read; cited by");

  private BibliographySection() {}

  static Section of(Citations citations) {
    List<Block.Row> rows = citations.all().stream().map(BibliographySection::row).toList();
    return Section.of(
        "sources",
        "Sources",
        List.of(
            Cells.paragraph(
                "Each source once, with the bases of the rules, limits and steps that cite it;"
                    + " clause or page stands where it is cited."
                    + " Where a rule cites several sources its basis is that of the rule as a whole: how"
                    + " far this one was read stands beside it and is never more than it says; of what"
                    + " only sheets cite, the basis says it."
                    + " From memory, verify: it was not at hand, so look it up before anything rests on"
                    + " it."
                    + " Judgement and statics have no source and are marked where they stand."),
            Cells.table("Sources cited", COLUMNS, rows, "No source is cited.")));
  }

  /** Places longer than this stand below the row. */
  private static final int SHORT = 60;

  private static Block.Row row(Citations.Cited cited) {
    List<Prose> places = new ArrayList<>();
    cited.places().forEach((label, anchor) -> places.add(Prose.empty().link(label, anchor)));
    Prose by =
        Prose.of("Cited by ")
            .then(places.isEmpty() ? Prose.of("the stage plan") : Cells.joined(places, ", "))
            .then(".");
    boolean beside = by.text().length() <= SHORT;
    Prose about =
        Prose.of(
            String.join(", ", cited.bases())
                + (cited.worth().isEmpty() ? "" : "; " + cited.worth())
                + (beside ? ". " : ""));
    return Cells.row(
            cited.anchor(),
            cited.bases().stream().anyMatch(basis -> basis.startsWith("from memory"))
                ? Block.Tone.DOUBT
                : Block.Tone.PLAIN,
            Prose.of(cited.mark()),
            Prose.of(cited.words()),
            beside ? about.then(by) : about)
        .noting(beside ? Prose.empty() : by);
  }
}
