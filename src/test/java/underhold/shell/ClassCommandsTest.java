package underhold.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static underhold.shell.ShellClient.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
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
  private static final String ADA = "Ada Linden";
  private static final String BO = "Bo Marsh";

  @TempDir Path folder;
  private String name = "";

  @BeforeEach
  void start() {
    name = folder.resolve("spring.class.json").toString();
    done("start", name, CASE, "--students", ADA + ", " + BO);
  }

  private static String[] words(String command, String... more) {
    return Stream.concat(Stream.of("class", command), Stream.of(more)).toArray(String[]::new);
  }

  private static Ran done(String command, String... more) {
    Ran ran = SHELL.run(words(command, more));
    assertThat(ran.code()).as(ran.err()).isZero();
    return ran;
  }

  private static void refused(int code, String message, String command, String... more) {
    Ran ran = SHELL.run(words(command, more));
    assertThat(ran.code()).as(ran.err()).isEqualTo(code);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err()).contains(message).doesNotContain("Exception");
  }

  private String[] by(String student, String... more) {
    return Stream.concat(Stream.of(name, "--by", student), Stream.of(more)).toArray(String[]::new);
  }

  private Ran answers(String student, String... more) {
    return done("answer", by(student, more));
  }

  private void wrong(String message, String... more) {
    refused(Exit.USAGE, message, "answer", by(BO, more));
  }

  private String text() throws IOException {
    return Files.readString(Path.of(name));
  }

  @Test
  void a_class_from_day_one_to_its_points() {
    answers(
        ADA,
        "--method",
        "none",
        "--because",
        "loadPattern",
        "--check",
        "groundWaterDepth, runningLayer",
        "--condition",
        "order-of-pits",
        "--danger",
        "services");
    assertThat(done("ask", name, "foundingDepth", "--by", ADA).out())
        .contains("1.1 m", "Trial pits", "5 working days");
    // the trial pit is paid for: what else it showed costs nothing more
    assertThat(done("ask", name, "footingWidth", "--by", ADA).out())
        .contains("0.9 m", "paid for already");
    assertThat(done("sheet", by(ADA)).out()).contains("foundingDepth");
    assertThat(done("sheet", by(BO)).out()).doesNotContain("foundingDepth");
    assertThat(done("reveal", name).out()).contains("4 working days");
    wrong(
        "once the choice of their stage is marked", "--question", "pit-depth", "--gives", "2.2 m");
    done("reveal", name);
    done("reveal", name);
    refused(Exit.USAGE, "no further stage", "reveal", name);
    answers(ADA, "--method", "pits", "--because", "clearSpan");
    Ran marked = done("mark", name);
    assertThat(marked.out())
        .contains("method", "deciding facts", "conditions", "[PIT-01,", "changed mind");
    refused(Exit.USAGE, "marked already", "answer", by(ADA, "--method", "needles"));
    answers(ADA, "--question", "pit-depth", "--gives", "2.2 m");
    assertThat(done("mark", by(ADA)).out()).contains("4 of 4");
    assertThat(done("scores", name).out()).contains(ADA, BO);
    assertThat(done("scores", name, "--csv").out())
        .startsWith("student,case,stage,about,points,of")
        .contains("Ada Linden,bracken-lane,4,pit-depth,4,4");
    JsonNode marks = JsonMapper.shared().readTree(done("scores", name, "--json").out());
    assertThat(marks.size()).isEqualTo(3);
    assertThat(marks.get(0).get("outOf").asInt()).isEqualTo(12);
  }

  @Test
  void wrong_requests_change_nothing_and_name_what_is_wrong() throws IOException {
    String before = text();
    refused(Exit.USAGE, ADA + ", " + BO, "sheet", by("Cy"));
    wrong("did you mean \"loadPattern\"", "--method", "pits", "--because", "loadPatern");
    wrong("people-in-pits", "--method", "pits", "--danger", "dragons");
    wrong("did you mean \"licence\"", "--method", "pits", "--condition", "license");
    wrong("--method is \"beams\"", "--method", "beams");
    wrong("either --method");
    wrong("has one zone", "--scheme", "gable=pits");
    wrong("ZONE=METHOD", "--scheme", "pits");
    wrong("ZONE WORD ZONE", "--scheme", "gable=pits", "--order", "gable first");
    refused(Exit.USAGE, "known already", "ask", name, "loadPattern", "--by", BO);
    refused(Exit.USAGE, "nobody on this job", "ask", name, "uplift", "--by", BO);
    refused(
        Exit.SITE, "there is a file of that name already", "start", name, CASE, "--students", "Cy");
    refused(Exit.USAGE, "--students", "start", name, CASE);
    String other = folder.resolve("autumn.class.json").toString();
    refused(Exit.SITE, "class start begins one", "answer", other, "--by", BO, "--method", "pits");
    refused(Exit.USAGE, "tell them apart", "start", other, CASE, "--students", "Cy, Cy");
    assertThat(text()).isEqualTo(before);
  }

  @Test
  void a_file_of_answers_is_taken_whole_or_not_at_all() throws IOException {
    String good =
        """
        { "underhold": "answers/1", "student": "Bo Marsh", "of": "bracken-lane",
          "zones": [ { "zone": "gable", "method": "pits", "because": ["loadPattern"],
                       "danger": ["movement"] } ] }
        """;
    done("answer", name, file(folder, "bo.answers.json", good));
    String before = text();
    assertThat(before).contains("\"movement\"");
    // the same file once more changes nothing
    assertThat(done("answer", name, file(folder, "bo.answers.json", good)).out())
        .contains("Written already");
    assertThat(text()).isEqualTo(before);
    String bad = good.replace("\"movement\"", "\"wind\"").replace("gable", "gabel");
    refused(Exit.SITE, "wind", "answer", name, file(folder, "b.answers.json", bad));
    refused(Exit.SITE, "gabel", "answer", name, file(folder, "c.answers.json", bad));
    String mood = good.replace("\"zones\"", "\"mood\": \"\", \"zones\"");
    refused(Exit.SITE, "mood", "answer", name, file(folder, "d.answers.json", mood));
    // one good and one bad: none is taken; nor are two of one student for one zone
    String ada = file(folder, "ada.answers.json", good.replace(BO, ADA));
    refused(Exit.SITE, "wind", "answer", name, ada, file(folder, "e.answers.json", bad));
    refused(
        Exit.SITE, "Nothing was taken", "answer", name, ada, file(folder, "e.answers.json", bad));
    refused(Exit.SITE, "twice in these files", "answer", name, ada, ada);
    assertThat(text()).isEqualTo(before);
    done("answer", name, ada, file(folder, "bo.answers.json", good));
    assertThat(text()).contains("\"student\": \"Ada Linden\"");
  }

  @Test
  void the_last_answer_of_a_stage_counts_and_the_others_stay() throws IOException {
    answers(BO, "--method", "pits");
    assertThat(answers(BO, "--method", "none").out())
        .contains("the last answer counts", "(pits)", "stays in the record");
    assertThat(text()).contains("\"method\": \"pits\"", "\"method\": \"none\"");
    assertThat(done("sheet", by(BO)).out()).contains("(answered again");
    assertThat(done("mark", name).out()).contains("3 of 3", "before it: pits");
    assertThat(done("scores", name).out()).doesNotContain("not marked yet");
  }

  @Test
  void the_methods_of_two_zones_are_answered_together() {
    String two = folder.resolve("two.class.json").toString();
    String zone = "box over the cut";
    String other = "end of the cut";
    done("start", two, "cases/classroom/third/fenwick-cross.case.json", "--students", "Ada");
    String[] scheme = {
      two,
      "--by",
      "Ada",
      "--scheme",
      zone + "=drilled-piles, " + other + "=edge-pits",
      "--because",
      "sharedEdge",
      "--order",
      other + " wall-closed-before-digs " + zone
    };
    assertThat(done("answer", scheme).out()).contains("all zones together");
    refused(
        Exit.USAGE, "no method is named", "answer", two, "--by", "Ada", "--scheme", zone + "=none");
    assertThat(done("mark", two).out()).contains("methods together", "where they meet");
  }

  @Test
  void a_class_file_made_wrong_by_hand_is_refused_with_all_its_problems() throws IOException {
    String broken = text().replace("\"Bo Marsh\"", "\"Ada Linden\"");
    refused(Exit.SITE, ADA, "show", file(folder, "x.class.json", broken));
    String lost = text().replace("bracken-lane.case.json", "gone.case.json");
    refused(Exit.SITE, "gone.case.json", "show", file(folder, "y.class.json", lost));
    answers(BO, "--method", "pits");
    String zone = text().replace("\"zone\": \"gable\"", "\"zone\": \"attic\"");
    refused(Exit.SITE, "attic", "mark", file(folder, "w.class.json", zone));
    String late = text().replace("\"stage\": 0", "\"stage\": 3");
    refused(Exit.SITE, "answers[0].stage", "mark", file(folder, "v.class.json", late));
    String far = text().replace("\"open\": 0", "\"open\": 9");
    refused(Exit.SITE, "10", "show", file(folder, "z.class.json", far));
  }

  @Test
  void the_list_keeps_the_key_for_the_trainer() {
    assertThat(done("list").out())
        .contains("bracken-lane", "Level third")
        .doesNotContain("Teaches");
    assertThat(done("list", "--key").out()).contains("Teaches");
    assertThat(done("show", name).out()).contains("closed").doesNotContain("Teaches");
    assertThat(done("show", name, "--key").out()).contains("For the close");
    assertThat(done("rubric").out()).contains("people-in-pits", "order-of-pits", "changed mind");
    refused(Exit.SITE, "holds no case", "list", folder.toString());
  }

  @Test
  void handouts_are_written_by_their_ending() throws IOException {
    String page = folder.resolve("ada.html").toString();
    assertThat(done("sheet", by(ADA, "--out", page)).err()).contains("is written");
    assertThat(Files.readString(Path.of(page))).contains("student sheet", ADA);
    // an earlier handout may be replaced, nothing else may
    done("sheet", name, "--out", page);
    assertThat(Files.readString(Path.of(page))).doesNotContain(ADA);
    refused(
        Exit.SITE,
        "nothing was written",
        "sheet",
        name,
        "--out",
        file(folder, "notes.html", "my notes"));
    refused(Exit.USAGE, ".html, .pdf or .md", "sheet", name, "--out", folder.resolve("a.txt") + "");
    refused(Exit.USAGE, "reveal opens", "sheet", name, "--stage", "survey");
    assertThat(done("sheet", CASE, "--stage", "trial-pits").out()).contains("foundingDepth");
    refused(Exit.USAGE, "Did you mean survey?", "sheet", CASE, "--stage", "surveys");
    String key = folder.resolve("key.md").toString();
    done("key", "larch-terrace", "--out", key);
    assertThat(Files.readString(Path.of(key))).contains("trainer's key", "The lesson");
    refused(Exit.USAGE, "There is no case, file or folder \"larch\"", "key", "larch");
  }

  @Test
  void names_that_a_spreadsheet_would_reckon_are_made_harmless() {
    String odd = folder.resolve("odd.class.json").toString();
    done("start", odd, CASE, "--students", "=1+1, @Bo, -Cy, +Di");
    for (String student : new String[] {"=1+1", "@Bo", "-Cy", "+Di"}) {
      done("answer", odd, "--by", student, "--method", "none");
    }
    done("mark", odd);
    assertThat(done("scores", odd, "--csv").out().lines().skip(1))
        .hasSize(4)
        .allMatch(line -> line.startsWith("'"));
  }
}
