package underhold.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static underhold.shell.ShellClient.file;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import underhold.advice.Criterion;
import underhold.advice.SupportOption;
import underhold.report.Look;
import underhold.report.Program;
import underhold.shell.ShellClient.Ran;

/** What each command answers and how it ends; the sites are our own cases. */
class CommandsTest {
  private static final ShellClient SHELL = ShellClient.oneShot();

  @TempDir static Path folder;
  private static String site = "";

  @BeforeAll
  static void writeSite() {
    site = file(folder, "yard.site.json", ShellClient.SITE);
  }

  private static JsonNode json(Ran ran) {
    assertThat(ran.code()).as(ran.err()).isZero();
    return JsonMapper.shared().readTree(ran.out());
  }

  @Test
  void advise_ranks_every_zone_and_says_who_must_check() {
    Ran ran = SHELL.run("advise", site);

    assertThat(ran.code()).isZero();
    assertThat(ran.err()).isEmpty();
    assertThat(ran.out())
        .contains("Cooper's Yard: party wall", "Cooper's Yard: corner column")
        .contains("Underpinning pits lead, first in ")
        .contains("of 100 draws", "not a probability")
        .contains("Decides: the engineer of record")
        .contains("it does not count until that is known")
        .contains("way back")
        .contains("a licensed engineer must check and own the design");
    for (SupportOption option : SupportOption.values()) {
      assertThat(ran.out()).contains("(" + option.id() + ")");
    }
  }

  @Test
  void advise_in_json_has_the_keys_that_others_read() {
    JsonNode root = json(SHELL.run("advise", site, "--json"));

    assertThat(root.propertyNames()).contains("site", "program", "rulePack", "zones");
    assertThat(root.get("rulePack").propertyNames()).contains("name", "version", "fingerprint");
    JsonNode zone = root.get("zones").get(0);
    assertThat(zone.propertyNames())
        .contains("name", "leader", "verdict", "options", "conditions", "cautions")
        .contains("openQuestions", "firmness", "facts");
    assertThat(zone.get("leader").asString()).isEqualTo("pits");
    assertThat(zone.get("options")).hasSize(SupportOption.values().length);
    JsonNode option = zone.get("options").get(0);
    assertThat(option.propertyNames())
        .contains("id", "label", "standing", "score", "tied", "findings", "wayBack", "heldBy");
    assertThat(option.get("findings").get(0).propertyNames())
        .contains("rule", "effect", "strength", "cause", "because", "source", "basis")
        .contains("facts", "limits", "assumed", "counted");
    assertThat(option.get("findings").get(0).get("facts").get(0).propertyNames())
        .containsExactly("name", "value", "origin");
    assertThat(zone.get("openQuestions").get(0).propertyNames())
        .contains("fact", "question", "why", "findOut", "stake", "answers");
    assertThat(zone.get("firmness").propertyNames())
        .contains("trials", "kept", "draws", "seed", "first", "none", "drivers");
    assertThat(zone.get("facts").get(0).propertyNames()).contains("name", "origin", "how");
  }

  @Test
  void a_finding_on_an_assumed_fact_is_marked_and_never_counted() {
    JsonNode zones = json(SHELL.run("advise", site, "--json")).get("zones");
    List<JsonNode> assumed =
        zones
            .valueStream()
            .flatMap(zone -> zone.get("options").valueStream())
            .flatMap(option -> option.get("findings").valueStream())
            .filter(finding -> finding.get("assumed").asBoolean())
            .toList();

    assertThat(assumed).isNotEmpty().noneMatch(finding -> finding.get("counted").asBoolean());
  }

  @Test
  void the_same_site_gives_the_same_bytes_and_no_path() {
    String first = ShellClient.oneShot().run("advise", site, "--json").out();
    String second = ShellClient.oneShot().run("advise", site, "--json").out();

    assertThat(second).isEqualTo(first).doesNotContain(folder.toString());
  }

  @Test
  void a_zone_can_be_picked_in_any_case() {
    Ran ran = SHELL.run("advise", site, "--zone", "PARTY wall");

    assertThat(ran.out()).contains("party wall").doesNotContain("corner column");
  }

  @Test
  void why_names_rule_facts_limits_and_source() {
    Ran ran = SHELL.run("why", "pits", site, "--zone", "party wall");

    assertThat(ran.code()).isZero();
    assertThat(ran.out())
        .contains("Speaks for it", "PIT-04a", "load pattern continuous (stated)")
        .contains("limit     depth of a pit dug in one lift 3 m")
        .contains("source");
    assertThat(json(SHELL.run("why", "pits", site, "--json")).get("zones")).hasSize(2);
  }

  @Test
  void why_not_names_what_stands_above_and_what_nearly_spoke_for_it() {
    Ran ran = SHELL.run("why-not", "monitor", site);

    assertThat(ran.out())
        .contains("Held by safety questions")
        .contains("What stands above it")
        .contains("Rules that nearly spoke for it")
        .contains("way back");
  }

  @Test
  void compare_goes_criterion_by_criterion() {
    Ran ran = SHELL.run("compare", "pits", "needles", site, "--zone", "party wall");

    assertThat(ran.out())
        .contains("Ground favours pits by 4 points (pits +4, needles 0).")
        .contains("Water says nothing of either.", "in favour of pits");
    JsonNode criteria =
        json(SHELL.run("compare", "pits", "needles", site, "--json"))
            .get("zones")
            .get(0)
            .get("criteria");
    assertThat(criteria.valueStream().map(one -> one.get("criterion").asString()))
        .containsExactlyElementsOf(Criterion.words());
    assertThat(criteria.get(0).get("verdict").asString()).startsWith("Ground favours pits");
    assertThat(SHELL.run("compare", "pits", "pits", site).code()).isEqualTo(Exit.USAGE);
  }

  @Test
  void trace_lists_what_fired_and_what_nearly_did() {
    Ran ran = SHELL.run("trace", site);

    assertThat(ran.out())
        .contains("Facts that rules derived", "Rules that fired on known facts")
        .contains("Rules that failed by one condition");
    assertThat(json(SHELL.run("trace", site, "--json")).get("zones").get(0).propertyNames())
        .contains("derivations", "findings", "assumed", "nearMisses");
  }

  @Test
  void sizing_a_referral_says_plainly_that_there_is_nothing_to_size() {
    Ran ran = SHELL.run("size", "needles", site);

    assertThat(ran.code()).isZero();
    assertThat(ran.out()).contains("Needle beams, zone");
    assertThat(SHELL.run("size", "refer", site).out()).contains("There is nothing to size");
  }

  @Test
  void a_sheet_reads_in_either_unit_system_with_the_same_numbers_inside() {
    Ran si = SHELL.run("size", "pits", site, "--units", "SI", "--json");
    Ran us = SHELL.run("size", "pits", site, "--units", "us", "--json");
    JsonNode metric = json(si).get("sheets").get(0).get("sheet");
    JsonNode feet = json(us).get("sheets").get(0).get("sheet");
    assertThat(metric.get("units").asString()).isEqualTo("SI");
    assertThat(feet.get("units").asString()).isEqualTo("US");
    for (int i = 0; i < metric.get("checks").size(); i++) {
      JsonNode one = metric.get("checks").get(i).get("demand");
      JsonNode other = feet.get("checks").get(i).get("demand");
      assertThat(other.get("si").asDouble()).isEqualTo(one.get("si").asDouble());
    }
    assertThat(metric.propertyNames())
        .contains("inputs", "steps", "checks", "quantities", "stages", "cautions");

    Ran bad = SHELL.run("size", "pits", site, "--units", "furlongs");
    assertThat(bad.code()).isEqualTo(Exit.USAGE);
    assertThat(bad.err()).contains("furlongs", "SI or US");
  }

  @Test
  void sizing_pits_shows_the_sheet_and_takes_settings() {
    Ran ran = SHELL.run("size", "pits", site, "--zone", "party wall");
    assertThat(ran.code()).isZero();
    assertThat(ran.out()).contains("Underpinning pits, zone party wall");
    assertThat(json(SHELL.run("size", "pits", site, "--json")).get("sheets").get(0).propertyNames())
        .contains("zone", "sheet");

    Ran bad = SHELL.run("size", "pits", site, "--set", "widest-pit=9 kg");
    assertThat(bad.code()).isEqualTo(Exit.USAGE);
    assertThat(bad.out()).isEmpty();
    assertThat(bad.err().lines().reduce((a, b) -> b))
        .hasValueSatisfying(last -> assertThat(last).contains("9 kg"));
  }

  @Test
  void facts_lists_the_dictionary_and_explains_one() {
    assertThat(SHELL.run("facts").out()).contains("loadPattern", "groundWaterDepth");
    assertThat(SHELL.run("facts", "LOADpattern").out())
        .contains("How does the load", "concentrated", "Rules that read it", "PIT-04a");
    assertThat(json(SHELL.run("facts", "loadPattern", "--json")).propertyNames())
        .contains("name", "question", "values", "rules");
    Ran wrong = SHELL.run("facts", "loadPatern");
    assertThat(wrong.code()).isEqualTo(Exit.USAGE);
    assertThat(wrong.err()).contains("Did you mean loadPattern?");
  }

  @Test
  void rules_can_be_listed_shown_and_found() {
    assertThat(SHELL.run("rules", "list").out()).contains("PIT-04a", "rules of rule pack");
    assertThat(SHELL.run("rules", "show", "pit-04a").out())
        .contains("pitDepth <= limit(\"pit-depth-easy\")", "pit-depth-easy is 3 m", "source");
    assertThat(SHELL.run("rules", "find", "locking", "jacks").out()).contains("NDL-08");
    assertThat(SHELL.run("rules", "find", "no such text").err()).contains("No rule holds");
    assertThat(json(SHELL.run("rules", "list", "--json")).get("rules").size()).isGreaterThan(100);
    assertThat(SHELL.run("rules", "show", "PIT-4a").err()).contains("Did you mean PIT-04a?");
  }

  @Test
  void version_and_help_answer_in_text_and_json() {
    assertThat(SHELL.run("version").out()).startsWith("Underhold ");
    assertThat(SHELL.run("--version").out()).startsWith("Underhold ");
    assertThat(json(SHELL.run("version", "--json")).propertyNames())
        .containsExactly("program", "version", "rulePack");
    assertThat(SHELL.run("help").out()).contains("advise [FILE]", Program.CAUTION.substring(0, 40));
    assertThat(SHELL.run("help", "why-not").out()).contains("why-not METHOD [FILE] [--zone NAME]");
    assertThat(SHELL.run("why-not", "--help").out()).contains("why-not METHOD [FILE]");
    assertThat(json(SHELL.run("help", "--json")).get("commands").size()).isGreaterThan(15);
  }

  @ParameterizedTest
  @ValueSource(ints = {40, 80, 97, 110})
  void no_line_is_wider_than_the_screen_and_nothing_is_coloured(int width) {
    ShellClient shell = ShellClient.oneShot(new Look(width, false, StandardCharsets.US_ASCII));
    List<Ran> all =
        List.of(
            shell.run("advise", site),
            shell.run("why", "pits", site),
            shell.run("why-not", "monitor", site),
            shell.run("compare", "edge-pits", "needles", site),
            shell.run("trace", site),
            shell.run("facts"),
            shell.run("facts", "outsideAccess"),
            shell.run("rules", "list"),
            shell.run("rules", "show", "PIT-24a"),
            shell.run("site", "show", site),
            shell.run("help"));

    for (Ran ran : all) {
      assertThat(ran.code()).isZero();
      assertThat(ran.out().lines()).isNotEmpty().allMatch(line -> line.length() <= width);
      assertThat(ran.out()).matches("[\\n\\x20-\\x7e]+");
    }
  }

  @Test
  void colour_is_only_a_hint() {
    Look coloured = new Look(80, true, StandardCharsets.UTF_8);
    String plain = SHELL.run("advise", site).out();
    ShellClient shell = ShellClient.oneShot(coloured);

    assertThat(shell.run("advise", site).out()).contains("\u001B[");
    assertThat(shell.run("advise", site).out().replaceAll("\u001B\\[[0-9;]*m", ""))
        .isEqualTo(plain);
    assertThat(shell.run("advise", site, "--no-colour").out()).isEqualTo(plain);
    assertThat(shell.run("advise", site, "--json").out()).doesNotContain("\u001B");
  }
}
