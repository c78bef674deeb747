package underhold.sizing.zone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import underhold.mechanics.timber.LaggingThickness.Ground;
import underhold.mechanics.timber.SheetingSoil;
import underhold.site.FactDictionary;
import underhold.site.GroundLayer;
import underhold.site.GroundProfile;
import underhold.site.Site;
import underhold.site.SiteReader;
import underhold.site.SiteReading;
import underhold.site.ZoneViews;
import underhold.sizing.Given;
import underhold.sizing.Origin;

/** Soils, layers and strata of a zone, by hand; own cases. */
class GroundByHandTest {
  private static Site site(String facts, String layers) {
    String text =
        """
        { "underhold": "site/1", "name": "Own case, Kiln Row", "units": "SI",
          "ground": { "layers": [ %s ] },
          "zones": [ { "name": "wall", "facts": { "loadPattern": "continuous",
            "excavationPosition": "beside"%s } } ] }
        """
            .formatted(layers, facts.isEmpty() ? "" : ", " + facts);
    SiteReading reading = SiteReader.read(text, "own case");
    assertThat(reading).as(reading.toString()).isInstanceOf(SiteReading.Valid.class);
    return ((SiteReading.Valid) reading).site();
  }

  private static SiteFacts facts(String facts) {
    Site site = site(facts, "");
    return facts(site);
  }

  private static SiteFacts facts(Site site) {
    return new SiteFacts(ZoneViews.known(site, site.zones().get(0), FactDictionary.standard()));
  }

  @ParameterizedTest(name = "{0}")
  @DisplayName(
      "Caltrans Tables 3-1, 3-2 and 4-2, lower ends (secondary digest), for sand and gravel; the"
          + " rest by judgement")
  @CsvSource({
    "ROCK, 40, 0, 29, sedimentary-rock, A, COMPETENT, false, false",
    "HARD, 37, 0, 22, sand, A, COMPETENT, false, false",
    "DENSE_GRAVEL, 37, 0, 29, gravel, C, COMPETENT, false, true",
    "DENSE_SAND, 37, 0, 24, sand, C, COMPETENT, false, true",
    "LOOSE_SAND, 28, 0, 19, sand, C, DIFFICULT, false, true",
    "SILT, 26, 0, 17, clay, C, DIFFICULT, false, true",
    "STIFF_CLAY, 24, 50, 17, clay, B, COMPETENT, true, false",
    "SOFT_CLAY, 20, 15, 17, , C, DANGEROUS, true, false",
    "FILL, 26, 0, 17, , C, DIFFICULT, false, true",
    "PEAT, 15, 0, 15, , C, DANGEROUS, false, true"
  })
  void classes_of_soil(
      SoilClass soil,
      double friction,
      double strength,
      double base,
      String presumptive,
      SheetingSoil sheeting,
      Ground ground,
      boolean clay,
      boolean runs) {
    assertThat(soil.frictionAngleDegrees()).isEqualTo(friction);
    assertThat(soil.undrainedStrengthKilopascals()).isEqualTo(strength);
    assertThat(soil.baseFrictionDegrees()).isEqualTo(base);
    assertThat(soil.presumptiveClass()).isEqualTo(Optional.ofNullable(presumptive));
    assertThat(soil.sheetingSoil()).isEqualTo(sheeting);
    assertThat(soil.ground()).isEqualTo(ground);
    assertThat(soil.clay()).isEqualTo(clay);
    assertThat(soil.runs()).isEqualTo(runs);
    assertThat(soil.label()).isNotBlank();
  }

  @Test
  void words_of_the_site_as_classes() {
    assertThat(SiteSoils.soil("mixed-fine-sand")).contains(SoilClass.SILT);
    assertThat(SiteSoils.soil("hard-clay-or-till")).contains(SoilClass.STIFF_CLAY);
    assertThat(SiteSoils.soil("lava")).isEmpty();
    assertThat(SiteSoils.bearing("dense-granular")).contains(SoilClass.DENSE_SAND);
    assertThat(SiteSoils.bearing("soft-clay")).isEmpty();
  }

  private static final String LAYERS =
      """
      { "top": "0 m", "soil": "dense-sand", "frictionAngle": "55 deg" },
      { "top": "2 m", "soil": "stiff-clay", "unitWeight": "20 kN/m3" },
      { "top": "4 m", "soil": "stiff-clay", "undrainedStrength": "40 kPa" },
      { "top": "6 m", "soil": "rock" }
      """;

  private static List<GroundLayer> layers() {
    return site("", LAYERS).ground().layers();
  }

  @Test
  @DisplayName(
      "Own case: strengths of layers stated, of the softest clay, or careful; an angle over 50"
          + " degrees is cut")
  void layers_as_soils() {
    List<LayerSoil> own = LayerSoil.of(layers(), Optional.of(Given.stated(30.0)));
    assertThat(own).hasSize(4);
    assertThat(own.get(0).frictionAngle().value()).isEqualTo(50);
    assertThat(own.get(0).frictionAngle().origin()).isEqualTo(Origin.STATED);
    assertThat(own.get(0).undrainedStrength().value()).isZero();
    assertThat(own.get(1).undrainedStrength().value()).isEqualTo(30);
    assertThat(own.get(2).undrainedStrength().value()).isEqualTo(40);
    assertThat(own.get(1).unitWeight().orElseThrow().value()).isEqualTo(20);
    assertThat(own.get(2).unitWeight()).isEmpty();
    assertThat(own.get(2).undrainedStrength().source().citation()).isEqualTo("stiff-clay from 4 m");
    List<LayerSoil> silent = LayerSoil.of(layers(), Optional.empty());
    assertThat(silent.get(1).undrainedStrength().value()).isEqualTo(50);
    assertThat(silent.get(1).undrainedStrength().origin()).isEqualTo(Origin.ASSUMED);
    assertThat(silent.get(1).undrainedStrength().source().citation())
        .isEqualTo("stiff-clay from 2 m: careful value of its class");
    assertThat(silent.get(1).frictionAngle().value()).isEqualTo(24);
    assertThat(LayerSoil.words(silent.subList(0, 2)))
        .isEqualTo("dense-sand from 0 m, stiff-clay from 2 m");
  }

  @Test
  @DisplayName(
      "Own case: under 100 kPa clay of 40 kPa presses 20, sand of 50 degrees 13; rock comes last"
          + " even beside none")
  void layer_that_presses_most_and_bears_least() {
    List<LayerSoil> own = LayerSoil.of(layers(), Optional.empty());
    // sand: tan^2(45 - 25) = 0.1325; clay of 50 kPa: 100 - 100 = 0; clay of 40: 100 - 80 = 20
    assertThat(LayerSoil.pressingMost(own, 100)).contains(own.get(2));
    // 90 kPa: 11.9 against 10
    assertThat(LayerSoil.pressingMost(own, 90)).contains(own.get(0));
    assertThat(LayerSoil.pressingMost(List.of(own.get(3), own.get(1)), 50)).contains(own.get(1));
    assertThat(LayerSoil.pressingMost(List.of(), 50)).isEmpty();
    // clay of 40 kPa bears 5.14 x 40 = 206; sand of 50 degrees 0.5 x 8 x B x 763 = 3,051 B
    assertThat(LayerSoil.bearingLeast(own, 1)).contains(own.get(2));
    assertThat(LayerSoil.bearingLeast(own, 0.06)).contains(own.get(0)); // 183
    assertThat(LayerSoil.bearingLeast(own, 0.07)).contains(own.get(2)); // 214
    assertThat(LayerSoil.bearingLeast(List.of(own.get(3), own.get(0)), 9)).contains(own.get(0));
    assertThat(LayerSoil.bearingLeast(List.of(), 1)).isEmpty();
  }

  private static GroundColumn column() {
    Site site = site("", LAYERS);
    return GroundColumn.of(site.ground(), facts(site));
  }

  @Test
  @DisplayName("Own case: column of four strata, unstated weights 19 kN/m3 by the dictionary")
  void strata_of_a_column() {
    GroundColumn column = column();
    assertThat(column.isEmpty()).isFalse();
    assertThat(column.strata().stream().map(Stratum::name))
        .containsExactly(
            "dense-sand from 0 m", "stiff-clay from 2 m", "stiff-clay from 4 m", "rock from 6 m");
    assertThat(column.at(2).orElseThrow().name()).isEqualTo("stiff-clay from 2 m");
    assertThat(column.at(1.999).orElseThrow().name()).isEqualTo("dense-sand from 0 m");
    assertThat(column.at(600).orElseThrow().soil()).isEqualTo(SoilClass.ROCK);
    assertThat(column.at(-1)).isEmpty();
    assertThat(column.knownToMetres()).isEqualTo(6);
    assertThat(column.between(2, 4)).hasSize(1);
    assertThat(column.between(2, 4).get(0).thicknessMetres()).isEqualTo(2);
    assertThat(column.between(1.5, 4.5).stream().map(Stratum::thicknessMetres))
        .containsExactly(0.5, 2.0, 0.5);
    assertThat(column.between(3, 3)).isEmpty();
    assertThat(column.at(1).orElseThrow().unitWeight().value()).isEqualTo(19);
    // 2 x 19 + 2 x 20 + 1 x 19 = 97; water at 3 m takes 2 x 9.81
    assertThat(column.effectiveStress(5, 0, 3)).isCloseTo(97 - 19.62, within(1e-9));
    assertThat(column.effectiveStress(5, 0, 5)).isCloseTo(97, within(1e-9));
    // cut down to 3 m: 20 + 19 = 39; water at 1 m stands at the cut
    assertThat(column.effectiveStress(5, 3, 1)).isCloseTo(39 - 19.62, within(1e-9));
    GroundColumn none = new GroundColumn(List.of());
    assertThat(none.isEmpty()).isTrue();
    assertThat(none.knownToMetres()).isZero();
    assertThat(none.effectiveStress(5, 0, 3)).isZero();
    assertThat(GroundColumn.of(GroundProfile.NONE, facts("")).isEmpty()).isTrue();
  }

  @Test
  void a_stratum_may_be_clipped_and_given_other_strengths() {
    Stratum clay = column().at(3).orElseThrow();
    Stratum part = clay.clipped(2.5, 3.25);
    assertThat(part.topMetres()).isEqualTo(2.5);
    assertThat(part.bottomMetres()).isEqualTo(3.25);
    assertThat(part.thicknessMetres()).isEqualTo(0.75);
    assertThat(part.soil()).isEqualTo(SoilClass.STIFF_CLAY);
    assertThat(clay.clipped(0, 9)).isEqualTo(clay);
    Stratum other = clay.with(Given.stated(18.0), Given.stated(77.0), Given.stated(22.0));
    assertThat(other.unitWeight().value()).isEqualTo(18);
    assertThat(other.undrainedStrength().value()).isEqualTo(77);
    assertThat(other.frictionAngle().value()).isEqualTo(22);
    assertThat(other.thicknessMetres()).isEqualTo(2);
  }
}
