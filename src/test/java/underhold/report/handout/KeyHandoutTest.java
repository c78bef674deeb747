package underhold.report.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.classroom.CaseStudy;
import underhold.classroom.KeyMaker;
import underhold.consult.Consultant;
import underhold.report.document.Anchors;
import underhold.report.document.Document;
import underhold.report.document.Section;
import underhold.report.html.HtmlChecks;
import underhold.report.html.HtmlWriter;
import underhold.report.markdown.MarkdownWriter;

/** The trainer's key tells all that an answer is held against. */
class KeyHandoutTest {
  private static Document column = new Document("", "", List.of(), List.of());

  @BeforeAll
  static void make() {
    Consultant consultant = Consultant.standard();
    column = KeyHandout.of(HiddenCases.of("mercer-hall"), consultant);
  }

  private static String words(Document document) {
    return MarkdownWriter.text(document).replace("\\", "").replaceAll("\\s+", " ");
  }

  private static String part(Document document, String id) {
    Section found =
        document.sections().stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
    return words(new Document("x", "x", List.of(), List.of(found)));
  }

  @Test
  void lesson_level_and_all_stages_stand_in_it() {
    CaseStudy study = HiddenCases.of("mercer-hall");
    assertThat(words(column))
        .contains(study.file().lesson(), "[" + study.file().basis() + "]", study.file().teaches())
        .contains("one thing decides", "not for students");
    study.stages().forEach(stage -> assertThat(words(column)).contains(stage.title()));
  }

  @Test
  @DisplayName(
      "The column over the passage: beams lead from day one, pits are ruled out by a rule once the"
          + " column cannot be picked up, and old piles to be cut would turn it")
  void leaders_rules_and_deciding_facts() {
    String zone = part(column, "zone-1");
    assertThat(zone)
        .contains("needle beams", "PIT-08b", "oldPiles", "To check first", "Conditions to be named")
        .contains("locking-jacks", "jacked-load", "3 of 3", "0 of 3");
  }

  @Test
  @DisplayName(
      "By hand, M = P L / 4: 0.6 × 1.15 × 820 kN × 8 m / 4 = 1131.6 kN·m, with its working")
  void workings_of_questions() {
    String questions = part(column, "questions");
    assertThat(questions).contains("needle-moment", "Formula", "With numbers", "kN·m", "Source");
    assertThat(questions).containsPattern("11[3-6]0 kN·m|1[, ]?1[3-6][0-9] kN·m");
  }

  @Test
  void the_methods_of_two_zones_meet_in_facts_and_orders() {
    Section together =
        new KeyTogether(
                HiddenCases.of("fenwick-cross"), new KeyMaker(Consultant.standard()), new Sources())
            .section();
    assertThat(words(new Document("x", "x", List.of(), List.of(together))))
        .contains("drilled piles with edge pits", "SCH-20", "sharedEdge")
        .contains("end of the cut wall-closed-before-digs box over the cut");
    assertThat(words(column)).doesNotContain("All zones together");
  }

  @Test
  void rubric_trace_and_sources_stand_in_it_and_every_link_leads_somewhere() throws Exception {
    assertThat(Anchors.problems(column)).isEmpty();
    assertThat(column.sections().stream().map(Section::id).toList())
        .contains("lesson", "stages", "marks", "facts", "sources", "trace");
    assertThat(part(column, "trace")).contains("Rules that fired on known facts", "limit:");
    assertThat(part(column, "sources")).contains("standard", "judgement");
    ByteArrayOutputStream page = new ByteArrayOutputStream();
    new HtmlWriter().write(column, page);
    assertThat(HtmlChecks.problems(page.toByteArray())).isEmpty();
  }
}
