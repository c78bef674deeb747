package underhold.report.dossier;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import underhold.report.document.Anchors;
import underhold.report.document.Document;
import underhold.report.document.DocumentWriter;
import underhold.report.html.HtmlChecks;
import underhold.report.html.HtmlWriter;
import underhold.report.pdf.Paper;
import underhold.report.pdf.PdfWriter;
import underhold.sizing.Check;

/** The packages of the demo sites as they leave the program, drawings included. */
class WrittenReportsTest {
  /** With {@code -Dreports=all} every demo is checked for every reader, else for one in turn. */
  private static final boolean ALL = "all".equals(System.getProperty("reports"));

  @ParameterizedTest(name = "{0}")
  @MethodSource("demos")
  @DisplayName("Every demo's pages pass the W3C checker, and no link of them is dead")
  void pages(String demo) throws Exception {
    Material material = Demos.material(demo);
    for (Audience audience : readers(demo)) {
      Document document = document(material, audience);
      assertThat(Anchors.problems(document)).as(audience.word()).isEmpty();
      assertThat(HtmlChecks.problems(bytes(new HtmlWriter(), document)))
          .as(demo + " for " + audience.word())
          .isEmpty();
    }
  }

  @Test
  @DisplayName("A demo's PDF opens, its bookmarks are the sections, and its words can be found")
  void printed() throws Exception {
    Material material = Demos.material("alder-row-party-wall.site.json");
    Document document = document(material, Audience.REVIEWER);
    byte[] file = bytes(new PdfWriter(Paper.of(material.units())), document);
    try (PDDocument pdf = Loader.loadPDF(file)) {
      List<String> bookmarks = new ArrayList<>();
      for (PDOutlineItem item : pdf.getDocumentCatalog().getDocumentOutline().children()) {
        bookmarks.add(item.getTitle());
      }
      assertThat(bookmarks).hasSizeGreaterThanOrEqualTo(document.sections().size());
      for (int i = 0; i < document.sections().size(); i++) {
        String title = document.sections().get(i).title();
        assertThat(bookmarks).anyMatch(bookmark -> bookmark.endsWith(title));
      }
      String words = new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
      assertThat(words).contains("Alder Row, party wall", "For review: not for construction");
      List<Check> checks = material.chosen(material.zones().get(0)).orElseThrow().sheet().checks();
      assertThat(checks).isNotEmpty();
      assertThat(words).contains(checks.get(0).title());
    }
  }

  private static List<Audience> readers(String demo) {
    List<Audience> every = List.of(Audience.values());
    int place = Demos.names().toList().indexOf(demo);
    return ALL ? every : List.of(every.get(place % every.size()));
  }

  private static Document document(Material material, Audience audience) {
    return Dossier.of(
        material,
        Commission.of(audience, Demos.DATE).with(WhichSheets.CHOSEN),
        new Drawings(material.pack()));
  }

  private static byte[] bytes(DocumentWriter writer, Document document) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    writer.write(document, out);
    return out.toByteArray();
  }

  static Stream<String> demos() {
    return Demos.names();
  }
}
