package underhold.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static underhold.shell.ShellClient.file;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import underhold.report.Look;
import underhold.shell.ShellClient.Ran;

/** What {@code what-if} answers, and what it says to wrong words; the site is our own case. */
class WhatIfCommandTest {
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
        "what-if | The command \"what-if\" needs FACT=VALUE.",
        "what-if | Usage: what-if FACT=VALUE... [--zone NAME] [--site FILE]",
        "what-if depth | \"depth\" is not FACT=VALUE, such as excavationDepth=5 m.",
        "what-if excavationDepht=5m | Did you mean excavationDepth?",
        "what-if excavationDepth=5 | excavationDepth: 5 has no unit; a length is needed",
        "what-if excavationDepth=5kg | excavationDepth:",
        "what-if excavationDepth= | excavationDepth: nothing was typed",
        "what-if loadPattern=continous | did you mean \"continuous\"?",
        "what-if excavationDepth=4m excavationDepth=5m | excavationDepth stands twice",
        "what-if pitDepth=4m | pitDepth: depth of pit is never stated, it follows",
        "what-if excavationDepth=5m x.site.json | a site is named by --site FILE",
        "what-if excavationDepth=5m --zone nowhere | There is no zone \"nowhere\".",
      })
  void wrong_words_are_answered_with_what_is_allowed(String line, String expected) {
    Ran ran = SHELL.run((line + " --site " + site).split(" "));

    assertThat(ran.code()).isEqualTo(Exit.USAGE);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err()).contains(expected).doesNotContain("Exception", "\tat ");
  }

  @Test
  void everything_wrong_is_told_at_once() {
    Ran ran =
        SHELL.run(
            "what-if", "excavationDepht=5 m", "loadPattern=round", "--zone", "x", "--site", site);

    assertThat(ran.code()).isEqualTo(Exit.USAGE);
    assertThat(ran.err()).contains("excavationDepht", "\"round\" is not a value", "no zone \"x\"");
    assertThat(SHELL.run("what-if", "excavationDepth=5").err())
        .contains("has no unit", "A site FILE is needed");
  }

  @Test
  void contradictions_are_a_problem_of_the_site_and_name_what_to_change_with_it() {
    Ran ran =
        SHELL.run("what-if", "excavationBelowFooting=5 m", "--zone", "party wall", "--site", site);

    assertThat(ran.code()).isEqualTo(Exit.SITE);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err())
        .contains("yard.site.json: zones[0].facts.excavationBelowFooting")
        .contains("change with it, or take away with FACT=unknown: excavationDepth, foundingDepth")
        .contains("Nothing was tried. Facts that belong together can be changed in one command.");

    Ran together =
        SHELL.run(
            "what-if",
            "excavationBelowFooting=5 m",
            "excavationDepth=6.8 m",
            "--zone",
            "party wall",
            "--site",
            site);
    assertThat(together.code()).as(together.err()).isZero();
  }

  @Test
  void every_zone_shows_what_leads_each_option_and_the_reasons() {
    Ran ran = SHELL.run("what-if", "excavationDepth=7", "m", "--site", site);

    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(ran.out())
        .contains("What if", "depth of the excavation: 4.2 m -> 7 m, the whole site")
        .contains("Cooper's Yard: party wall", "Cooper's Yard: corner column")
        .contains("excavation below the footing: 2.4 m -> 5.2 m")
        .contains("PIT-04a", "lost", "gained")
        .contains("Nothing was saved")
        .contains("a licensed engineer must check and own the design");
  }

  @Test
  void only_the_zone_named_is_changed_and_the_file_stays_as_it_is() throws java.io.IOException {
    String before = Files.readString(Path.of(site));
    Ran ran =
        SHELL.run("what-if", "groundWaterDepth=unknown", "--zone", "PARTY wall", "--site", site);

    assertThat(ran.out())
        .contains("depth to ground water: 7 m -> unknown, zone party wall")
        .doesNotContain("corner column");
    assertThat(Files.readString(Path.of(site))).isEqualTo(before);
  }

  @Test
  void that_nothing_changes_is_said_plainly() {
    Ran ran = SHELL.run("what-if", "excavationDepth=4200 mm", "--site", site);

    assertThat(ran.code()).isZero();
    assertThat(ran.out())
        .contains("depth of the excavation is 4200 mm already", "Nothing changes here:");
    JsonNode root = tree("what-if", "excavationDepth=4200 mm", "--site", site, "--json");
    assertThat(root.get("nothingChanges").asBoolean()).isTrue();
  }

  @Test
  void json_says_the_same() {
    JsonNode root = tree("what-if", "excavationDepth=7 m", "--site", site, "--json");

    assertThat(root.propertyNames())
        .contains("site", "rulePack", "changed", "leftAsTheyWere", "nothingChanges", "zones");
    assertThat(root.get("changed").get(0).get("before").asString()).isEqualTo("4.2 m");
    JsonNode zone = root.get("zones").get(0);
    assertThat(zone.get("leader").propertyNames()).containsExactly("before", "after");
    assertThat(zone.get("options")).hasSize(7);
    JsonNode pits =
        zone.get("options")
            .valueStream()
            .filter(option -> option.get("id").asString().equals("pits"))
            .findFirst()
            .orElseThrow();
    assertThat(pits.get("findings").valueStream())
        .anySatisfy(
            finding -> {
              assertThat(finding.get("rule").asString()).isEqualTo("PIT-04a");
              assertThat(finding.get("change").asString()).isEqualTo("lost");
            });
    assertThat(zone.get("facts").get(0).propertyNames())
        .containsExactly("name", "label", "before", "after");
  }

  private static JsonNode tree(String... words) {
    Ran ran = SHELL.run(words);
    assertThat(ran.code()).as(ran.err()).isZero();
    return JsonMapper.shared().readTree(ran.out());
  }

  @Test
  void the_open_site_is_asked_where_none_is_named() {
    Ran ran =
        ShellClient.interactive("site open " + site, "what-if excavationDepth=7 m", "exit").loop();

    assertThat(ran.out()).contains("4.2 m -> 7 m");
    assertThat(ShellClient.interactive("what-if excavationDepth=7m", "exit").loop().err())
        .contains("No site is open.");
  }

  @ParameterizedTest
  @ValueSource(ints = {40, 80, 120})
  void no_line_is_wider_than_the_screen(int width) {
    ShellClient shell = ShellClient.oneShot(new Look(width, false, StandardCharsets.US_ASCII));
    Ran ran =
        shell.run(
            "what-if", "excavationDepth=7 m", "worstSoil=silt", "openLayer=yes", "--site", site);

    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(ran.out().lines()).isNotEmpty().allMatch(line -> line.length() <= width);
    assertThat(ran.out()).matches("[\\n\\x20-\\x7e]+");
  }
}
