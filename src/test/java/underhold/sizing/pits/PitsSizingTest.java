package underhold.sizing.pits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;
import static underhold.sizing.pits.PitsFact.*;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.mechanics.timber.SheetingSoil;
import underhold.quantity.UnitSystem;
import underhold.sizing.Given;
import underhold.sizing.Origin;
import underhold.sizing.Sheet;
import underhold.sizing.SheetText;
import underhold.sizing.Step;
import underhold.sizing.StepProof;
import underhold.sizing.Verdict;
import underhold.sizing.pits.order.DiggingPlan;
import underhold.sizing.pits.order.PlanChecker;
import underhold.sizing.zone.SoilClass;

class PitsSizingTest {
  private static final double FOOT = 0.3048;
  private static final double PSF = 0.04788025898;
  private static final double PLF = 0.0145939029;
  private static final double PCF = 0.157087463846246;
  private static final double PSI = 6.894757293168361;

  /**
   * Own case: pier 8 ft high, 3 ft thick, soil 120 pcf at 32 degrees, 480 psf behind, 6,000 lb/ft.
   */
  static PitsInputBuilder pier() {
    return PitsInput.builder()
        .amount(WALL_LINE_LOAD, 6000 * PLF)
        .amount(WALL_LENGTH, 80 * FOOT)
        .amount(FOOTING_WIDTH, 3 * FOOT)
        .amount(FOUNDING_DEPTH, 4 * FOOT)
        .amount(EXCAVATION_BELOW_FOOTING, 7 * FOOT)
        .amount(PIT_DEPTH, 8 * FOOT)
        .amount(WATER_ABOVE_PIT_BASE, -5 * FOOT)
        .amount(FACE_UNIT_WEIGHT, 120 * PCF)
        .amount(FACE_FRICTION_ANGLE, 32.0)
        .amount(SURCHARGE, 0.0)
        .amount(WALL_HEIGHT, 3 * FOOT)
        .amount(WALL_CONCRETE_STRENGTH, 2500 * PSI)
        .amount(CORNERS, 0.0)
        .material(Given.stated(WallMaterial.PLAIN_CONCRETE))
        .condition(Given.stated(WallCondition.SOUND))
        .faceSoil(Given.stated(SoilClass.DENSE_SAND))
        .standUp(Given.stated(StandUp.HOURS))
        .oshaType(Given.stated(SheetingSoil.B))
        .bracePossible(Given.stated(true));
  }

  private static double si(Sheet sheet, String step) {
    return sheet.step(step).orElseThrow().result().si();
  }

  @Test
  @DisplayName(
      "Own case: pier as a wall: Ka .3073, P 2,359.7 lb/ft, Mo 7,865.8 lb-ft/ft; fails alone, so it is braced")
  void pier_as_a_retaining_wall() {
    Sheet sheet = PitsSizing.size(pier().build(), PitsSettings.defaults());
    assertThat(si(sheet, "pier-ka")).isCloseTo(0.3073, within(0.00005));
    assertThat(si(sheet, "pier-surcharge") / PSF).isCloseTo(480, within(0.1));
    assertThat(si(sheet, "pier-thrust") / PLF).isCloseTo(2359.7, within(0.5));
    assertThat(si(sheet, "pier-overturning") / (PSF * FOOT * FOOT)).isCloseTo(7865.8, within(1.5));
    // With the building: e = .819 ft, outside the middle third, 9,403 psf; righting 14,400
    // lb-ft/ft.
    assertThat(si(sheet, "righting-with") / (PSF * FOOT * FOOT)).isCloseTo(14_400, within(2.0));
    assertThat(si(sheet, "toe-pressure") / PSF).isCloseTo(9403, withPercentage(0.1));
    assertThat(sheet.check("overturning-with").orElseThrow().verdict()).isEqualTo(Verdict.PASSES);
    assertThat(sheet.check("overturning-without").orElseThrow().verdict()).isEqualTo(Verdict.REFER);
    // Factors 1.831 with and .687 without the building, over the required 1.5.
    assertThat(1.5 / sheet.check("overturning-with").orElseThrow().utilisation().orElseThrow())
        .isCloseTo(1.831, within(0.002));
    assertThat(1.5 / sheet.check("overturning-without").orElseThrow().utilisation().orElseThrow())
        .isCloseTo(0.687, within(0.001));
    assertThat(sheet.check("brace").orElseThrow().verdict()).isEqualTo(Verdict.REFER);
  }

  @Test
  @DisplayName(
      "Own case: the same pier unreinforced, f'c 3,000 psi: 31.66 against 12.59 kip-ft/ft, 17.88 against 3.78 kip/ft")
  void pier_in_bending_and_shear() {
    Sheet sheet = PitsSizing.size(pier().build(), PitsSettings.defaults());
    double kipFeet = 1000 * PSF * FOOT * FOOT;
    assertThat(sheet.check("pier-flexure").orElseThrow().capacity().si() / kipFeet)
        .isCloseTo(31.66, within(0.02));
    assertThat(sheet.check("pier-flexure").orElseThrow().demand().si() / kipFeet)
        .isCloseTo(12.59, within(0.01));
    assertThat(sheet.check("pier-shear").orElseThrow().capacity().si() / PLF / 1000)
        .isCloseTo(17.88, within(0.01));
    assertThat(sheet.check("pier-shear").orElseThrow().demand().si() / PLF / 1000)
        .isCloseTo(3.78, within(0.01));
  }

  @Test
  @DisplayName(
      "Own case: dry pack under 6,000 lb/ft on 3 ft: 13.9 psi, within the 20 to 40 psi of practitioner opinion")
  void dry_pack_stress() {
    Sheet sheet = PitsSizing.size(pier().build(), PitsSettings.defaults());
    assertThat(si(sheet, "dry-pack-stress") / PSI).isCloseTo(13.9, within(0.02));
    assertThat(sheet.check("dry-pack-stress").orElseThrow().verdict()).isEqualTo(Verdict.PASSES);
  }

  @Test
  @DisplayName(
      "Own case: plain strip 12 x 36 in under 6,000 lb/ft, load factor 1: it spans 5.44 ft, by shear")
  void strip_span() {
    PitsInput input =
        pier().amount(WALL_THICKNESS, FOOT).amount(WALL_LINE_LOAD, 5000 * PLF).build();
    Sheet sheet =
        PitsSizing.size(input, PitsSettings.defaults().with(PitsSetting.LOAD_FACTOR, 1.2));
    assertThat(si(sheet, "span") / FOOT).isCloseTo(5.44, within(0.01));
    assertThat(si(sheet, "span-by-moment") / FOOT).isCloseTo(6.21, within(0.01));
  }

  @Test
  @DisplayName(
      "29 CFR 1926 Subpart P App. C: type B at 12 ft gives 45 x 12 + 72 = 612 psf as the floor under the boards")
  void osha_floor() {
    Sheet sheet = PitsSizing.size(pier().build(), PitsSettings.defaults());
    assertThat(si(sheet, "sheeting-osha-floor") / PSF).isCloseTo(612, within(0.1));
    assertThat(si(sheet, "sheeting-pressure"))
        .isGreaterThanOrEqualTo(si(sheet, "sheeting-osha-floor"));
    assertThat(sheet.input("osha-table-row").orElseThrow().words()).startsWith("C-2.2: brace");
  }

  @Test
  void every_step_can_be_redone_from_what_is_shown() {
    StepProof.redo(PitsSizing.size(pier().build(), PitsSettings.defaults()));
    StepProof.redo(PitsSizing.size(brick().build(), PitsSettings.defaults()));
    StepProof.redo(PitsSizing.size(reinforced().build(), PitsSettings.defaults()));
  }

  /** Own case: tall brick wall on stiff clay. */
  static PitsInputBuilder brick() {
    return PitsInput.builder()
        .amount(WALL_LINE_LOAD, 120.0)
        .amount(WALL_LENGTH, 18.0)
        .amount(FOOTING_WIDTH, 1.1)
        .amount(FOUNDING_DEPTH, 1.5)
        .amount(EXCAVATION_BELOW_FOOTING, 2.0)
        .amount(WATER_ABOVE_PIT_BASE, -1.0)
        .amount(WALL_HEIGHT, 3.0)
        .amount(WALL_THICKNESS, 0.45)
        .amount(FACE_UNDRAINED_STRENGTH, 75.0)
        .amount(BASE_UNDRAINED_STRENGTH, 120.0)
        .amount(MOVEMENT_LIMIT, 0.010)
        .amount(BASE_MODULUS, 40_000.0)
        .material(Given.stated(WallMaterial.SOLID_MASONRY))
        .condition(Given.stated(WallCondition.SOUND))
        .faceSoil(Given.stated(SoilClass.STIFF_CLAY))
        .standUp(Given.stated(StandUp.DAYS))
        .bracePossible(Given.stated(true));
  }

  static PitsInputBuilder reinforced() {
    return pier()
        .amount(WALL_STEEL_AREA, 0.0012)
        .amount(WALL_STEEL_DEPTH, 0.8)
        .amount(WALL_STEEL_YIELD, 420_000.0)
        .amount(CORNERS, 2.0)
        .amount(WATER_ABOVE_PIT_BASE, 0.5)
        .material(Given.stated(WallMaterial.REINFORCED_CONCRETE));
  }

  @Test
  @DisplayName(
      "New York City Building Code 2022, 1817.5.4.1.1 and 1817.3.3: unverified masonry is braced whatever the numbers say")
  void unverified_masonry_is_braced() {
    Sheet sheet =
        PitsSizing.size(
            brick().amount(EXCAVATION_BELOW_FOOTING, 0.3).amount(FOOTING_WIDTH, 3.0).build(),
            PitsSettings.defaults());
    assertThat(sheet.check("brace").orElseThrow().source().citation()).contains("1817.3.3");
    Sheet impossible =
        PitsSizing.size(
            brick().bracePossible(Given.stated(false)).build(), PitsSettings.defaults());
    assertThat(impossible.check("brace").orElseThrow().verdict()).isEqualTo(Verdict.FAILS);
  }

  @Test
  @DisplayName(
      "DIN 4123:2013-04, 7.3: pits up to 1.25 m, three widths clear; wider ones are referred, 3 m is refused")
  void widths_and_spacing_keep_the_standard() {
    DiggingPlan plan = PitsSizing.order(pier().build(), PitsSettings.defaults()).orElseThrow();
    assertThat(plan.row().widthsMetres())
        .allSatisfy(width -> assertThat(width).isLessThanOrEqualTo(1.25));
    assertThat(plan.rules().clearWidths()).isEqualTo(3);
    assertThat(PlanChecker.violations(plan)).isEmpty();
    assertThat(PitsSettings.parse(List.of("widest-pit=3 m")).problems()).hasSize(1);
    PitsSettings wide =
        PitsSettings.parse(List.of("widest-pit=5 ft", "plain-width=5 ft", "load-factor=1.2"))
            .settings();
    Sheet sheet = PitsSizing.size(pier().build(), wide);
    assertThat(sheet.check("pit-width-cap").orElseThrow().verdict()).isEqualTo(Verdict.REFER);
  }

  @Test
  @DisplayName("Own case: what rests on a value that nobody stated is referred, never failed")
  void assumed_values_never_fail_a_sheet() {
    PitsInput bare =
        PitsInput.builder()
            .amount(WALL_LINE_LOAD, 300.0)
            .amount(WALL_LENGTH, 15.0)
            .amount(FOOTING_WIDTH, 0.8)
            .amount(FOUNDING_DEPTH, 1.0)
            .amount(EXCAVATION_BELOW_FOOTING, 3.0)
            .amount(WATER_ABOVE_PIT_BASE, -2.0)
            .material(Given.stated(WallMaterial.SOLID_MASONRY))
            .faceSoil(Given.stated(SoilClass.SOFT_CLAY))
            .build();
    Sheet sheet = PitsSizing.size(bare, PitsSettings.defaults());
    assertThat(sheet.checks()).noneMatch(check -> check.verdict() == Verdict.FAILS);
    assertThat(sheet.verdict()).isEqualTo(Verdict.REFER);
  }

  @Test
  @DisplayName(
      "Tomlinson and BS 8004 (from memory): a poor wall opens a sixth, a sound one a quarter")
  void poor_walls_open_less() {
    DiggingPlan sound = PitsSizing.order(pier().build(), PitsSettings.defaults()).orElseThrow();
    DiggingPlan poor =
        PitsSizing.order(
                pier().condition(Given.stated(WallCondition.POOR)).build(), PitsSettings.defaults())
            .orElseThrow();
    assertThat(sound.rules().openShare()).isEqualTo(0.25);
    assertThat(poor.rules().openShare()).isCloseTo(1.0 / 6, within(1e-12));
    assertThat(poor.roundCount()).isGreaterThan(sound.roundCount());
  }

  @Test
  void missing_facts_become_questions_and_no_numbers() {
    Sheet sheet =
        PitsSizing.size(
            PitsInput.builder().amount(WALL_LENGTH, 12.0).build(), PitsSettings.defaults());
    assertThat(sheet.complete()).isFalse();
    assertThat(sheet.steps()).isEmpty();
    assertThat(sheet.checks()).isEmpty();
    assertThat(sheet.missing())
        .extracting(missing -> missing.name())
        .containsExactly(
            "wall-line-load",
            "footing-width",
            "founding-depth",
            "water-above-pit-base",
            "excavation-below-footing",
            "material",
            "face-soil");
    assertThat(sheet.missing()).allSatisfy(missing -> assertThat(missing.question()).endsWith("?"));
    assertThat(PitsSizing.order(PitsInput.builder().build(), PitsSettings.defaults())).isEmpty();
  }

  @Test
  void what_nobody_stated_is_marked() {
    Sheet sheet =
        PitsSizing.size(brick().build(), PitsSettings.parse(List.of("open-share=20 %")).settings());
    assertThat(sheet.input("pit-depth").orElseThrow().origin()).isEqualTo(Origin.DERIVED);
    assertThat(sheet.input("surcharge").orElseThrow().origin()).isEqualTo(Origin.ASSUMED);
    assertThat(sheet.input("widest-pit").orElseThrow().origin()).isEqualTo(Origin.DEFAULT);
    assertThat(sheet.input("open-share").orElseThrow().origin()).isEqualTo(Origin.SET_BY_USER);
    assertThat(sheet.input("wall-length").orElseThrow().origin()).isEqualTo(Origin.STATED);
  }

  @Test
  void no_load_makes_no_demand() {
    Sheet sheet =
        PitsSizing.size(pier().amount(WALL_LINE_LOAD, 0.0).build(), PitsSettings.defaults());
    assertThat(si(sheet, "base-net")).isZero();
    assertThat(si(sheet, "dry-pack-stress")).isZero();
    assertThat(si(sheet, "between-pits")).isZero();
    assertThat(si(sheet, "footing-pressure")).isZero();
    assertThat(sheet.check("line-load").orElseThrow().utilisation()).hasValue(0);
    Sheet noDig =
        PitsSizing.size(
            pier().amount(EXCAVATION_BELOW_FOOTING, 0.0).build(), PitsSettings.defaults());
    assertThat(noDig.step("pier-thrust")).isEmpty();
  }

  @Test
  void water_in_sand_stops_the_pits() {
    Sheet sheet = PitsSizing.size(reinforced().build(), PitsSettings.defaults());
    assertThat(sheet.check("water").orElseThrow().verdict()).isEqualTo(Verdict.FAILS);
    assertThat(sheet.check("piping").orElseThrow().verdict()).isEqualTo(Verdict.FAILS);
    Sheet running =
        PitsSizing.size(
            pier().standUp(Given.stated(StandUp.NONE)).build(), PitsSettings.defaults());
    assertThat(running.check("stand-up").orElseThrow().verdict()).isEqualTo(Verdict.FAILS);
  }

  @Test
  void a_free_end_gets_a_narrower_pit_or_a_referral() {
    PitsInput strip = pier().amount(CORNERS, 2.0).build();
    DiggingPlan plan = PitsSizing.order(strip, PitsSettings.defaults()).orElseThrow();
    Sheet sheet = PitsSizing.size(strip, PitsSettings.defaults());
    double end =
        si(sheet, "span-free-end") - PitsSettings.defaults().get(PitsSetting.EDGE_ALLOWANCE);
    assertThat(plan.row().width(0)).isLessThanOrEqualTo(Math.max(end, 0.9) + 1e-9);
    assertThat(
            PitsSizing.size(brick().build(), PitsSettings.defaults())
                .check("free-end")
                .orElseThrow()
                .verdict())
        .isEqualTo(Verdict.REFER);
  }

  @Test
  void both_unit_systems_show_the_same_sheet() {
    Sheet sheet = PitsSizing.size(brick().build(), PitsSettings.defaults());
    List<String> metric = SheetText.lines(sheet, UnitSystem.SI);
    List<String> us = SheetText.lines(sheet, UnitSystem.US);
    assertThat(us).hasSameSizeAs(metric);
    assertThat(us).noneMatch(line -> line.contains("kPa)") || line.contains("kN/m)"));
    assertThat(metric).noneMatch(line -> line.contains("psf)") || line.contains("lb/ft)"));
    for (Step step : sheet.steps()) {
      double metricValue = step.result().si();
      String usUnit = step.result().usUnit();
      double back =
          step.result()
              .measure()
              .requireUnit(usUnit)
              .toInside(step.result().measure().requireUnit(usUnit).fromInside(metricValue));
      assertThat(back)
          .as(step.id())
          .isCloseTo(metricValue, within(1e-9 * Math.abs(metricValue) + 1e-12));
    }
  }

  @Test
  void stages_name_who_releases_and_cautions_name_who_decides() {
    Sheet sheet = PitsSizing.size(pier().build(), PitsSettings.defaults());
    assertThat(sheet.stages()).allSatisfy(stage -> assertThat(stage.holdPoints()).isNotEmpty());
    assertThat(sheet.stages().stream().flatMap(stage -> stage.holdPoints().stream()))
        .allSatisfy(hold -> assertThat(hold.releasedBy()).isNotBlank());
    assertThat(sheet.cautions())
        .extracting(caution -> caution.hazard())
        .contains("cave-in", "egress", "air", "undermined neighbours");
    assertThat(sheet.cautions())
        .allSatisfy(caution -> assertThat(caution.decidedBy()).isNotBlank());
    assertThat(sheet.notCovered()).hasSizeGreaterThan(4);
  }

  @Test
  @DisplayName(
      "Common practice: the approach pit is 4 x 5 ft and 6 ft deep below the footing, never deeper than the pit")
  void approach_pit() {
    PitsSettings defaults = PitsSettings.defaults();
    assertThat(defaults.get(PitsSetting.APPROACH_LENGTH) / FOOT).isCloseTo(4, within(0.1));
    assertThat(defaults.get(PitsSetting.APPROACH_WIDTH) / FOOT).isCloseTo(5, within(0.1));
    assertThat(defaults.get(PitsSetting.APPROACH_DEPTH) / FOOT).isCloseTo(6, within(0.1));
    // 1.2 x 1.5 x (1.2192 + 1.8) + b t D
    Sheet sheet = PitsSizing.size(pier().build(), defaults);
    double pit =
        PitsSizing.order(pier().build(), defaults).orElseThrow().row().width(0)
            * 3
            * FOOT
            * 8
            * FOOT;
    assertThat(si(sheet, "pit-volume")).isCloseTo(1.2 * 1.5 * (4 * FOOT + 1.8) + pit, within(1e-6));
  }

  @Test
  void quantities_add_up() {
    Sheet sheet = PitsSizing.size(pier().build(), PitsSettings.defaults());
    double concrete = sheet.quantities().get(0).amount().si();
    double pack = sheet.quantities().get(1).amount().si();
    assertThat(concrete + pack).isCloseTo(80 * FOOT * 3 * FOOT * 8 * FOOT, within(1e-6));
    assertThat(pack).isCloseTo(80 * FOOT * 3 * FOOT * 0.075, within(1e-9));
  }
}
