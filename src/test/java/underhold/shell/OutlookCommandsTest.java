package underhold.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static underhold.shell.ShellClient.file;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import underhold.shell.ShellClient.Ran;

/** What to find out, what would turn the answer, how firm it is: as commands. */
class OutlookCommandsTest {
  private static final ShellClient SHELL = ShellClient.oneShot();

  @TempDir static Path folder;
  private static String site = "";

  @BeforeAll
  static void writeSite() {
    site = file(folder, "yard.site.json", ShellClient.SITE);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "turning-points | A site FILE is needed",
        "turning-points FILE --for pit | Did you mean pits?",
        "turning-points FILE --changes 4 | --changes is \"4\"; it must be a number from 1 to 3",
        "turning-points FILE --changes two | --changes is \"two\"; it must be a number from 1 to 3",
        "firmness FILE --draws 0 | --draws is \"0\"; it must be a number from 50 to 10000",
        "firmness FILE --draws 1e9 | --draws is \"1e9\"",
        "firmness FILE --seed -1 | --seed",
        "ask-next FILE --zone cellar | There is no zone \"cellar\"",
      })
  void wrong_words_are_answered_with_what_is_allowed(String line, String expected) {
    Ran ran = SHELL.run(line.replace("FILE", site).split(" "));

    assertThat(ran.code()).isEqualTo(Exit.USAGE);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err()).contains(expected).doesNotContain("Exception", "\tat ");
  }

  @Test
  void each_turning_point_turns_when_what_if_is_told_to_try_it() {
    JsonNode zones = json(SHELL.run("turning-points", site, "--json")).get("zones");

    int tried = 0;
    for (JsonNode zone : zones) {
      for (JsonNode point : zone.get("turningPoints")) {
        if (tried++ < 12) {
          List<String> words = new ArrayList<>(List.of("what-if"));
          point
              .get("changes")
              .forEach(c -> words.add(c.get("fact").asString() + "=" + c.get("tried").asString()));
          words.addAll(List.of("--zone", zone.get("name").asString(), "--site", site, "--json"));
          JsonNode after = json(SHELL.run(words.toArray(String[]::new))).get("zones").get(0);
          assertThat(after.get("leader").get("after").asString())
              .as(words.toString())
              .isEqualTo(point.get("leader").asString());
        }
      }
    }
    assertThat(tried).isGreaterThan(3);
  }

  @Test
  void one_method_asked_for_is_said_how_to_be_put_first() {
    Ran ran = SHELL.run("turning-points", site, "--for", "drilled-piles", "--zone", "party wall");

    assertThat(ran.code()).isZero();
    assertThat(ran.out())
        .contains("would put drilled piles first", "what-if ", "why Now ")
        .containsPattern("--zone\\s+\"party wall\"")
        .contains("a licensed engineer must check and own the design");
  }

  @Test
  void firmness_is_the_same_for_the_same_seed_and_counts_every_draw() {
    String[] command = {"firmness", site, "--draws", "60", "--seed", "3", "--json"};
    Ran first = SHELL.run(command);

    assertThat(SHELL.run(command).out()).isEqualTo(first.out());
    for (JsonNode zone : json(first).get("zones")) {
      JsonNode firmness = zone.get("firmness");
      int sum = firmness.get("none").asInt();
      for (JsonNode count : firmness.get("first")) {
        sum += count.asInt();
      }
      assertThat(sum).isEqualTo(60).isEqualTo(firmness.get("draws").asInt());
    }
    assertThat(SHELL.run("firmness", site, "--draws", "60").out())
        .contains("First place, of 100 draws", "What drives the doubt", "60 draws, seed");
  }

  @Test
  void ask_next_says_how_to_find_out_and_what_each_answer_would_mean() {
    Ran ran = SHELL.run("ask-next", site);

    assertThat(ran.code()).isZero();
    assertThat(ran.out()).contains("find out", "stake", "if  ");
    JsonNode question =
        json(SHELL.run("ask-next", site, "--json")).get("zones").get(0).get("questions").get(0);
    assertThat(question.propertyNames())
        .contains("fact", "findOut", "stake", "leaderChanges", "standingsChanged", "answers");
    assertThat(question.get("answers").get(0).propertyNames())
        .containsExactly("value", "leader", "tiedWith", "freed", "won", "lost", "scoreMoved");
  }

  @Test
  void why_not_ends_with_the_smallest_changes_that_would_bring_it_back() {
    Ran ran = SHELL.run("why-not", "monitor", site, "--zone", "party wall");

    assertThat(ran.code()).isZero();
    assertThat(ran.out()).contains("The smallest changes that would", "try what-if ");
    JsonNode zone =
        json(SHELL.run("why-not", "monitor", site, "--zone", "party wall", "--json"))
            .get("zones")
            .get(0);
    assertThat(zone.get("ways")).isNotEmpty();
  }

  private static JsonNode json(Ran ran) {
    assertThat(ran.code()).as(ran.err()).isZero();
    return JsonMapper.shared().readTree(ran.out());
  }
}
