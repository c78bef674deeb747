package underhold.sizing.pits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import underhold.quantity.UnitSystem;
import underhold.site.FactDictionary;
import underhold.site.FactView;
import underhold.site.Site;
import underhold.site.SiteReader;
import underhold.site.SiteReading;
import underhold.site.ZoneViews;
import underhold.sizing.Basis;
import underhold.sizing.Given;
import underhold.sizing.MissingInput;
import underhold.sizing.Origin;
import underhold.sizing.Sheet;
import underhold.sizing.zone.SoilClass;

/** What pits take from a site; own cases throughout. */
class PitsFromSiteByHandTest {
  private static final String NO_LAYERS = "";

  /** A wall of 8 m on a strip; each pair of words is a fact and its text, "-" takes it away. */
  private static Map<String, String> wall(String... changes) {
    Map<String, String> facts = new LinkedHashMap<>();
    facts.put("loadPattern", "continuous");
    facts.put("excavationPosition", "beside");
    facts.put("foundationKind", "strip");
    facts.put("lineLoad", "90 kN/m");
    facts.put("wallLength", "8 m");
    facts.put("footingWidth", "0.9 m");
    facts.put("foundingDepth", "1 m");
    facts.put("footingStrength", "plain-concrete");
    facts.put("excavationDepth", "2.5 m");
    facts.put("groundWaterDepth", "6 m");
    facts.put("worstSoil", "dense-sand");
    for (int i = 0; i < changes.length; i += 2) {
      facts.put(changes[i], changes[i + 1]);
      facts.remove(changes[i], "-");
    }
    return facts;
  }

  private static Site site(Map<String, String> facts, String layers) {
    List<String> siteWide = List.of("excavationDepth", "groundWaterDepth");
    String text =
        """
        { "underhold": "site/1", "name": "Own case, Bell Yard", "units": "SI",
          "facts": { %s }, "ground": { "layers": [ %s ] },
          "zones": [ { "name": "wall", "facts": { %s } } ] }
        """
            .formatted(json(facts, siteWide, true), layers, json(facts, siteWide, false));
    SiteReading reading = SiteReader.read(text, "own case");
    assertThat(reading).as(reading.toString()).isInstanceOf(SiteReading.Valid.class);
    return ((SiteReading.Valid) reading).site();
  }

  private static String json(Map<String, String> facts, List<String> siteWide, boolean wanted) {
    return facts.entrySet().stream()
        .filter(entry -> siteWide.contains(entry.getKey()) == wanted)
        .map(entry -> "\"%s\": \"%s\"".formatted(entry.getKey(), entry.getValue()))
        .collect(Collectors.joining(", "));
  }

  private static FactView view(Site site) {
    return ZoneViews.known(site, site.zones().get(0), FactDictionary.standard());
  }

  private static PitsInput input(Map<String, String> facts, String layers) {
    Site site = site(facts, layers);
    return PitsFromSite.input(view(site), site.ground(), PitsSettings.defaults());
  }

  private static PitsInput input(String... changes) {
    return input(wall(changes), NO_LAYERS);
  }

  private static Sheet size(Map<String, String> facts, String layers) {
    Site site = site(facts, layers);
    return PitsFromSite.size(view(site), site.ground(), PitsSettings.defaults());
  }

  private static double number(PitsInput input, PitsFact fact) {
    return input.amount(fact).orElseThrow().value();
  }

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
      "Own cases: pits go to the deeper of the excavation with its toe and the bearing layer, 0.3 m at least")
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
      "Own cases: water by what was stated of the pit base, of the ground, of the excavation, in that order")
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

  private static final String LAYERS =
      """
      { "top": "0 m", "soil": "fill", "unitWeight": "17 kN/m3" },
      { "top": "0.8 m", "soil": "dense-sand", "unitWeight": "20 kN/m3", "frictionAngle": "36 deg",
        "standUp": "minutes" },
      { "top": "1.6 m", "soil": "stiff-clay", "unitWeight": "19 kN/m3",
        "undrainedStrength": "60 kPa", "standUp": "days" },
      { "top": "3.5 m", "soil": "loose-sand", "unitWeight": "18 kN/m3" },
      { "top": "4.6 m", "soil": "peat" }
      """;

  @Test
  @DisplayName(
      "Own case: faces from 1 to 2.8 m in sand and clay, base to 2.8 + 1.8 = 4.6 m in clay and loose sand")
  void layers_at_the_faces_and_below_the_base() {
    PitsInput input = input(wall("worstSoil", "-"), LAYERS);
    // 90 / 0.9 = 100 kPa: sand presses 0.26 x 100, clay 100 - 120 < 0
    assertThat(input.faceSoil().orElseThrow().value()).isEqualTo(SoilClass.DENSE_SAND);
    assertThat(input.faceSoil().orElseThrow().source().citation())
        .isEqualTo(
            "presses most of the layers at the faces: dense-sand from 0.8 m, stiff-clay from 1.6 m");
    assertThat(input.facesRun().orElseThrow().value()).isTrue();
    assertThat(number(input, PitsFact.FACE_FRICTION_ANGLE)).isEqualTo(24); // clay's careful one
    assertThat(number(input, PitsFact.FACE_UNDRAINED_STRENGTH)).isEqualTo(60);
    assertThat(number(input, PitsFact.FACE_UNIT_WEIGHT)).isEqualTo(20);
    // clay bears 5.14 x 60 = 308 kPa; loose sand 28 degrees: 0.5 x 8 x 0.9 x 16.7 = 60 kPa
    assertThat(input.baseSoil().orElseThrow().value()).isEqualTo(SoilClass.LOOSE_SAND);
    assertThat(input.baseSoil().orElseThrow().source().citation())
        .contains("bears least within two footing widths", "loose-sand from 3.5 m");
    assertThat(number(input, PitsFact.BASE_UNIT_WEIGHT)).isEqualTo(18);
    assertThat(number(input, PitsFact.BASE_FRICTION_ANGLE)).isEqualTo(28);
    assertThat(input.standUp().orElseThrow().origin()).isEqualTo(Origin.DERIVED);
    assertThat(input.standUp().orElseThrow().value()).isEqualTo(StandUp.MINUTES);
  }

  @Test
  void layer_that_begins_where_the_range_ends_is_out_of_it() {
    String layers =
        """
        { "top": "0 m", "soil": "stiff-clay", "undrainedStrength": "80 kPa" },
        { "top": "1 m", "soil": "dense-sand" },
        { "top": "2.8 m", "soil": "dense-gravel" },
        { "top": "4.6 m", "soil": "peat" }
        """;
    PitsInput input = input(wall("worstSoil", "-"), layers);
    assertThat(input.faceSoil().orElseThrow().value()).isEqualTo(SoilClass.DENSE_SAND);
    assertThat(input.facesRun().orElseThrow().value()).isTrue();
    assertThat(input.baseSoil().orElseThrow().value()).isEqualTo(SoilClass.DENSE_GRAVEL);
    assertThat(input.amount(PitsFact.FACE_UNDRAINED_STRENGTH)).isEmpty();
    assertThat(number(input, PitsFact.FACE_UNIT_WEIGHT)).isEqualTo(19); // not every layer states it
    Sheet sheet = size(wall("worstSoil", "-"), layers);
    assertThat(sheet.cautions().get(0).hazard()).isEqualTo("soil above the footing");
    assertThat(sheet.cautions().get(0).advice().in(UnitSystem.SI))
        .contains("also go through: stiff-clay from 0 m.");
    PitsInput wide = input(wall("footingWidth", "0.91 m", "worstSoil", "-"), layers);
    assertThat(wide.baseSoil().orElseThrow().value()).isEqualTo(SoilClass.PEAT);
  }

  @Test
  void heavier_load_makes_the_clay_press_more_than_the_sand() {
    // 200 / 0.9 = 222 kPa: sand of 36 degrees 0.26 x 222 = 58, clay 222 - 120 = 102
    assertThat(
            input(wall("lineLoad", "200 kN/m", "worstSoil", "-"), LAYERS)
                .faceSoil()
                .orElseThrow()
                .value())
        .isEqualTo(SoilClass.STIFF_CLAY);
    // without a load 100 kPa stand in
    assertThat(
            input(wall("lineLoad", "-", "worstSoil", "-"), LAYERS).faceSoil().orElseThrow().value())
        .isEqualTo(SoilClass.DENSE_SAND);
  }

  @Test
  void number_beyond_the_sheet_is_asked_for_with_its_range() {
    Sheet sheet = size(wall("bearingDepth", "40 m"), NO_LAYERS);
    assertThat(sheet.missing().stream().map(MissingInput::name)).containsExactly("pit-depth");
    assertThat(sheet.missing().get(0).why())
        .isEqualTo(
            "the depth of the pits below the underside of the footing is 40.0 m; it must be from 0.3 to 30.0, beyond which this sheet does not hold");
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
            "The excavation does not go below the footing, so pits would go to good bearing, and its depth is not known.");
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
            "There is no new excavation and the footing stands on good bearing: there is nothing for pits to reach.");
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
