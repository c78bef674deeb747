package underhold.report.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.report.document.Block;
import underhold.report.document.Document;
import underhold.report.document.Prose;
import underhold.report.document.Section;

/** No line, row or rule of a heading stands alone at the edge of a page, wherever the page ends. */
class KeptTogetherTest {
  /** Lines of words before what is looked at: with so many of them it stands at a page's end. */
  private static final int FIRST = 30;

  private static final int LAST = 43;

  @Test
  @DisplayName("A list of three short items stands whole, and no longer list leaves its last alone")
  void lists() throws IOException {
    int moved = 0;
    for (int lines = FIRST; lines <= LAST; lines++) {
      String second = page(2, lines, list(3));
      assertThat(count(second, "item ")).as("%d lines", lines).isIn(0, 3);
      moved += count(second, "item ") == 3 ? 1 : 0;
      assertThat(count(page(2, lines, list(6)), "item ")).as("%d lines", lines).isNotIn(1, 5);
    }
    assertThat(moved).isBetween(1, LAST - FIRST);
  }

  @Test
  @DisplayName("A table of three low rows stands whole, and no longer one parts a low row from all")
  void rows() throws IOException {
    int moved = 0;
    for (int lines = FIRST; lines <= LAST; lines++) {
      String second = page(2, lines, table(3));
      assertThat(count(second, "row ")).as("%d lines", lines).isIn(0, 3);
      moved += count(second, "row ") == 3 ? 1 : 0;
      assertThat(count(page(2, lines, table(5)), "row ")).as("%d lines", lines).isNotIn(1, 4);
    }
    assertThat(moved).isBetween(1, LAST - FIRST);
  }

  @Test
  @DisplayName("The rule above a heading is never left at the foot of the page before it")
  void ruleOfHeading() throws IOException {
    int onNext = 0;
    for (int lines = FIRST; lines <= LAST; lines++) {
      byte[] file = write(lines, new Block.Paragraph(Prose.of("last.")));
      try (PDDocument pdf = Loader.loadPDF(file)) {
        if (words(pdf, 1).contains(" end ")) {
          continue;
        }
        onNext++;
        assertThat(brownBelowTheMiddle(new PDFRenderer(pdf).renderImageWithDPI(0, 48)))
            .as("%d lines", lines)
            .isFalse();
      }
    }
    assertThat(onNext).isPositive();
  }

  /** Whether anything below the middle has the colour of the rules above headings, 7d4317. */
  private static boolean brownBelowTheMiddle(BufferedImage page) {
    for (int y = page.getHeight() / 2; y < page.getHeight(); y++) {
      int pixel = page.getRGB(page.getWidth() / 2, y);
      int red = pixel >> 16 & 0xff;
      int blue = pixel & 0xff;
      if (red - blue > 60) {
        return true;
      }
    }
    return false;
  }

  private static int count(String text, String words) {
    return text.split(words, -1).length - 1;
  }

  private static Block list(int items) {
    List<Prose> all = new ArrayList<>();
    for (int i = 1; i <= items; i++) {
      all.add(Prose.of("item " + i + "."));
    }
    return new Block.Listing(false, all);
  }

  private static Block table(int count) {
    List<Block.Row> rows = new ArrayList<>();
    for (int i = 1; i <= count; i++) {
      rows.add(Block.Row.of(Prose.of("row " + i + "."), Prose.of("of " + count)));
    }
    List<Block.Column> columns = List.of(Block.Column.words("Number"), Block.Column.words("Count"));
    return new Block.Table("Rows", columns, rows);
  }

  private static String page(int page, int lines, Block block) throws IOException {
    try (PDDocument pdf = Loader.loadPDF(write(lines, block))) {
      return page > pdf.getNumberOfPages() ? "" : words(pdf, page);
    }
  }

  private static String words(PDDocument pdf, int page) throws IOException {
    PDFTextStripper words = new PDFTextStripper();
    words.setSortByPosition(true);
    words.setStartPage(page);
    words.setEndPage(page);
    return words.getText(pdf).replaceAll("\\s+", " ").strip();
  }

  /** A document of so many lines, then the blocks, then a section after them. */
  static byte[] write(int lines, Block... blocks) throws IOException {
    List<Block> all = new ArrayList<>();
    for (int i = 1; i <= lines; i++) {
      all.add(new Block.Paragraph(Prose.of("line " + i + ".")));
    }
    all.addAll(List.of(blocks));
    Document document =
        new Document(
            "t",
            "s",
            List.of(),
            List.of(
                Section.of("a", "A", all),
                Section.of("b", "After all", List.of(new Block.Paragraph(Prose.of("end"))))));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    new PdfWriter(Paper.A4).write(document, out);
    return out.toByteArray();
  }
}
