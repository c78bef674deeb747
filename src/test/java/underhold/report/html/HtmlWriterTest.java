package underhold.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import nu.validator.htmlparser.dom.HtmlDocumentBuilder;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import underhold.report.document.Block;
import underhold.report.document.Block.Column;
import underhold.report.document.Block.Row;
import underhold.report.document.Block.Tone;
import underhold.report.document.Document;
import underhold.report.document.Prose;
import underhold.report.document.Section;

class HtmlWriterTest {

  @Test
  @DisplayName("The W3C's checker finds nothing in a rich document, and it is one file")
  void rich() throws Exception {
    byte[] html = write(SampleDocuments.rich());
    assertThat(HtmlChecks.problems(html)).isEmpty();
    assertThat(Anchors.problems(SampleDocuments.rich())).isEmpty();
    assertThat(html.length).isLessThan(1_000_000);
  }

  @Test
  @DisplayName("The checks themselves see what is wrong")
  void checksSee() throws Exception {
    String bad =
        "<!DOCTYPE html><html lang=\"en\"><head><title>t</title></head><body>"
            + "<p><img src=\"http://example.invalid/a.png\"></p><a href=\"#gone\">x</a>"
            + "<script>1</script></body></html>";
    String found = String.join("\n", HtmlChecks.problems(bad.getBytes(StandardCharsets.UTF_8)));
    assertThat(found)
        .contains("alt")
        .contains("http://example.invalid/a.png")
        .contains("#gone")
        .contains("script")
        .contains("XML");
  }

  @Test
  @DisplayName("Whatever words a user gives, the page stays sound and shows them")
  void hostile() throws Exception {
    for (String text : HostileTexts.all()) {
      byte[] html = write(SampleDocuments.filledWith(text));
      assertThat(HtmlChecks.problems(html))
          .as(text.substring(0, Math.min(40, text.length())))
          .isEmpty();
      Element root = parse(html).getDocumentElement();
      assertThat(root.getElementsByTagName("script").getLength()).isZero();
      String shown = SafeText.of(Prose.of(text).text());
      assertThat(texts(root, "strong")).contains(shown);
      assertThat(texts(root, "code")).contains(shown);
    }
  }

  @Test
  @DisplayName("The contents are the sections, numbered, each leading there and back")
  void contents() throws Exception {
    Element root = parse(write(SampleDocuments.rich())).getDocumentElement();
    List<String> contents = new ArrayList<>();
    NodeList links = ((Element) root.getElementsByTagName("nav").item(0)).getElementsByTagName("a");
    for (int i = 0; i < links.getLength(); i++) {
      contents.add(links.item(i).getTextContent());
    }
    assertThat(contents)
        .hasSize(12) // two levels: a third would make pages of contents
        .startsWith("1 What is asked", "2 Facts of the site", "3 Zone east wall", "3.1 Checks")
        .contains("5.2 Calculation sheet")
        .doesNotContain("5.2.1 Steps")
        .endsWith("6 Sources");
    assertThat(texts(root, "h2")).contains("3 Zone east wall ↑");
    assertThat(texts(root, "h4")).contains("3.2.1 Steps ↑");
  }

  @Test
  @DisplayName("The verdict of a check stands below its name too, where a telephone shows no more")
  void verdictOnTelephone() throws Exception {
    List<Row> rows =
        List.of(
            new Row("", Tone.BAD, List.of(Prose.of("bending"), Prose.of("2 m"), Prose.of("fails"))),
            new Row("", Tone.PLAIN, List.of(Prose.of("span"), Prose.of("1 m"), Prose.of("none"))));
    List<Column> columns =
        List.of(Column.words("Check"), Column.amounts("Demand"), Column.words("Verdict"));
    Section checks = Section.of("a", "A", List.of(new Block.Table("c", columns, rows)));
    byte[] html = write(new Document("t", "s", List.of(), List.of(checks)));
    assertThat(HtmlChecks.problems(html)).isEmpty();
    Element root = parse(html).getDocumentElement();
    Element first = (Element) root.getElementsByTagName("tbody").item(0);
    List<String> shown = new ArrayList<>();
    NodeList spans = first.getElementsByTagName("span");
    for (int i = 0; i < spans.getLength(); i++) {
      Element span = (Element) spans.item(i);
      if (span.hasAttribute("data-verdict")) {
        shown.add(span.getParentNode().getNodeName() + " " + span.getAttribute("data-verdict"));
      }
    }
    assertThat(shown).containsExactly("th fails");
    assertThat(texts(first, "td")).containsExactly("2 m", "fails", "1 m", "none");
    String style = texts(root, "style").get(0);
    String narrow = style.substring(style.indexOf("@media (max-width"), style.indexOf("@page"));
    assertThat(narrow).contains(".said[data-verdict]::after { content: attr(data-verdict)");
    assertThat(style.substring(style.indexOf("@media print")))
        .contains(".said[data-verdict]::after { content: none; }");
  }

  @Test
  @DisplayName("Every kind of block is set")
  void everyKind() throws Exception {
    Element root = parse(write(SampleDocuments.rich())).getDocumentElement();
    String text = root.getTextContent();
    assertThat(text.replaceAll("\\s+", " "))
        .contains("A cut 7.2 m deep passes beside and under three structures")
        .contains("caution: Cave-in and egress")
        .contains("Dig the first round of pits. Hold point.")
        .contains("γ ≤ 19.5 kN/m³, µ = 0.5")
        .contains("Facts, their origin and why they matter")
        .contains("A wall with 95 kN/m stands 0 m from the cut.");
    assertThat(texts(root, "p"))
        .contains("Step 0 of zone 1: bending moment in a board of the pit 5.037 kN·m/m")
        .contains("M = p × L^2 / 8")
        .contains("M = (29.6 kPa) × (1.167 m)^2 / 8 = 5.037 kN·m/m")
        .contains("Statics of a simply supported beam [standard]; S1 [from 3.1]");
    assertThat(root.getElementsByTagName("svg").getLength()).isEqualTo(3);
    for (String tone : List.of("good", "doubt", "bad", "caution")) {
      assertThat(Tones.sign(Tone.valueOf(tone.toUpperCase(Locale.ROOT)))).isNotEmpty();
    }
    assertThat(texts(root, "th")).contains("?in doubt: refer", "✗not in order: fails");
  }

  @Test
  @DisplayName("The status stands on top, at the end and in the footer of every printed page")
  void status() throws Exception {
    String html = new String(write(SampleDocuments.rich()), StandardCharsets.UTF_8);
    assertThat(html.split("For review, not for construction", -1)).hasSize(3);
    assertThat(html)
        .contains("@bottom-left { content: \"For review\\00002C  not for construction\\00002E  A");
  }

  @Test
  @DisplayName("A link that leads nowhere is words, and a doubled anchor stands once")
  void anchors() throws Exception {
    Section twice =
        Section.of("same", "A", List.of(new Block.Paragraph(Prose.empty().link("go", "gone"))));
    Document document = new Document("t", "s", List.of(), List.of(twice, twice));
    assertThat(Anchors.problems(document))
        .containsExactly(
            "the anchor \"same\" stands at two places", "nothing stands at the anchor \"gone\"");
    assertThat(HtmlChecks.problems(write(document))).isEmpty();
  }

  @Test
  @DisplayName("A table of a thousand rows, one of none, and an empty document are sound")
  void sizes() throws Exception {
    assertThat(HtmlChecks.problems(write(thousandRows()))).isEmpty();
    Block.Table none = new Block.Table("none", List.of(Column.words("A")), List.of());
    Document empty = new Document("t", "s", List.of(), List.of());
    Document little =
        new Document("t", "s", List.of(), List.of(Section.of("a", "A", List.of(none))));
    assertThat(HtmlChecks.problems(write(empty))).isEmpty();
    assertThat(HtmlChecks.problems(write(little))).isEmpty();
  }

  @Test
  @DisplayName("Shares of columns add up to the table; a long text yields to short ones")
  void columns() {
    Block.Table table =
        new Block.Table(
            "t",
            List.of(Column.words("A"), Column.amounts("B"), Column.words("C")),
            List.of(Row.of(Prose.of("wall"), Prose.of("12.5 kN/m"), Prose.of("long ".repeat(60)))));
    ColumnWidths widths = ColumnWidths.of(table, ColumnWidths.SCREEN);
    assertThat(widths.shares().stream().mapToInt(Integer::intValue).sum()).isEqualTo(10_000);
    assertThat(widths.shares().get(2)).isGreaterThan(6_000);
    assertThat(widths.shares().get(1)).isGreaterThan(10_000 * 9 / 104);
  }

  @Test
  @DisplayName("What is said of a whole row stands below it over all columns, links and all")
  void notes() throws Exception {
    Row row = Row.of(Prose.of("wall"), Prose.of("95 kN/m"));
    Block.Table table =
        new Block.Table(
            "Loads",
            List.of(Column.words("What"), Column.amounts("How much")),
            List.of(row.noting(Prose.of("see ").link("the facts", "a")), row));
    byte[] html =
        write(new Document("t", "s", List.of(), List.of(Section.of("a", "A", List.of(table)))));
    assertThat(HtmlChecks.problems(html)).isEmpty();
    assertThat(new String(html, StandardCharsets.UTF_8))
        .containsOnlyOnce(
            "<td colspan=\"2\"><span class=\"said\">see <a href=\"#a\">the facts</a></span></td>");
  }

  /** A document of one long table. */
  static Document thousandRows() {
    List<Row> rows = new ArrayList<>();
    for (int i = 1; i <= 1_000; i++) {
      rows.add(Row.of(Prose.of("row " + i), Prose.of(i + ".5 kN"), Prose.of("a word or two")));
    }
    Block.Table table =
        new Block.Table(
            "Long",
            List.of(Column.words("Row"), Column.amounts("Load"), Column.words("Note")),
            rows);
    return new Document(
        "t",
        SampleDocuments.STATUS,
        List.of(),
        List.of(Section.of("long", "Long", List.of(table))));
  }

  private static byte[] write(Document document) throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    new HtmlWriter().write(document, out);
    return out.toByteArray();
  }

  private static org.w3c.dom.Document parse(byte[] html) throws Exception {
    InputSource source = new InputSource(new ByteArrayInputStream(html));
    source.setEncoding("UTF-8");
    return new HtmlDocumentBuilder().parse(source);
  }

  private static List<String> texts(Element root, String tag) {
    List<String> texts = new ArrayList<>();
    NodeList found = root.getElementsByTagName(tag);
    for (int i = 0; i < found.getLength(); i++) {
      String text = found.item(i).getTextContent();
      texts.add(tag.startsWith("h") ? text.strip() : text);
    }
    return texts;
  }
}
