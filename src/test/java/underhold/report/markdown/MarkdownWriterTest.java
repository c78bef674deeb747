package underhold.report.markdown;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import underhold.report.document.Block;
import underhold.report.document.Document;
import underhold.report.document.Prose;
import underhold.report.document.Section;
import underhold.report.drawing.Figure;

/** How a document looks in Markdown, and that words of users change nothing but the words. */
class MarkdownWriterTest {
  private static final Pattern TAGS = Pattern.compile("<[^>]*>");

  private static Document document(String name) {
    Prose words = Prose.of(name).then(": ").strong(name).typed(name).link(name, "one");
    Block table =
        new Block.Table(
            name,
            List.of(Block.Column.words(name), Block.Column.amounts("Value")),
            List.of(
                new Block.Row("row-1", Block.Tone.BAD, List.of(words, Prose.of("4 m"))),
                Block.Row.of(Prose.of(name), Prose.empty())));
    Block working =
        new Block.Working(
            "step-1",
            name,
            "B = W / f",
            List.of(new Block.Symbol("W", name, "4 kN")),
            "B = (4 kN) / 2 = 2 kN",
            "B = 2 kN",
            words,
            words);
    Figure figure =
        new Figure("figure-1", name, "<svg></svg>", 10, 10, List.of("a wall", "``` 3 m"));
    List<Block> blocks =
        List.of(
            new Block.Paragraph(words),
            new Block.Notice(Block.Tone.CAUTION, name, words),
            new Block.Listing(true, List.of(words, words)),
            new Block.Listing(false, List.of(words)),
            table,
            working,
            new Block.Drawn(figure));
    return new Document(
        name,
        "For review",
        List.of(new Document.Entry(name, words)),
        List.of(new Section("one", name, blocks, List.of(Section.of("two", name, List.of())))));
  }

  @Test
  void a_sentence_or_a_row_stands_on_a_line_of_its_own() {
    Document document =
        new Document(
            "Alder Row",
            "For review",
            List.of(),
            List.of(
                Section.of(
                    "one",
                    "First",
                    List.of(
                        new Block.Paragraph(Prose.of("It is 2.4 m deep. Is it dry? See DIN 4123.")),
                        new Block.Listing(true, List.of(Prose.of("Dig. Board it."))),
                        new Block.Table(
                            "Loads",
                            List.of(Block.Column.words("What"), Block.Column.amounts("How much")),
                            List.of(
                                new Block.Row(
                                    "row-1",
                                    Block.Tone.PLAIN,
                                    List.of(Prose.of("wall"), Prose.of("95 kN/m")))))))));

    assertThat(MarkdownWriter.text(document))
        .isEqualTo(
            """
            <!-- underhold report -->

            # Alder Row

            > **For review**

            ## Contents

            - [First](#one)

            <a id="one"></a>

            ## First

            It is 2.4 m deep.
            Is it dry?
            See DIN 4123.

            1. Dig.
               Board it.

            **Loads**

            | What | How much |
            | --- | ---: |
            | <a id="row-1"></a>wall | 95 kN/m |
            """);
  }

  @Test
  void what_is_said_of_a_whole_row_has_a_column_of_its_own() {
    Block.Row row = Block.Row.of(Prose.of("wall"), Prose.of("95 kN/m"));
    Block.Table table =
        new Block.Table(
            "",
            List.of(Block.Column.words("What"), Block.Column.amounts("How much")),
            List.of(row.noting(Prose.of("see ").link("facts", "one")), row));
    Document document =
        new Document("t", "s", List.of(), List.of(Section.of("one", "One", List.of(table))));

    assertThat(MarkdownWriter.text(document))
        .contains(
            """
            | What | How much | Note |
            | --- | ---: | --- |
            | wall | 95 kN/m | see [facts](#one) |
            | wall | 95 kN/m |  |
            """);
  }

  @Test
  void a_working_can_be_redone_from_its_lines() {
    assertThat(MarkdownWriter.text(document("wall")))
        .contains(
            """
            <a id="step-1"></a>**wall**

            - Formula: `B = W / f`
              - `W` = 4 kN, wall
            - With numbers: `B = (4 kN) / 2 = 2 kN`
            - Result: **B = 2 kN**
            - Source: wall: **wall**`wall`[wall](#one)
            - Note: wall: **wall**`wall`[wall](#one)
            """)
        .contains("<a id=\"figure-1\"></a>", "````text\na wall\n``` 3 m\n````\n");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<script>alert(1)</script>",
        "a | b || c",
        "# heading",
        "`code` ``` fence",
        "**strong** _it_ ~~gone~~",
        "[link](http://x.y) ![image](z)",
        "two\nlines\r\nand\tmore",
        "- item",
        "> quote",
        "1. one",
        "---",
        "</a><a id=\"one\">",
        "&lt;&#60;",
        "\\",
        "\u202eturned",
        "\u0000\u0007",
        "$x$"
      })
  void words_of_users_change_nothing_but_the_words(String name) {
    List<String> plain = MarkdownWriter.text(document("wall")).lines().toList();
    List<String> hostile = MarkdownWriter.text(document(name)).lines().toList();

    assertThat(hostile).hasSameSizeAs(plain);
    for (int i = 0; i < plain.size(); i++) {
      assertThat(columns(hostile.get(i))).as(hostile.get(i)).isEqualTo(columns(plain.get(i)));
      assertThat(tags(hostile.get(i))).as(hostile.get(i)).isEqualTo(tags(plain.get(i)));
    }
    assertThat(String.join("\n", hostile)).doesNotContain("\u202e", "\u0000", "\u0007");
  }

  @Test
  void a_name_of_ten_thousand_characters_is_shown_whole() {
    String name = "x|".repeat(5_000);

    assertThat(MarkdownWriter.text(document(name)))
        .contains("x\\|".repeat(5_000))
        .satisfies(
            text ->
                assertThat(text.lines().count())
                    .isEqualTo(MarkdownWriter.text(document("wall")).lines().count()));
  }

  @Test
  void the_same_document_gives_the_same_bytes() throws IOException {
    ByteArrayOutputStream one = new ByteArrayOutputStream();
    ByteArrayOutputStream other = new ByteArrayOutputStream();
    new MarkdownWriter().write(document("wall"), one);
    new MarkdownWriter().write(document("wall"), other);

    assertThat(one.toByteArray()).isEqualTo(other.toByteArray());
    assertThat(one.toString(StandardCharsets.UTF_8)).startsWith(MarkdownWriter.MARK);
  }

  /** The columns of a table row: bars that are not escaped. */
  private static long columns(String line) {
    return line.startsWith("| ") || line.startsWith("| <")
        ? line.replace("\\\\", "").replace("\\|", "").chars().filter(sign -> sign == '|').count()
        : 0;
  }

  /** HTML that would be read as such: what stands in code or behind a backslash is not. */
  private static List<String> tags(String line) {
    String bare = line.replaceAll("`[^`]*`", "").replaceAll("\\\\\\p{Punct}", "");
    return TAGS.matcher(bare).results().map(found -> found.group()).toList();
  }
}
