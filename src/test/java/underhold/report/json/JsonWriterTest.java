package underhold.report.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import underhold.report.document.Block;
import underhold.report.document.Document;
import underhold.report.document.Prose;
import underhold.report.document.Section;
import underhold.report.drawing.Figure;

/** Every block of a document in JSON, with its type. */
class JsonWriterTest {
  private static JsonNode written(Block... blocks) throws IOException {
    Document document =
        new Document(
            "Alder Row",
            "For review",
            List.of(new Document.Entry("Site", Prose.empty().strong("Alder Row"))),
            List.of(
                new Section(
                    "one", "One", List.of(blocks), List.of(Section.of("two", "Two", List.of())))));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    new JsonWriter(Map.of("leader", "pits")).write(document, out);
    return JsonMapper.shared().readTree(out.toByteArray());
  }

  @Test
  void it_says_what_it_is_and_holds_the_data_beside_the_document() throws IOException {
    JsonNode root = written();

    assertThat(root.propertyNames()).containsExactly("underholdReport", "what", "document", "data");
    assertThat(root.get("data").get("leader").asString()).isEqualTo("pits");
    assertThat(root.get("what").asString()).contains("no site file");
    JsonNode document = root.get("document");
    assertThat(document.get("title").asString()).isEqualTo("Alder Row");
    assertThat(document.get("status").asString()).isEqualTo("For review");
    assertThat(document.get("cover").get(0).toString())
        .isEqualTo(
            "{\"label\":\"Site\",\"words\":[{\"text\":\"Alder Row\",\"style\":\"strong\"}]}");
    assertThat(document.get("sections").get(0).get("parts").get(0).get("id").asString())
        .isEqualTo("two");
  }

  @Test
  void a_row_has_its_note_where_there_is_one() throws IOException {
    Block.Row row = Block.Row.of(Prose.of("wall"));
    JsonNode rows =
        written(
                new Block.Table(
                    "Loads",
                    List.of(Block.Column.words("What")),
                    List.of(row.noting(Prose.of("by hand")), row)))
            .get("document")
            .get("sections")
            .get(0)
            .get("blocks")
            .get(0)
            .get("rows");

    assertThat(rows.get(0).get("note").get(0).get("text").asString()).isEqualTo("by hand");
    assertThat(rows.get(1).propertyNames()).doesNotContain("note");
  }

  @Test
  void every_kind_of_block_has_its_type() throws IOException {
    Prose words = Prose.of("see ").link("there", "two").typed("4 ft");
    JsonNode blocks =
        written(
                new Block.Paragraph(words),
                new Block.Notice(Block.Tone.CAUTION, "Hold", words),
                new Block.Listing(true, List.of(words)),
                new Block.Table(
                    "Loads",
                    List.of(Block.Column.amounts("Load")),
                    List.of(new Block.Row("r", Block.Tone.BAD, List.of(Prose.of("4 kN"))))),
                new Block.Working(
                    "s",
                    "t",
                    "a = b",
                    List.of(new Block.Symbol("b", "m", "1 m")),
                    "a = 1 m",
                    "a = 1 m",
                    words,
                    Prose.empty()),
                new Block.Drawn(
                    new Figure("f", "wall", "<svg></svg>", 10, 20, List.of("a wall, 3 m"))))
            .get("document")
            .get("sections")
            .get(0)
            .get("blocks");

    assertThat(blocks.valueStream().map(block -> block.get("type").asString()))
        .containsExactly("paragraph", "notice", "list", "table", "working", "drawing");
    assertThat(blocks.get(0).get("words").toString())
        .isEqualTo(
            "[{\"text\":\"see \"},{\"text\":\"there\",\"to\":\"two\"},{\"text\":\"4"
                + " ft\",\"style\":\"typed\"}]");
    assertThat(blocks.get(1).get("tone").asString()).isEqualTo("caution");
    assertThat(blocks.get(2).get("numbered").asBoolean()).isTrue();
    assertThat(blocks.get(3).get("rows").get(0).get("anchor").asString()).isEqualTo("r");
    assertThat(blocks.get(3).get("rows").get(0).get("tone").asString()).isEqualTo("bad");
    assertThat(blocks.get(4).get("symbols").get(0).get("value").asString()).isEqualTo("1 m");
    assertThat(blocks.get(5).get("svg").asString()).isEqualTo("<svg></svg>");
    assertThat(blocks.get(5).get("equivalent").get(0).asString()).isEqualTo("a wall, 3 m");
  }
}
