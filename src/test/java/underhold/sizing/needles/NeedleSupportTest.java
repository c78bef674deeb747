package underhold.sizing.needles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;
import static underhold.sizing.needles.NeedleColumnTest.check;
import static underhold.sizing.needles.NeedleColumnTest.step;

import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import underhold.quantity.UnitSystem;
import underhold.sizing.Check;
import underhold.sizing.Sheet;
import underhold.sizing.StepProof;
import underhold.sizing.Verdict;

/** Own cases of rows, cantilevers, seats, jacks and pick-up, worked by hand. */
class NeedleSupportTest {
  private static final double PSI = 6.894757293168361;

  @Test
  @DisplayName(
      "Own case: wall 80 kN/m x 1.15, 0.4 m thick, packs 0.3 m at 690 kPa: spacing 0.899 m, seven at"
          + " 0.857 m, 78.86 kN each")
  void row_by_hand() {
    Sheet sheet = NeedleSites.size(NeedleSites.wall(), "table=eu-heb");
    StepProof.redo(sheet);
    double stress = 100 * PSI;
    assertThat(step(sheet, "bridged-spacing")).isCloseTo(1.5, within(1e-9));
    assertThat(step(sheet, "closing-spacing")).isCloseTo(2, within(1e-9));
    assertThat(step(sheet, "arch-spacing"))
        .isCloseTo(4 * stress * 0.1 * 1 * 0.4 / 92, withPercentage(0.001));
    assertThat(step(sheet, "bearing-spacing"))
        .isCloseTo(stress * 0.3 * 0.4 / 92, withPercentage(0.001));
    assertThat(step(sheet, "widest-spacing")).isCloseTo(0.8993, withPercentage(0.01));
    assertThat(step(sheet, "needle-spacing")).isCloseTo(6.0 / 7, within(1e-9));
    assertThat(step(sheet, "needle-load")).isCloseTo(80 * 1.15 * 6 / 7, within(1e-6));
    assertThat(check(sheet, "needle-spacing").verdict()).isEqualTo(Verdict.PASSES);
    assertThat(check(sheet, "pick-up-bearing").demand().si())
        .isCloseTo(80 * 1.15 * 6 / 7 / 0.12, withPercentage(0.001));
    assertThat(check(sheet, "pick-up-bearing").verdict()).isEqualTo(Verdict.PASSES);
    assertThat(sheet.quantities().get(0).amount().si()).isEqualTo(7);
    // holes of flange 0.18 + 0.1 at 0.857 m
    assertThat(check(sheet, "needle-section").title()).contains("HEB180");
    assertThat(step(sheet, "wall-left")).isCloseTo(1 - 0.28 / (6.0 / 7), within(1e-9));
    assertThat(step(sheet, "wall-left-stress"))
        .isCloseTo(92 / 0.4 / (1 - 0.28 / (6.0 / 7)), withPercentage(0.001));
    assertThat(step(sheet, "jack-preload")).isCloseTo(80 * 6.0 / 7 / 2, within(1e-6));
    assertThat(sheet.cautions().stream().map(one -> one.hazard())).contains("the wall itself");
  }

  @Test
  void a_heavy_thin_wall_is_referred_where_needles_cannot_stand_closer() {
    Sheet sheet =
        NeedleSites.size(
            NeedleSites.with(NeedleSites.wall(), "lineLoad", "300 kN/m", "wallThickness", "0.3 m"),
            "table=eu-heb");
    StepProof.redo(sheet);
    assertThat(step(sheet, "widest-spacing")).isCloseTo(0.6, within(1e-9));
    assertThat(check(sheet, "needle-spacing").verdict()).isEqualTo(Verdict.REFER);
    assertThat(check(sheet, "pick-up-bearing").verdict()).isEqualTo(Verdict.FAILS);
  }

  @Test
  void a_wall_whose_thickness_nobody_stated_passes_nothing_that_rests_on_it() {
    Sheet sheet =
        NeedleSites.size(
            NeedleSites.with(NeedleSites.wall(), "wallThickness", "", "lineLoad", "30 kN/m"),
            "table=eu-heb");
    Check pickUp = check(sheet, "pick-up-bearing");
    assertThat(pickUp.verdict()).isEqualTo(Verdict.REFER);
    assertThat(pickUp.note().template()).contains("thickness of the wall");
  }

  @Test
  @DisplayName(
      "Own case: long span of arch: beyond twice the greatest rise it grows with the square root")
  void low_wall_arches_by_its_rise() {
    Sheet sheet =
        NeedleSites.size(
            NeedleSites.with(NeedleSites.wall(), "lineLoad", "20 kN/m"),
            "table=eu-heb",
            "arch-height=0.5 m");
    StepProof.redo(sheet);
    double thrust = 100 * PSI * 0.1 * 0.5 * 0.4;
    assertThat(step(sheet, "arch-spacing"))
        .isCloseTo(Math.sqrt(8 * 0.6 * 0.5 * thrust / 23), withPercentage(0.001));
    assertThat(step(sheet, "widest-spacing")).isCloseTo(1, within(1e-9));
  }

  @Test
  @DisplayName(
      "Own case: 400 kN column from one side, overhang 1 m, back span 1.5 m: N 276, M 276 +, fulcrum"
          + " 460 +, tail 184 x 1.5 = 276 kN")
  void cantilever_by_hand() {
    Map<String, String> facts =
        NeedleSites.with(
            NeedleSites.column(),
            "columnLoad",
            "400 kN",
            "seatSpan",
            "2 m",
            "insideAccess",
            "none");
    Sheet sheet = NeedleSites.size(facts);
    StepProof.redo(sheet);
    assertThat(step(sheet, "overhang")).isCloseTo(1, within(1e-9));
    assertThat(step(sheet, "back-span")).isCloseTo(1.5, within(1e-9));
    assertThat(step(sheet, "needle-load")).isCloseTo(276, within(1e-6));
    assertThat(step(sheet, "needle-moment")).isBetween(276.1, 280.0);
    assertThat(step(sheet, "needle-reaction")).isBetween(460.5, 466.0);
    assertThat(step(sheet, "tail-uplift")).isCloseTo(184, within(1e-6));
    assertThat(step(sheet, "tail-demand")).isCloseTo(276, within(1e-6));
    assertThat(step(sheet, "jack-preload")).isCloseTo(200 * 2.5 / 1.5, within(1e-6));
    assertThat(check(sheet, "tail-uplift").verdict()).isEqualTo(Verdict.REFER);
    assertThat(check(sheet, "tail-uplift").note().template()).contains("tail-hold-down");
    assertThat(check(NeedleSites.size(facts, "tail-hold-down=300 kN"), "tail-uplift").verdict())
        .isEqualTo(Verdict.PASSES);
    assertThat(check(NeedleSites.size(facts, "tail-hold-down=200 kN"), "tail-uplift").verdict())
        .isEqualTo(Verdict.FAILS);
    double residual = 0.15 / 1.15;
    assertThat(step(sheet, "residual-movement"))
        .isCloseTo(
            residual
                * (step(sheet, "needle-deflection") + 2.5 / 1.5 * step(sheet, "seat-settlement")),
            within(1e-9));
    assertThat(sheet.quantities().stream().filter(one -> one.name().equals("jacks")))
        .allMatch(one -> one.amount().si() == 2);
    assertThat(sheet.cautions().stream().map(one -> one.hazard())).contains("tail");
    assertThat(NeedleSites.size(NeedleSites.column()).check("tail-uplift")).isEmpty();
    Sheet asked =
        NeedleSites.size(NeedleSites.with(facts, "insideAccess", ""), "arrangement=cantilever");
    assertThat(step(asked, "overhang")).isCloseTo(1, within(1e-9));
    Sheet wall = NeedleSites.size(NeedleSites.wall(), "arrangement=cantilever");
    StepProof.redo(wall);
    assertThat(wall.check("tail-uplift")).isPresent();
  }

  @Test
  @DisplayName(
      "Own case: keys of a concrete column, 0.4 m, 40 mm, 2,500 psi: 203 kN a row; 800 kN x 1.15 takes"
          + " five; a shaft of 1.2 m has room for four")
  void keys_by_hand() {
    Map<String, String> facts =
        NeedleSites.with(
            NeedleSites.column(),
            "structureMaterial",
            "reinforced-concrete",
            "columnLoad",
            "800 kN",
            "clearShaft",
            "2 m");
    Sheet sheet = NeedleSites.size(facts);
    StepProof.redo(sheet);
    double row = 0.85 * 2500 * PSI * 0.032 / 2.31;
    assertThat(step(sheet, "key-capacity")).isCloseTo(row, withPercentage(0.001));
    assertThat(check(sheet, "pick-up-bearing").capacity().si())
        .isCloseTo(5 * row, withPercentage(0.001));
    assertThat(check(sheet, "pick-up-bearing").demand().si()).isCloseTo(920, within(1e-6));
    assertThat(check(sheet, "pick-up-bearing").verdict()).isEqualTo(Verdict.PASSES);
    assertThat(step(sheet, "clamp-force")).isCloseTo(920 * 2 / 0.6, withPercentage(0.001));
    Check low =
        check(NeedleSites.size(NeedleSites.with(facts, "clearShaft", "1.2 m")), "pick-up-bearing");
    assertThat(low.capacity().si()).isCloseTo(4 * row, withPercentage(0.001));
    assertThat(low.verdict()).isEqualTo(Verdict.FAILS);
    assertThat(low.note().in(UnitSystem.SI)).contains("Rows of keys: 4");
    Check unknown =
        check(NeedleSites.size(NeedleSites.with(facts, "clearShaft", "")), "pick-up-bearing");
    assertThat(unknown.verdict()).isEqualTo(Verdict.REFER);
  }

  @ParameterizedTest
  @ValueSource(strings = {"timber", "cast-iron", "steel"})
  void a_pick_up_that_is_not_reckoned_is_referred(String material) {
    Sheet sheet =
        NeedleSites.size(NeedleSites.with(NeedleSites.column(), "structureMaterial", material));
    assertThat(check(sheet, "pick-up-bearing").verdict()).isEqualTo(Verdict.REFER);
  }

  @Test
  @DisplayName("Own case: masonry pier 200 kN x 1.15 on two packs 0.3 x 0.4 m: 958 kPa of 690")
  void masonry_pier() {
    Map<String, String> facts =
        NeedleSites.with(
            NeedleSites.column(),
            "structureMaterial",
            "unreinforced-masonry",
            "columnLoad",
            "200 kN");
    Check pier = check(NeedleSites.size(facts), "pick-up-bearing");
    assertThat(pier.demand().si()).isCloseTo(230 / 0.24, withPercentage(0.001));
    assertThat(pier.capacity().si()).isCloseTo(100 * PSI, withPercentage(0.001));
    assertThat(pier.verdict()).isEqualTo(Verdict.REFER);
    assertThat(check(NeedleSites.size(facts, "masonry-stress=1 MPa"), "pick-up-bearing").verdict())
        .isEqualTo(Verdict.PASSES);
    Sheet concrete =
        NeedleSites.size(
            NeedleSites.with(NeedleSites.wall(), "structureMaterial", "reinforced-concrete"));
    assertThat(check(concrete, "pick-up-bearing").capacity().si())
        .isCloseTo(0.85 * 2500 * PSI / 2.31, withPercentage(0.001));
  }

  @Test
  @DisplayName("Own case: crib of hem-fir, wet: 405 x 0.67 x 0.73 psi; 139.7 mm timbers")
  void crib_by_hand() {
    Sheet sheet = NeedleSites.size(NeedleSites.column(), "seat=crib");
    StepProof.redo(sheet);
    double stress = 405 * PSI * 0.67 * 0.73;
    assertThat(step(sheet, "crib-stress")).isCloseTo(stress, withPercentage(0.001));
    double reaction = step(sheet, "needle-reaction");
    int timbers = (int) Math.ceil(Math.sqrt(reaction / (stress * 0.1397 * 0.1397)));
    assertThat(step(sheet, "crib-capacity"))
        .isCloseTo(timbers * timbers * 0.1397 * 0.1397 * stress, withPercentage(0.001));
    assertThat(check(sheet, "crib-capacity").verdict()).isEqualTo(Verdict.PASSES);
    assertThat(check(sheet, "crib-height").capacity().si())
        .isCloseTo(3 * (2 * timbers - 1) * 0.1397, withPercentage(0.001));
    double layers = Math.ceil(0.6 / 0.1397);
    assertThat(sheet.quantities().stream().filter(one -> one.name().equals("crib timbers")))
        .hasSize(1)
        .allMatch(one -> one.amount().si() == 4 * timbers * layers);
    Sheet dry = NeedleSites.size(NeedleSites.column(), "seat=crib", "crib-moisture=dry");
    assertThat(step(dry, "crib-stress")).isCloseTo(stress / 0.67, withPercentage(0.001));
    Sheet pads = NeedleSites.size(NeedleSites.column());
    assertThat(step(sheet, "residual-movement") - step(pads, "residual-movement"))
        .isCloseTo(0.002, within(1e-9));
    assertThat(pads.check("crib-capacity")).isEmpty();
    Sheet tall = NeedleSites.size(NeedleSites.column(), "seat=crib", "crib-height=3 m");
    assertThat(check(tall, "crib-height").verdict()).isEqualTo(Verdict.FAILS);
  }

  @Test
  void stated_ground_and_jacks_are_taken_as_they_are() {
    Sheet sheet =
        NeedleSites.size(
            NeedleSites.column(),
            "seat-pressure=300 kPa",
            "seat-modulus=60 MPa",
            "jack-rating=200 kN");
    StepProof.redo(sheet);
    assertThat(check(sheet, "seat-bearing").capacity().si()).isEqualTo(300);
    assertThat(check(sheet, "seat-bearing").verdict()).isEqualTo(Verdict.PASSES);
    assertThat(check(sheet, "seat-settlement").verdict()).isEqualTo(Verdict.PASSES);
    assertThat(check(sheet, "differential-movement").verdict()).isEqualTo(Verdict.PASSES);
    assertThat(sheet.step("seat-ultimate")).isEmpty();
    assertThat(check(sheet, "jack-capacity").capacity().si()).isEqualTo(200);
    assertThat(check(sheet, "jack-capacity").verdict()).isEqualTo(Verdict.FAILS);
    assertThat(
            check(NeedleSites.size(NeedleSites.column(), "seat-pressure=20 kPa"), "seat-bearing")
                .verdict())
        .isEqualTo(Verdict.FAILS);
  }

  @Test
  @DisplayName(
      "IBC Table 1806.2: peat and soft clay have no presumptive value, so their seats are referred;"
          + " rock needs no bearing formula")
  void weak_ground_is_referred() {
    for (String soil : new String[] {"peat", "soft-clay", "fill"}) {
      Check bearing = check(NeedleSites.on(soil, NeedleSites.column()), "seat-bearing");
      assertThat(bearing.capacity().si()).isZero();
      assertThat(bearing.verdict()).isEqualTo(Verdict.REFER);
    }
    Sheet rock = NeedleSites.on("rock", NeedleSites.column());
    StepProof.redo(rock);
    assertThat(check(rock, "seat-bearing").verdict()).isEqualTo(Verdict.PASSES);
    assertThat(rock.step("seat-ultimate")).isEmpty();
    Sheet unknown = NeedleSites.on("", NeedleSites.column());
    assertThat(unknown.input("seat-soil").orElseThrow().words()).isEqualTo("fill");
    assertThat(check(unknown, "seat-bearing").verdict()).isEqualTo(Verdict.REFER);
    Sheet clay = NeedleSites.on("stiff-clay", NeedleSites.column());
    StepProof.redo(clay);
    double ratio =
        clay.step("seat-ultimate").orElseThrow().formula().symbols().get(2).amount().si()
            / clay.step("seat-ultimate").orElseThrow().formula().symbols().get(3).amount().si();
    assertThat(step(clay, "seat-ultimate"))
        .isCloseTo(50 * (Math.PI + 2) * (1 + ratio / (Math.PI + 2)), withPercentage(0.01));
  }

  @Test
  void bare_webs_are_used_where_they_serve_or_where_told() {
    Sheet none = NeedleSites.size(NeedleSites.column(), "stiffeners=none");
    StepProof.redo(none);
    assertThat(none.step("load-stiffener-area")).isEmpty();
    assertThat(none.step("jack-stiffener-area")).isEmpty();
    assertThat(step(none, "jack-bare-web")).isLessThanOrEqualTo(1);
    Sheet needed =
        NeedleSites.size(
            NeedleSites.with(NeedleSites.column(), "columnLoad", "60 kip"), "stiffeners=as-needed");
    StepProof.redo(needed);
    assertThat(needed.step("load-stiffener-area").isPresent())
        .isEqualTo(step(needed, "load-bare-web") > 1);
    assertThat(needed.step("jack-stiffener-area")).isPresent(); // free ends always
    Sheet euro =
        NeedleSites.size(NeedleSites.column(), "stiffeners=none", "code=eurocode", "table=eu-heb");
    StepProof.redo(euro);
    assertThat(euro.step("load-stiffener-column")).isEmpty();
    assertThat(step(euro, "load-patch-load")).isGreaterThan(1.5 * step(euro, "needle-load"));
  }
}
