package underhold.site;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Ratios and products of stated amounts; own cases with arithmetic done by hand. */
class RatioDerivationsTest {
  @Test
  void the_influence_ratio_is_gap_over_depth_beside_and_inside_only() {
    String gap = "gapToExcavation 0.6 m";
    String below = "excavationBelowFooting 2.4 m";

    assertThat(text("influenceRatio", gap, below, "excavationPosition beside")).isEqualTo("0.25");
    assertThat(text("influenceRatio", gap, below, "excavationPosition inside-walls"))
        .isEqualTo("0.25");
    assertThat(text("influenceRatio", gap, below, "excavationPosition partly-under"))
        .isEqualTo("unknown");
    assertThat(text("influenceRatio", gap, below)).isEqualTo("unknown");
  }

  @Test
  void there_is_no_influence_ratio_where_nothing_is_dug_below_the_footing() {
    String beside = "excavationPosition beside";

    assertThat(text("influenceRatio", beside, "gapToExcavation 1 m", "excavationBelowFooting 0 m"))
        .isEqualTo("unknown");
    assertThat(text("influenceRatio", beside, "gapToExcavation 1 m", "excavationBelowFooting -1 m"))
        .isEqualTo("unknown");
  }

  @Test
  void the_forecast_is_a_share_of_the_limit_whatever_the_units() {
    assertThat(text("forecastRatio", "predictedMovement 6 mm", "movementLimit 10 mm"))
        .isEqualTo("0.6");
    assertThat(text("forecastRatio", "predictedMovement 0.5 in", "movementLimit 12.7 mm"))
        .isEqualTo("1");
  }

  /** 1/4 in for historic structures: New York City, Technical Policy and Procedure Notice 10/88. */
  @Test
  void a_protected_structure_has_the_stricter_limit() {
    String predicted = "predictedMovement 9 mm";

    assertThat(text("forecastRatio", predicted, "movementLimit 15 mm")).isEqualTo("0.6");
    assertThat(text("forecastRatio", predicted, "movementLimit 15 mm", "heritage none"))
        .isEqualTo("0.6");
    // 9 / 6.35
    assertThat(text("forecastRatio", predicted, "movementLimit 15 mm", "heritage listed"))
        .startsWith("1.417");
    // a stated limit that is stricter still counts: 9 / 5
    assertThat(text("forecastRatio", predicted, "movementLimit 5 mm", "heritage landmark"))
        .isEqualTo("1.8");
  }

  @Test
  void the_stability_number_is_weight_times_depth_over_strength() {
    Fact fact =
        fact(
            "stabilityNumber",
            "soilUnitWeight 18 kN/m3",
            "excavationDepth 6 m",
            "undrainedStrength 27 kPa");

    assertThat(fact.text()).isEqualTo("4");
    assertThat(fact.how())
        .isEqualTo(
            "4 = unit weight of the soil 18 kN/m3 × depth of the excavation 6 m"
                + " / undrained strength of the softest clay 27 kPa");
  }

  @Test
  void without_the_full_depth_the_stability_number_is_called_a_lower_bound() {
    Fact fact =
        fact(
            "stabilityNumber",
            "soilUnitWeight 18 kN/m3",
            "excavationBelowFooting 3 m",
            "undrainedStrength 27 kPa");

    assertThat(fact.text()).isEqualTo("2");
    assertThat(fact.how()).endsWith("a lower bound, because the full depth is not known");
  }

  @Test
  void a_bracket_carries_the_load_of_the_length_between_brackets() {
    assertThat(text("bracketLoad", "lineLoad 180 kN/m", "clearSpan 1.2 m")).isEqualTo("216 kN");
    assertThat(text("bracketLoad", "lineLoad 12 kip/ft", "clearSpan 4 ft")).isEqualTo("48 kip");
  }

  private static Fact fact(String name, String... stated) {
    return Views.derived(GroundProfile.NONE, stated).fact(name);
  }

  private static String text(String name, String... stated) {
    return fact(name, stated).text();
  }
}
