package underhold.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static underhold.shell.ShellClient.file;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import underhold.report.Look;
import underhold.shell.ShellClient.Ran;

/** The scheme and its stages on the screen and in JSON. */
class StagesCommandTest {
  private static final String DEMO = "cases/demo/three-bridges-interchange.site.json";
  private static final ShellClient SHELL = ShellClient.oneShot();

  @TempDir static Path folder;

  @ParameterizedTest
  @ValueSource(ints = {40, 80, 110})
  void every_line_fits_and_says_what_a_foreman_needs(int width) {
    Ran ran =
        ShellClient.oneShot(new Look(width, false, StandardCharsets.UTF_8)).run("stages", DEMO);

    assertThat(ran.code()).isZero();
    assertThat(ran.err()).isEmpty();
    assertThat(ran.out().lines())
        .allSatisfy(line -> assertThat(line.length()).as(line).isLessThanOrEqualTo(width));
    if (width >= 80) {
      assertThat(ran.out())
          .contains("box over the cut: drilled piles, carries the structure, primary.")
          .contains("end of the cut: drilled piles with edge pits, closes the edge.")
          .contains("props the overhanging edge.", "edge-pits.")
          .contains("Pits, round 1 of", "Step 1 of 4", "Critical path: 1 > ")
          .contains("Releases: engineer of record.", "Decides: the competent person on site.")
          .contains("a licensed engineer must check and own the design");
    }
  }

  @Test
  void the_graph_in_json_names_every_stage_it_links() {
    Ran ran = SHELL.run("stages", DEMO, "--json");

    assertThat(ran.code()).as(ran.err()).isZero();
    JsonNode plan = JsonMapper.shared().readTree(ran.out()).get("plan");
    Set<String> ids = new HashSet<>();
    double last = 0;
    for (JsonNode node : plan.get("nodes")) {
      assertThat(ids.add(node.get("id").asString())).isTrue();
      assertThat(node.get("holdPoints")).isNotEmpty();
      last = Math.max(last, node.get("endDay").asDouble());
    }
    assertThat(plan.get("days").asDouble()).isEqualTo(last);
    for (JsonNode edge : plan.get("edges")) {
      assertThat(ids).contains(edge.get("from").asString(), edge.get("to").asString());
    }
    for (JsonNode id : plan.get("criticalPath")) {
      assertThat(ids).contains(id.asString());
    }
  }

  @Test
  void one_zone_can_be_picked_and_the_plan_stays_whole() {
    Ran ran = SHELL.run("stages", DEMO, "--zone", "PLATFORM edge");

    assertThat(ran.out())
        .contains("where     platform edge, mini piles with brackets")
        .doesNotContain("where     box over the cut, drilled piles")
        .contains("A Piles, before any dig");
    assertThat(SHELL.run("stages", DEMO, "--zone", "attic").code()).isNotZero();
  }

  @Test
  void settings_change_the_days_and_bad_ones_are_all_named() {
    assertThat(SHELL.run("stages", DEMO, "--set", "survey-days=40").out())
        .contains("40 days; critical; survey-days");

    Ran bad = SHELL.run("stages", DEMO, "--set", "survey-days=-1", "--set", "riggs=2");
    assertThat(bad.code()).isEqualTo(Exit.USAGE);
    assertThat(bad.out()).isEmpty();
    assertThat(bad.err())
        .contains("survey-days is -1; it must be from 0 to 500")
        .contains("did you mean \"rigs\"?")
        .contains("load-by-closure");
  }

  @Test
  void a_site_nobody_knows_yet_gets_an_investigation_and_no_method() {
    String site =
        file(
            folder,
            "first.site.json",
            """
            {"underhold": "site/1", "name": "First look", "zones": [
              {"name": "wall", "facts": {"loadPattern": "continuous", "excavationPosition": "beside"}},
              {"name": "pier", "facts": {"loadPattern": "concentrated", "excavationPosition": "beside"}}]}
            """);
    Ran ran = SHELL.run("stages", site);

    assertThat(ran.code()).isZero();
    assertThat(ran.out())
        .contains("no method yet; ")
        .contains("Decide first: survey and investigation")
        .contains("The work of zones without a method is not in these stages and days.");
  }

  @Test
  void a_scheme_that_waits_for_an_answer_between_zones_says_so_in_scheme_plan_and_advice() {
    String site = file(folder, "yard.site.json", ShellClient.SITE);

    assertThat(SHELL.run("stages", site).out())
        .contains("Held: a rule between zones could still rule this scheme out")
        .contains("Not known between the zones")
        .contains("Needles never rest on ground", "[SCH-40]")
        .contains("The scheme is held");
    assertThat(SHELL.run("advise", site).out())
        .contains("The scheme\n", "Held: a rule between zones", "the order of work: stages.");
    assertThat(SHELL.run("advise", site, "--zone", "party wall").out())
        .doesNotContain("The scheme\n");
    JsonNode scheme =
        JsonMapper.shared().readTree(SHELL.run("advise", site, "--json").out()).get("scheme");
    assertThat(scheme.get("zones")).hasSize(2);
    assertThat(scheme.get("combination").get("held").asBoolean()).isTrue();
  }

  @Test
  void too_many_zones_are_refused_with_what_to_do() {
    StringBuilder zones = new StringBuilder();
    for (int i = 1; i <= 13; i++) {
      zones.append(i == 1 ? "" : ",").append("{\"name\": \"bay ").append(i).append("\"}");
    }
    String site =
        file(
            folder,
            "long.site.json",
            "{\"underhold\": \"site/1\", \"name\": \"Long Row\", \"facts\": {\"loadPattern\": \"continuous\","
                + " \"excavationPosition\": \"beside\"}, \"zones\": ["
                + zones
                + "]}");
    Ran ran = SHELL.run("stages", site);

    assertThat(ran.code()).isEqualTo(Exit.SITE);
    assertThat(ran.err()).contains("at most 12 zones and this site has 13");
  }

  @Test
  void relations_are_shown_with_the_site() {
    assertThat(SHELL.run("site", "show", DEMO).out())
        .contains("Zones: box over the cut and end of the cut", "sharedEdge");
  }

  @Test
  void rules_between_zones_are_listed_and_shown_like_the_others() {
    assertThat(SHELL.run("rules", "list").out()).contains("scheme/order.drl", "SCH-01");
    assertThat(SHELL.run("rules", "show", "SCH-01").out())
        .contains("the order first-carries-before-second-opens", "oneStructure");
  }
}
