package underhold.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What follows from the ground layers; own cases with arithmetic done by hand. */
class LayerDerivationsTest {
  private static final String[] DEPTHS = {"foundingDepth 1.8 m", "excavationDepth 4.2 m"};

  @Test
  void the_soil_at_the_footing_is_the_layer_right_under_it() {
    GroundProfile ground = Views.ground("0 m|fill", "1.8 m|silt", "3 m|rock");

    assertThat(text("soilAtFooting", ground)).isEqualTo("silt");
    assertThat(text("soilAtFooting", Views.ground("2 m|silt"))).isEqualTo("unknown");
  }

  @Test
  void the_worst_soil_lies_between_footing_and_excavation_base() {
    GroundProfile ground =
        Views.ground("0 m|fill", "1.8 m|stiff-clay", "3 m|loose-sand", "4.2 m|peat");

    Fact worst = fact("worstSoil", ground);

    assertThat(worst.text()).isEqualTo("loose-sand");
    assertThat(worst.how())
        .isEqualTo(
            "loose-sand: worst between founding depth 1.8 m and depth of the excavation 4.2 m of:"
                + " stiff-clay from 1.8 m, loose-sand from 3 m");
  }

  @Test
  void a_footing_below_the_excavation_still_meets_the_layer_under_it() {
    FactView view =
        Views.derived(
            Views.ground("0 m|fill", "2 m|stiff-clay"),
            "foundingDepth 3 m",
            "excavationDepth 2.5 m");

    assertThat(view.fact("worstSoil").text()).isEqualTo("stiff-clay");
    assertThat(view.fact("edgeGround").text()).isEqualTo("unknown");
  }

  @Test
  void without_an_excavation_the_worst_soil_lies_above_good_bearing() {
    FactView view =
        Views.derived(
            Views.ground("0 m|fill", "2 m|peat", "4 m|dense-gravel"),
            "excavationPosition no-excavation",
            "foundingDepth 1 m");

    assertThat(view.fact("bearingDepth").text()).isEqualTo("3 m");
    assertThat(view.fact("worstSoil").text()).isEqualTo("peat");
  }

  @Test
  void layers_that_begin_below_the_footing_say_nothing() {
    GroundProfile late = Views.ground("2 m|stiff-clay");

    for (String fact : List.of("worstSoil", "soilAtFooting", "bearingDepth", "edgeGround")) {
      assertThat(text(fact, late)).as(fact).isEqualTo("unknown");
    }
  }

  @Test
  void stand_up_is_the_shortest_and_needs_every_layer_unless_one_runs() {
    GroundLayer clay = Views.layer("0 m", "stiff-clay", null, null, null, "days");
    GroundLayer silent = Views.layer("2 m", "silt", null, null, null, null);
    GroundLayer minutes = Views.layer("3 m", "dense-sand", null, null, null, "minutes");
    GroundLayer none = Views.layer("3 m", "loose-sand", null, null, null, "none");

    assertThat(text("standUp", new GroundProfile(List.of(clay, minutes)))).isEqualTo("minutes");
    assertThat(text("standUp", new GroundProfile(List.of(clay, silent, minutes))))
        .isEqualTo("unknown");
    assertThat(text("standUp", new GroundProfile(List.of(clay, silent, none)))).isEqualTo("none");
  }

  @Test
  void permeability_is_the_greatest_and_needs_every_layer() {
    GroundLayer clay = Views.layer("0 m", "stiff-clay", null, null, "1e-9 m/s", null);
    GroundLayer sand = Views.layer("3 m", "dense-sand", null, null, "1e-3 cm/s", null);
    GroundLayer silent = Views.layer("4 m", "silt", null, null, null, null);

    assertThat(text("permeability", new GroundProfile(List.of(clay, sand)))).isEqualTo("1e-3 cm/s");
    assertThat(text("permeability", new GroundProfile(List.of(clay, sand, silent))))
        .isEqualTo("unknown");
  }

  @Test
  void undrained_strength_is_the_smallest_down_to_twice_the_depth_and_needs_every_clay() {
    GroundLayer crust = Views.layer("0 m", "stiff-clay", null, "80 kPa", null, null);
    GroundLayer soft = Views.layer("8 m", "soft-clay", null, "20 kPa", null, null);
    GroundLayer silent = Views.layer("8.3 m", "soft-clay", null, null, null, null);
    GroundLayer below = Views.layer("8.4 m", "soft-clay", null, "10 kPa", null, null);
    GroundLayer sand = Views.layer("6 m", "dense-sand", null, null, null, null);

    assertThat(text("undrainedStrength", new GroundProfile(List.of(crust, sand, soft, below))))
        .isEqualTo("20 kPa"); // 2 x 4.2 m = 8.4 m: the layer below is out of reach
    assertThat(text("undrainedStrength", new GroundProfile(List.of(crust, silent))))
        .isEqualTo("unknown");
    assertThat(text("undrainedStrength", Views.ground("0 m|dense-sand"))).isEqualTo("unknown");
  }

  @Test
  void unit_weight_is_the_mean_above_the_base_weighted_with_thickness() {
    GroundLayer fill = Views.layer("0 m", "fill", "16 kN/m3", null, null, null);
    GroundLayer clay = Views.layer("1.05 m", "stiff-clay", "20 kN/m3", null, null, null);
    GroundLayer silent = Views.layer("4 m", "silt", null, null, null, null);

    assertThat(text("soilUnitWeight", new GroundProfile(List.of(fill, clay))))
        .isEqualTo("19 kN/m3"); // (16 x 1.05 + 20 x 3.15) / 4.2
    assertThat(text("soilUnitWeight", new GroundProfile(List.of(fill, clay, silent))))
        .isEqualTo("unknown");
    assertThat(text("soilUnitWeight", new GroundProfile(List.of(clay)))).isEqualTo("unknown");
  }

  @Test
  void the_edge_is_rock_where_all_is_rock_and_earth_where_nothing_is() {
    assertThat(text("edgeGround", Views.ground("0 m|fill", "1.8 m|rock"))).isEqualTo("rock");
    assertThat(text("edgeGround", Views.ground("0 m|fill", "2 m|silt"))).isEqualTo("earth");
    assertThat(text("edgeGround", Views.ground("0 m|decomposed-rock"))).isEqualTo("earth");
    assertThat(text("edgeGround", Views.ground("0 m|fill", "2 m|rock"))).isEqualTo("unknown");
  }

  @Test
  void bearing_is_the_first_good_layer_under_the_footing() {
    GroundProfile ground = Views.ground("0 m|fill", "5 m|dense-gravel", "9 m|rock");

    assertThat(text("bearingDepth", ground)).isEqualTo("3.2 m");
    assertThat(text("bearingKind", ground)).isEqualTo("dense-granular");
    assertThat(text("rockDepth", ground)).isEqualTo("7.2 m");
  }

  @Test
  void a_footing_that_stands_on_good_ground_has_no_depth_to_it() {
    assertThat(text("bearingDepth", Views.ground("0 m|fill", "1 m|rock"))).isEqualTo("0 m");
    assertThat(text("rockDepth", Views.ground("0 m|fill", "1 m|rock"))).isEqualTo("0 m");
  }

  @Test
  void a_thin_good_layer_over_weak_ground_is_passed_over() {
    // The base is at 4.2 m, so good ground must go on to 7.2 m.
    GroundProfile thin = Views.ground("0 m|dense-sand", "7.1 m|peat", "9 m|stiff-clay");
    GroundProfile thick = Views.ground("0 m|dense-sand", "7.2 m|peat", "9 m|stiff-clay");

    assertThat(text("bearingDepth", thin)).isEqualTo("7.2 m"); // 9 - 1.8
    assertThat(text("bearingDepth", thick)).isEqualTo("0 m");
  }

  @Test
  void the_kind_of_bearing_is_that_of_the_weakest_layer_that_carries() {
    GroundProfile ground = Views.ground("0 m|dense-sand", "6 m|stiff-clay");

    assertThat(text("bearingKind", ground)).isEqualTo("stiff-clay");
  }

  @Test
  void the_kind_follows_from_the_layer_at_a_stated_depth() {
    FactView view =
        Views.derived(
            Views.ground("0 m|fill", "2 m|stiff-clay", "9 m|dense-gravel"),
            "foundingDepth 1 m",
            "excavationDepth 3 m",
            "bearingDepth 8 m");

    assertThat(view.fact("bearingKind").text()).isEqualTo("dense-granular");
  }

  @Test
  void no_good_layer_gives_no_depth() {
    assertThat(text("bearingDepth", Views.ground("0 m|fill", "4 m|peat"))).isEqualTo("unknown");
    assertThat(text("rockDepth", Views.ground("0 m|fill", "4 m|peat"))).isEqualTo("unknown");
  }

  private static Fact fact(String name, GroundProfile ground) {
    return Views.derived(ground, DEPTHS).fact(name);
  }

  private static String text(String name, GroundProfile ground) {
    return fact(name, ground).text();
  }
}
