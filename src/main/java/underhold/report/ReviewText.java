package underhold.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underhold.review.record.Entry;
import underhold.review.record.Fault;
import underhold.review.record.ReviewRecord;
import underhold.review.record.ReviewRow;
import underhold.review.record.Statement;
import underhold.review.record.Target;

/** A review as it stands, in short or with every entry. */
public final class ReviewText {
  private static final int MARGIN = 2;
  private static final int COLUMN = 12;
  private static final int NUMBER = 5;

  private final ReviewRecord record;
  private final TextPage page;

  private static final String AGAINST_SAFETY =
      "Mind: the original rules out, fails or holds. Who overrides it answers for it.";

  private ReviewText(ReviewRecord record, Look look) {
    this.record = record;
    this.page = new TextPage(look);
  }

  /**
   * What is open, overridden and signed, and whether the record is whole.
   *
   * @param advice what became of the consultation reviewed, in words; empty where it is as it was
   * @param noted what a head noted elsewhere says, in words; empty where none was given
   */
  public static String status(ReviewRecord record, String advice, String noted, Look look) {
    ReviewText text = new ReviewText(record, look);
    text.head(advice, noted);
    text.open();
    text.overrides();
    text.signatures();
    text.foot();
    return text.page.text();
  }

  /** The same with every entry. */
  public static String all(ReviewRecord record, String advice, Look look) {
    ReviewText text = new ReviewText(record, look);
    text.head(advice, "");
    text.page.heading("Entries");
    ReviewRow.of(record).forEach(text::row);
    text.foot();
    return text.page.text();
  }

  /** An entry just written, with the head to be noted. */
  public static String written(String file, ReviewRow row, String head, Look look) {
    TextPage page = new TextPage(look);
    page.para(0, "Entry " + row.number() + " is written to " + safe(file) + ".");
    page.para(0, "Head: " + head);
    return page.text();
  }

  /** Parts that entries can speak of. */
  public static String targets(List<Target> targets, Look look) {
    TextPage page = new TextPage(look);
    for (Target target : targets) {
      page.para(0, safe(target.path()));
      page.para(MARGIN * 2, safe(target.label()) + ": " + safe(target.original()));
      if (!target.instead().isEmpty()) {
        page.para(MARGIN * 2, "An override can say: " + String.join(", ", target.instead()) + ".");
      }
    }
    return page.text();
  }

  private void head(String advice, String noted) {
    page.heading("Review of " + safe(record.file().of().site()));
    item("reviewed", safe(record.file().of().advice()) + ", " + safe(record.file().of().program()));
    item("rules", safe(record.file().of().rulePack()));
    item("content", record.file().of().fingerprint());
    if (!advice.isEmpty()) {
      page.item(Tint.BAD, MARGIN, "mind", COLUMN, safe(advice));
    }
    if (record.intact()) {
      item(
          "record",
          "whole: "
              + Words.count(record.entries().size(), "entry", "entries")
              + ", round "
              + record.round());
    } else {
      for (Fault fault : record.faults()) {
        page.item(
            Tint.BAD, MARGIN, "NOT WHOLE", COLUMN, Words.sentence(safe(fault.message())) + ".");
      }
    }
    for (Entry back : record.datedBack()) {
      item("clock", "entry " + back.number() + " is dated before the entry above it");
    }
    if (!noted.isEmpty()) {
      item("noted", noted);
    }
    item("head", record.headForPaper());
    Tint tint = record.signed() == ReviewRecord.Signed.YES ? Tint.GOOD : Tint.OPEN;
    page.item(tint, MARGIN, "signed", COLUMN, signed());
  }

  private String signed() {
    return record.signed().words()
        + (record.intact() ? "" : "; the record is not whole, so no signature proves anything");
  }

  private void open() {
    List<ReviewRecord.Query> open = record.openQueries();
    page.heading("Open queries");
    if (open.isEmpty()) {
      page.para(MARGIN, "None.");
    }
    open.forEach(query -> entry(query.asked()));
  }

  private void overrides() {
    List<ReviewRecord.Overridden> all = record.overrides();
    if (all.isEmpty()) {
      return;
    }
    page.heading("Overrides");
    page.para(
        MARGIN,
        "The reviewer's judgement. The consultation itself says what it said: both stand here.");
    for (ReviewRecord.Overridden one : all) {
      Entry entry = one.entry();
      page.item(
          MARGIN,
          entry.number() + ".",
          NUMBER,
          safe(entry.target().orElse("")) + ", " + one.state().words());
      beside(entry);
      if (one.againstSafety()) {
        page.tinted(Tint.BAD, MARGIN + NUMBER, AGAINST_SAFETY);
      }
    }
  }

  private void signatures() {
    if (record.signatures().isEmpty()) {
      return;
    }
    page.heading("Signatures");
    for (ReviewRecord.Signature signature : record.signatures()) {
      Entry entry = signature.entry();
      String statement =
          entry.statement().flatMap(Statement::find).map(Statement::meaning).orElse("");
      page.item(
          MARGIN,
          entry.number() + ".",
          NUMBER,
          who(entry)
              + ": "
              + statement
              + ", "
              + ReviewRow.when(entry)
              + (signature.covers() ? "" : "; does not cover the present round"));
      texts(entry);
      page.para(MARGIN + NUMBER, "Its fingerprint: " + entry.hash());
    }
  }

  private void entry(Entry entry) {
    page.item(
        MARGIN,
        entry.number() + ".",
        NUMBER,
        who(entry) + ", " + ReviewRow.when(entry) + ", on " + safe(entry.target().orElse("")));
    entry.original().ifPresent(was -> page.para(MARGIN + NUMBER, "There: " + safe(was)));
    texts(entry);
  }

  private void texts(Entry entry) {
    entry.text().ifPresent(said -> page.para(MARGIN + NUMBER, safe(said)));
    entry.why().ifPresent(why -> page.para(MARGIN + NUMBER, "Reason: " + safe(why)));
  }

  /** The original and what stands beside it. */
  private void beside(Entry entry) {
    page.para(MARGIN + NUMBER, "Original: " + safe(entry.original().orElse("")));
    page.para(
        MARGIN + NUMBER,
        "Override: "
            + safe(entry.instead().orElse(""))
            + ", by "
            + who(entry)
            + ", "
            + ReviewRow.when(entry));
    texts(entry);
  }

  private void row(ReviewRow row) {
    List<String> parts = new ArrayList<>(List.of(safe(row.who()) + " " + safe(row.what())));
    if (!row.about().isEmpty()) {
      parts.add("on " + safe(row.about()));
    }
    if (!row.state().isEmpty()) {
      parts.add("[" + row.state() + "]");
    }
    page.item(MARGIN, row.number() + ".", NUMBER, String.join(", ", parts));
    page.tinted(Tint.QUIET, MARGIN + NUMBER, row.when() + ", round " + row.round());
    Optional.of(row.original())
        .filter(text -> !text.isEmpty())
        .ifPresent(text -> page.para(MARGIN + NUMBER, "Original: " + safe(text)));
    if (!row.text().isEmpty()) {
      page.para(MARGIN + NUMBER, safe(row.text()));
    }
  }

  private static String who(Entry entry) {
    return safe(entry.by()) + entry.role().map(role -> ", " + safe(role)).orElse("");
  }

  private void foot() {
    page.blank();
    page.para(0, CAUTION);
    page.para(0, Program.CAUTION);
  }

  /** What a record of this kind proves, and what not. */
  public static final String CAUTION =
      "Names are typed, not proved; this is no electronic signature in the legal sense. Each entry"
          + " carries the fingerprint of the one before, so a change shows; but whoever can write the"
          + " file can rewrite all of it, or take entries off its end. Note the head on paper:"
          + " review status FILE --head HEAD tells whether the record still holds it.";

  private void item(String mark, String words) {
    page.item(MARGIN, mark, COLUMN, words);
  }

  private static String safe(String text) {
    return SafeText.of(text);
  }
}
