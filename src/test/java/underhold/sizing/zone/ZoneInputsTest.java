package underhold.sizing.zone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import underhold.site.FactDictionary;
import underhold.site.FactView;
import underhold.site.Site;
import underhold.site.SiteReader;
import underhold.site.SiteReading;
import underhold.site.ZoneViews;
import underhold.sizing.Amount;
import underhold.sizing.Check;
import underhold.sizing.Given;
import underhold.sizing.MissingInput;
import underhold.sizing.Origin;
import underhold.sizing.Sheet;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;
import underhold.sizing.Verdict;

/** Own cases. */
class ZoneInputsTest {
  private static final NumberInput LOAD =
      NumberInput.of("load", "load of the column", Amount.force(0), 0, 10_000, "columnLoad");
  private static final NumberInput SPAN =
      NumberInput.of("span", "clear span", Amount.length(0), 0, 5, "clearSpan");
  private static final NumberInput WATER =
      NumberInput.of("water", "water", Amount.length(0), 0, 30, "groundWaterDepth")
          .tried(NumberInput.Trial.SHIFT);
  private static final NumberInput CAREFUL =
      NumberInput.of("surcharge", "surcharge", Amount.pressure(0), 0, 100, "")
          .tried(NumberInput.Trial.NONE);
  private static final WordInput ROOM =
      WordInput.among("room", "room for braces", List.of("yes", "no"), "bracingRoom");

  private static final String SITE =
      """
      { "underhold": "site/1", "name": "Own case, Weir Yard", "units": "SI",
        "facts": { "groundWaterDepth": "3 m", "excavationDepth": "5 m" },
        "ground": { "layers": [
          { "top": "0 m", "soil": "fill", "unitWeight": "17 kN/m3" },
          { "top": "2 m", "soil": "soft-clay" },
          { "top": "6 m", "soil": "dense-gravel", "unitWeight": "21 kN/m3", "n60": 45,
            "frictionAngle": "39 deg" },
          { "top": "10 m", "soil": "rock", "unconfinedStrength": "20 MPa", "rqd": "60 %" } ] },
        "zones": [ { "name": "column",
          "facts": { "loadPattern": "concentrated", "excavationPosition": "beside",
            "columnLoad": "800 kN", "undrainedStrength": "22 kPa", "footingWidth": "30 m" } } ] }
      """;

  private static final Site READ = ((SiteReading.Valid) SiteReader.read(SITE, "own case")).site();
  private static final FactView VIEW =
      ZoneViews.known(READ, READ.zones().get(0), FactDictionary.standard());
  private static final SiteFacts FACTS = new SiteFacts(VIEW);

  @Test
  void facts_become_inputs_with_their_origin() {
    Inputs inputs =
        Inputs.from(FACTS)
            .known(LOAD)
            .known(SPAN)
            .knownOrAssumed(WATER)
            .known(ROOM)
            .orAssume(ROOM, "no", Source.judgement())
            .orAssume(LOAD, 1, Source.judgement())
            .build();
    assertThat(inputs.get(LOAD)).isEqualTo(800);
    assertThat(inputs.find(LOAD).orElseThrow().origin()).isEqualTo(Origin.STATED);
    assertThat(inputs.has(SPAN)).isFalse();
    assertThat(inputs.get(ROOM)).isEqualTo("no");
    assertThat(inputs.find(ROOM).orElseThrow().origin()).isEqualTo(Origin.ASSUMED);
    assertThat(inputs.numbers()).containsExactly(LOAD, WATER);
    assertThat(inputs.amount(LOAD)).isEqualTo(Amount.force(800));
    assertThat(inputs.missing()).isEmpty();
    assertThatThrownBy(() -> inputs.get(SPAN)).hasMessageContaining("span");
  }

  @Test
  void what_is_unknown_or_out_of_range_is_asked_once_by_its_fact() {
    NumberInput width =
        NumberInput.of("width", "width of footing", Amount.length(0), 0.1, 20, "footingWidth");
    Inputs inputs =
        Inputs.from(FACTS)
            .known(width)
            .need(width, "it bears")
            .need(SPAN, "it decides")
            .need(LOAD, "no")
            .known(LOAD)
            .need(ROOM, "it braces")
            .build();
    assertThat(inputs.missing().stream().map(MissingInput::name))
        .containsExactly("footingWidth", "clearSpan", "columnLoad", "bracingRoom");
    assertThat(inputs.missing().get(0).why()).contains("30 m", "20 m", "0.1 m");
    assertThat(inputs.missing().get(1).question()).endsWith("?");
  }

  @Test
  void a_pass_that_rests_on_a_guess_is_referred_and_names_it() {
    Inputs inputs =
        Inputs.from(FACTS)
            .known(LOAD)
            .orAssume(SPAN, 2, Source.judgement())
            .orAssume(CAREFUL, 10, Source.judgement())
            .build();
    Function<Inputs, Sheet> method =
        in -> {
          SheetBuilder sheet = SheetBuilder.titled("t", "m");
          in.write(sheet);
          sheet.check("a", "rests", in.amount(SPAN), Amount.length(9), Source.statics(), "");
          sheet.check("b", "does not", in.amount(LOAD), Amount.force(900), Source.statics(), "");
          sheet.check(
              "c", "careful", in.amount(CAREFUL), Amount.pressure(20), Source.statics(), "");
          sheet.check("d", "fails", in.amount(SPAN), Amount.length(1), Source.statics(), "");
          return sheet.build();
        };
    Sheet sheet = AssumedInputs.referred(inputs, method);
    assertThat(sheet.checks().stream().map(Check::verdict))
        .containsExactly(Verdict.REFER, Verdict.PASSES, Verdict.PASSES, Verdict.FAILS);
    assertThat(sheet.check("a").orElseThrow().note().template()).contains("clear span");
    assertThat(
            AssumedInputs.referred(inputs.with(SPAN, Given.stated(2.0)), method)
                .check("a")
                .orElseThrow()
                .verdict())
        .isEqualTo(Verdict.PASSES);
  }

  @Test
  void strata_keep_what_was_stated_and_assume_the_rest() {
    GroundColumn column = GroundColumn.of(READ.ground(), FACTS);
    assertThat(column.strata()).hasSize(4);
    Stratum clay = column.at(3).orElseThrow();
    assertThat(clay.soil()).isEqualTo(SoilClass.SOFT_CLAY);
    assertThat(clay.bottomMetres()).isEqualTo(6);
    assertThat(clay.undrainedStrength().value()).isEqualTo(22);
    assertThat(clay.unitWeight().origin()).isEqualTo(Origin.ASSUMED);
    assertThat(clay.unitWeight().value()).isEqualTo(19);
    Stratum gravel = column.at(6).orElseThrow();
    assertThat(gravel.blowCount().orElseThrow().value()).isEqualTo(45);
    assertThat(gravel.frictionAngle().value()).isEqualTo(39);
    Stratum rock = column.at(12).orElseThrow();
    assertThat(rock.unconfinedStrength().orElseThrow().value()).isEqualTo(20_000);
    assertThat(rock.rockQuality().orElseThrow().value()).isEqualTo(0.6);
    assertThat(column.knownToMetres()).isEqualTo(10);
    assertThat(column.between(1, 7)).hasSize(3);
    assertThat(column.between(1, 7).get(0).thicknessMetres()).isEqualTo(1);
    assertThat(column.between(1, 7).get(2).thicknessMetres()).isEqualTo(1);
  }

  @Test
  void effective_stress_follows_the_strata_the_dig_and_the_water() {
    GroundColumn column = GroundColumn.of(READ.ground(), FACTS);
    // 2 m × 17 + 4 m × 19 + 2 m × 21 = 152 kPa; water from 3 m to 8 m: 5 × 9.81 = 49.05 kPa
    assertThat(column.effectiveStress(8, 0, 3)).isCloseTo(152 - 49.05, within(1e-9));
    // dug to 5 m: 1 × 19 + 2 × 21 = 61; water at the dug surface: 3 × 9.81 = 29.43
    assertThat(column.effectiveStress(8, 5, 3)).isCloseTo(61 - 29.43, within(1e-9));
    assertThat(column.effectiveStress(8, 5, 20)).isCloseTo(61, within(1e-9));
    assertThat(column.effectiveStress(4, 5, 3)).isZero();
  }
}
