package underhold.mechanics.micropile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Buckling and spacing: refusals by name and values by the formulas' own arithmetic. */
class MicropileRefusalsTest {
  private static final BracedBuckling PILE = new BracedBuckling(4000, 1000);

  private record Wrong(String name, ThrowingCallable call) {}

  @TestFactory
  Stream<DynamicTest> refusals() {
    return Stream.of(
            new Wrong("bending stiffness", () -> new BracedBuckling(0, 1000)),
            new Wrong("yield load", () -> new BracedBuckling(4000, 0)),
            new Wrong("soil stiffness", () -> PILE.criticalLoad(-1, 2)),
            new Wrong("half-wave", () -> PILE.criticalLoad(1, 0)),
            new Wrong("soil stiffness", () -> PILE.leastCriticalLoad(-1)),
            new Wrong("soil stiffness", () -> PILE.halfWave(0)),
            new Wrong("diameter", () -> PileSpacing.least(0)),
            new Wrong("spacing", () -> PileSpacing.clayEfficiency(0, 0.2, 40, false)),
            new Wrong("diameter", () -> PileSpacing.clayEfficiency(0.6, 0, 40, false)),
            new Wrong("undrained strength", () -> PileSpacing.clayEfficiency(0.6, 0.2, 0, false)))
        .map(
            wrong ->
                DynamicTest.dynamicTest(
                    wrong.name(),
                    () ->
                        assertThatThrownBy(wrong.call())
                            .isInstanceOf(IllegalArgumentException.class)
                            .hasMessageContaining(wrong.name())));
  }

  @Test
  @DisplayName(
      "Bjerrum and Mascardi: EI 4,000 kN m2, Fy A 1,000 kN, soil 250 kPa: limit 62.5 kPa, least 2,000 kN at pi x 2 m; at pi m 4,250 kN")
  void buckling() {
    assertThat(PILE.limitingStiffness()).isCloseTo(62.5, within(1e-9));
    assertThat(PILE.leastCriticalLoad(250)).isCloseTo(2000, within(1e-9));
    assertThat(PILE.halfWave(250)).isCloseTo(2 * Math.PI, within(1e-9));
    assertThat(PILE.criticalLoad(250, 2 * Math.PI)).isCloseTo(2000, within(1e-9));
    assertThat(PILE.criticalLoad(250, Math.PI)).isCloseTo(4250, within(1e-9));
    assertThat(PILE.criticalLoad(0, Math.PI)).isCloseTo(4000, within(1e-9));
    assertThat(PILE.leastCriticalLoad(0)).isZero();
  }

  @Test
  @DisplayName(
      "AASHTO LRFD 10.8.3.6.3: exactly 2.5 diameters is covered, 2.499 is not; 2 ksf itself is not above 2 ksf")
  void edges_of_the_group() {
    assertThat(PileSpacing.clayEfficiency(0.625, 0.25, 40, false)).isCloseTo(0.65, within(1e-9));
    assertThatThrownBy(() -> PileSpacing.clayEfficiency(0.624, 0.25, 40, false))
        .hasMessageContaining("2.5 diameters");
    assertThat(PileSpacing.clayEfficiency(0.75, 0.25, 40, false)).isCloseTo(0.70, within(1e-9));
    assertThat(PileSpacing.clayEfficiency(0.75, 0.25, PileSpacing.FIRM_CLAY_KILOPASCALS, false))
        .isCloseTo(0.70, within(1e-9));
    // 2,000 lb a square foot
    assertThat(PileSpacing.FIRM_CLAY_KILOPASCALS).isCloseTo(95.7605, within(1e-3));
  }
}
