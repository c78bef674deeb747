package underhold.site;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import underhold.quantity.Measure;
import underhold.quantity.MeasureUnit;
import underhold.quantity.QuantityPrinter;

/** The schema, judged by an independent validator of JSON Schema draft 2020-12. */
class SiteSchemaTest {
  private static final SchemaRegistry REGISTRY =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
  private static final Schema SCHEMA = REGISTRY.getSchema(SiteSchema.generate());

  @Test
  @DisplayName("The schema obeys the meta-schema of JSON Schema draft 2020-12")
  void the_schema_is_a_schema() {
    Schema meta =
        REGISTRY.getSchema(SchemaLocation.of(SpecificationVersion.DRAFT_2020_12.getDialectId()));

    assertThat(meta.validate(SiteSchema.generate(), InputFormat.JSON)).isEmpty();
  }

  @Test
  void the_schema_is_the_same_each_time() {
    assertThat(SiteSchema.generate()).isEqualTo(SiteSchema.generate());
  }

  @Test
  void every_fact_that_may_be_stated_is_in_the_schema_and_no_other() {
    JsonNode facts =
        JsonMapper.shared().readTree(SiteSchema.generate()).at("/$defs/facts/properties");

    assertThat(facts.propertyNames())
        .containsExactlyElementsOf(
            Sites.DICTIONARY.all().stream()
                .filter(fact -> !fact.derived())
                .map(FactDefinition::name)
                .toList());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "\"clearSpan\": \"4' 6\\\"\",",
        "\"clearSpan\": \"4 ft 6 in\",",
        "\"clearSpan\": \"unknown\",",
        "\"clearSpan\": { \"value\": \"1.2 m\", \"note\": \"cores\" },",
        "\"storeys\": 4,",
        "\"storeys\": \"4\",",
        "\"bracingRoom\": true,",
        "\"tiltLimit\": \"1:500\",",
        "\"soilUnitWeight\": \"120 pcf\", \"undrainedStrength\": \"1,500 psf\",",
        "\"permeability\": \"1.5e-7 m/s\","
      })
  void valid_files_pass(String facts) {
    assertThat(Sites.problems(Sites.oneZone(facts))).isEmpty();
    assertThat(errors(Sites.oneZone(facts))).isEmpty();
  }

  @Test
  void the_full_file_and_what_the_program_writes_pass() {
    String canonical = SiteWriter.toText(Sites.valid(Sites.FULL));

    assertThat(errors(canonical)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "\"gapToExcavtion\": \"1 m\",",
        "\"clearSpan\": 1.2,",
        "\"clearSpan\": \"1.2\",",
        "\"clearSpan\": \"1.2 kN\",",
        "\"clearSpan\": \"long\",",
        "\"clearSpan\": null,",
        "\"clearSpan\": { \"note\": \"?\" },",
        "\"heritage\": \"lsted\",",
        "\"bracingRoom\": \"maybe\",",
        "\"undermined\": \"yes\",",
        "\"tiltLimit\": 500,",
        "\"storeys\": \"four\","
      })
  void usual_mistakes_fail(String facts) {
    assertThat(Sites.problems(Sites.oneZone(facts))).isNotEmpty();
    assertThat(errors(Sites.oneZone(facts))).isNotEmpty();
  }

  @Test
  void a_file_without_what_every_site_needs_fails() {
    assertThat(errors(Sites.LEAST.replace("\"name\": \"wall\",", ""))).isNotEmpty();
    assertThat(errors(Sites.LEAST.replace("\"loadPattern\"", "\"heritage\""))).isNotEmpty();
    assertThat(errors(Sites.LEAST.replace("continuous", "unknown"))).isNotEmpty();
    assertThat(errors(Sites.LEAST.replace("site/1", "site/2"))).isNotEmpty();
    assertThat(errors("{\"underhold\":\"site/1\",\"name\":\"a\",\"zones\":[]}")).isNotEmpty();
  }

  @Test
  void a_required_fact_may_stand_with_the_site() {
    String text =
        """
        { "underhold": "site/1", "name": "x", "facts": { "loadPattern": "continuous" },
          "zones": [ { "name": "a", "facts": { "excavationPosition": "beside" } } ] }
        """;

    assertThat(Sites.problems(text)).isEmpty();
    assertThat(errors(text)).isEmpty();
  }

  @ParameterizedTest
  @EnumSource(Measure.class)
  void whatever_the_program_prints_matches_the_pattern(Measure measure) {
    String pattern = QuantityPattern.of(measure);

    for (MeasureUnit unit : measure.units()) {
      assertThat(QuantityPrinter.print(-12.5, measure, unit.symbol())).matches(pattern);
      assertThat(QuantityPrinter.print(1.5e-7, measure, unit.symbol())).matches(pattern);
    }
    assertThat("12 apples").doesNotMatch(pattern);
  }

  private static List<Error> errors(String text) {
    return SCHEMA.validate(text, InputFormat.JSON);
  }
}
