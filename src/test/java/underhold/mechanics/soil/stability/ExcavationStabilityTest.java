package underhold.mechanics.soil.stability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.mechanics.soil.Us;
import underhold.quantity.Seeds;

class ExcavationStabilityTest {

  /** Depth and width in feet, unit weight in pcf, surcharge and strength in psf; a square cut. */
  private static ClayCut cut(
      double depth, double width, double weight, double surcharge, double strength) {
    return new ClayCut(
        depth * Us.FOOT,
        width * Us.FOOT,
        width * Us.FOOT,
        weight * Us.PCF,
        surcharge * Us.PSF,
        strength * Us.PSF);
  }

  @Test
  @DisplayName(
      "Own case: a 4 ft pit 20 ft deep: Terzaghi has no meaning, Bjerrum-Eide gives 2.00, stability number"
          + " 4.0")
  void narrowPitIsReferredToBjerrumEide() {
    ClayCut pit = cut(20, 4, 120, 300, 600);
    assertThat(TerzaghiBaseHeave.factor(pit, 9, OptionalDouble.empty()).reason())
        .contains("side adhesion governs, use Bjerrum-Eide");
    // 600 * 9/(120 * 20 + 300) = 2.00
    assertThat(BjerrumEideBaseHeave.factor(pit, 9).value().orElseThrow())
        .isCloseTo(2.00, within(0.005));
    assertThat(BjerrumEideBaseHeave.factor(pit)).isEqualTo(BjerrumEideBaseHeave.factor(pit, 9));
    assertThat(StabilityNumber.of(pit).orThrow()).isCloseTo(4.0, within(1e-9));
    assertThat(StabilityNumber.triggersHeaveCheck(pit)).isFalse();
  }

  @Test
  @DisplayName(
      "Own case: a 20 ft wide cut 20 ft deep: Terzaghi Q 26,000 lb/ft, Qu 39,060 lb/ft, factor 1.502")
  void wideCutAfterTerzaghi() {
    ClayCut wide = cut(20, 20, 110, 300, 450);
    var factor = TerzaghiBaseHeave.factor(wide, 6.2, OptionalDouble.empty()).orThrow();
    assertThat(factor.demand() / Us.PLF).isCloseTo(26_000, withPercentage(0.01));
    assertThat(factor.resistance() / Us.PLF).isCloseTo(39_060, withPercentage(0.01));
    assertThat(factor.value().orElseThrow()).isCloseTo(1.502, within(0.001));
    assertThat(factor.isAtLeast(TerzaghiBaseHeave.REQUIRED_FACTOR)).isTrue();
  }

  @Test
  @DisplayName(
      "Own case: a hard layer nearer than 0.7 B narrows the strip; a farther one changes nothing")
  void hardLayer() {
    ClayCut wide = cut(20, 20, 110, 300, 300);
    var free = TerzaghiBaseHeave.factor(wide, 6.2, OptionalDouble.empty()).orThrow();
    var deep = TerzaghiBaseHeave.factor(wide, 6.2, OptionalDouble.of(20 * Us.FOOT)).orThrow();
    var near = TerzaghiBaseHeave.factor(wide, 6.2, OptionalDouble.of(8 * Us.FOOT)).orThrow();
    assertThat(deep).isEqualTo(free);
    assertThat(near.value().orElseThrow()).isGreaterThan(free.value().orElseThrow());
  }

  @Test
  @DisplayName(
      "A. W. Skempton, The Bearing Capacity of Clays, 1951 (from memory), own cases: square 8.4 at H/B 2, 9.0"
          + " at 4; strip 7.0 at 2")
  void skemptonFactor() {
    assertThat(SkemptonBearingFactor.of(2, 1)).isCloseTo(8.4, within(1e-12));
    assertThat(SkemptonBearingFactor.of(4, 1)).isCloseTo(9.0, within(1e-12));
    assertThat(SkemptonBearingFactor.of(2, 0)).isCloseTo(7.0, within(1e-12));
    assertThat(SkemptonBearingFactor.of(40, 0)).isCloseTo(7.5, within(1e-12));
    assertThatIllegalArgumentException().isThrownBy(() -> SkemptonBearingFactor.of(1, 1.1));
    assertThatIllegalArgumentException().isThrownBy(() -> SkemptonBearingFactor.of(-1, 0.5));
  }

  @Test
  @DisplayName(
      "Own case: clay without strength triggers the heave check and has no stability number")
  void clayWithoutStrength() {
    ClayCut mud = cut(10, 4, 100, 0, 0);
    assertThat(StabilityNumber.of(mud).reason()).isPresent();
    assertThat(StabilityNumber.triggersHeaveCheck(mud)).isTrue();
    assertThat(StabilityNumber.triggersHeaveCheck(cut(20, 4, 120, 0, 399))).isTrue();
  }

  @Test
  @DisplayName(
      "Textbook critical gradient (from memory): 1.00 for grains of 2.65 and a void ratio of 0.65")
  void piping() {
    assertThat(Piping.criticalGradient(2.65, 0.65)).isCloseTo(1.0, within(1e-12));
    assertThat(Piping.criticalGradient(9.81)).isCloseTo(1.0, within(1e-12));
    assertThat(Piping.exitGradient(0.5, 1)).isEqualTo(0.5);
    assertThat(Piping.factor(1, 0.5).value()).hasValue(2.0);
    assertThat(Piping.factor(1, 0).value()).isEmpty();
  }

  @Test
  @DisplayName(
      "K. Terzaghi's vertical cut (from memory), own case: 4 c/g, 2.67 c/g, less q/g, never below 0")
  void verticalCut() {
    assertThat(VerticalCut.criticalHeightMetres(20, 20, 0)).isCloseTo(4, within(1e-12));
    assertThat(VerticalCut.crackedCriticalHeightMetres(20, 20, 0)).isCloseTo(2.67, within(1e-12));
    assertThat(VerticalCut.criticalHeightMetres(20, 20, 40)).isCloseTo(2, within(1e-12));
    assertThat(VerticalCut.criticalHeightMetres(5, 20, 40)).isZero();
  }

  @Property(tries = 500, seed = Seeds.BUILD)
  void heaveFactorsAreFinitePositiveAndFallWithDepth(
      @ForAll @DoubleRange(min = 0.3, max = 60) double depth,
      @ForAll @DoubleRange(min = 0.3, max = 100) double width,
      @ForAll @DoubleRange(min = 1, max = 50) double ratio,
      @ForAll @DoubleRange(min = 12, max = 22) double weight,
      @ForAll @DoubleRange(min = 0, max = 500) double surcharge,
      @ForAll @DoubleRange(min = 1, max = 500) double strength) {
    ClayCut cut = new ClayCut(depth, width, width * ratio, weight, surcharge, strength);
    TerzaghiBaseHeave.factor(cut, SkemptonBearingFactor.of(cut), OptionalDouble.empty())
        .value()
        .ifPresent(factor -> assertThat(factor.value().orElseThrow()).isFinite().isPositive());
    double nc = SkemptonBearingFactor.of(cut);
    assertThat(nc).isBetween(5.0, 9.0);
    double factor = BjerrumEideBaseHeave.factor(cut, nc).value().orElseThrow();
    assertThat(factor).isFinite().isPositive();
    ClayCut loaded = new ClayCut(depth, width, width * ratio, weight, surcharge + 10, strength);
    assertThat(BjerrumEideBaseHeave.factor(loaded, nc).value().orElseThrow()).isLessThan(factor);
  }
}
