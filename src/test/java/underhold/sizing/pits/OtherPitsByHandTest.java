package underhold.sizing.pits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.mechanics.timber.SheetingSoil;
import underhold.quantity.UnitSystem;
import underhold.sizing.Basis;
import underhold.sizing.Given;
import underhold.sizing.Sheet;
import underhold.sizing.Source;
import underhold.sizing.Verdict;
import underhold.sizing.zone.SoilClass;

/** Own cases of pits that take the other roads through the sheet, worked apart from the code. */
class OtherPitsByHandTest {
  private static final double PSI = 6.894757293168361;
  private static final double PSF = 0.04788025898;
  private static final double FOOT = 0.3048;
  private static final double GC = 150 * PSF / FOOT;

  private static Sheet size(PitsInputBuilder input) {
    return PitsSizing.size(input.build(), PitsSettings.defaults());
  }

  /** Rubble on loose sand, water over the base of the pits, everything stated. */
  private static PitsInputBuilder rubble() {
    return PitsInput.builder()
        .amount(PitsFact.WALL_LINE_LOAD, 40)
        .amount(PitsFact.WALL_LENGTH, 12)
        .amount(PitsFact.FOOTING_WIDTH, 0.8)
        .amount(PitsFact.FOUNDING_DEPTH, 1)
        .amount(PitsFact.EXCAVATION_BELOW_FOOTING, 1.2)
        .amount(PitsFact.WATER_ABOVE_PIT_BASE, 0.4)
        .amount(PitsFact.LASTING_WATER_ABOVE_PIT_BASE, 0.4)
        .amount(PitsFact.WALL_HEIGHT, 1)
        .amount(PitsFact.WALL_THICKNESS, 0.6)
        .amount(PitsFact.CLEAR_SPAN, 1.6)
        .amount(PitsFact.CORNERS, 1)
        .amount(PitsFact.FACE_UNIT_WEIGHT, 19)
        .amount(PitsFact.FACE_FRICTION_ANGLE, 30)
        .amount(PitsFact.BASE_UNIT_WEIGHT, 18)
        .amount(PitsFact.BASE_FRICTION_ANGLE, 34)
        .amount(PitsFact.BASE_ALLOWABLE, 150)
        .amount(PitsFact.SURCHARGE, 10)
        .material(Given.stated(WallMaterial.RUBBLE))
        .condition(Given.stated(WallCondition.SOUND))
        .faceSoil(Given.stated(SoilClass.LOOSE_SAND))
        .baseSoil(Given.stated(SoilClass.DENSE_GRAVEL))
        .standUp(Given.stated(StandUp.MINUTES))
        .oshaType(Given.stated(SheetingSoil.C))
        .bracePossible(Given.stated(false))
        .lateralStabilityVerified(Given.stated(true));
  }

  private static double nq(double degrees) {
    double f = Math.toRadians(degrees);
    return Math.exp(Math.PI * Math.tan(f)) * Math.pow(Math.tan(Math.PI / 4 + f / 2), 2);
  }

  private static double ng(double degrees) {
    return 2 * (nq(degrees) + 1) * Math.tan(Math.toRadians(degrees));
  }

  @Test
  @DisplayName(
      "Own case, by hand: rubble wall on loose sand under water: arch with limited rise, 16 pits of 0.75 m")
  void rubble_steps() {
    Sheet sheet = size(rubble());
    double thrust = 60 * 6.894757 * 0.1 * 1 * 0.6; // 24.82 kN; 4 H / w = 2.48 passes 2 x 0.6
    double q = 50 * 4.0 / 3;
    double s1 = 19 * 2.5 + (q - 19) * 0.8 / 2.3;
    double p = (80 * 2.5 / FOOT + 72) * PSF; // 34.87 kPa, above q / 3 = 22.2
    double b = 4 * 0.0254; // 3 in fails over 1.5 m: 10.1 of 8.4 MPa
    double volume = 0.75 * 0.8 * 1.5 + 1.2 * 1.5 * 2.5; // 5.4 m3: 10.6 h, 1.5 days
    new HandSheet()
        .step("arch-thrust", thrust)
        .step("arch-rise", 0.6)
        .step("span", Math.sqrt(8 * 0.6 * thrust / 40))
        .step("pit-width-limit", 0.75)
        .step("pit-width-share", 2)
        .step("pit-volume", volume)
        .step("pit-dig-time", volume / 6.1 * 1.5 * 8)
        .step("footing-pressure", 50)
        .step("between-pits", q)
        .step("stress-under-wall", s1)
        .step("stress-beside-wall", 19 * 2.5 + 10)
        .step("sheeting-stress", q)
        .step("sheeting-soil-pressure", q / 3)
        .step("sheeting-osha-floor", p)
        .step("sheeting-pressure", p)
        .step("approach-soil-pressure", 57.5 / 3)
        .step("approach-osha-floor", p)
        .step("approach-pressure", p)
        .step("board-span", 0.8) // the footing is wider than the pit
        .step("board-duration", 5.25 * 24 * 7 / 5) // 1.5 + 0.5 + 1 + 0.25 + 2 days
        .step("board-moment", p * 0.64 / 8)
        .step("board-modulus", b * b / 6)
        .step("board-allowable-bending", 900 * 1.15 * 0.85 * 1.2 * 1.05 * PSI)
        .step("approach-bending", p * 2.25 / 8 * 6 / (b * b))
        .step("base-net", 50)
        .step("base-gross", 50 + GC * 1.5)
        .step("bearing-overburden", (18 - 9.81) * 0.3)
        .step("bearing-nq", nq(34))
        .step("bearing-ng", ng(34))
        .step("between-ultimate", 19 * nq(30) + 0.5 * 19 * 0.8 * ng(30))
        .step("piping-critical", (18 - 9.81) / 9.81)
        .step("piping-gradient", 1)
        .step("dry-pack-stress", 50)
        .hasStepsOf(sheet);
    assertThat(sheet.quantities().get(6).amount().si()).isEqualTo(16);
    assertThat(sheet.quantities().get(3).amount().si())
        .isCloseTo(sheet.quantities().get(2).amount().si() * b, within(1e-9));
  }

  @Test
  @DisplayName(
      "Own case, by hand: the same wall: bearing with buoyancy, pier with water and uplift, brace not possible")
  void rubble_checks() {
    Sheet sheet = size(rubble());
    double ultimate = (18 - 9.81) * 0.3 * nq(34) + 0.5 * (18 - 9.81) * 0.8 * ng(34);
    double above = 19 * 1 + 10;
    double push = (19 * 1.5 * 1.5 / 2 + above * 1.5) / 3 + 9.81 * 0.16 / 2;
    double uplift = 9.81 * 0.4 * 0.8;
    double turning =
        (19 * Math.pow(1.5, 3) / 6 + above * 2.25 / 2) / 3
            + 9.81 * Math.pow(0.4, 3) / 6
            + uplift * 0.4;
    double weight = GC * 0.8 * 1.5;
    double tan29 = Math.tan(Math.toRadians(29));
    double normal = weight + 40 - uplift;
    double x = ((weight + 40) * 0.4 - turning) / normal; // 0.16 m, e 0.24 of t/6 = 0.13
    double rest = 0.5 * (19 * 2.25 / 2 + above * 1.5) + 9.81 * 0.16 / 2; // K0 = 1 - sin 30
    double h = 0.8 - 0.0508;
    new HandSheet()
        .step("bearing-ultimate", ultimate)
        .step("bearing-allowable", ultimate / 3)
        .step("pier-surcharge", above)
        .step("pier-ka", 1.0 / 3)
        .step("pier-thrust", push)
        .step("pier-overturning", turning)
        .step("pier-weight", weight)
        .step("sliding-with", tan29 * normal)
        .step("righting-with", (weight + 40) * 0.4)
        .step("sliding-without", tan29 * (weight - uplift))
        .step("righting-without", weight * 0.4)
        .step("toe-pressure", 2 * normal / (3 * x))
        .step("brace-k0", 0.5)
        .step("brace-thrust", rest)
        .step("brace-horizontal", rest * 0.75)
        .step("brace-force", rest * 0.75 * Math.sqrt(2))
        .hasStepsOf(sheet);
    new HandSheet()
        .passes("pit-width-workable", 0.75, 0.75)
        .fails("free-end", 0.75, 0.7) // half of 1.6 m, less 0.1
        .passes("pit-width-least", 0.75, 0.75)
        .passes("span-checked", 0.95, 1.6)
        .passes("pit-width-cap", 0.75, 1.25)
        .passes("open-share-one-pit", 0.75, 2)
        .passes("line-load", 40, 250)
        .passes("bearing-listed", 50, 150)
        .passes("between-pits", 200.0 / 3, (19 * nq(30) + 0.5 * 19 * 0.8 * ng(30)) / 2)
        .passes("sliding-with", 1.5 * push, tan29 * normal)
        .fails("sliding-without", 1.5 * push, tan29 * (weight - uplift))
        .fails("overturning-without", 1.5 * turning, weight * 0.4)
        .fails("toe-pressure", 2 * normal / (3 * x), 150)
        .passes("pier-flexure", 1.6 * turning, 0.6 * 5 * Math.sqrt(3000) * PSI * h * h / 6)
        .fails("brace", rest * 0.75, 0)
        .fails("water", 0.5, 0)
        .fails("piping", 1.5, (18 - 9.81) / 9.81)
        .refers("stand-up", 0.2032, 0.2032)
        .passes("pit-reaches", 1.2, 1.5)
        .passes("dry-pack-stress", 50, 40 * 6.894757)
        .passes("dry-pack-masonry", 50, 60 * 6.894757)
        .passes("board-lagging-table", 3 * 0.0254, 4 * 0.0254)
        .hasChecksOf(sheet);
    assertThat(sheet.check("brace").orElseThrow().note().in(UnitSystem.SI))
        .isEqualTo(
            "The pier does not stand alone. Nobody has said that a brace or tie is possible; without one the pits cannot be kept as they are.");
    assertThat(sheet.check("heave")).isEmpty();
    assertThat(sheet.check("movement")).isEmpty();
    assertThat(sheet.check("water").orElseThrow().note().in(UnitSystem.SI))
        .startsWith("Any inflow in sand or silt");
  }

  @Test
  @DisplayName(
      "Own case, by hand: reinforced strip of 36 x 12 in, bars too far from a free end to help there")
  void reinforced_strip() {
    Sheet sheet =
        size(
            rubble()
                .material(Given.stated(WallMaterial.REINFORCED_CONCRETE))
                .amount(PitsFact.WALL_HEIGHT, 0.6)
                .amount(PitsFact.WALL_THICKNESS, 0.8)
                .amount(PitsFact.CLEAR_SPAN, 20)
                .amount(PitsFact.WALL_STEEL_AREA, 0.0008)
                .amount(PitsFact.WALL_STEEL_DEPTH, 0.508)
                .amount(PitsFact.WALL_STEEL_YIELD, 300_000)
                .amount(PitsFact.WALL_CONCRETE_STRENGTH, 2500 * PSI)
                .amount(PitsFact.CORNERS, 0));
    double block = 240 / (0.85 * 2500 * PSI * 0.8); // 20.5 mm
    double moment = 0.9 * 240 * (0.508 - block / 2);
    // d = 20 in: size factor sqrt(2 / 3); rho 0.0008 / (0.8 x 0.508)
    double v = 8 * Math.sqrt(2.0 / 3) * Math.cbrt(0.0008 / (0.8 * 0.508)) * Math.sqrt(2500) * PSI;
    double shear = 0.75 * v * 0.8 * 0.508;
    double byMoment = Math.sqrt(8 * moment / 64); // wu = 1.6 x 40
    double byShear = 2 * shear / 64;
    new HandSheet()
        .step("span-block", block)
        .step("span-moment", moment)
        .step("span-shear-stress", v)
        .step("span-shear", shear)
        .step("span-load", 64)
        .step("span-by-moment", byMoment)
        .step("span-by-shear", byShear)
        .step("span", Math.min(byMoment, byShear))
        .step("pit-width-limit", 1.2)
        .step("pit-width-share", 3)
        .hasStepsOf(sheet);
    assertThat(sheet.step("span-free-end")).isEmpty();
    assertThat(sheet.check("free-end")).isEmpty();
    assertThat(sheet.check("dry-pack-masonry")).isEmpty();
    new HandSheet().passes("span-checked", 1.4, Math.min(byMoment, byShear)).hasChecksOf(sheet);
  }

  @Test
  @DisplayName(
      "Own case, by hand: plain strip 0.8 x 0.6 m under 40 kN/m, free at both ends: narrow end pits")
  void plain_strip_with_free_ends() {
    Sheet sheet =
        size(
            rubble()
                .material(Given.stated(WallMaterial.PLAIN_CONCRETE))
                .amount(PitsFact.WALL_LINE_LOAD, 130)
                .amount(PitsFact.WALL_HEIGHT, 0.6)
                .amount(PitsFact.WALL_THICKNESS, 0.8)
                .amount(PitsFact.CLEAR_SPAN, 20)
                .amount(PitsFact.WALL_CONCRETE_STRENGTH, 2500 * PSI)
                .amount(PitsFact.CORNERS, 2));
    double h = 0.6 - 0.0508;
    double modulus = 0.8 * h * h / 6;
    double moment = 0.6 * 5 * 50 * PSI * modulus; // 41.6 kN m
    double shear = 0.6 * 4.0 / 3 * 50 * PSI * 0.8 * h; // 121 kN
    double wu = 208;
    double byMoment = Math.sqrt(8 * moment / wu); // 1.264 m
    double byShear = 2 * shear / wu; // 1.165 m governs
    double end = Math.min(Math.sqrt(2 * moment / wu), shear / wu); // 0.58 m, less 0.1
    double width = byShear - 0.2; // 0.965 m
    new HandSheet()
        .step("span-depth", h)
        .step("span-modulus", modulus)
        .step("span-flexural-tension", 250 * PSI)
        .step("span-shear-stress", 4.0 / 3 * 50 * PSI)
        .step("span-moment", moment)
        .step("span-shear", shear)
        .step("span-load", wu)
        .step("span-by-moment", byMoment)
        .step("span-by-shear", byShear)
        .step("span", byShear)
        .step("span-free-end", end)
        .step("pit-width-limit", width)
        .hasStepsOf(sheet);
    // ends of 0.75 m; 10.5 m between in 11 pits of 0.9545 m
    new HandSheet()
        .passes("pit-width-workable", 0.75, width)
        .fails("free-end", 0.75, end - 0.1)
        .passes("pit-width-least", 0.75, 0.75)
        .passes("span-checked", 10.5 / 11 + 0.2, byShear)
        .passes("pit-width-cap", 10.5 / 11, 1.25)
        .passes("open-share-one-pit", 10.5 / 11, 3)
        .hasChecksOf(sheet);
    assertThat(
            PitsSizing.order(
                    rubble()
                        .material(Given.stated(WallMaterial.PLAIN_CONCRETE))
                        .amount(PitsFact.WALL_LINE_LOAD, 130)
                        .amount(PitsFact.WALL_HEIGHT, 0.6)
                        .amount(PitsFact.WALL_THICKNESS, 0.8)
                        .amount(PitsFact.CLEAR_SPAN, 20)
                        .amount(PitsFact.WALL_CONCRETE_STRENGTH, 2500 * PSI)
                        .amount(PitsFact.CORNERS, 1)
                        .build(),
                    PitsSettings.defaults())
                .orElseThrow()
                .row()
                .widthsMetres())
        .hasSize(13) // 0.75 m, then 11.25 m in 12 pits
        .startsWith(0.75, 0.9375)
        .endsWith(0.9375);
  }

  @Test
  @DisplayName(
      "Own case: pits in sound rock, no excavation in front: listed bearing only, no pier as a wall")
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
            "Height and thickness of what spans are not known: expose the footing at each typical place.");
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
      "29 CFR 1926 Subpart P (secondary copies): below 20 ft no table row serves and an engineer designs")
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

  @Test
  @DisplayName(
      "Own case: dressed southern pine 2 x 8: actual thickness less 1/2 in, size factor already in Fb")
  void dressed_boards_of_another_timber() {
    PitsSettings settings =
        PitsSettings.parse(List.of("timber=southern-pine-2x8", "board-loss=12.7 mm")).settings();
    Sheet sheet = PitsSizing.size(rubble().build(), settings);
    double thickness = 3.5 * 0.0254;
    new HandSheet()
        .step("board-modulus", thickness * thickness / 6)
        .step("board-allowable-bending", 925 * 1.15 * 0.85 * 1.05 * PSI)
        .step("board-allowable-shear", 175 * 1.15 * 0.97 * PSI)
        .step("board-allowable-bearing", 565 * 0.67 * PSI)
        .hasStepsOf(sheet);
    new HandSheet()
        .passes("board-lagging-table", 3 * 0.0254, 4 * 0.0254) // by nominal thickness
        .hasChecksOf(sheet);
  }

  @Test
  @DisplayName(
      "Own case: wall too weak for the narrowest pit: by stated numbers it fails, by practice it refers")
  void narrowest_pit_that_the_wall_cannot_span() {
    Sheet stated = size(rubble().amount(PitsFact.CLEAR_SPAN, 0.9));
    new HandSheet()
        .fails("pit-width-workable", 0.75, 0.7)
        .fails("span-checked", 0.95, 0.9)
        .hasChecksOf(stated);
    Sheet guessed =
        size(rubble().amount(PitsFact.CLEAR_SPAN, Given.assumed(0.9, Source.judgement())));
    new HandSheet()
        .refers("pit-width-workable", 0.75, 0.7)
        .refers("span-checked", 0.95, 0.9)
        .refers("free-end", 0.75, 0.35)
        .hasChecksOf(guessed);
    Sheet none = size(rubble().amount(PitsFact.CLEAR_SPAN, 0));
    new HandSheet().fails("pit-width-workable", 0.75, 0).hasChecksOf(none);
    // 0.95 m just spans 0.75 m and its edges
    Sheet just = size(rubble().amount(PitsFact.CLEAR_SPAN, 0.95));
    new HandSheet().passes("span-checked", 0.95, 0.95).hasChecksOf(just);
  }

  @Test
  @DisplayName("Own cases: practice widths by material and state; a short wall is one pit")
  void practice_widths() {
    assertThat(limit(WallMaterial.RUBBLE, WallCondition.SOUND)).isEqualTo(0.75);
    assertThat(limit(WallMaterial.SOLID_MASONRY, WallCondition.POOR)).isEqualTo(0.75);
    assertThat(limit(WallMaterial.SOLID_MASONRY, WallCondition.SOUND)).isEqualTo(1.2);
    assertThat(limit(WallMaterial.PLAIN_CONCRETE, WallCondition.POOR)).isEqualTo(0.75);
    PitsSettings settings =
        PitsSettings.parse(
                List.of(
                    "widest-pit=1.5 m",
                    "reinforced-width=1.4 m",
                    "plain-width=1.3 m",
                    "masonry-width=1.1 m",
                    "poor-masonry-width=0.7 m",
                    "rubble-width=0.6 m"))
            .settings();
    assertThat(limit(WallMaterial.REINFORCED_CONCRETE, WallCondition.SOUND, settings))
        .isEqualTo(1.4);
    assertThat(limit(WallMaterial.PLAIN_CONCRETE, WallCondition.SOUND, settings)).isEqualTo(1.3);
    assertThat(limit(WallMaterial.SOLID_MASONRY, WallCondition.SOUND, settings)).isEqualTo(1.1);
    assertThat(limit(WallMaterial.SOLID_MASONRY, WallCondition.POOR, settings)).isEqualTo(0.7);
    assertThat(limit(WallMaterial.RUBBLE, WallCondition.SOUND, settings)).isEqualTo(0.6);
    Sheet short0 =
        PitsSizing.size(bare().amount(PitsFact.WALL_LENGTH, 0.5).build(), PitsSettings.defaults());
    new HandSheet().refers("open-share-one-pit", 0.5, 0.5 / 6).hasChecksOf(short0);
    assertThat(short0.quantities().get(6).amount().si()).isEqualTo(1);
  }

  private static double limit(WallMaterial material, WallCondition condition) {
    return limit(material, condition, PitsSettings.defaults());
  }

  private static double limit(
      WallMaterial material, WallCondition condition, PitsSettings settings) {
    return PitsSizing.size(
            bare().material(Given.stated(material)).condition(Given.stated(condition)).build(),
            settings)
        .step("pit-width-limit")
        .orElseThrow()
        .result()
        .si();
  }

  /** The least that the sizing can do with. */
  private static PitsInputBuilder bare() {
    return PitsInput.builder()
        .amount(PitsFact.WALL_LINE_LOAD, 100)
        .amount(PitsFact.WALL_LENGTH, 20)
        .amount(PitsFact.FOOTING_WIDTH, 1)
        .amount(PitsFact.FOUNDING_DEPTH, 1)
        .amount(PitsFact.EXCAVATION_BELOW_FOOTING, 1)
        .amount(PitsFact.WATER_ABOVE_PIT_BASE, -3)
        .material(Given.stated(WallMaterial.SOLID_MASONRY))
        .faceSoil(Given.stated(SoilClass.DENSE_SAND));
  }
}
