package underhold.report.dossier;

import java.util.ArrayList;
import java.util.List;
import underhold.report.ReviewText;
import underhold.report.Words;
import underhold.report.document.Block;
import underhold.report.document.Prose;
import underhold.report.document.Section;
import underhold.review.record.Entry;
import underhold.review.record.ReviewRecord;
import underhold.review.record.ReviewRow;
import underhold.review.record.Statement;

/** The record of a review: what is open, overridden and signed, and every entry. */
final class ReviewSection {
  private final ReviewRecord record;
  private final String doubt;

  private ReviewSection(Reviewing reviewing) {
    this.record = reviewing.record();
    this.doubt = reviewing.doubt();
  }

  static Section of(Reviewing reviewing) {
    return new ReviewSection(reviewing).section();
  }

  private Section section() {
    List<Block> blocks = new ArrayList<>();
    if (!doubt.isEmpty()) {
      blocks.add(
          new Block.Notice(
              Block.Tone.BAD, "This record may not be of this package", Prose.of(doubt)));
    }
    if (!record.intact()) {
      blocks.add(
          new Block.Notice(
              Block.Tone.BAD,
              "The record is not whole: no signature in it proves anything",
              Prose.of(
                  String.join(
                      " ",
                      record.faults().stream()
                          .map(fault -> Cells.sentence(fault.message()))
                          .toList()))));
    }
    blocks.add(state());
    return new Section(
        "review",
        "Review record",
        blocks,
        List.of(queries(), overrides(), signatures(), entries()));
  }

  private Block state() {
    List<Block.Row> rows = new ArrayList<>();
    item(rows, "Reviewed", Prose.empty().typed(record.file().of().advice()));
    item(
        rows,
        "Made by",
        Prose.of(record.file().of().program() + ", rules " + record.file().of().rulePack()));
    item(rows, "Fingerprint of what was reviewed", typed(record.file().of().fingerprint()));
    item(
        rows,
        "Entries",
        Prose.of(
            Words.count(record.entries().size(), "entry", "entries")
                + ", round "
                + record.round()
                + (record.intact() ? "; the record is whole" : "; THE RECORD IS NOT WHOLE")));
    List<Entry> back = record.datedBack();
    if (!back.isEmpty()) {
      item(
          rows,
          "Clock",
          Prose.of(
              "dated before the entry above them: "
                  + String.join(
                      ", ", back.stream().map(entry -> "entry " + entry.number()).toList())));
    }
    item(
        rows,
        "Signed",
        Prose.empty()
            .strong(
                record.signed().words()
                    + (record.intact()
                        ? ""
                        : "; the record is not whole, so no signature proves anything")));
    item(rows, "Head, to be noted on paper", typed(record.headForPaper()));
    item(rows, "What it proves", Prose.of(ReviewText.CAUTION));
    return new Block.Table("The review as it stands", Cells.columns("What", "Record"), rows);
  }

  private Section queries() {
    return Section.of(
        "review-open",
        "Open queries",
        List.of(
            Cells.table(
                "Queries that wait for an answer",
                Cells.columns("Entry", "Asked by", "On", "There", "Query"),
                record.openQueries().stream().map(query -> query(query.asked())).toList(),
                "No query is open.")));
  }

  private static Block.Row query(Entry asked) {
    return Cells.row(
        "",
        Block.Tone.DOUBT,
        lead(asked),
        Prose.of(who(asked)),
        typed(asked.target().orElse("")),
        Prose.of(asked.original().orElse("")),
        Prose.of(asked.text().orElse("")));
  }

  private Section overrides() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        Cells.paragraph(
            "The reviewer's judgement beside what was advised. The package itself says what it"
                + " said: no override changes a number or a verdict in it."));
    blocks.add(
        Cells.table(
            "Overrides, the original beside",
            Cells.columns("Entry", "On", "Original", "Override", "By, with reason", "State"),
            record.overrides().stream().map(ReviewSection::override).toList(),
            "Nothing is overridden."));
    return Section.of("review-overrides", "Overrides", blocks);
  }

  private static Block.Row override(ReviewRecord.Overridden one) {
    Entry entry = one.entry();
    return Cells.row(
        "",
        one.againstSafety() ? Block.Tone.BAD : Block.Tone.PLAIN,
        lead(entry),
        typed(entry.target().orElse("")),
        Prose.of(entry.original().orElse("")),
        Prose.empty().strong(entry.instead().orElse("")),
        Prose.of(
            who(entry)
                + ", "
                + ReviewRow.when(entry)
                + entry.why().map(why -> ". Reason: " + why).orElse("")),
        Prose.of(
            one.state().words()
                + (one.againstSafety()
                    ? ". Mind: the original rules out, fails or holds. Who overrides it answers for"
                        + " it."
                    : "")));
  }

  private Section signatures() {
    return Section.of(
        "review-signatures",
        "Signatures",
        List.of(
            Cells.table(
                "Signatures, as typed",
                Cells.columns("Entry", "Who", "Statement", "When", "Covers", "Its fingerprint"),
                record.signatures().stream().map(ReviewSection::signature).toList(),
                "Nobody has signed.")));
  }

  private static Block.Row signature(ReviewRecord.Signature signature) {
    Entry entry = signature.entry();
    return Block.Row.of(
        lead(entry),
        Prose.of(who(entry)),
        Prose.of(
            entry.statement().flatMap(Statement::find).map(Statement::meaning).orElse("")
                + entry.why().map(why -> ". " + why).orElse("")),
        Prose.of(ReviewRow.when(entry)),
        Prose.of(signature.covers() ? "the present round" : "not the present round"),
        typed(entry.hash()));
  }

  private Section entries() {
    return Section.of(
        "review-entries",
        "Every entry",
        List.of(
            new Block.Table(
                "Entries in the order written",
                Cells.columns("Entry", "Who and when", "What", "On", "Original", "Words", "State"),
                ReviewRow.of(record).stream().map(ReviewSection::row).toList())));
  }

  private static Block.Row row(ReviewRow row) {
    return Cells.row(
        anchor(row.number()),
        Block.Tone.PLAIN,
        Prose.of(row.number() + ", round " + row.round()),
        Prose.of(row.who() + ", " + row.when()),
        Prose.of(row.what()),
        typed(row.about()),
        Prose.of(row.original()),
        Prose.of(row.text()),
        Prose.of(row.state()));
  }

  private static void item(List<Block.Row> rows, String label, Prose words) {
    rows.add(Block.Row.of(Prose.of(label), words));
  }

  private static Prose lead(Entry entry) {
    return Prose.empty().link(String.valueOf(entry.number()), anchor(entry.number()));
  }

  private static String anchor(int number) {
    return Anchor.of("review-entry", number);
  }

  private static Prose typed(String text) {
    return Cells.typed(text);
  }

  private static String who(Entry entry) {
    return entry.by() + entry.role().map(role -> ", " + role).orElse("");
  }
}
