package underhold.report.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.advice.BuiltInPack;
import underhold.advice.SupportOption;
import underhold.classroom.CaseStage;
import underhold.classroom.CaseStudy;
import underhold.classroom.FactPlace;
import underhold.classroom.Level;
import underhold.classroom.StudentSheet;
import underhold.report.document.Anchors;
import underhold.report.document.Block;
import underhold.report.document.Document;
import underhold.report.document.DocumentWriter;
import underhold.report.document.Prose;
import underhold.report.document.Section;
import underhold.report.html.HtmlChecks;
import underhold.report.html.HtmlWriter;
import underhold.report.markdown.MarkdownWriter;
import underhold.report.pdf.Paper;
import underhold.report.pdf.PdfWriter;

/**
 * The handout of a student gives nothing away. Whatever is hidden is changed, and the handout stays
 * the same to the last sign; and it is searched, in every format, for what must not be in it.
 */
class StudentHandoutTest {

  private static final Map<String, Document> MADE = new HashMap<>();

  private static Document handout(CaseStudy study, int open) {
    return MADE.computeIfAbsent(study.name() + open, key -> fresh(study, open));
  }

  private static Document fresh(CaseStudy study, int open) {
    return StudentHandout.of(StudentSheet.of(study, open), BuiltInPack.pack());
  }

  private static byte[] bytes(DocumentWriter writer, Document document) {
    try {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      writer.write(document, out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static String text(DocumentWriter writer, Document document) {
    return new String(bytes(writer, document), StandardCharsets.UTF_8);
  }

  @Test
  @DisplayName(
      "Facts to come, ground, lesson, level, what is expected, questions, surprises and later stages"
          + " changed: the handout of every case and stage is the same")
  void what_is_hidden_has_no_part_in_it() {
    int compared = 0;
    for (CaseStudy study : HiddenCases.all()) {
      for (int open = 0; open < study.stages().size(); open++) {
        CaseStudy other = HiddenCases.withOtherSecrets(study, open);
        assertThat(other.file()).isNotEqualTo(study.file());
        assertThat(fresh(other, open))
            .as(study.name() + " at stage " + open)
            .isEqualTo(handout(study, open));
        compared++;
      }
    }
    assertThat(compared).isGreaterThan(60);
  }

  @Test
  void no_format_of_any_case_and_stage_holds_the_key_or_what_is_still_to_come() {
    for (CaseStudy study : HiddenCases.all()) {
      for (int open = 0; open < study.stages().size(); open++) {
        Document document = handout(study, open);
        String where = study.name() + " at stage " + open;
        assertThat(Anchors.problems(document)).as(where).isEmpty();
        onlyWhatIsKnown(study, open, document, where);
        noMethodIsSingledOut(document, where);
        searched(study, open, text(new HtmlWriter(), document), where + " in HTML");
        searched(study, open, text(new MarkdownWriter(), document), where + " in Markdown");
      }
    }
  }

  @Test
  void neither_text_nor_bookmarks_nor_properties_of_a_pdf_hold_more() throws IOException {
    CaseStudy study = HiddenCases.of("heron-gate"); // it has a belief and a surprise
    byte[] file = bytes(new PdfWriter(Paper.A4), handout(study, 0));
    try (PDDocument pdf = Loader.loadPDF(file)) {
      String text = new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
      assertThat(text)
          .contains(study.file().story().substring(0, 30), "3.3 m")
          .doesNotContain("1.1 m", "0.33 m", "1.4 m"); // founding depth, wall, what it spans
      PDDocumentInformation about = pdf.getDocumentInformation();
      String properties =
          about.getMetadataKeys().stream()
              .map(key -> key + " " + about.getCustomMetadataValue(key))
              .collect(Collectors.joining(" "));
      List<String> bookmarks = new ArrayList<>();
      pdf.getDocumentCatalog()
          .getDocumentOutline()
          .children()
          .forEach(item -> bookmarks.add(item.getTitle()));
      searched(study, 0, text + properties + bookmarks, "in PDF");
      assertThat(pdf.getDocumentCatalog().getMetadata()).isNull();
    }
    String raw = new String(file, StandardCharsets.ISO_8859_1);
    assertThat(raw).doesNotContain(study.file().teaches(), ".case.json", "cases/classroom");
  }

  private static void searched(CaseStudy study, int open, String text, String where) {
    String lesson = study.file().lesson();
    assertThat(text)
        .as(where)
        .doesNotContain(lesson, lesson.substring(0, 40), study.file().teaches())
        .doesNotContain("teaches", "Teaches", "expects", "dayOne", "believed", "surprise")
        .doesNotContain(".case.json", "cases/classroom", "Level first", "trainer's key")
        .doesNotContain("display:none", "visibility:hidden", " hidden>", " hidden=");
    for (Level level : Level.values()) {
      assertThat(text).as(where).doesNotContain(level.means());
    }
    study.file().questions().forEach(one -> assertThat(text).as(where).doesNotContain(one.text()));
    Set<String> told =
        study.stages().subList(0, open + 1).stream()
            .map(CaseStage::tells)
            .collect(Collectors.toSet());
    for (CaseStage stage : study.stages().subList(open + 1, study.stages().size())) {
      if (!told.contains(stage.tells())) {
        assertThat(text).as(where).doesNotContain(stage.tells());
      }
      if (stage.surprise()) {
        assertThat(text).as(where).doesNotContain(stage.title(), stage.name());
      }
    }
  }

  /** What stands as known names no fact of a later stage, and no soil before it is explored. */
  private static void onlyWhatIsKnown(CaseStudy study, int open, Document document, String where) {
    Section known =
        document.sections().stream()
            .filter(one -> one.id().equals("known"))
            .findFirst()
            .orElseThrow();
    Set<String> may = new HashSet<>();
    boolean ground = false;
    for (CaseStage stage : study.stages().subList(0, open + 1)) {
      stage.places().stream().map(FactPlace::fact).forEach(may::add);
      stage.believed().forEach(one -> may.add(one.fact()));
      ground |= stage.ground();
    }
    study.full().relations().forEach(one -> may.addAll(one.facts().keySet()));
    assertThat(typed(known)).as(where).isSubsetOf(may).isNotEmpty();
    String words = words(known);
    for (var layer : study.full().ground().layers()) {
      assertThat(words.contains(layer.soil() + ":")).as(where + layer.soil()).isEqualTo(ground);
    }
  }

  /** Every method is named as a word to be typed just once, in the list of all of them. */
  private static void noMethodIsSingledOut(Document document, String where) {
    List<String> typed = document.sections().stream().flatMap(one -> typed(one).stream()).toList();
    for (String id : SupportOption.ids()) {
      assertThat(typed).as(where).containsOnlyOnce(id);
    }
    List<String> listed = typed.stream().filter(SupportOption.ids()::contains).toList();
    assertThat(listed).as(where).isEqualTo(SupportOption.ids());
  }

  private static List<String> typed(Section section) {
    return prose(section)
        .flatMap(prose -> prose.spans().stream())
        .filter(span -> span.style() == Prose.Style.TYPED)
        .map(Prose.Span::text)
        .toList();
  }

  private static String words(Section section) {
    return prose(section).map(Prose::text).collect(Collectors.joining("\n"));
  }

  private static Stream<Prose> prose(Section section) {
    Stream<Prose> own =
        section.blocks().stream()
            .flatMap(
                block ->
                    block instanceof Block.Table table
                        ? table.rows().stream().flatMap(row -> row.cells().stream())
                        : block instanceof Block.Paragraph paragraph
                            ? Stream.of(paragraph.words())
                            : Stream.<Prose>empty());
    return Stream.concat(own, section.parts().stream().flatMap(StudentHandoutTest::prose));
  }

  @Test
  void a_section_is_drawn_from_what_is_known_and_the_page_is_sound() throws Exception {
    CaseStudy study = HiddenCases.of("bracken-lane");
    assertThat(HtmlChecks.problems(bytes(new HtmlWriter(), handout(study, 0)))).isEmpty();
    // the dig is known on day one, the founding depth of 1.1 m and the ground are not
    assertThat(drawing(handout(study, 0)))
        .contains("3.3 m", "layers not known")
        .doesNotContain("1.1 m", "clay");
    assertThat(drawing(handout(study, 3))).contains("stiff clay from 0.9 m", "1.1 m");
  }

  private static String drawing(Document document) {
    return document.sections().stream()
        .flatMap(section -> section.parts().stream())
        .flatMap(part -> part.blocks().stream())
        .filter(Block.Drawn.class::isInstance)
        .map(block -> String.join(" ", ((Block.Drawn) block).figure().equivalent()))
        .collect(Collectors.joining(" "));
  }
}
