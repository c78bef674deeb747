package underhold.report.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import underhold.report.drawing.Figure;

/** Links of a document are found out where they lead nowhere, and taken away where asked. */
class AnchorsTest {
  private static final Figure FIGURE =
      new Figure(
          "figure-1", "a wall", "<svg viewBox=\"0 0 1 1\"></svg>", 10, 10, List.of("a wall"));

  private static Document document(Prose words) {
    Block table =
        new Block.Table(
            "",
            List.of(Block.Column.words("a")),
            List.of(new Block.Row("row-1", Block.Tone.PLAIN, List.of(words))));
    Block working =
        new Block.Working("step-1", "t", "a = b", List.of(), "a = 1", "1", words, words);
    List<Block> blocks =
        List.of(
            new Block.Paragraph(words),
            new Block.Notice(Block.Tone.DOUBT, "head", words),
            new Block.Listing(false, List.of(words)),
            table,
            working,
            new Block.Drawn(FIGURE));
    return new Document(
        "t",
        "s",
        List.of(new Document.Entry("label", words)),
        List.of(new Section("one", "One", blocks, List.of(Section.of("two", "Two", List.of())))));
  }

  @Test
  void every_place_is_found() {
    assertThat(Anchors.of(document(Prose.empty())))
        .containsExactly("one", "row-1", "step-1", "figure-1", "two");
  }

  @Test
  void every_link_is_found_wherever_it_stands() {
    assertThat(Anchors.targets(document(Prose.empty().link("there", "two"))))
        .hasSize(7)
        .containsOnly("two");
  }

  @Test
  void dead_links_and_double_places_are_problems() {
    Document dead = document(Prose.empty().link("nowhere", "three"));
    Document twice =
        new Document(
            "t",
            "s",
            List.of(),
            List.of(Section.of("one", "a", List.of()), Section.of("one", "b", List.of())));

    assertThat(Anchors.problems(document(Prose.empty().link("there", "figure-1")))).isEmpty();
    assertThat(Anchors.problems(dead)).containsExactly("nothing is called three");
    assertThat(Anchors.problems(twice)).containsExactly("two places are called one");
  }

  @Test
  void a_part_of_a_document_keeps_the_words_of_dead_links_and_all_else() {
    Document dead = document(Prose.of("see ").link("the rest", "three").link("here", "two"));
    Document live = LiveLinks.only(dead);

    assertThat(Anchors.problems(live)).isEmpty();
    assertThat(Anchors.of(live)).isEqualTo(Anchors.of(dead));
    assertThat(Anchors.targets(live)).hasSize(7).containsOnly("two");
    assertThat(live.toString().replace("target=", "")).contains("the rest");
  }
}
