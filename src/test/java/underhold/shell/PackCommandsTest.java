package underhold.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static underhold.shell.ShellClient.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;
import underhold.shell.ShellClient.Ran;

/** Answers by rule packs of others, and by limits set for a trial. */
class PackCommandsTest {
  private static final ShellClient SHELL = ShellClient.oneShot();

  @TempDir Path folder;
  private String site = "";
  private String pack = "";

  @BeforeEach
  void files() throws IOException {
    site = file(folder, "yard.site.json", ShellClient.SITE);
    Path small = Files.createDirectory(folder.resolve("house"));
    file(
        small,
        "pack.json",
        """
        { "name": "House rules", "version": "3", "extends": "built-in",
          "files": ["own.drl"], "remove": ["NON-03a"] }
        """);
    file(
        small,
        "limits.json",
        """
        { "limits": [ { "name": "pit-depth-easy", "value": "2 m",
                        "basis": "judgement", "source": "" } ] }
        """);
    file(small, "strengths.json", "{ \"weights\": { \"minor\": 2 } }");
    file(
        small,
        "own.drl",
        """
        package rules.house

        import underhold.advice.ZoneFacts
        global underhold.advice.FindingSink findings

        rule "The house digs no pits beside a party wall."
          @id("HSE-01")
          @basis("judgement")
          @source("")
          @because("The house has no gang for a wall that stands {excavationPosition} the dig.")
          @cause("purpose")
          agenda-group "screen"
        when
          ZoneFacts( loadPattern == "continuous", excavationPosition == "beside" )
        then
          findings.ruleOut("pits", drools.getRule());
        end
        """);
    pack = small.toString();
  }

  private static JsonNode json(Ran ran) {
    assertThat(ran.code()).as(ran.err()).isZero();
    return JsonMapper.shared().readTree(ran.out());
  }

  @Test
  @DisplayName("the rules of a firm answer, and the answer says first that they are not ours")
  void a_small_pack_answers() {
    Ran ran = SHELL.run("advise", site, "--zone", "party wall", "--rules", pack);

    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(ran.out())
        .startsWith("Rules: ")
        .contains("(House rules 3)", "1 limit, 2 rules, 1 weight")
        .contains("The house has no gang for a wall that stands beside the dig.")
        .contains("Limit pit-depth-easy: 2 m (judgement), built-in 3 m (from memory, verify).")
        .contains("Rules that rule an option out are gone or weaker: NON-03a.");
    assertThat(ran.out().replaceAll("\\s+", " ")).contains("rule pack House rules 3, ");
    assertThat(SHELL.run("advise", site, "--zone", "party wall").out())
        .doesNotContain("Rules: ", "House");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "advise FILE",
        "why pits FILE",
        "why-not pits FILE",
        "trace FILE",
        "compare pits needles FILE",
        "what-if gapToExcavation=3m --site FILE",
        "turning-points FILE --changes 1",
        "ask-next FILE",
        "firmness FILE --draws 50",
        "stages FILE",
        "size pits FILE",
        "rules list",
        "rules show HSE-01",
        "rules find gang",
        "rules limits",
        "rules differences",
        "version",
        "facts loadPattern"
      })
  @DisplayName("every command that answers by rules takes a pack, says so, and lists all in JSON")
  void every_command_says_which_rules(String line) {
    List<String> words = new ArrayList<>();
    for (String word : line.split(" ")) {
      words.add(word.equals("FILE") ? site : word);
    }
    words.addAll(List.of("--rules", pack));
    Ran text = SHELL.run(words.toArray(String[]::new));
    assertThat(text.out().replaceAll("\\s+", " ")).as(text.err()).contains("House rules 3");

    words.add("--json");
    Ran ran = SHELL.run(words.toArray(String[]::new));
    JsonNode rules = JsonMapper.shared().readTree(ran.out()).get("rulePack");
    assertThat(rules.get("folder").asString()).isEqualTo(pack);
    JsonNode differences = rules.get("differences");
    assertThat(differences.get("rulesAdded").get(0).get("id").asString()).isEqualTo("HSE-01");
    assertThat(differences.get("rulesRemoved").get(0).get("id").asString()).isEqualTo("NON-03a");
    assertThat(differences.get("limitsChanged").get(0).get("is").get("value").asString())
        .isEqualTo("2 m");
    assertThat(differences.get("weights").get(0).toString())
        .isEqualTo("{\"name\":\"minor\",\"was\":\"1\",\"is\":\"2\"}");
    assertThat(differences.get("builtInFingerprint").asString())
        .isNotEqualTo(rules.get("fingerprint").asString());
  }

  @ParameterizedTest
  @ValueSource(strings = {"alder-row-party-wall.site.json", "three-bridges-interchange.site.json"})
  @DisplayName("our own pack from its folder gives our own answers, to the letter")
  void our_pack_from_a_folder_answers_alike(String demo) {
    Path path = Path.of("cases", "demo", demo);
    for (String command : List.of("trace", "stages")) {
      String ours = SHELL.run(command, path.toString()).out();
      String theirs = SHELL.run(command, path.toString(), "--rules", "rules").out();
      assertThat(theirs).startsWith("Rules: rules (Underhold rules 1), fingerprint ");
      assertThat(theirs.replaceAll("\\s+", " ")).contains(", the same as the built-in.");
      assertThat(theirs.substring(theirs.indexOf("\n\n") + 2)).isEqualTo(ours);
    }
    ObjectNode ours = (ObjectNode) json(SHELL.run("advise", path.toString(), "--json"));
    ObjectNode theirs =
        (ObjectNode) json(SHELL.run("advise", path.toString(), "--json", "--rules", "rules"));
    assertThat(theirs.get("rulePack").get("differences").get("none").asBoolean()).isTrue();
    ours.remove("rulePack");
    theirs.remove("rulePack");
    assertThat(theirs).isEqualTo(ours);
  }

  @Test
  @DisplayName("a limit on trial keeps no claim: neither basis nor source of the one it replaces")
  void a_limit_on_trial() {
    Ran ran = SHELL.run("rules", "show", "ANY-11c", "--limit", "monitoring-ring=1.5");

    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(ran.out().replaceAll("\\s+", " "))
        .contains("with limits on trial", "monitoring-ring: 1.5 (on trial), built-in 1 (standard)")
        .contains("monitoring-ring is 1.5");
    JsonNode changed =
        json(SHELL.run(
                "version", "--json", "--limit", "monitoring-ring=1.5", "--limit", "pit-width=4 ft"))
            .get("rulePack");
    assertThat(changed.get("limitsOnTrial").toString())
        .isEqualTo("[\"monitoring-ring=1.5\",\"pit-width=4 ft\"]");
    JsonNode is = changed.get("differences").get("limitsChanged").get(0).get("is");
    assertThat(is.get("basis").asString()).isEqualTo("on trial");
    assertThat(is.get("source").asString()).isEmpty();
    assertThat(changed.get("fingerprint").asString())
        .isNotEqualTo(
            json(SHELL.run("version", "--json")).get("rulePack").get("fingerprint").asString());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--limit pit-depth-esy=2m | did you mean \"pit-depth-easy\"",
        "--limit pit-depth-easy | NAME=VALUE",
        "--limit pit-depth-easy=2 | unit",
        "--limit pit-depth-easy=2kN | a length is needed",
        "--limit pit-depth-easy=-2m | lies between",
        "--limit pit-depth-easy=1e999m | pit-depth-easy",
        "--limit needle-span=900m | always or never fire",
        "--limit pit-width=1m --limit pit-width=2m | set twice",
        "--rules a --rules b | one rule pack",
        "--rules | needs a value",
      })
  void a_wrong_trial_is_a_wrong_command_line(String options, String reason) {
    List<String> words = new ArrayList<>(List.of("rules", "list"));
    words.addAll(List.of(options.split(" ")));
    Ran ran = SHELL.run(words.toArray(String[]::new));

    assertThat(ran.code()).isEqualTo(Exit.USAGE);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err()).contains(reason).doesNotContain("Exception");
  }

  @Test
  void a_pack_with_problems_is_refused_with_all_of_them() {
    file(Path.of(pack), "own.drl", "import java.lang.System\nrule \"x\" eval(true)\n");
    file(
        Path.of(pack),
        "limits.json",
        "{\n\"limits\": [{\"name\": \"pit-width\", \"value\": \"1 kN\"}] }");
    Ran ran = SHELL.run("advise", site, "--rules", pack);

    assertThat(ran.code()).isEqualTo(Exit.SITE);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err())
        .contains("is refused; nothing of it was used", "own.drl:1: ", "own.drl:2: ")
        .contains("limits.json:2: the limit pit-width")
        .doesNotContain("Exception", "\tat ");
    Ran none = SHELL.run("advise", site, "--rules", folder.resolve("nowhere").toString());
    assertThat(none.code()).isEqualTo(Exit.SITE);
    assertThat(none.err()).contains("there is no such folder");
    assertThat(SHELL.run("advise", site, "--rules", site).err())
        .contains("a rule pack is a folder");
  }

  @Test
  void a_shell_can_keep_to_a_pack() {
    Ran ran =
        ShellClient.interactive(
                "rules use \"" + pack + "\"",
                "version",
                "version --rules built-in",
                "rules use built-in",
                "version")
            .loop();

    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(ran.err()).contains("(House rules 3)", "From now on the built-in rules answer.");
    assertThat(ran.out().lines().filter(line -> line.startsWith("rule pack")).toList())
        .satisfiesExactly(
            first -> assertThat(first).startsWith("rule pack House rules 3"),
            second -> assertThat(second).startsWith("rule pack Underhold rules 1"),
            third -> assertThat(third).startsWith("rule pack Underhold rules 1"));
    assertThat(SHELL.run("rules", "use", pack).err()).contains("interactive shell only");
  }
}
