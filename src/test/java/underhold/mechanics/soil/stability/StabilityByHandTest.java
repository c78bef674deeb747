package underhold.mechanics.soil.stability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.mechanics.soil.stability.PierAsRetainingWall.Case;
import underhold.mechanics.soil.stability.PierAsRetainingWall.Holding;
import underhold.mechanics.soil.stability.PierAsRetainingWall.LateralForce;
import underhold.mechanics.soil.stability.PierAsRetainingWall.Pier;
import underhold.mechanics.soil.stability.PierAsRetainingWall.VerticalForce;

/** Base heave, piping and the pier at their limits, by hand; own cases. */
class StabilityByHandTest {
  private static final OptionalDouble NO_LAYER = OptionalDouble.empty();

  @Test
  @DisplayName(
      "Own case: 5 m deep, 20 x 40 m, 20 kN/m3, 10 kPa, c 25: Terzaghi 1955 / 1415 = 1.38 is below"
          + " 1.40 of Bjerrum-Eide")
  void wide_cut_is_governed_by_terzaghi() {
    ClayCut wide = new ClayCut(5, 20, 40, 20, 10, 25);
    // Nc = 5 (1 + 0.2 x 0.5)(1 + 0.2 x 0.25) = 5.775
    double nc = 5.775;
    assertThat(SkemptonBearingFactor.of(wide)).isCloseTo(nc, within(1e-12));
    assertThat(wide.depthToWidth()).isEqualTo(0.25);
    // strip 14 m: Q = 14 x 110 - 25 x 5 = 1,415; Qu = 25 x 5.775 x 14 = 2,021.25: 1.428
    // bearing: 25 x 5.775 / 110 = 1.3125
    GoverningBaseHeave governing = GoverningBaseHeave.of(wide, NO_LAYER);
    assertThat(governing.method()).isEqualTo(GoverningBaseHeave.Method.BJERRUM_EIDE);
    assertThat(governing.factor().value().orElseThrow()).isCloseTo(144.375 / 110, within(1e-9));
    assertThat(governing.remark()).isEmpty();
  }

  @Test
  @DisplayName(
      "Own case: Terzaghi governs never with the same Nc, since the sides only help; out of range"
          + " it says why")
  void narrow_cut_says_why_terzaghi_is_left_out() {
    ClayCut narrow = new ClayCut(5, 1, 1, 20, 10, 60);
    GoverningBaseHeave governing = GoverningBaseHeave.of(narrow, NO_LAYER);
    assertThat(governing.method()).isEqualTo(GoverningBaseHeave.Method.BJERRUM_EIDE);
    assertThat(governing.remark()).isEqualTo("side adhesion governs, use Bjerrum-Eide");
    assertThat(governing.factor().value().orElseThrow()).isCloseTo(60.0 * 9 / 110, within(1e-9));
  }

  @Test
  @DisplayName(
      "Own case, Terzaghi by hand: strip 0.7 x 10 = 7 m, Q = 7 x 110 - 20 x 5 = 670, Qu = 20 x 6 x"
          + " 7 = 840")
  void terzaghi_by_hand() {
    ClayCut cut = new ClayCut(5, 10, 20, 20, 10, 20);
    var free = TerzaghiBaseHeave.factor(cut, 6, NO_LAYER).orThrow();
    assertThat(free.demand()).isCloseTo(670, within(1e-9));
    assertThat(free.resistance()).isCloseTo(840, within(1e-9));
    // hard layer 4 m below: Q = 440 - 100 = 340, Qu = 480
    var hard = TerzaghiBaseHeave.factor(cut, 6, OptionalDouble.of(4)).orThrow();
    assertThat(hard.demand()).isCloseTo(340, within(1e-9));
    assertThat(hard.resistance()).isCloseTo(480, within(1e-9));
    // c such that c H just equals the weight of the strip
    ClayCut even = new ClayCut(5, 10, 20, 20, 0, 140);
    assertThat(TerzaghiBaseHeave.factor(even, 6, NO_LAYER).reason()).isPresent();
    assertThat(TerzaghiBaseHeave.factor(new ClayCut(5, 10, 20, 20, 0, 139.99), 6, NO_LAYER).value())
        .isPresent();
  }

  @Test
  @DisplayName(
      "Caltrans 10-3 (secondary digest), own cases: a stability number of 6 itself does not trigger"
          + " the check")
  void stability_number_at_its_trigger() {
    assertThat(StabilityNumber.triggersHeaveCheck(new ClayCut(6, 3, 3, 20, 0, 20))).isFalse();
    assertThat(StabilityNumber.triggersHeaveCheck(new ClayCut(6.01, 3, 3, 20, 0, 20))).isTrue();
    assertThat(StabilityNumber.of(new ClayCut(6, 3, 3, 20, 0, 20)).orThrow()).isEqualTo(6);
    assertThat(StabilityNumber.of(new ClayCut(6, 3, 3, 20, 0, 1e-9)).value()).isPresent();
    assertThat(StabilityNumber.of(new ClayCut(6, 3, 3, 20, 0, 0.9e-9)).reason())
        .contains("clay without strength: the base is not stable");
  }

  @Test
  void skempton_at_its_ends() {
    assertThat(SkemptonBearingFactor.of(0, 0)).isEqualTo(5);
    assertThat(SkemptonBearingFactor.of(2.5, 1)).isCloseTo(9, within(1e-12));
    assertThat(SkemptonBearingFactor.of(0, 1)).isCloseTo(6, within(1e-12));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SkemptonBearingFactor.of(1, -0.01))
        .withMessage("H/B is 1.0, B/L is -0.01; need H/B >= 0, B/L 0 to 1");
    assertThatIllegalArgumentException().isThrownBy(() -> SkemptonBearingFactor.of(1, 1.01));
    assertThatIllegalArgumentException().isThrownBy(() -> SkemptonBearingFactor.of(-0.01, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> SkemptonBearingFactor.of(Double.NaN, 1));
  }

  @Test
  void piping_by_hand() {
    assertThat(Piping.exitGradient(1.5, 3)).isEqualTo(0.5);
    assertThat(Piping.exitGradient(0, 3)).isZero();
    assertThat(Piping.criticalGradient(2.7, 0.7)).isCloseTo(1, within(1e-12));
    assertThat(Piping.criticalGradient(4.905)).isCloseTo(0.5, within(1e-12));
  }

  /** 1 m high, 1 m thick, 24 kN/m3: 24 kN/m, righting 12 kN m/m. */
  private static Case bare(double push, double height, double uplift) {
    return PierAsRetainingWall.check(
            new Pier(
                1,
                1,
                24,
                VerticalForce.NONE,
                new VerticalForce(uplift, 0.5),
                List.of(new LateralForce("soil", push, height)),
                Holding.friction(0.5)))
        .withoutBuilding();
  }

  @Test
  @DisplayName(
      "Own cases: resultant at the toe, at the middle third and beyond; a pier that just floats")
  void pier_at_its_limits() {
    // 12 kN m turn it until the resultant lies at the toe itself
    Case toe = bare(12, 1, 0);
    assertThat(toe.resultantFromToeMetres()).contains(0.0);
    assertThat(toe.contact().reason())
        .contains("the resultant lies beyond the toe: the pier overturns");
    Case third = bare(4, 1, 0); // x = 8 / 24 = t / 3
    assertThat(third.contact().orThrow().largestKilopascals()).isCloseTo(48, within(1e-9));
    assertThat(third.contact().orThrow().contactWidthMetres()).isCloseTo(1, within(1e-9));
    assertThat(third.isSatisfactory(1.5, 48.001)).isTrue(); // 12 / 4 = 3 and 12 / 4 = 3
    assertThat(third.isSatisfactory(1.5, 47.999)).isFalse();
    assertThat(third.isSatisfactory(3.01, 100)).isFalse();
    assertThat(third.isSatisfactory(2.99, 100)).isTrue();
    Case afloat = bare(0, 0, 24);
    assertThat(afloat.normalKilonewtonsPerMetre()).isZero();
    assertThat(afloat.resultantFromToeMetres()).isEmpty();
    assertThat(afloat.contact().reason()).contains("no downward force: the base is not in contact");
    assertThat(afloat.isSatisfactory(0, 1e9)).isFalse();
    assertThat(bare(8, 0, 0).isSatisfactory(1.5, 24.001)).isTrue(); // slides at 12 / 8 = 1.5
    assertThat(bare(8.01, 0, 0).isSatisfactory(1.5, 24.001)).isFalse();
  }

  @Test
  @DisplayName("Own case: passive push at the very heel: the resultant at and beyond it")
  void pier_that_leans_into_the_ground() {
    Pier pushed =
        new Pier(
            1,
            1,
            24,
            VerticalForce.NONE,
            VerticalForce.NONE,
            List.of(),
            new Holding(0.5, 0, new LateralForce("passive", 12, 1)));
    // (12 + 12) / 24 = 1 m: at the heel
    assertThat(PierAsRetainingWall.check(pushed).withoutBuilding().contact().reason())
        .contains("the resultant lies beyond the heel: the pier leans into the ground");
    Pier less =
        new Pier(
            1,
            1,
            24,
            VerticalForce.NONE,
            VerticalForce.NONE,
            List.of(),
            new Holding(0.5, 0, new LateralForce("passive", 8, 1)));
    Case leaning = PierAsRetainingWall.check(less).withoutBuilding(); // x = 20 / 24, e = 1/3
    assertThat(leaning.contact().orThrow().largestKilopascals())
        .isCloseTo(2 * 24 / (3 * (0.5 - 1.0 / 3)), within(1e-6));
    assertThat(leaning.sliding().resistance()).isCloseTo(0.5 * 24 + 8, within(1e-9));
  }
}
