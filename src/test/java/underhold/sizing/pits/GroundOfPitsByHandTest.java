package underhold.sizing.pits;

import static org.assertj.core.api.Assertions.assertThat;
import static underhold.sizing.pits.HandSites.bare;
import static underhold.sizing.pits.HandSites.rubble;
import static underhold.sizing.pits.HandSites.size;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.quantity.UnitSystem;
import underhold.sizing.Basis;
import underhold.sizing.Given;
import underhold.sizing.Sheet;
import underhold.sizing.Source;
import underhold.sizing.Verdict;
import underhold.sizing.zone.SoilClass;

/**
 * Pits in rock, peat, deep ground and ground that nobody stated, worked apart from the code; own
 * cases.
 */
class GroundOfPitsByHandTest {
  private static final double PSF = 0.04788025898;
  private static final double FOOT = 0.3048;
  private static final double GC = 150 * PSF / FOOT;

  @Test
  @DisplayName(
      "Own case: pits in sound rock, no excavation in front: listed bearing only, no pier as a"
          + " wall")
  void rock() {
    Sheet sheet =
        size(
            PitsInput.builder()
                .amount(PitsFact.WALL_LINE_LOAD, 90)
                .amount(PitsFact.WALL_LENGTH, 6)
                .amount(PitsFact.FOOTING_WIDTH, 0.6)
                .amount(PitsFact.FOUNDING_DEPTH, 0.9)
                .amount(PitsFact.EXCAVATION_BELOW_FOOTING, 0)
                .amount(PitsFact.PIT_DEPTH, 1)
                .amount(PitsFact.WATER_ABOVE_PIT_BASE, -0.3)
                .material(Given.stated(WallMaterial.REINFORCED_CONCRETE))
                .condition(Given.stated(WallCondition.SOUND))
                .faceSoil(Given.stated(SoilClass.ROCK)));
    new HandSheet()
        .passes("bearing-listed", 150, 4000 * PSF) // sedimentary rock
        .refers("rock", 1, 0)
        .refers("water", 0.5, 0.3)
        .refers("span-checked", 1.4, 0)
        .passes("open-share-one-pit", 1.2, 1.5)
        .passes("pit-reaches", 0, 1)
        .hasChecksOf(PitsSizing.size(rockAllAround(), PitsSettings.defaults()));
    assertThat(sheet.check("bearing-reckoned")).isEmpty();
    assertThat(sheet.check("between-pits")).isEmpty();
    assertThat(sheet.check("brace")).isEmpty();
    assertThat(sheet.check("toe-pressure")).isEmpty();
    assertThat(sheet.check("bearing-listed").orElseThrow().verdict()).isEqualTo(Verdict.REFER);
    assertThat(sheet.input("osha-type").orElseThrow().words()).isEqualTo("type B");
    assertThat(sheet.input("retained-height").orElseThrow().amount().orElseThrow().si()).isZero();
    assertThat(sheet.check("span-checked").orElseThrow().note().in(UnitSystem.SI))
        .isEqualTo(
            "Height and thickness of what spans are not known: expose the footing at each typical"
                + " place.");
    assertThat(sheet.cautions()).noneMatch(caution -> caution.hazard().equals("unbraced piers"));
    assertThat(sheet.check("water").orElseThrow().note().in(UnitSystem.SI))
        .startsWith("A sump may do in clay or rock");
    assertThat(sheet.stages().get(sheet.stages().size() - 1).work()).hasSize(2);
  }

  private static PitsInput rockAllAround() {
    return PitsInput.builder()
        .amount(PitsFact.WALL_LINE_LOAD, 90)
        .amount(PitsFact.WALL_LENGTH, 6)
        .amount(PitsFact.FOOTING_WIDTH, 0.6)
        .amount(PitsFact.FOUNDING_DEPTH, 0.9)
        .amount(PitsFact.EXCAVATION_BELOW_FOOTING, 0)
        .amount(PitsFact.PIT_DEPTH, 1)
        .amount(PitsFact.WATER_ABOVE_PIT_BASE, -0.3)
        .material(Given.stated(WallMaterial.REINFORCED_CONCRETE))
        .condition(Given.stated(WallCondition.SOUND))
        .faceSoil(Given.stated(SoilClass.ROCK))
        .baseSoil(Given.stated(SoilClass.ROCK))
        .build();
  }

  @Test
  @DisplayName(
      "Own case: peat over soft clay: no presumptive value, faces that run, clay without strength")
  void peat_over_soft_clay() {
    PitsInputBuilder peat =
        rubble()
            .faceSoil(Given.stated(SoilClass.PEAT))
            .baseSoil(Given.stated(SoilClass.SOFT_CLAY))
            .amount(PitsFact.BASE_UNDRAINED_STRENGTH, 12)
            .amount(PitsFact.WATER_ABOVE_PIT_BASE, -0.4)
            .standUp(Given.stated(StandUp.NONE));
    PitsInput input = peat.build();
    Sheet sheet =
        PitsSizing.size(
            new PitsInput(
                input.amounts().entrySet().stream()
                    .filter(entry -> entry.getKey() != PitsFact.BASE_ALLOWABLE)
                    .collect(
                        java.util.stream.Collectors.toMap(
                            java.util.Map.Entry::getKey, java.util.Map.Entry::getValue)),
                input.material(),
                input.condition(),
                input.faceSoil(),
                input.baseSoil(),
                input.facesRun(),
                input.standUp(),
                input.oshaType(),
                input.bracePossible(),
                input.lateralStabilityVerified()),
            PitsSettings.defaults());
    double beside = (200.0 / 3 - 19) * 0.8 / 2.3; // 16.6 kPa, above 10
    double nc = 5 * (1 + 0.2 * 0.75 / 0.8) * 1.5; // H/B = 2.5 / 0.75
    double ultimate = 12 * (Math.PI + 2) + 18 * 0.3;
    new HandSheet()
        .refers("bearing-listed", 50, 0)
        .fails("bearing-reckoned", 50 + GC * 1.5, ultimate / 3)
        .passes("heave", 1.5 * (19 * 2.5 + beside), 12 * nc) // 96.1 of 106.9
        .fails("stand-up", 0.2032, 0)
        .refers("water", 0.5, 0.4) // dry, but by less than it should be
        .hasChecksOf(sheet);
    new HandSheet()
        .step("heave-surcharge", beside)
        .step("heave-number", 19 * 2.5 / 12)
        .step("heave-nc", nc)
        .step("bearing-overburden", 18 * 0.3) // total in an undrained analysis
        .hasStepsOf(sheet);
    assertThat(sheet.cautions().get(sheet.cautions().size() - 1).hazard())
        .isEqualTo("fill or organic soil");
    assertThat(sheet.check("bearing-listed").orElseThrow().note().in(UnitSystem.SI))
        .startsWith("No presumptive value serves this ground");
    Sheet none = size(peat.amount(PitsFact.BASE_UNDRAINED_STRENGTH, 0));
    assertThat(none.step("heave-number")).isEmpty();
    assertThat(none.check("heave").orElseThrow().capacity().si()).isZero();
    Sheet surcharged = size(peat.amount(PitsFact.SURCHARGE, 40));
    new HandSheet().step("heave-surcharge", 40).hasStepsOf(surcharged);
  }

  @Test
  @DisplayName(
      "29 CFR 1926 Subpart P (secondary copies): below 20 ft no table row serves and an engineer"
          + " designs")
  void deeper_than_the_tables() {
    Sheet deep =
        size(
            rubble()
                .amount(PitsFact.FOUNDING_DEPTH, 2)
                .amount(PitsFact.EXCAVATION_BELOW_FOOTING, 4.4));
    new HandSheet().refers("sheeting-depth", 6.7, 20 * FOOT).hasChecksOf(deep);
    assertThat(deep.input("osha-table-row").orElseThrow().words()).startsWith("no row");
    Sheet peat =
        size(rubble().faceSoil(Given.stated(SoilClass.PEAT)).amount(PitsFact.FOUNDING_DEPTH, 10));
    // 11.5 m is 37.7 ft: the lagging table ends at 35 ft in dangerous ground
    assertThat(peat.check("board-lagging-table").orElseThrow().capacity().si()).isZero();
  }

  @Test
  @DisplayName(
      "Own cases: what a value that nobody stated would fail is referred, a stated one fails")
  void assumed_water_and_soil_never_rule_pits_out() {
    Source guess = Source.judgement();
    Sheet soil = size(rubble().faceSoil(Given.assumed(SoilClass.LOOSE_SAND, guess)));
    assertThat(soil.check("water").orElseThrow().verdict()).isEqualTo(Verdict.REFER);
    assertThat(soil.check("piping").orElseThrow().verdict()).isEqualTo(Verdict.FAILS);
    Sheet water = size(rubble().amount(PitsFact.WATER_ABOVE_PIT_BASE, Given.assumed(0.4, guess)));
    assertThat(water.check("water").orElseThrow().verdict()).isEqualTo(Verdict.REFER);
    assertThat(water.check("piping").orElseThrow().verdict()).isEqualTo(Verdict.REFER);
    // faces of clay, sand below them
    Sheet base =
        size(
            rubble()
                .faceSoil(Given.stated(SoilClass.STIFF_CLAY))
                .baseSoil(Given.stated(SoilClass.DENSE_SAND)));
    assertThat(base.check("water").orElseThrow().verdict()).isEqualTo(Verdict.FAILS);
    Sheet guessed =
        size(
            rubble()
                .faceSoil(Given.stated(SoilClass.STIFF_CLAY))
                .baseSoil(Given.assumed(SoilClass.DENSE_SAND, guess)));
    assertThat(guessed.check("water").orElseThrow().verdict()).isEqualTo(Verdict.REFER);
    Sheet running = size(rubble().standUp(Given.assumed(StandUp.NONE, guess)));
    assertThat(running.check("stand-up").orElseThrow().verdict()).isEqualTo(Verdict.REFER);
    // clay above and below: water stands above the base and a sump may do
    Sheet clay =
        size(
            rubble()
                .faceSoil(Given.stated(SoilClass.STIFF_CLAY))
                .baseSoil(Given.stated(SoilClass.STIFF_CLAY)));
    assertThat(clay.check("water").orElseThrow().verdict()).isEqualTo(Verdict.REFER);
    assertThat(clay.check("piping")).isEmpty();
    Sheet layer =
        size(
            rubble()
                .faceSoil(Given.stated(SoilClass.STIFF_CLAY))
                .baseSoil(Given.stated(SoilClass.STIFF_CLAY))
                .facesRun(Given.stated(true)));
    assertThat(layer.check("water").orElseThrow().verdict()).isEqualTo(Verdict.FAILS);
    assertThat(layer.input("faces-run").orElseThrow().words()).isEqualTo("yes");
    Sheet brace = size(rubble().bracePossible(Given.assumed(false, guess)));
    assertThat(brace.check("brace").orElseThrow().verdict()).isEqualTo(Verdict.REFER);
    assertThat(brace.check("sliding-without").orElseThrow().verdict()).isEqualTo(Verdict.REFER);
  }

  @Test
  @DisplayName("Own cases: OSHA type of clay from twice its stated strength, never better than B")
  void type_of_clay() {
    // 1 tsf is 95.76 kPa: type B over 0.5 tsf, that is su over 23.94 kPa
    assertThat(type(23.9)).isEqualTo("type C");
    assertThat(type(24)).isEqualTo("type B");
    assertThat(type(200)).isEqualTo("type B");
    Sheet unstated =
        PitsSizing.size(
            bare().faceSoil(Given.stated(SoilClass.STIFF_CLAY)).build(), PitsSettings.defaults());
    assertThat(unstated.input("osha-type").orElseThrow().words()).isEqualTo("type B");
    assertThat(unstated.input("osha-type").orElseThrow().source().basis())
        .isEqualTo(Basis.JUDGEMENT);
  }

  private static String type(double strength) {
    return PitsSizing.size(
            bare()
                .faceSoil(Given.stated(SoilClass.STIFF_CLAY))
                .amount(PitsFact.FACE_UNDRAINED_STRENGTH, strength)
                .build(),
            PitsSettings.defaults())
        .input("osha-type")
        .orElseThrow()
        .words();
  }
}
