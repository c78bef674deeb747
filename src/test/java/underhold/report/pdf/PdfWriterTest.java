package underhold.report.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionGoTo;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.quantity.UnitSystem;
import underhold.report.document.Block;
import underhold.report.document.Block.Column;
import underhold.report.document.Block.Row;
import underhold.report.document.Document;
import underhold.report.document.Prose;
import underhold.report.document.Section;
import underhold.report.html.HostileTexts;
import underhold.report.html.SampleDocuments;

class PdfWriterTest {
  private static byte[] rich = {};

  @BeforeAll
  static void setRich() throws Exception {
    rich = write(SampleDocuments.rich(), Paper.A4);
  }

  @Test
  @DisplayName("The bookmarks are the sections, nested and numbered, and each leads to a page")
  void bookmarks() throws Exception {
    try (PDDocument pdf = Loader.loadPDF(rich)) {
      List<String> found = new ArrayList<>();
      for (PDOutlineItem item : pdf.getDocumentCatalog().getDocumentOutline().children()) {
        collect(item, "", found, pdf);
      }
      List<String> expected = new ArrayList<>();
      expect(SampleDocuments.rich().sections(), "", "", expected);
      assertThat(found).isEqualTo(expected).hasSize(15);
    }
  }

  @Test
  @DisplayName("Words, formulas and trade signs are found as text, in the order of reading")
  void text() throws Exception {
    String text = text(rich).replaceAll("\\s+", " ");
    assertThat(text)
        .contains("A cut 7.2 m deep passes beside and under three structures")
        .contains("Dig the first round of pits. Hold point.")
        .contains("φ = 34°")
        .contains("γ ≤ 19.5 kN/m³, µ = 0.5")
        .contains("Step 66 of zone 3: bending moment in a board of the pit 5.037 kN·m/m")
        .contains("M = (29.6 kPa) × (1.167 m)^2 / 8 = 5.037 kN·m/m")
        .contains("fb = 5.204 MPa, bending stress")
        .contains("√")
        .contains("Cave-in and egress")
        .contains("fact number 60");
    for (String formula : SampleDocuments.FORMULAS) {
      assertThat(text).contains(formula);
    }
  }

  @Test
  @DisplayName("A drawing says the same in words to a reader of the screen")
  void words() throws Exception {
    try (PDDocument pdf = Loader.loadPDF(rich)) {
      List<String> words = new ArrayList<>();
      alternates(pdf.getDocumentCatalog().getStructureTreeRoot().getKids(), words);
      assertThat(words)
          .hasSize(3)
          .allMatch(
              each ->
                  each.equals(
                      "A wall with 95 kN/m stands 0 m from the cut.; The cut is 7.2 m deep."));
    }
  }

  private static void alternates(List<Object> kids, List<String> words) {
    for (Object kid : kids) {
      if (kid instanceof PDStructureElement element) {
        if (element.getStructureType().equals("Figure")) {
          words.add(element.getAlternateDescription());
        }
        alternates(element.getKids(), words);
      }
    }
  }

  @Test
  @DisplayName(
      "Every mark of tagged words stands once on its page, and marks that say the same are one")
  void marks() throws Exception {
    try (PDDocument pdf = Loader.loadPDF(rich)) {
      Map<String, COSDictionary> seen = new HashMap<>();
      int tagged = 0;
      for (PDPage page : pdf.getPages()) {
        COSDictionary marks =
            page.getResources().getCOSObject().getCOSDictionary(COSName.getPDFName("Properties"));
        Set<Integer> numbers = new HashSet<>();
        for (COSName name : marks.keySet()) {
          COSDictionary mark = marks.getCOSDictionary(name);
          int number = mark.getInt(COSName.MCID, -1);
          assertThat(number < 0 || numbers.add(number)).isTrue();
          tagged += number < 0 ? 0 : 1;
          COSDictionary before = seen.putIfAbsent(mark.toString(), mark);
          assertThat(before == null || before == mark).as(mark.toString()).isTrue();
        }
        assertThat(numbers).isNotEmpty();
      }
      assertThat(tagged).isGreaterThan(1_000);
      assertThat(seen.size()).isLessThan(tagged);
    }
  }

  @Test
  @DisplayName(
      "Long tables of short rows stand two rows side by side, and lose no row and no anchor")
  void pairs() throws Exception {
    List<Row> rows = new ArrayList<>();
    for (int i = 1; i <= 301; i++) {
      rows.add(
          new Row(
              "row-" + i, Block.Tone.PLAIN, List.of(Prose.of("row " + i + "."), Prose.of("5 kN"))));
    }
    List<Column> columns = List.of(Column.words("Names"), Column.amounts("Load"));
    Document document =
        new Document(
            "t",
            "s",
            List.of(),
            List.of(
                Section.of(
                    "a",
                    "A",
                    List.of(
                        new Block.Paragraph(Prose.empty().link("last", "row-301")),
                        new Block.Table("Long", columns, rows)))));
    byte[] pdf = write(document, Paper.A4);
    String text = text(pdf);
    for (int i = 1; i <= 301; i++) {
      assertThat(text).contains("row " + i + ".");
    }
    assertThat(text).contains("Names Load Names Load", "row 1. 5 kN row 2. 5 kN");
    try (PDDocument read = Loader.loadPDF(pdf)) {
      assertThat(read.getNumberOfPages()).isLessThanOrEqualTo(4);
      PDAnnotationLink link =
          (PDAnnotationLink)
              read.getPage(0).getAnnotations().stream().reduce((a, b) -> b).orElseThrow();
      PDActionGoTo action = (PDActionGoTo) link.getAction();
      assertThat(((PDPageDestination) action.getDestination()).retrievePageNumber())
          .isEqualTo(read.getNumberOfPages() - 1);
    }
  }

  @Test
  @DisplayName("Every page says its number, how many there are, and what the document is for")
  void footer() throws Exception {
    try (PDDocument pdf = Loader.loadPDF(rich)) {
      int pages = pdf.getNumberOfPages();
      assertThat(pages).isBetween(15, 40);
      for (int page = 1; page <= pages; page++) {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        assertThat(stripper.getText(pdf))
            .contains("page " + page + " of " + pages)
            .contains(SampleDocuments.STATUS);
      }
    }
  }

  @Test
  @DisplayName("It has its title and no author, is tagged, and embeds all its letters")
  void about() throws Exception {
    try (PDDocument pdf = Loader.loadPDF(rich)) {
      assertThat(pdf.getDocumentInformation().getTitle())
          .isEqualTo("Lantern Quay, east box: calculation package");
      assertThat(pdf.getDocumentInformation().getSubject()).isEqualTo(SampleDocuments.STATUS);
      assertThat(pdf.getDocumentInformation().getAuthor()).isNull();
      assertThat(pdf.getDocumentInformation().getCreationDate()).isNull();
      assertThat(pdf.getDocumentCatalog().getLanguage()).isEqualTo("en");
      assertThat(pdf.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
      for (PDPage page : pdf.getPages()) {
        for (COSName name : page.getResources().getFontNames()) {
          assertThat(page.getResources().getFont(name).isEmbedded()).isTrue();
        }
      }
    }
  }

  @Test
  @DisplayName("Links lead inside the file; nothing runs and nothing leads out")
  void links() throws Exception {
    try (PDDocument pdf = Loader.loadPDF(rich)) {
      int links = 0;
      for (PDPage page : pdf.getPages()) {
        for (PDAnnotation annotation : page.getAnnotations()) {
          PDAnnotationLink link = (PDAnnotationLink) annotation;
          assertThat(link.getAction() == null || link.getAction() instanceof PDActionGoTo).isTrue();
          links++;
        }
      }
      assertThat(links).isGreaterThan(200);
      assertThat(pdf.getDocumentCatalog().getOpenAction()).isNull();
    }
  }

  @Test
  @DisplayName("The same document gives the same file; US readers get Letter, others A4")
  void paper() throws Exception {
    Document document = SampleDocuments.filledWith("wall 12 kN/m");
    assertThat(write(document, Paper.A4)).isEqualTo(write(document, Paper.A4));
    assertThat(size(write(document, Paper.of(UnitSystem.SI)))).isEqualTo("595 842");
    assertThat(size(write(document, Paper.of(UnitSystem.US)))).isEqualTo("612 792");
  }

  @Test
  @DisplayName(
      "Whatever words a user gives, a file comes out; what the letters lack shows its number")
  void hostile() throws Exception {
    for (String text : HostileTexts.all()) {
      String cut = text.substring(0, Math.min(600, text.length()));
      byte[] pdf = write(SampleDocuments.filledWith(cut), Paper.A4);
      try (PDDocument read = Loader.loadPDF(pdf)) {
        assertThat(read.getNumberOfPages()).isPositive();
      }
    }
    assertThat(
            text(write(SampleDocuments.filledWith("<script>alert(1)</script> \u5de5"), Paper.A4)))
        .contains("<script>alert(1)</script> [U+5DE5]");
  }

  @Test
  @DisplayName("A name of 10,000 letters without a blank is set whole")
  void longWord() throws Exception {
    Prose name = Prose.of("W".repeat(10_000));
    Document document =
        new Document(
            "t",
            "s",
            List.of(new Document.Entry("Site", name)),
            List.of(Section.of("a", "A", List.of(new Block.Paragraph(name)))));
    long letters = text(write(document, Paper.A4)).chars().filter(each -> each == 'W').count();
    assertThat(letters).isEqualTo(20_000);
  }

  @Test
  @DisplayName("A table of a thousand rows runs over its pages under a repeated head")
  void thousandRows() throws Exception {
    List<Row> rows = new ArrayList<>();
    for (int i = 1; i <= 1_000; i++) {
      rows.add(
          Row.of(
              Prose.of(
                  "row " + i + ". a name so long that half a page is too narrow for its words"),
              Prose.of(i + ".5 kN")));
    }
    Block.Table table =
        new Block.Table("Long", List.of(Column.words("Names"), Column.amounts("Load")), rows);
    byte[] pdf =
        write(
            new Document("t", "s", List.of(), List.of(Section.of("a", "A", List.of(table)))),
            Paper.A4);
    String text = text(pdf);
    for (int i = 1; i <= 1_000; i++) {
      assertThat(text).contains("row " + i + ".");
    }
    try (PDDocument read = Loader.loadPDF(pdf)) {
      assertThat(text.split("Names Load", -1).length - 1)
          .isBetween(read.getNumberOfPages() - 1, read.getNumberOfPages());
    }
  }

  private static void collect(PDOutlineItem item, String above, List<String> found, PDDocument pdf)
      throws Exception {
    assertThat(item.findDestinationPage(pdf)).isNotNull();
    found.add(above + item.getTitle());
    for (PDOutlineItem below : item.children()) {
      collect(below, above + "  ", found, pdf);
    }
  }

  private static void expect(
      List<Section> sections, String number, String above, List<String> expected) {
    int count = 0;
    for (Section section : sections) {
      count++;
      expected.add(above + number + count + " " + section.title());
      expect(section.parts(), number + count + ".", above + "  ", expected);
    }
  }

  private static String size(byte[] file) throws Exception {
    try (PDDocument pdf = Loader.loadPDF(file)) {
      PDPage page = pdf.getPage(0);
      return Math.round(page.getMediaBox().getWidth())
          + " "
          + Math.round(page.getMediaBox().getHeight());
    }
  }

  private static String text(byte[] file) throws Exception {
    try (PDDocument pdf = Loader.loadPDF(file)) {
      return new PDFTextStripper().getText(pdf);
    }
  }

  private static byte[] write(Document document, Paper paper) throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    new PdfWriter(paper).write(document, out);
    return out.toByteArray();
  }
}
