package underhold.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import underhold.classroom.Answer;
import underhold.classroom.CaseFile;
import underhold.classroom.CaseReader;
import underhold.classroom.CaseRef;
import underhold.classroom.CaseStage;
import underhold.classroom.CaseStudy;
import underhold.classroom.ClassFile;
import underhold.classroom.FactPlace;
import underhold.classroom.Mark;
import underhold.classroom.MarkLine;
import underhold.classroom.Question;
import underhold.classroom.QuestionDesk;
import underhold.classroom.Reckoned;
import underhold.classroom.StudentSheet;
import underhold.consult.Consultant;
import underhold.site.GroundLayer;
import underhold.site.StatedFact;
import underhold.site.Zone;

/**
 * The sheet of a student gives nothing away: it is searched for all that the student must not see.
 */
class ClassSheetTest {
  private static final List<CaseStudy> STUDIES = new ArrayList<>();
  private static final QuestionDesk QUESTIONS = new QuestionDesk(Consultant.standard());
  private static final String STUDENT = "Ada";

  @BeforeAll
  static void read() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("cases/classroom"))) {
      files
          .filter(file -> file.toString().endsWith(CaseFile.ENDING))
          .sorted()
          .forEach(file -> STUDIES.add(CaseReader.read(file).content().orElseThrow()));
    }
    assertThat(STUDIES).isNotEmpty();
  }

  private static ClassFile classOf(CaseStudy study, List<Answer> answers, List<Mark> marks) {
    return new ClassFile(
        ClassFile.FORM,
        "test",
        List.of(new CaseRef(study.name(), "x.case.json", 0)),
        List.of(STUDENT),
        List.of(),
        answers,
        List.of(),
        List.of(),
        marks);
  }

  private static StudentSheet sheet(CaseStudy study, int open, ClassFile file) {
    CaseRef ref = new CaseRef(study.name(), "x.case.json", open);
    return StudentSheet.of(study, file, ref, STUDENT, QUESTIONS);
  }

  /** The sheet as text on one line, and as JSON. */
  private static String shown(StudentSheet sheet) {
    String text = ClassSheetText.of(sheet, new Look(80, false, StandardCharsets.UTF_8));
    return text.replaceAll("\\s+", " ") + " " + Json.text(ClassJson.sheet(sheet));
  }

  @Test
  void no_sheet_holds_the_key_or_what_is_still_to_come() {
    for (CaseStudy study : STUDIES) {
      for (int open = 0; open < study.stages().size(); open++) {
        String shown = shown(sheet(study, open, classOf(study, List.of(), List.of())));
        String where = study.name() + " at stage " + open;
        assertThat(shown)
            .as(where)
            .doesNotContain(study.file().teaches())
            .doesNotContain(study.file().lesson())
            .doesNotContain(study.file().lesson().substring(0, 40))
            .doesNotContain("teaches", "lesson", "expects", "dayOne", "believed", "surprise");
        study
            .file()
            .questions()
            .forEach(question -> assertThat(shown).as(where).doesNotContain(question.text()));
        facts(study, open, shown, where);
        stages(study, open, shown, where);
      }
    }
  }

  /** A fact of a later stage stands nowhere, not even its name, unless a belief stands for it. */
  private static void facts(CaseStudy study, int open, String shown, String where) {
    Set<FactPlace> believed = new java.util.HashSet<>();
    for (int i = 0; i <= open; i++) {
      study.stages().get(i).believed().forEach(one -> believed.add(one.place()));
    }
    Set<String> known = new java.util.HashSet<>();
    for (CaseStage stage : study.stages().subList(0, open + 1)) {
      stage.places().forEach(place -> known.add(place.fact()));
    }
    for (CaseStage stage : study.stages().subList(open + 1, study.stages().size())) {
      for (FactPlace place : stage.places()) {
        if (believed.contains(place)) {
          assertThat(shown)
              .as(where)
              .doesNotContain(
                  place.fact() + " " + value(study, place),
                  "\"" + place.fact() + "\" : \"" + value(study, place));
        } else if (!known.contains(place.fact())) {
          assertThat(shown)
              .as(where)
              .doesNotContain(" " + place.fact() + " ", "\"" + place.fact() + "\"");
        }
      }
    }
  }

  private static String value(CaseStudy study, FactPlace place) {
    Map<String, StatedFact> facts =
        place.zone().isEmpty()
            ? study.full().facts()
            : study.zone(place.zone()).orElseThrow().facts();
    return String.valueOf(facts.get(place.fact()).value().text());
  }

  private static void stages(CaseStudy study, int open, String shown, String where) {
    boolean ground = study.stages().subList(0, open + 1).stream().anyMatch(CaseStage::ground);
    for (Zone zone : study.full().zones()) {
      for (GroundLayer layer : study.full().ground().layers()) {
        boolean told = shown.contains(layer.soil());
        assertThat(told).as(where + " " + zone.name() + " " + layer.soil()).isEqualTo(ground);
      }
    }
    for (CaseStage stage : study.stages().subList(open + 1, study.stages().size())) {
      assertThat(shown).as(where).doesNotContain(stage.tells());
      if (stage.surprise()) {
        assertThat(shown).as(where).doesNotContain(stage.title());
      }
    }
  }

  @Test
  void the_sheet_is_of_use_and_shows_what_is_known() {
    CaseStudy study =
        STUDIES.stream().filter(one -> one.name().equals("bracken-lane")).findFirst().orElseThrow();
    String shown = shown(sheet(study, 2, classOf(study, List.of(), List.of())));
    assertThat(shown)
        .contains(study.file().story(), "foundingDepth", "1.1 m", "Trial pits", "12 working days")
        .contains("not explored yet");
  }

  @Test
  void questions_come_once_the_choice_is_marked_and_without_their_answers() {
    CaseStudy study =
        STUDIES.stream().filter(one -> one.name().equals("mercer-hall")).findFirst().orElseThrow();
    Mark mark =
        new Mark(
            STUDENT,
            study.name(),
            3,
            "column B2",
            List.of(new MarkLine("method", 0, 3, "x")),
            List.of("First: needle beams."));
    String shown = shown(sheet(study, 3, classOf(study, List.of(), List.of(mark))));
    for (Question question : study.file().questions()) {
      assertThat(shown).contains(question.text());
      if (QUESTIONS.of(study, question) instanceof Reckoned.Amount amount) {
        assertThat(shown).doesNotContain(amount.text());
      }
    }
    assertThat(shown).doesNotContain("First: needle beams.");
    Mark early =
        new Mark(
            STUDENT,
            study.name(),
            0,
            "column B2",
            List.of(new MarkLine("method", 0, 3, "x")),
            List.of());
    String before = shown(sheet(study, 3, classOf(study, List.of(), List.of(early))));
    assertThat(before).doesNotContain(study.file().questions().get(0).text());
  }

  @Test
  void no_line_is_wider_than_the_screen() {
    for (CaseStudy study : STUDIES) {
      StudentSheet sheet =
          sheet(study, study.stages().size() - 1, classOf(study, List.of(), List.of()));
      for (int width : new int[] {80, 110}) {
        assertThat(ClassSheetText.of(sheet, new Look(width, false, StandardCharsets.UTF_8)).lines())
            .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(width));
      }
    }
  }
}
