package underhold.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import underhold.site.SiteProblem.Code;

/** Each sort of mistake in a site file gives its own problem at its own place; own cases. */
class SiteProblemCodesTest {
  private static final String FACTS = "zones[0].facts.";

  static Stream<Arguments> mistakes() {
    return Stream.of(
        arguments("", Code.UNREADABLE_JSON, ""),
        arguments("{ \"underhold\": ", Code.UNREADABLE_JSON, ""),
        arguments("{ \"underhold\": NaN }", Code.UNREADABLE_JSON, ""),
        arguments("{} {}", Code.UNREADABLE_JSON, ""),
        arguments("[".repeat(100_000), Code.TOO_DEEP, ""),
        arguments("{\"zones\":".repeat(5_000), Code.TOO_DEEP, ""),
        arguments("null", Code.WRONG_TYPE, ""),
        arguments("[]", Code.WRONG_TYPE, ""),
        arguments(Sites.LEAST.replace("site/1", "site/2"), Code.WRONG_VERSION, "underhold"),
        arguments(
            Sites.LEAST.replace("\"underhold\": \"site/1\",", ""),
            Code.MISSING_REQUIRED,
            "underhold"),
        arguments(Sites.file("", "\"unit\": \"SI\","), Code.UNKNOWN_NAME, "unit"),
        arguments(Sites.file("", "\"units\": \"imperial\","), Code.NOT_ALLOWED_VALUE, "units"),
        arguments(Sites.file("", "\"name\": \"Twice\","), Code.DUPLICATE_NAME, "name"),
        arguments(Sites.file("", "\"note\": null,"), Code.WRONG_TYPE, "note"),
        arguments(Sites.file("", "\"facts\": [],"), Code.WRONG_TYPE, "facts"),
        arguments(
            Sites.LEAST.replace("Dock Row", "Dock\\u0007Row"), Code.NOT_ALLOWED_VALUE, "name"),
        arguments(Sites.LEAST.replace("Dock Row", "D\\u202erow"), Code.NOT_ALLOWED_VALUE, "name"),
        arguments(Sites.LEAST.replace("Dock Row", "\\ud800"), Code.NOT_ALLOWED_VALUE, "name"),
        arguments(Sites.LEAST.replace("Dock Row", "d".repeat(201)), Code.NOT_ALLOWED_VALUE, "name"),
        arguments(Sites.LEAST.replace("Dock Row", "  "), Code.NOT_ALLOWED_VALUE, "name"),
        arguments(
            Sites.LEAST.replace("\"name\": \"wall\",", ""), Code.MISSING_REQUIRED, "zones[0].name"),
        arguments(
            "{\"underhold\":\"site/1\",\"name\":\"a\",\"zones\":[]}",
            Code.MISSING_REQUIRED,
            "zones"),
        arguments("{\"underhold\":\"site/1\",\"name\":\"a\"}", Code.MISSING_REQUIRED, "zones"),
        arguments(
            Sites.oneZone("").replace("continuous", "unknown"),
            Code.MISSING_REQUIRED,
            FACTS + "loadPattern"),
        arguments(zones(501), Code.TOO_MANY, "zones"),
        arguments(fact("gapToExcavtion", "\"1 m\""), Code.UNKNOWN_NAME, FACTS + "gapToExcavtion"),
        arguments(fact("clearSpan", "1.2"), Code.NO_UNIT, FACTS + "clearSpan"),
        arguments(fact("clearSpan", "\"1.2\""), Code.NO_UNIT, FACTS + "clearSpan"),
        arguments(fact("clearSpan", "1e999"), Code.NO_UNIT, FACTS + "clearSpan"),
        arguments(fact("storeys", "1e999"), Code.NOT_A_QUANTITY, FACTS + "storeys"),
        arguments(fact("storeys", "9".repeat(900)), Code.NOT_A_QUANTITY, FACTS + "storeys"),
        arguments(fact("storeys", "2.5"), Code.NOT_ALLOWED_VALUE, FACTS + "storeys"),
        arguments(fact("storeys", "61"), Code.OUT_OF_RANGE, FACTS + "storeys"),
        arguments(fact("clearSpan", "\"1.2 kN\""), Code.WRONG_UNIT, FACTS + "clearSpan"),
        arguments(fact("clearSpan", "\"1.2 mtr\""), Code.WRONG_UNIT, FACTS + "clearSpan"),
        arguments(fact("clearSpan", "\"about 1 m\""), Code.NOT_A_QUANTITY, FACTS + "clearSpan"),
        arguments(fact("clearSpan", "\"NaN m\""), Code.NOT_A_QUANTITY, FACTS + "clearSpan"),
        arguments(fact("clearSpan", "\"11 m\""), Code.OUT_OF_RANGE, FACTS + "clearSpan"),
        arguments(fact("clearSpan", "true"), Code.WRONG_TYPE, FACTS + "clearSpan"),
        arguments(fact("clearSpan", "null"), Code.WRONG_TYPE, FACTS + "clearSpan"),
        arguments(fact("clearSpan", "[1]"), Code.WRONG_TYPE, FACTS + "clearSpan"),
        arguments(fact("clearSpan", "{}"), Code.MISSING_REQUIRED, FACTS + "clearSpan.value"),
        arguments(
            fact("clearSpan", "{\"value\":\"1 m\",\"notes\":\"\"}"),
            Code.UNKNOWN_NAME,
            FACTS + "clearSpan.notes"),
        arguments(fact("tiltLimit", "0.002"), Code.WRONG_TYPE, FACTS + "tiltLimit"),
        arguments(fact("tiltLimit", "\"0.002\""), Code.NOT_A_QUANTITY, FACTS + "tiltLimit"),
        arguments(fact("tiltLimit", "\"1 in 20\""), Code.OUT_OF_RANGE, FACTS + "tiltLimit"),
        arguments(fact("heritage", "\"lsted\""), Code.NOT_ALLOWED_VALUE, FACTS + "heritage"),
        arguments(fact("heritage", "3"), Code.WRONG_TYPE, FACTS + "heritage"),
        arguments(fact("bracingRoom", "\"maybe\""), Code.NOT_ALLOWED_VALUE, FACTS + "bracingRoom"),
        arguments(fact("undermined", "\"yes\""), Code.DERIVED_NOT_STATED, FACTS + "undermined"),
        arguments(fact("pitDepth", "\"3 m\""), Code.DERIVED_NOT_STATED, FACTS + "pitDepth"),
        arguments(layers("{\"soil\":\"silt\"}"), Code.MISSING_REQUIRED, "ground.layers[0].top"),
        arguments(layers("{\"top\":\"0 m\"}"), Code.MISSING_REQUIRED, "ground.layers[0].soil"),
        arguments(
            layers("{\"top\":\"0 m\",\"soil\":\"unknown\"}"),
            Code.MISSING_REQUIRED,
            "ground.layers[0].soil"),
        arguments(
            layers("{\"top\":\"0 m\",\"soil\":\"mud\"}"),
            Code.NOT_ALLOWED_VALUE,
            "ground.layers[0].soil"),
        arguments(
            layers("{\"top\":\"0 m\",\"soil\":\"silt\",\"rqd\":\"150 %\"}"),
            Code.OUT_OF_RANGE,
            "ground.layers[0].rqd"),
        arguments(
            layers("{\"top\":\"2 m\",\"soil\":\"silt\"},{\"top\":\"2 m\",\"soil\":\"fill\"}"),
            Code.LAYERS_OUT_OF_ORDER,
            "ground.layers[1].top"),
        arguments(Sites.file("", "\"ground\": {},"), Code.MISSING_REQUIRED, "ground.layers"),
        arguments(Sites.file("", "\"sizing\": {\"pit\": {}},"), Code.UNKNOWN_NAME, "sizing.pit"),
        arguments(
            Sites.file("", "\"sizing\": {\"pits\": {\"w\": null}},"),
            Code.WRONG_TYPE,
            "sizing.pits.w"),
        arguments(
            Sites.file("", "\"sizing\": {\"pits\": {\"a b\": 1}},"),
            Code.UNKNOWN_NAME,
            "sizing.pits.a b"),
        arguments(
            Sites.file("", "\"sizing\": {\"pits\": {\"w\": \"\"}},"),
            Code.NOT_ALLOWED_VALUE,
            "sizing.pits.w"));
  }

  @ParameterizedTest
  @MethodSource("mistakes")
  void each_mistake_gives_its_code_at_its_place(String text, Code code, String place) {
    assertThat(Sites.problems(text))
        .singleElement()
        .satisfies(
            problem -> {
              assertThat(problem.code()).isEqualTo(code);
              assertThat(problem.place()).isEqualTo(place);
              assertThat(problem.message()).isNotBlank();
              assertThat(problem.text()).startsWith("test.site.json").doesNotContain("\n");
            });
  }

  @Test
  void a_problem_says_line_column_value_limits_and_suggestion() {
    String text =
        """
        { "underhold": "site/1", "name": "Dock Row",
          "zones": [ { "name": "wall", "facts": {
            "loadPattern": "continuous", "excavationPosition": "besides",
            "movementLimit": "4 in" } } ] }
        """;

    List<SiteProblem> problems = Sites.problems(text);

    assertThat(problems)
        .extracting(SiteProblem::line, SiteProblem::column, SiteProblem::value)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple(3, 56, "besides"),
            org.assertj.core.groups.Tuple.tuple(4, 22, "4 in"));
    assertThat(problems.get(0).suggestion()).isEqualTo("did you mean \"beside\"?");
    assertThat(problems.get(0).message()).contains("partly-under").contains("no-excavation");
    assertThat(problems.get(1).message())
        .contains("between 1 mm and 75 mm (0.03937 in and 2.953 in)");
  }

  @Test
  void all_problems_are_found_at_once_in_the_order_of_the_file() {
    String text =
        """
        { "underhold": "site/1", "unit": "SI",
          "facts": { "heritage": 1,
            "clearSpan": "3" },
          "zones": [ { "name": "a" },
            { "name": "A", "facts": { "loadPattern": "area", "excavationPosition": "beside" } } ] }
        """;

    assertThat(Sites.problems(text))
        .extracting(SiteProblem::code)
        .containsExactly(
            Code.MISSING_REQUIRED,
            Code.UNKNOWN_NAME,
            Code.WRONG_TYPE,
            Code.NO_UNIT,
            Code.MISSING_REQUIRED,
            Code.MISSING_REQUIRED,
            Code.DUPLICATE_ZONE);
  }

  @Test
  void countless_problems_are_counted_and_not_listed() {
    String doubles = "\"heritage\": 1,".repeat(50_000);

    List<SiteProblem> problems = Sites.problems(Sites.oneZone(doubles));

    assertThat(problems).hasSize(Problems.MOST + 1);
    assertThat(problems.get(Problems.MOST).message())
        .isEqualTo("49500 more problems are not listed");
  }

  @Test
  void a_required_fact_of_the_site_serves_every_zone_but_the_zone_has_the_last_word() {
    String site =
        """
        { "underhold": "site/1", "name": "x",
          "facts": { "loadPattern": "continuous", "excavationPosition": "beside" },
          "zones": [ { "name": "a" }, { "name": "b", "facts": { "loadPattern": "unknown" } } ] }
        """;

    assertThat(Sites.problems(site))
        .extracting(SiteProblem::place)
        .containsExactly("zones[1].facts.loadPattern");
  }

  private static String fact(String name, String json) {
    return Sites.oneZone("\"" + name + "\": " + json + ",");
  }

  private static String layers(String layers) {
    return Sites.file("", "\"ground\": {\"layers\": [" + layers + "]},");
  }

  private static String zones(int count) {
    return "{\"underhold\":\"site/1\",\"name\":\"a\",\"zones\":["
        + String.join(",", java.util.Collections.nCopies(count, "{\"name\":\"z\"}"))
        + "]}";
  }
}
