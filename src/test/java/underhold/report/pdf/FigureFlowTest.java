package underhold.report.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.report.document.Block;
import underhold.report.document.Prose;
import underhold.report.drawing.Figure;

/** Drawings without room on the page: words run on past them, and nothing is lost or disordered. */
class FigureFlowTest {
  private static final int ROWS = 40;

  @Test
  @DisplayName("A drawing too high for the rest of the page leaves that rest to the words after it")
  void wordsRunOn() throws IOException {
    // A4 has 270 mm for words: thirty lines and a drawing of 200 mm do not share a page
    List<String> pages = pages(drawing("plan", 200), rows());
    assertThat(pages).hasSize(2);
    assertThat(pages.get(0)).contains("line 30.").contains("row 1. row 2.").doesNotContain("PLAN");
    assertThat(pages.get(1)).startsWith("t PLAN Number").contains("row 40.");
  }

  @Test
  @DisplayName("Drawings keep their order, each on the page after the words it would have parted")
  void order() throws IOException {
    List<String> pages = pages(drawing("plan", 200), drawing("section", 200), rows());
    assertThat(pages.get(0)).contains("row 1.");
    assertThat(pages.get(1)).startsWith("t PLAN");
    assertThat(pages.get(2)).startsWith("t SECTION");
    String all = String.join(" ", pages);
    assertThat(all.replaceAll("(t )?(PLAN|SECTION) ", "")).contains("row 1. row 2.");
    for (int i = 1; i <= ROWS; i++) {
      assertThat(all.split("row " + i + "\\.", -1)).as("row " + i).hasSize(2);
    }
  }

  @Test
  @DisplayName("A drawing never leaves its section, and stays where no words can go before it")
  void scope() throws IOException {
    List<String> pages = pages(drawing("plan", 200));
    assertThat(pages.get(0)).contains("line 30.").doesNotContain("end");
    assertThat(pages.get(1)).startsWith("t PLAN").contains("After all");
  }

  @Test
  @DisplayName("A table whose rows have notes has its head once on every page that it fills")
  void notedHead() throws IOException {
    List<Block.Row> rows = new ArrayList<>();
    for (int i = 1; i <= 200; i++) {
      rows.add(Block.Row.of(Prose.of("row " + i + ".")).noting(Prose.of("note of " + i + ".")));
    }
    List<String> pages =
        pages(new Block.Table("Noted", List.of(Block.Column.words("Heading")), rows));
    assertThat(pages).hasSizeGreaterThan(3);
    for (String page : pages) {
      assertThat(page.split("Heading", -1)).as(page).hasSize(2);
    }
    String all = String.join(" ", pages);
    for (int i = 1; i <= 200; i++) {
      assertThat(all).contains("row " + i + ". note of " + i + ".");
    }
  }

  @Test
  @DisplayName("No drawing comes between the words that lead a list and the list")
  void leads() throws IOException {
    int drawnBefore = 0;
    for (int lines = 0; lines <= 14; lines++) {
      List<Block> blocks = new ArrayList<>(List.of(drawing("plan", 200)));
      for (int i = 0; i < lines; i++) {
        blocks.add(new Block.Paragraph(Prose.of("more.")));
      }
      blocks.add(new Block.Paragraph(Prose.of("What is said here:")));
      List<Prose> items = new ArrayList<>();
      for (int i = 1; i <= 3; i++) {
        items.add(Prose.of("item " + i + ". " + "It goes on and on. ".repeat(12)));
      }
      blocks.add(new Block.Listing(false, items));
      blocks.add(rows());
      String all = String.join(" ", pages(blocks.toArray(Block[]::new)));
      assertThat(all.replaceAll("[^A-Za-z0-9:. ]", "").replaceAll(" +", " "))
          .as("%d lines", lines)
          .contains("here: item 1.");
      drawnBefore += all.indexOf("PLAN") < all.indexOf("here:") ? 1 : 0;
    }
    assertThat(drawnBefore).isBetween(1, 14);
  }

  @Test
  @DisplayName("Below a list that runs on over the top of a page a drawing stands on that page")
  void belowWordsThatRunOn() throws IOException {
    // thirty lines, then 140 mm that have no room, then 26 items, 105 mm, of which some run over
    List<String> pages = pages(drawing("plan", 140), list(26), rows());
    assertThat(pages.get(0)).contains("item 1.").doesNotContain("item 26.");
    assertThat(pages.get(1)).contains("item 26. PLAN").contains("row 1.");
  }

  @Test
  @DisplayName(
      "A drawing whose words all stand before it again is not moved, however often one looks")
  void settled() throws IOException {
    List<String> pages = pages(drawing("plan", 140), list(26), drawing("section", 90), rows());
    String all = String.join(" ", pages);
    assertThat(all.indexOf("PLAN")).isBetween(all.indexOf("item 1."), all.indexOf("SECTION"));
    assertThat(all.split("PLAN", -1)).hasSize(2);
    for (int i = 1; i <= ROWS; i++) {
      assertThat(all.split("row " + i + "\\.", -1)).as("row " + i).hasSize(2);
    }
  }

  private static Block list(int items) {
    List<Prose> all = new ArrayList<>();
    for (int i = 1; i <= items; i++) {
      all.add(Prose.of("item " + i + "."));
    }
    return new Block.Listing(false, all);
  }

  private static Block rows() {
    List<Block.Row> rows = new ArrayList<>();
    for (int i = 1; i <= ROWS; i++) {
      rows.add(Block.Row.of(Prose.of("row " + i + ".")));
    }
    return new Block.Table("Rows", List.of(Block.Column.words("Number")), rows);
  }

  private static Block drawing(String id, double height) {
    return new Block.Drawn(
        new Figure(
            id,
            id.toUpperCase(java.util.Locale.ROOT),
            "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 170 "
                + (int) height
                + "\"><rect x=\"1\" y=\"1\" width=\"9\" height=\"9\"/>"
                + "<text x=\"2\" y=\"190\" font-size=\"3\">Scale 1:100</text></svg>",
            170,
            height,
            List.of("words of " + id)));
  }

  /** The words of each page, in one line. */
  private static List<String> pages(Block... blocks) throws IOException {
    byte[] written = KeptTogetherTest.write(30, blocks);
    List<String> pages = new ArrayList<>();
    try (PDDocument pdf = Loader.loadPDF(written)) {
      for (int page = 1; page <= pdf.getNumberOfPages(); page++) {
        PDFTextStripper words = new PDFTextStripper();
        words.setSortByPosition(true);
        words.setStartPage(page);
        words.setEndPage(page);
        pages.add(words.getText(pdf).replaceAll("\\s+", " ").strip());
      }
    }
    return pages;
  }
}
