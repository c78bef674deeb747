package underhold.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Depths that follow from other depths; own cases with arithmetic done by hand. */
class DepthAndPitDerivationsTest {
  @Test
  void the_excavation_below_the_footing_is_the_difference_of_the_depths() {
    Fact fact = fact("excavationBelowFooting", "excavationDepth 4.2 m", "foundingDepth 1.8 m");

    assertThat(fact.origin()).isEqualTo(Origin.DERIVED);
    assertThat(fact.how())
        .isEqualTo("2.4 m = depth of the excavation 4.2 m - founding depth 1.8 m");
    assertThat(si(fact)).isEqualTo(2.4);
  }

  @Test
  void differences_carry_no_noise_that_could_tip_a_limit() {
    // In binary 4.8 - 1.8 is 2.9999999999999996.
    assertThat(si(fact("excavationBelowFooting", "excavationDepth 4.8 m", "foundingDepth 1.8 m")))
        .isEqualTo(3.0);
    assertThat(text("digsBelowFooting", "excavationDepth 0.3 m", "foundingDepth 30 cm"))
        .isEqualTo("no");
  }

  @Test
  void the_other_two_depths_follow_the_other_way_round() {
    assertThat(text("excavationDepth", "foundingDepth 1.8 m", "excavationBelowFooting 2.4 m"))
        .isEqualTo("4.2 m");
    assertThat(text("foundingDepth", "excavationDepth 4.2 m", "excavationBelowFooting 2.4 m"))
        .isEqualTo("1.8 m");
  }

  @Test
  void a_footing_below_the_excavation_gives_a_negative_depth_and_no_dig_below_it() {
    String[] deepFooting = {"excavationDepth 2 m", "foundingDepth 3 m"};

    assertThat(text("excavationBelowFooting", deepFooting)).isEqualTo("-1 m");
    assertThat(text("digsBelowFooting", deepFooting)).isEqualTo("no");
  }

  @Test
  void answers_come_in_the_units_typed() {
    Fact fact = fact("excavationBelowFooting", "excavationDepth 14 ft", "foundingDepth 6 ft");

    assertThat(fact.how()).isEqualTo("8 ft = depth of the excavation 14 ft - founding depth 6 ft");
    assertThat(si(fact)).isEqualTo(2.4384);
  }

  @Test
  void water_stands_above_or_below_the_excavation_base() {
    assertThat(text("headAboveExcavation", "excavationDepth 4.2 m", "groundWaterDepth 3 m"))
        .isEqualTo("1.2 m");
    assertThat(text("headAboveExcavation", "excavationDepth 4.2 m", "groundWaterDepth 6 m"))
        .isEqualTo("-1.8 m");
  }

  @Test
  void pile_toes_are_counted_from_the_excavation_base() {
    assertThat(text("toeBelowExcavation", "pileToeDepth 12 m", "excavationDepth 4.2 m"))
        .isEqualTo("7.8 m");
  }

  @Test
  void a_pit_goes_down_to_the_deeper_of_excavation_and_bearing() {
    assertThat(text("pitDepth", "excavationBelowFooting 2.4 m", "bearingDepth 1 m"))
        .isEqualTo("2.4 m");
    assertThat(text("pitDepth", "excavationBelowFooting 2.4 m", "bearingDepth 3 m"))
        .isEqualTo("3 m");
    assertThat(text("pitDepth", "excavationBelowFooting -1 m", "bearingDepth 0 m"))
        .isEqualTo("0 m");
    assertThat(fact("pitDepth", "excavationBelowFooting 2.4 m").origin()).isEqualTo(Origin.UNKNOWN);
    assertThat(fact("pitDepth", "bearingDepth 2.4 m").origin()).isEqualTo(Origin.UNKNOWN);
  }

  @Test
  void water_above_the_pit_base_follows_from_ground_water_or_from_the_excavation() {
    assertThat(
            text(
                "headAbovePitBase",
                "foundingDepth 1.8 m",
                "excavationDepth 4.2 m",
                "bearingDepth 3 m",
                "groundWaterDepth 3 m"))
        .isEqualTo("1.8 m"); // 1.8 + 3 - 3
    assertThat(
            text(
                "headAbovePitBase",
                "headAboveExcavation 1.2 m",
                "excavationBelowFooting 2.4 m",
                "bearingDepth 3 m"))
        .isEqualTo("1.8 m"); // 1.2 + 3 - 2.4
  }

  @Test
  @DisplayName(
      "From memory, verify: DIN 4123 practice, ground water half a metre below the pit base")
  void drawdown_reaches_half_a_metre_below_the_pit_base() {
    assertThat(text("drawdownNeeded", "headAbovePitBase 1.2 m")).isEqualTo("1.7 m");
    assertThat(text("drawdownNeeded", "headAbovePitBase -0.2 m")).isEqualTo("0.3 m");
    assertThat(text("drawdownNeeded", "headAbovePitBase -0.5 m")).isEqualTo("0 m");
    assertThat(text("drawdownNeeded", "headAbovePitBase -9 m")).isEqualTo("0 m");
    assertThat(si(fact("drawdownNeeded", "headAbovePitBase 4 ft"))).isCloseTo(1.7192, within(1e-9));
  }

  @Test
  void a_zone_without_excavation_takes_no_depth_from_the_rest_of_the_site() {
    String[] apart = {
      "excavationPosition no-excavation",
      "excavationDepth 4.2 m",
      "foundingDepth 1.8 m",
      "groundWaterDepth 3 m",
      "bearingDepth 2 m"
    };

    assertThat(fact("excavationBelowFooting", apart).origin()).isEqualTo(Origin.UNKNOWN);
    assertThat(fact("headAboveExcavation", apart).origin()).isEqualTo(Origin.UNKNOWN);
    assertThat(text("digsBelowFooting", apart)).isEqualTo("no");
    assertThat(text("pitDepth", apart)).isEqualTo("2 m");
    assertThat(text("headAbovePitBase", apart)).isEqualTo("0.8 m"); // 1.8 + 2 - 3
  }

  private static String text(String name, String... stated) {
    return fact(name, stated).text();
  }

  private static double si(Fact fact) {
    return ((FactValue.Amount) fact.maybe().orElseThrow()).quantity().si();
  }

  private static Fact fact(String name, String... stated) {
    return Views.derived(GroundProfile.NONE, stated).fact(name);
  }
}
