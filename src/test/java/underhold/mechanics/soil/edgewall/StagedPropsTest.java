package underhold.mechanics.soil.edgewall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.quantity.Seeds;

class StagedPropsTest {
  private static final BackPressure SOIL = BackPressure.of(0.5, 20, 10, 3);

  private static StagedProps to(double depth) {
    return new StagedProps(SOIL, 0.5, 2, 0.5, depth);
  }

  @Test
  void level_is_left_out_where_the_cut_ends_before_it_would_be_set() {
    assertThat(to(1).levels()).isEmpty();
    assertThat(to(1).firstCutMetres()).isEqualTo(1);
    assertThat(to(0.7).firstCutMetres()).isEqualTo(0.7);
    assertThat(to(3).levels()).containsExactly(0.5);
    assertThat(to(3.01).levels()).containsExactly(0.5, 2.5);
    assertThat(to(6).levels()).containsExactly(0.5, 2.5, 4.5);
  }

  @Test
  @DisplayName("Own case: before a level is set the ground lies the overdig below it")
  void stages_follow_the_excavation() {
    List<ProppedWall> stages = to(6).stages();
    assertThat(stages).extracting(ProppedWall::groundDepthMetres).containsExactly(3.0, 5.0, 6.0);
    assertThat(stages.get(1).propDepthsMetres()).containsExactly(0.5, 2.5);
    assertThat(to(1).stages()).isEmpty();
    assertThat(to(1).greatest(ProppedWall::byHinges)).isEmpty();
  }

  @Test
  @DisplayName(
      "Own case by hand: the upper prop of two is worst in the first stage, M(3)/2.5 = 27.0")
  void earlier_stage_may_govern() {
    List<Double> forces = to(4).greatest(ProppedWall::byHinges);
    assertThat(forces.get(0)).isCloseTo(67.5 / 2.5, within(1e-9));
    assertThat(to(4).stages().get(1).byHinges().props().get(0))
        .isLessThan(forces.get(0)); // M(2.5)/2 once the second is set
  }

  @Property(tries = 500, seed = Seeds.BUILD)
  void deeper_excavation_never_lowers_a_prop_force(
      @ForAll @DoubleRange(min = 0.2, max = 1) double coefficient,
      @ForAll @DoubleRange(min = 0, max = 200) double surcharge,
      @ForAll @DoubleRange(min = 0, max = 12) double water,
      @ForAll @DoubleRange(min = 0, max = 1.5) double first,
      @ForAll @DoubleRange(min = 1, max = 4) double spacing,
      @ForAll @DoubleRange(min = 0.2, max = 1) double overdig,
      @ForAll @DoubleRange(min = 0, max = 12) double depth,
      @ForAll @DoubleRange(min = 0, max = 2) double more) {
    BackPressure back = BackPressure.of(coefficient, 19, surcharge, water);
    StagedProps shallow = new StagedProps(back, first, spacing, overdig, depth);
    StagedProps deep = new StagedProps(back, first, spacing, overdig, depth + more);
    never_lower(shallow.greatest(ProppedWall::byHinges), deep.greatest(ProppedWall::byHinges));
    never_lower(
        shallow.greatest(ProppedWall::byTributaryLengths),
        deep.greatest(ProppedWall::byTributaryLengths));
  }

  private static void never_lower(List<Double> shallow, List<Double> deep) {
    assertThat(deep).hasSizeGreaterThanOrEqualTo(shallow.size());
    for (int i = 0; i < shallow.size(); i++) {
      assertThat(deep.get(i)).isGreaterThanOrEqualTo(shallow.get(i) * (1 - 1e-9) - 1e-9);
    }
  }

  @Property(tries = 200, seed = Seeds.BUILD)
  void more_surcharge_never_lowers_a_prop_force_and_forces_balance_the_thrust(
      @ForAll @DoubleRange(min = 0, max = 200) double surcharge,
      @ForAll @DoubleRange(min = 0, max = 50) double more,
      @ForAll @DoubleRange(min = 2, max = 9) double depth) {
    StagedProps light = new StagedProps(SOIL.withSurcharge(surcharge), 0.5, 2, 0.5, depth);
    StagedProps heavy = new StagedProps(SOIL.withSurcharge(surcharge + more), 0.5, 2, 0.5, depth);
    never_lower(light.greatest(ProppedWall::byHinges), heavy.greatest(ProppedWall::byHinges));
    for (ProppedWall stage : light.stages()) {
      for (ProppedWall.Forces forces : List.of(stage.byHinges(), stage.byTributaryLengths())) {
        double sum = forces.foot() + forces.props().stream().mapToDouble(one -> one).sum();
        double thrust = stage.pressure().forceAbove(stage.groundDepthMetres());
        assertThat(sum).isCloseTo(thrust, within(1e-9 * (1 + thrust)));
      }
    }
  }

  @Test
  void mistakes_of_units_are_refused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new StagedProps(SOIL, 0.5, 0.001, 0.5, 6));
    assertThatIllegalArgumentException().isThrownBy(() -> new StagedProps(SOIL, -1, 2, 0.5, 6));
    assertThatIllegalArgumentException().isThrownBy(() -> new StagedProps(SOIL, 1, 2, 0, 6));
  }
}
