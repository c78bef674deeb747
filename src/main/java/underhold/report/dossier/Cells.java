package underhold.report.dossier;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import underhold.advice.Finding;
import underhold.advice.Hold;
import underhold.quantity.Measure;
import underhold.quantity.UnitSystem;
import underhold.report.Words;
import underhold.report.document.Block;
import underhold.report.document.Prose;
import underhold.report.document.Section;
import underhold.report.drawing.Drawn;
import underhold.sizing.Amount;
import underhold.sizing.HoldPoint;
import underhold.sizing.Phrase;

/** Small pieces that the sections share. */
final class Cells {
  private Cells() {}

  static Block.Paragraph paragraph(String words) {
    return new Block.Paragraph(Prose.of(words));
  }

  static Block.Listing list(List<String> items) {
    return new Block.Listing(false, items.stream().map(Prose::of).toList());
  }

  static List<Block.Column> columns(String... titles) {
    return Arrays.stream(titles).map(Block.Column::words).toList();
  }

  /** A table; one paragraph in its place where it has no row. */
  static Block table(
      String caption, List<Block.Column> columns, List<Block.Row> rows, String none) {
    return rows.isEmpty() ? paragraph(none) : new Block.Table(caption, columns, rows);
  }

  static Block.Row row(String anchor, Block.Tone tone, Prose... cells) {
    return new Block.Row(anchor, tone, List.of(cells));
  }

  /** An amount that says of itself what it is: with its unit, or that it is a plain number. */
  static String amount(Amount amount, UnitSystem units) {
    return amount(amount.in(units), amount.measure());
  }

  /** The same of an amount already in words. */
  static String amount(String text, Measure measure) {
    if (measure.needsUnit() || text.endsWith("%")) {
      return text;
    }
    return text + (measure == Measure.COUNT ? " (count)" : " (ratio)");
  }

  /** A user's words, as typed. */
  static Prose typed(String text) {
    return text.isEmpty() ? Prose.empty() : Prose.empty().typed(text);
  }

  /** Strength, basis and rule of a finding in brackets, leading to the trace. */
  static Prose tag(int zone, Finding finding, boolean counted) {
    String tag = Words.tag(finding, counted);
    String id = finding.rule().id();
    int at = tag.indexOf(id);
    return Prose.of(tag.substring(1, at))
        .link(id, Anchor.trace(zone, id))
        .then(tag.substring(at + id.length(), tag.length() - 1));
  }

  /** The rule of a hold, leading to the rule as it is written. */
  static Prose rule(Hold hold) {
    return Prose.empty().link(hold.rule().id(), Anchor.rule(hold.rule().id()));
  }

  /** Pieces with something between each two. */
  static Prose joined(List<Prose> pieces, String between) {
    Prose all = Prose.empty();
    for (Prose piece : pieces) {
      all = all.spans().isEmpty() ? piece : all.then(between).then(piece);
    }
    return all;
  }

  /** A section with one part a zone; the parts' blocks stand in it where the site has one zone. */
  static Section zoned(String id, String title, List<Block> first, List<Section> parts) {
    return new Section(id, title, first, parts);
  }

  /** Drawings, each where it is, or why there is none. */
  static List<Block> drawn(List<Drawn> drawings) {
    List<Block> blocks = new ArrayList<>();
    for (Drawn drawing : drawings) {
      drawing.figures().stream().map(Block.Drawn::new).forEach(blocks::add);
      if (!drawing.why().isEmpty()) {
        blocks.add(paragraph(sentence(drawing.why())));
      }
    }
    return blocks;
  }

  /** One list of several. */
  @SafeVarargs
  static <T> List<T> all(List<? extends T>... lists) {
    List<T> all = new ArrayList<>();
    for (List<? extends T> list : lists) {
      all.addAll(list);
    }
    return all;
  }

  /** What is done, in order, then what must be so before it goes on. */
  static List<Block> work(List<Phrase> work, List<HoldPoint> holds, UnitSystem units) {
    List<Block> blocks = new ArrayList<>();
    if (!work.isEmpty()) {
      blocks.add(
          new Block.Listing(true, work.stream().map(one -> Prose.of(one.in(units))).toList()));
    }
    for (HoldPoint hold : holds) {
      blocks.add(
          new Block.Notice(
              Block.Tone.CAUTION,
              "Hold point",
              Prose.of(
                  sentence(hold.condition().in(units))
                      + " Released by: "
                      + sentence(hold.releasedBy()))));
    }
    return blocks;
  }

  /** A sentence: with a capital first and an end. */
  static String sentence(String words) {
    String begun = Words.sentence(words.strip());
    return begun.isEmpty() || begun.endsWith(".") || begun.endsWith("?") ? begun : begun + ".";
  }
}
