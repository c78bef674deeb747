package underhold.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import underhold.shell.ShellClient.Ran;

/** A case made by command, and a class held with it. */
class ClassMakeCommandTest {
  private static final ShellClient SHELL = ShellClient.oneShot();
  private static final String[] WATCH = {
    "class", "make", "--leader", "monitor", "--teaches", "when not to underpin", "--level", "hard"
  };

  @TempDir Path folder;

  private static Ran make(String... more) {
    String[] words = java.util.Arrays.copyOf(WATCH, WATCH.length + more.length);
    System.arraycopy(more, 0, words, WATCH.length, more.length);
    return SHELL.run(words);
  }

  @Test
  void a_made_case_stands_in_its_file_and_holds_a_class() throws IOException {
    Path file = folder.resolve("far-off.case.json");
    Ran made = make("--out", file.toString());
    assertThat(made.code()).as(made.err()).isZero();
    assertThat(made.out()).isEmpty();
    assertThat(made.err()).contains("at the third level", "from seed 1", "is written");
    String text = Files.readString(file);
    assertThat(make().out()).isEqualTo(text);
    JsonNode tree = JsonMapper.shared().readTree(make("--json").out());
    assertThat(tree).isEqualTo(JsonMapper.shared().readTree(text));
    assertThat(tree.get("level").asString()).isEqualTo("third");
    assertThat(tree.get("made").get("seed").asInt()).isEqualTo(1);
    assertThat(tree.get("made").get("rulePack").asString()).matches("[0-9a-f]{64}");

    Ran again = make("--out", file.toString());
    assertThat(again.code()).isEqualTo(Exit.SITE);
    assertThat(again.err()).contains("already; nothing was written");
    assertThat(Files.readString(file)).isEqualTo(text);

    String name = folder.resolve("one.class.json").toString();
    done("class", "start", name, file.toString(), "--students", "Ada");
    for (int stage = 1; stage < tree.get("stages").size(); stage++) {
      done("class", "reveal", name);
    }
    assertThat(done("class", "sheet", name, "--by", "Ada").out())
        .contains(tree.get("story").asString().substring(0, 20))
        .doesNotContain("counterparts", tree.get("lesson").asString().substring(0, 40));
    done("class", "answer", name, "--by", "Ada", "--method", "monitor", "--because", "loadPattern");
    assertThat(done("class", "mark", name).out()).contains("method");
    assertThat(done("class", "scores", name).out()).contains("Ada");
  }

  private static Ran done(String... words) {
    Ran ran = SHELL.run(words);
    assertThat(ran.code()).as(ran.err()).isZero();
    return ran;
  }

  @Test
  void wrong_words_are_told_all_at_once_with_what_there_is() {
    Ran ran = SHELL.run("class", "make", "--leader", "nedles", "--level", "4", "--seed", "x");
    assertThat(ran.code()).isEqualTo(Exit.USAGE);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err())
        .contains(
            "Did you mean needles?",
            "--level is \"4\"; it must be one of first, second, third, easy, middle, hard.",
            "--teaches is needed, one of concentrated-against-continuous, spanning, water,",
            "--seed is \"x\"; it must be a whole number");
  }

  @Test
  void a_name_that_is_no_case_and_a_folder_that_is_not_there_are_refused() {
    assertThat(make("--out", folder.resolve("x.json").toString()).err())
        .contains("ends with .case.json");
    Ran nowhere = make("--out", folder.resolve("no/x.case.json").toString());
    assertThat(nowhere.code()).isEqualTo(Exit.SITE);
    assertThat(nowhere.err()).contains("was not written").doesNotContain("Exception");
  }

  @Test
  void what_cannot_be_found_ends_with_how_far_the_search_came() {
    Ran ran =
        SHELL.run("class", "make", "--leader", "monitor", "--teaches", "spanning", "--tries", "40");
    assertThat(ran.code()).isEqualTo(Exit.SITE);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err()).contains("No case was found", "40 sites tried", "The nearest:");
  }
}
