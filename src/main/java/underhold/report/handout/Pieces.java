package underhold.report.handout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import underhold.classroom.Named;
import underhold.report.Words;
import underhold.report.document.Block;
import underhold.report.document.Prose;
import underhold.report.drawing.Drawn;

/** Small pieces that the handouts share. */
final class Pieces {
  /** Room to write. */
  static final String ROOM = String.join(" ", Collections.nCopies(11, ".".repeat(12)));

  private Pieces() {}

  static Block.Paragraph paragraph(String words) {
    return new Block.Paragraph(Prose.of(words));
  }

  static Block.Listing list(List<String> items) {
    return new Block.Listing(false, items.stream().map(Prose::of).toList());
  }

  /** A list, or a sentence where it is empty. */
  static Block listOr(List<String> items, String none) {
    return items.isEmpty() ? paragraph(none) : list(items);
  }

  static List<Block.Column> columns(String... titles) {
    return Arrays.stream(titles).map(Block.Column::words).toList();
  }

  /** A table of plain words, or a sentence where it has no row. */
  static Block table(
      String caption, List<Block.Column> columns, List<Block.Row> rows, String none) {
    return rows.isEmpty() ? paragraph(none) : new Block.Table(caption, columns, rows);
  }

  /** Words as they are typed, with what they mean. */
  static Block words(String caption, List<Named> words) {
    return new Block.Table(
        caption,
        columns("Word", "What it means"),
        words.stream()
            .map(one -> Block.Row.of(typed(one.word()), Prose.of(Words.sentence(one.means()))))
            .toList());
  }

  static Prose typed(String text) {
    return text.isEmpty() ? Prose.empty() : Prose.empty().typed(text);
  }

  /** The drawing, or the sentence that says why there is none. */
  static List<Block> drawn(Drawn drawing) {
    List<Block> blocks = new ArrayList<>();
    drawing.figures().stream().map(Block.Drawn::new).forEach(blocks::add);
    if (!drawing.why().isEmpty()) {
      blocks.add(paragraph(drawing.why()));
    }
    return blocks;
  }
}
