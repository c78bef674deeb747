package underhold.sizing.pits;

import static org.assertj.core.api.Assertions.assertThat;
import static underhold.sizing.pits.PitsFact.*;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import underhold.quantity.Seeds;
import underhold.quantity.UnitSystem;
import underhold.sizing.Given;
import underhold.sizing.Sheet;
import underhold.sizing.SheetText;
import underhold.sizing.StepProof;
import underhold.sizing.pits.order.DiggingPlan;
import underhold.sizing.pits.order.PlanChecker;
import underhold.sizing.zone.SoilClass;

/** Invariants over many sites; own cases throughout. */
class PitsSizingPropertiesTest {
  private static PitsInputBuilder site(
      WallMaterial material,
      SoilClass face,
      SoilClass base,
      double load,
      double length,
      double width,
      double founding,
      double excavation,
      double water) {
    return PitsInput.builder()
        .amount(WALL_LINE_LOAD, load)
        .amount(WALL_LENGTH, length)
        .amount(FOOTING_WIDTH, width)
        .amount(FOUNDING_DEPTH, founding)
        .amount(EXCAVATION_BELOW_FOOTING, excavation)
        .amount(WATER_ABOVE_PIT_BASE, water)
        .material(Given.stated(material))
        .faceSoil(Given.stated(face))
        .baseSoil(Given.stated(base));
  }

  @Property(tries = 200, seed = Seeds.BUILD)
  void any_site_gives_a_sheet_that_can_be_redone(
      @ForAll WallMaterial material,
      @ForAll WallCondition condition,
      @ForAll SoilClass face,
      @ForAll SoilClass base,
      @ForAll StandUp standUp,
      @ForAll @DoubleRange(min = 0, max = 2000) double load,
      @ForAll @DoubleRange(min = 0.3, max = 150) double length,
      @ForAll @DoubleRange(min = 0.15, max = 5) double width,
      @ForAll @DoubleRange(min = 0, max = 6) double founding,
      @ForAll @DoubleRange(min = 0, max = 8) double excavation,
      @ForAll @DoubleRange(min = -10, max = 5) double water,
      @ForAll @DoubleRange(min = 0.15, max = 6) double height) {
    PitsInput input =
        site(material, face, base, load, length, width, founding, excavation, water)
            .amount(WALL_HEIGHT, height)
            .amount(WALL_THICKNESS, 0.4)
            .condition(Given.stated(condition))
            .standUp(Given.stated(standUp))
            .build();
    Sheet sheet = PitsSizing.size(input, PitsSettings.defaults());
    assertThat(sheet.complete()).isTrue();
    StepProof.redo(sheet);
    assertThat(SheetText.lines(sheet, UnitSystem.US))
        .hasSameSizeAs(SheetText.lines(sheet, UnitSystem.SI));
    assertThat(sheet.quantities())
        .allSatisfy(item -> assertThat(item.amount().si()).isNotNegative());
    assertThat(sheet.time()).allSatisfy(item -> assertThat(item.amount().si()).isNotNegative());
    assertThat(sheet.checks())
        .allSatisfy(
            check -> {
              assertThat(check.demand().si()).as(check.id()).isNotNegative();
              assertThat(check.capacity().si()).as(check.id()).isNotNegative();
            });
    DiggingPlan plan = PitsSizing.order(input, PitsSettings.defaults()).orElseThrow();
    assertThat(PlanChecker.violations(plan)).isEmpty();
    assertThat(plan.row().lengthMetres()).isBetween(length * (1 - 1e-9), length * (1 + 1e-9));
  }

  @Property(tries = 100, seed = Seeds.BUILD)
  void more_load_never_widens_a_pit_and_never_eases_a_check(
      @ForAll WallMaterial material,
      @ForAll SoilClass face,
      @ForAll @DoubleRange(min = 10, max = 300) double load,
      @ForAll @DoubleRange(min = 0.5, max = 3) double height) {
    Sheet light = loaded(material, face, load, height);
    Sheet heavy = loaded(material, face, load * 1.2, height);
    assertThat(limit(heavy)).isLessThanOrEqualTo(limit(light) + 1e-12);
    for (String id :
        new String[] {"bearing-listed", "between-pits", "dry-pack-stress", "line-load"}) {
      heavy
          .check(id)
          .ifPresent(
              check ->
                  assertThat(check.demand().si())
                      .isGreaterThan(light.check(id).orElseThrow().demand().si()));
    }
  }

  private static Sheet loaded(WallMaterial material, SoilClass face, double load, double height) {
    return PitsSizing.size(
        site(material, face, face, load, 24, 1, 1.5, 2, -2)
            .amount(WALL_HEIGHT, height)
            .amount(WALL_THICKNESS, 0.4)
            .condition(Given.stated(WallCondition.SOUND))
            .build(),
        PitsSettings.defaults());
  }

  private static double limit(Sheet sheet) {
    return sheet.step("pit-width-limit").orElseThrow().result().si();
  }
}
