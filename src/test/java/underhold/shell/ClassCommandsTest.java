package underhold.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static underhold.shell.ShellClient.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import underhold.shell.ShellClient.Ran;

/** A class by command. */
class ClassCommandsTest {
  private static final ShellClient SHELL = ShellClient.oneShot();
  private static final String CASE = "cases/classroom/first/bracken-lane.case.json";

  @TempDir Path folder;
  private String name = "";

  @BeforeEach
  void start() {
    name = folder.resolve("spring.class.json").toString();
    done("class", "start", name, CASE, "--students", "Ada Linden, Bo Marsh");
  }

  private static Ran done(String... words) {
    Ran ran = SHELL.run(words);
    assertThat(ran.code()).as(ran.err()).isZero();
    return ran;
  }

  private static void refused(int code, String message, String... words) {
    Ran ran = SHELL.run(words);
    assertThat(ran.code()).as(ran.err()).isEqualTo(code);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err()).contains(message).doesNotContain("Exception");
  }

  private String text() throws IOException {
    return Files.readString(Path.of(name));
  }

  @Test
  void a_class_from_day_one_to_its_points() {
    done(
        "class",
        "answer",
        name,
        "--by",
        "Ada Linden",
        "--method",
        "none",
        "--because",
        "loadPattern",
        "--check",
        "groundWaterDepth, runningLayer",
        "--danger",
        "services");
    assertThat(done("class", "ask", name, "foundingDepth", "--by", "Ada Linden").out())
        .contains("1.1 m", "Trial pits", "5 working days");
    // the trial pit is paid for: what else it showed costs nothing more
    assertThat(done("class", "ask", name, "footingWidth", "--by", "Ada Linden").out())
        .contains("0.9 m", "paid for already");
    assertThat(done("class", "sheet", name, "--by", "Ada Linden").out()).contains("foundingDepth");
    assertThat(done("class", "sheet", name, "--by", "Bo Marsh").out())
        .doesNotContain("foundingDepth");
    assertThat(done("class", "reveal", name).out()).contains("4 working days");
    refused(
        Exit.USAGE,
        "once the choice of their stage is marked",
        "class",
        "answer",
        name,
        "--by",
        "Bo Marsh",
        "--question",
        "pit-depth",
        "--gives",
        "2.2 m");
    done("class", "reveal", name);
    done("class", "reveal", name);
    refused(Exit.USAGE, "no further stage", "class", "reveal", name);
    done(
        "class",
        "answer",
        name,
        "--by",
        "Ada Linden",
        "--method",
        "pits",
        "--because",
        "clearSpan");
    Ran marked = done("class", "mark", name);
    assertThat(marked.out()).contains("method", "deciding facts", "[PIT-01]", "changed mind");
    refused(
        Exit.USAGE,
        "marked already",
        "class",
        "answer",
        name,
        "--by",
        "Ada Linden",
        "--method",
        "needles");
    done(
        "class",
        "answer",
        name,
        "--by",
        "Ada Linden",
        "--question",
        "pit-depth",
        "--gives",
        "2.2 m");
    assertThat(done("class", "mark", name, "--by", "Ada Linden").out()).contains("4 of 4");
    assertThat(done("class", "scores", name).out()).contains("Ada Linden", "Bo Marsh");
    assertThat(done("class", "scores", name, "--csv").out())
        .startsWith("student,case,stage,about,points,of")
        .contains("Ada Linden,bracken-lane,4,pit-depth,4,4");
    JsonNode marks = JsonMapper.shared().readTree(done("class", "scores", name, "--json").out());
    assertThat(marks.size()).isEqualTo(3);
    assertThat(marks.get(0).get("outOf").asInt()).isEqualTo(10);
  }

  @Test
  void wrong_requests_change_nothing_and_name_what_is_wrong() throws IOException {
    String before = text();
    refused(Exit.USAGE, "Ada Linden, Bo Marsh", "class", "sheet", name, "--by", "Cy");
    refused(
        Exit.USAGE,
        "did you mean \"loadPattern\"",
        "class",
        "answer",
        name,
        "--by",
        "Bo Marsh",
        "--method",
        "pits",
        "--because",
        "loadPatern");
    refused(
        Exit.USAGE,
        "people-in-pits",
        "class",
        "answer",
        name,
        "--by",
        "Bo Marsh",
        "--method",
        "pits",
        "--danger",
        "dragons");
    refused(
        Exit.USAGE,
        "--method is \"beams\"",
        "class",
        "answer",
        name,
        "--by",
        "Bo Marsh",
        "--method",
        "beams");
    refused(Exit.USAGE, "either --method", "class", "answer", name, "--by", "Bo Marsh");
    refused(Exit.USAGE, "known already", "class", "ask", name, "loadPattern", "--by", "Bo Marsh");
    refused(Exit.USAGE, "nobody on this job", "class", "ask", name, "uplift", "--by", "Bo Marsh");
    refused(
        Exit.SITE,
        "there is a file of that name already",
        "class",
        "start",
        name,
        CASE,
        "--students",
        "Cy");
    refused(Exit.USAGE, "--students", "class", "start", name, CASE);
    assertThat(text()).isEqualTo(before);
  }

  @Test
  void a_file_of_answers_is_taken_whole_or_not_at_all() throws IOException {
    String good =
        """
        { "underhold": "answers/1", "student": "Bo Marsh", "of": "bracken-lane",
          "zones": [ { "zone": "gable", "method": "pits", "because": ["loadPattern"],
                       "check": [], "danger": ["movement"] } ] }
        """;
    done("class", "answer", name, file(folder, "bo.answers.json", good));
    String before = text();
    assertThat(before).contains("\"movement\"");
    String bad = good.replace("\"movement\"", "\"wind\"").replace("gable", "gabel");
    refused(Exit.SITE, "wind", "class", "answer", name, file(folder, "b.answers.json", bad));
    refused(Exit.SITE, "gabel", "class", "answer", name, file(folder, "c.answers.json", bad));
    refused(
        Exit.SITE,
        "mood",
        "class",
        "answer",
        name,
        file(folder, "d.answers.json", good.replace("\"zones\"", "\"mood\": \"\", \"zones\"")));
    // one good and one bad: none is taken
    String ada = good.replace("Bo Marsh", "Ada Linden");
    refused(
        Exit.SITE,
        "wind",
        "class",
        "answer",
        name,
        file(folder, "ada.answers.json", ada),
        file(folder, "e.answers.json", bad));
    assertThat(text()).isEqualTo(before);
    done(
        "class",
        "answer",
        name,
        file(folder, "ada.answers.json", ada),
        file(folder, "bo.answers.json", good));
    assertThat(text()).contains("\"student\": \"Ada Linden\"");
  }

  @Test
  void a_class_file_made_wrong_by_hand_is_refused_with_all_its_problems() throws IOException {
    String broken = text().replace("\"Bo Marsh\"", "\"Ada Linden\"");
    refused(Exit.SITE, "Ada Linden", "class", "show", file(folder, "x.class.json", broken));
    String lost = text().replace("bracken-lane.case.json", "gone.case.json");
    refused(Exit.SITE, "gone.case.json", "class", "show", file(folder, "y.class.json", lost));
    done("class", "answer", name, "--by", "Bo Marsh", "--method", "pits");
    String zone = text().replace("\"zone\": \"gable\"", "\"zone\": \"attic\"");
    refused(Exit.SITE, "attic", "class", "mark", file(folder, "w.class.json", zone));
    String late = text().replace("\"stage\": 0", "\"stage\": 3");
    refused(Exit.SITE, "answers[0].stage", "class", "mark", file(folder, "v.class.json", late));
    String far = text().replace("\"open\": 0", "\"open\": 9");
    refused(Exit.SITE, "10", "class", "show", file(folder, "z.class.json", far));
  }

  @Test
  void the_list_keeps_the_key_for_the_trainer() {
    assertThat(done("class", "list").out())
        .contains("bracken-lane", "Level third")
        .doesNotContain("Teaches");
    assertThat(done("class", "list", "--key").out()).contains("Teaches");
    assertThat(done("class", "show", name).out()).contains("closed").doesNotContain("Teaches");
    assertThat(done("class", "show", name, "--key").out()).contains("For the close");
    assertThat(done("class", "rubric").out()).contains("people-in-pits", "changed mind");
    refused(Exit.SITE, "holds no case", "class", "list", folder.toString());
  }
}
