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

  private static final List<Block.Column> UNNAMED =
      Cells.columns("What is relied on", "Basis", "Where");

  private BibliographySection() {}

  static Section of(Citations citations) {
    List<Block.Row> rows = citations.all().stream().map(BibliographySection::row).toList();
    List<Block.Row> unnamed = citations.unnamed().stream().map(BibliographySection::other).toList();
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        Cells.paragraph(
            "Each source once, with the bases of the rules, limits and steps that cite it;"
                + " clause or page stands where it is cited."
                + " Where a rule cites several sources its basis is that of the rule as a whole: how"
                + " far this one was read stands beside it and is never more than it says; of what"
                + " only sheets cite, the basis says it."
                + " From memory, verify: it was not at hand, so look it up before anything rests on"
                + " it."
                + " Judgement and statics have no source and are marked where they stand."));
    blocks.add(Cells.table("Sources cited", COLUMNS, rows, "No source is cited."));
    if (!unnamed.isEmpty()) {
      blocks.add(
          Cells.paragraph(
              "No work is named for what follows, so there is nothing to look up: it is practice or"
                  + " memory, and the engineer of record must take it over or replace it."));
      blocks.add(new Block.Table("Relied on without a source", UNNAMED, unnamed));
    }
    return Section.of("sources", "Sources", blocks);
  }

  private static Block.Row other(Citations.Cited cited) {
    return Cells.row(
        cited.anchor(),
        Block.Tone.DOUBT,
        Prose.of(cited.words()),
        Prose.of(String.join(", ", cited.bases())),
        places(cited));
  }

  private static Prose places(Citations.Cited cited) {
    List<Prose> places = new ArrayList<>();
    cited.places().forEach((label, anchor) -> places.add(Prose.empty().link(label, anchor)));
    return places.isEmpty() ? Prose.of("the stage plan") : Cells.joined(places, ", ");
  }

  /** Places longer than this stand below the row. */
  private static final int SHORT = 60;

  private static Block.Row row(Citations.Cited cited) {
    Prose by = Prose.of("Cited by ").then(places(cited)).then(".");
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
