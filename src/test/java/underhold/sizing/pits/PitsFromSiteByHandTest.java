package underhold.sizing.pits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static underhold.sizing.pits.HandZones.NO_LAYERS;
import static underhold.sizing.pits.HandZones.input;
import static underhold.sizing.pits.HandZones.number;
import static underhold.sizing.pits.HandZones.site;
import static underhold.sizing.pits.HandZones.size;
import static underhold.sizing.pits.HandZones.view;
import static underhold.sizing.pits.HandZones.wall;

import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import underhold.site.Site;
import underhold.sizing.Basis;
import underhold.sizing.Given;
import underhold.sizing.MissingInput;
import underhold.sizing.Origin;
import underhold.sizing.Sheet;
import underhold.sizing.zone.SoilClass;

/** What pits take from the facts of a site; own cases. */
class PitsFromSiteByHandTest {
  @Test
  @DisplayName(
      "Own case: 2.5 - 1.0 + 0.3 = 1.8 m of pit; water 1.0 + 1.8 - 6.0 = -3.2 m above its base")
  void numbers_of_the_zone() {
    PitsInput input = input();
    assertThat(number(input, PitsFact.WALL_LINE_LOAD)).isEqualTo(90);
    assertThat(number(input, PitsFact.WALL_LENGTH)).isEqualTo(8);
    assertThat(number(input, PitsFact.FOOTING_WIDTH)).isEqualTo(0.9);
    assertThat(number(input, PitsFact.FOUNDING_DEPTH)).isEqualTo(1);
    assertThat(number(input, PitsFact.EXCAVATION_BELOW_FOOTING)).isCloseTo(1.5, within(1e-12));
    assertThat(number(input, PitsFact.PIT_DEPTH)).isCloseTo(1.8, within(1e-12));
    assertThat(number(input, PitsFact.WATER_ABOVE_PIT_BASE)).isCloseTo(-3.2, within(1e-12));
    assertThat(input.amount(PitsFact.PIT_DEPTH).orElseThrow().origin()).isEqualTo(Origin.DERIVED);
    assertThat(input.amount(PitsFact.PIT_DEPTH).orElseThrow().source().basis())
        .isEqualTo(Basis.STATICS);
    assertThat(input.amount(PitsFact.CLEAR_SPAN).orElseThrow().origin()).isEqualTo(Origin.ASSUMED);
    assertThat(number(input, PitsFact.CLEAR_SPAN)).isEqualTo(0.6);
    assertThat(number(input, PitsFact.FACE_UNIT_WEIGHT)).isEqualTo(19);
    assertThat(input.amount(PitsFact.WALL_THICKNESS)).isEmpty();
    assertThat(input.faceSoil().orElseThrow().value()).isEqualTo(SoilClass.DENSE_SAND);
    assertThat(input.baseSoil()).isEmpty();
  }

  @Test
  @DisplayName(
      "Own cases: pits go to the deeper of the excavation with its toe and the bearing layer, 0.3 m"
          + " at least")
  void depth_of_pits() {
    assertThat(number(input("bearingDepth", "1.7 m"), PitsFact.PIT_DEPTH))
        .isCloseTo(1.8, within(1e-12));
    assertThat(number(input("bearingDepth", "2.4 m"), PitsFact.PIT_DEPTH)).isEqualTo(2.4);
    PitsInput none =
        input("excavationPosition", "no-excavation", "bearingDepth", "2 m", "excavationDepth", "-");
    assertThat(number(none, PitsFact.PIT_DEPTH)).isEqualTo(2);
    assertThat(number(none, PitsFact.EXCAVATION_BELOW_FOOTING)).isZero();
    assertThat(none.amount(PitsFact.EXCAVATION_BELOW_FOOTING).orElseThrow().source().citation())
        .isEqualTo("there is no new excavation");
    PitsInput shallow = input("excavationDepth", "0.8 m", "bearingDepth", "0.2 m");
    assertThat(number(shallow, PitsFact.PIT_DEPTH)).isEqualTo(0.3);
    assertThat(number(shallow, PitsFact.EXCAVATION_BELOW_FOOTING)).isZero();
    assertThat(input("excavationDepth", "0.8 m").amount(PitsFact.PIT_DEPTH)).isEmpty();
    assertThat(input("excavationDepth", "0.8 m").amount(PitsFact.WATER_ABOVE_PIT_BASE)).isEmpty();
    assertThat(input("excavationDepth", "1 m").amount(PitsFact.PIT_DEPTH)).isEmpty();
  }

  @Test
  @DisplayName(
      "Own cases: water by what was stated of the pit base, of the ground, of the excavation, in"
          + " that order")
  void water_above_the_base() {
    // stated above the base of the deepest pit, 1.5 m by the site; pits go 0.3 m deeper
    PitsInput stated = input("headAbovePitBase", "0.5 m");
    assertThat(number(stated, PitsFact.WATER_ABOVE_PIT_BASE)).isCloseTo(0.8, within(1e-9));
    assertThat(stated.amount(PitsFact.WATER_ABOVE_PIT_BASE).orElseThrow().origin())
        .isEqualTo(Origin.DERIVED);
    // 0.5 m above the base of the excavation, the pits go 0.3 m deeper
    PitsInput above = input("groundWaterDepth", "-", "headAboveExcavation", "0.5 m");
    assertThat(number(above, PitsFact.WATER_ABOVE_PIT_BASE)).isCloseTo(0.8, within(1e-9));
    PitsInput deeper =
        input("groundWaterDepth", "-", "headAboveExcavation", "0.5 m", "bearingDepth", "2.5 m");
    assertThat(number(deeper, PitsFact.WATER_ABOVE_PIT_BASE)).isCloseTo(1.5, within(1e-9));
    assertThat(input("groundWaterDepth", "-").amount(PitsFact.WATER_ABOVE_PIT_BASE)).isEmpty();
    assertThat(
            number(
                input("groundWaterDepth", "1.5 m", "bearingDepth", "2.5 m"),
                PitsFact.WATER_ABOVE_PIT_BASE))
        .isCloseTo(2, within(1e-9));
  }

  @ParameterizedTest(name = "footing {0}, wall {1}: {2}")
  @CsvSource({
    "strong-concrete, -, REINFORCED_CONCRETE",
    "plain-concrete, -, PLAIN_CONCRETE",
    "rubble, unreinforced-masonry, RUBBLE",
    "plain-concrete, rubble, RUBBLE",
    "plain-concrete, unreinforced-masonry, PLAIN_CONCRETE",
    "-, reinforced-concrete, REINFORCED_CONCRETE",
    "-, reinforced-masonry, SOLID_MASONRY",
    "-, unreinforced-masonry, SOLID_MASONRY",
    "-, steel, ",
    "-, -, "
  })
  void the_footing_spans_else_the_wall_and_rubble_in_either_counts(
      String footing, String wall, String material) {
    PitsInput input =
        input("footingStrength", footing, "structureMaterial", wall, "wallThickness", "0.4 m");
    assertThat(input.material().map(given -> given.value().name()))
        .isEqualTo(Optional.ofNullable(material));
    boolean masonry = "SOLID_MASONRY".equals(material) || "RUBBLE".equals(material);
    assertThat(input.amount(PitsFact.WALL_THICKNESS).isPresent()).isEqualTo(masonry);
  }

  @Test
  void choices_keep_their_origin_and_only_good_counts_as_sound() {
    PitsInput good = input("structureCondition", "good", "bracingRoom", "yes");
    assertThat(good.condition().orElseThrow().value()).isEqualTo(WallCondition.SOUND);
    assertThat(good.condition().orElseThrow().origin()).isEqualTo(Origin.STATED);
    assertThat(good.bracePossible().orElseThrow().value()).isTrue();
    PitsInput fair =
        input("structureCondition", "fair", "bracingRoom", "no", "stabilitySeen", "yes");
    assertThat(fair.condition().orElseThrow().value()).isEqualTo(WallCondition.POOR);
    assertThat(fair.condition().orElseThrow().origin()).isEqualTo(Origin.DERIVED);
    assertThat(fair.condition().orElseThrow().source().citation())
        .isEqualTo("the site says fair; only good condition counts as sound");
    assertThat(fair.bracePossible().orElseThrow().value()).isFalse();
    assertThat(fair.lateralStabilityVerified().orElseThrow().value()).isTrue();
    assertThat(fair.lateralStabilityVerified().orElseThrow().origin()).isEqualTo(Origin.STATED);
    PitsInput silent = input();
    assertThat(silent.condition().map(Given::origin).orElse(Origin.ASSUMED))
        .isEqualTo(Origin.ASSUMED);
    assertThat(silent.bracePossible()).isEmpty();
    assertThat(silent.lateralStabilityVerified().orElseThrow().value()).isFalse();
    assertThat(silent.lateralStabilityVerified().orElseThrow().origin()).isEqualTo(Origin.ASSUMED);
    assertThat(input("standUp", "hours").standUp().orElseThrow())
        .satisfies(
            given -> {
              assertThat(given.value()).isEqualTo(StandUp.HOURS);
              assertThat(given.origin()).isEqualTo(Origin.STATED);
            });
    assertThat(silent.standUp().orElseThrow().origin()).isEqualTo(Origin.ASSUMED);
  }

  @Test
  void facts_of_the_zone_serve_where_there_are_no_layers() {
    PitsInput clay =
        input(
            "worstSoil",
            "soft-clay",
            "undrainedStrength",
            "18 kPa",
            "soilUnitWeight",
            "17 kN/m3",
            "bearingDepth",
            "2.5 m",
            "bearingKind",
            "hard-clay");
    assertThat(clay.faceSoil().orElseThrow().value()).isEqualTo(SoilClass.SOFT_CLAY);
    assertThat(clay.baseSoil().orElseThrow().value()).isEqualTo(SoilClass.STIFF_CLAY);
    assertThat(number(clay, PitsFact.FACE_UNDRAINED_STRENGTH)).isEqualTo(18);
    assertThat(number(clay, PitsFact.BASE_UNDRAINED_STRENGTH)).isEqualTo(18);
    assertThat(number(clay, PitsFact.FACE_UNIT_WEIGHT)).isEqualTo(17);
    // the kind of a bearing layer whose depth nobody knows says nothing of the pit base
    PitsInput unknown = input("undrainedStrength", "18 kPa", "bearingKind", "rock");
    assertThat(unknown.baseSoil()).isEmpty();
    assertThat(unknown.amount(PitsFact.BASE_UNDRAINED_STRENGTH)).isEmpty();
  }

  @Test
  void number_beyond_the_sheet_is_asked_for_with_its_range() {
    Sheet sheet = size(wall("bearingDepth", "40 m"), NO_LAYERS);
    assertThat(sheet.missing().stream().map(MissingInput::name)).containsExactly("pit-depth");
    assertThat(sheet.missing().get(0).why())
        .isEqualTo(
            "the depth of the pits below the underside of the footing is 40.0 m; it must be from"
                + " 0.3 to 30.0, beyond which this sheet does not hold");
    assertThat(sheet.missing().get(0).question()).isEqualTo(PitsFact.PIT_DEPTH.question());
    assertThat(sheet.steps()).isEmpty();
    SiteAmounts amounts = new SiteAmounts(PitsInput.builder());
    amounts.put(PitsFact.SURCHARGE, Given.stated(500.0));
    assertThat(amounts.refused()).isEmpty();
    amounts.put(PitsFact.SURCHARGE, Given.stated(500.1));
    assertThat(amounts.refused().get(0).question())
        .isEqualTo("Is the surcharge on the ground beside the pits right?");
  }

  @Test
  void zone_that_pits_do_not_fit_is_told_so() {
    Sheet column = size(wall("loadPattern", "concentrated"), NO_LAYERS);
    assertThat(column.missing()).hasSize(1);
    assertThat(column.missing().get(0).name()).isEqualTo("loadPattern");
    assertThat(column.missing().get(0).why())
        .startsWith("Here the site says: concentrated. This sheet sizes pits under a wall");
    Sheet piles = size(wall("foundationKind", "timber-piles", "lineLoad", "-"), NO_LAYERS);
    assertThat(piles.missing().stream().map(MissingInput::name)).containsExactly("foundationKind");
    Sheet unknown = size(wall("foundationKind", "-", "lineLoad", "-"), NO_LAYERS);
    assertThat(unknown.missing().stream().map(MissingInput::name))
        .containsExactly("foundationKind", "lineLoad");
    assertThat(unknown.missing().get(0).why())
        .isEqualTo("it decides whether this sheet holds at all");
    assertThat(size(wall("foundationKind", "mass-rubble"), NO_LAYERS).missing()).isEmpty();
  }

  @Test
  void nothing_for_pits_to_reach() {
    Sheet shallow = size(wall("excavationDepth", "0.9 m"), NO_LAYERS);
    assertThat(shallow.missing().get(0).name()).isEqualTo("bearingDepth");
    assertThat(shallow.missing().get(0).why())
        .isEqualTo(
            "The excavation does not go below the footing, so pits would go to good bearing, and"
                + " its depth is not known.");
    Sheet still =
        size(
            wall(
                "excavationPosition",
                "no-excavation",
                "excavationDepth",
                "-",
                "bearingDepth",
                "0 m",
                "lineLoad",
                "-"),
            NO_LAYERS);
    assertThat(still.missing()).hasSize(1);
    assertThat(still.missing().get(0).why())
        .isEqualTo(
            "There is no new excavation and the footing stands on good bearing: there is nothing"
                + " for pits to reach.");
  }

  @Test
  void water_under_pressure_is_the_first_caution() {
    Sheet sheet = size(wall("artesian", "yes"), NO_LAYERS);
    assertThat(sheet.cautions().get(0).hazard()).isEqualTo("water under pressure");
    assertThat(sheet.cautions().get(0).decidedBy()).isEqualTo("the engineer of record");
    Sheet none = size(wall("artesian", "no"), NO_LAYERS);
    assertThat(none.cautions().get(0).hazard()).isEqualTo("cave-in");
  }

  @Test
  void gaps_are_asked_for_by_the_names_of_the_site() {
    Sheet sheet =
        size(
            wall(
                "lineLoad",
                "-",
                "wallLength",
                "-",
                "footingWidth",
                "-",
                "foundingDepth",
                "-",
                "groundWaterDepth",
                "-",
                "footingStrength",
                "-",
                "worstSoil",
                "-"),
            NO_LAYERS);
    assertThat(sheet.missing().stream().map(MissingInput::name))
        .contains("lineLoad", "wallLength", "footingWidth", "foundingDepth", "groundWaterDepth")
        .contains("footingStrength", "worstSoil");
    assertThat(sheet.missing()).allSatisfy(one -> assertThat(one.question()).contains("?"));
    assertThat(sheet.missing()).allSatisfy(one -> assertThat(one.why()).isNotBlank());
  }

  @Test
  void method_is_pits_with_its_settings() {
    PitsMethod method = new PitsMethod();
    assertThat(method.id()).isEqualTo("pits");
    assertThat(method.settings()).isSameAs(PitsSettings.TABLE);
    Site site = site(wall(), NO_LAYERS);
    Sheet sheet = method.size(view(site), site.ground(), PitsSettings.TABLE.defaults());
    assertThat(sheet.methodId()).isEqualTo("pits");
    assertThat(sheet.complete()).isTrue();
  }
}
