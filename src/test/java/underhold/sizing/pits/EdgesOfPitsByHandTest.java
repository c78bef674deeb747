package underhold.sizing.pits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static underhold.sizing.pits.HandSites.rubble;
import static underhold.sizing.pits.HandSites.size;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import underhold.quantity.UnitSystem;
import underhold.sizing.Given;
import underhold.sizing.Sheet;
import underhold.sizing.Verdict;
import underhold.sizing.zone.SoilClass;

/** Pits at the limits of their sections, worked apart from the code; own cases. */
class EdgesOfPitsByHandTest {
  private static final double PSI = 6.894757293168361;
  private static final double GC = 150 * 0.04788025898 / 0.3048;

  @Test
  @DisplayName(
      "Own case: pier 0.5 m high and 2 m thick: resultant in the middle third, it stands alone")
  void stout_pier_needs_no_brace() {
    Sheet sheet =
        size(
            rubble()
                .amount(PitsFact.FOOTING_WIDTH, 2)
                .amount(PitsFact.FOUNDING_DEPTH, 0.5)
                .amount(PitsFact.EXCAVATION_BELOW_FOOTING, 0.2)
                .amount(PitsFact.WATER_ABOVE_PIT_BASE, -3)
                .amount(PitsFact.LASTING_WATER_ABOVE_PIT_BASE, -3)
                .amount(PitsFact.SURCHARGE, 0)
                .amount(PitsFact.WALL_LINE_LOAD, 100));
    // ka 1/3, 9.5 kPa at the top: push 1/3 (19 x 0.125 + 9.5 x 0.5); N = 100 + GC
    double push = (19 * 0.125 + 9.5 * 0.5) / 3;
    double turning = (19 * 0.125 / 6 + 9.5 * 0.125) / 3;
    double normal = 100 + GC * 2 * 0.5;
    double e = turning / normal;
    double tan29 = Math.tan(Math.toRadians(29));
    new HandSheet()
        .step("toe-pressure", normal / 2 * (1 + 6 * e / 2))
        .step("bearing-overburden", 18 * 0.3) // dry to more than 2 m below the base
        .hasStepsOf(sheet);
    new HandSheet()
        .passes("toe-pressure", normal / 2 * (1 + 6 * e / 2), 150)
        .passes("sliding-without", 1.5 * push, tan29 * GC)
        .passes("overturning-without", 1.5 * turning, GC)
        .passes("water", 0.5, 3)
        .hasChecksOf(sheet);
    assertThat(sheet.check("brace")).isEmpty();
    assertThat(sheet.check("toe-pressure").orElseThrow().note().in(UnitSystem.SI)).isEmpty();
    assertThat(sheet.cautions()).noneMatch(caution -> caution.hazard().equals("unbraced piers"));
    // the same pier under masonry that nobody verified is braced all the same
    Sheet barred =
        size(
            rubble()
                .amount(PitsFact.FOOTING_WIDTH, 2)
                .amount(PitsFact.FOUNDING_DEPTH, 0.5)
                .amount(PitsFact.EXCAVATION_BELOW_FOOTING, 0.2)
                .amount(PitsFact.WATER_ABOVE_PIT_BASE, -3)
                .amount(PitsFact.LASTING_WATER_ABOVE_PIT_BASE, -3)
                .amount(PitsFact.SURCHARGE, 0)
                .amount(PitsFact.WALL_LINE_LOAD, 100)
                .lateralStabilityVerified(Given.stated(false)));
    assertThat(barred.check("brace").orElseThrow().note().in(UnitSystem.SI))
        .startsWith("Masonry whose lateral stability is not verified");
    assertThat(barred.cautions()).anyMatch(caution -> caution.hazard().equals("unbraced piers"));
  }

  @Test
  @DisplayName("Own case: pier 3 m high and 0.8 m thick: the resultant leaves the base")
  void slender_pier_turns_over() {
    Sheet sheet =
        size(
            rubble()
                .amount(PitsFact.EXCAVATION_BELOW_FOOTING, 2.7)
                .amount(PitsFact.WATER_ABOVE_PIT_BASE, -3)
                .amount(PitsFact.LASTING_WATER_ABOVE_PIT_BASE, -3));
    new HandSheet().fails("toe-pressure", (40 + GC * 0.8 * 3) / 0.8, 0).hasChecksOf(sheet);
    assertThat(sheet.step("toe-pressure")).isEmpty();
    assertThat(sheet.check("toe-pressure").orElseThrow().note().in(UnitSystem.SI))
        .isEqualTo("The resultant leaves the base.");
  }

  @Test
  @DisplayName(
      "Own case: rock below the pier: listed bearing serves the toe; fill of 0.5 degrees: nothing"
          + " is known")
  void toe_against_what_is_known_of_the_base() {
    PitsInput stated = rubble().baseSoil(Given.stated(SoilClass.ROCK)).build();
    Sheet rock = PitsSizing.size(without(stated, PitsFact.BASE_ALLOWABLE), PitsSettings.defaults());
    assertThat(rock.check("toe-pressure").orElseThrow().capacity().si())
        .isEqualTo(rock.check("bearing-listed").orElseThrow().capacity().si())
        .isPositive();
    PitsInput fill =
        rubble()
            .baseSoil(Given.stated(SoilClass.FILL))
            .amount(PitsFact.BASE_FRICTION_ANGLE, 0.5)
            .build();
    Sheet unknown =
        PitsSizing.size(without(fill, PitsFact.BASE_ALLOWABLE), PitsSettings.defaults());
    assertThat(unknown.check("bearing-reckoned")).isEmpty();
    assertThat(unknown.check("toe-pressure").orElseThrow().note().in(UnitSystem.SI))
        .isEqualTo("No allowable pressure is known.");
    assertThat(unknown.check("toe-pressure").orElseThrow().verdict()).isEqualTo(Verdict.FAILS);
    Sheet smooth = size(rubble().amount(PitsFact.BASE_FRICTION_ANGLE, 0));
    assertThat(smooth.step("bearing-nq")).isEmpty();
    new HandSheet().step("bearing-ultimate", (18 - 9.81) * 0.3).hasStepsOf(smooth); // Nq = 1
  }

  private static PitsInput without(PitsInput input, PitsFact fact) {
    PitsInputBuilder copy = PitsInput.builder();
    input
        .amounts()
        .forEach(
            (one, given) -> {
              if (one != fact) {
                copy.amount(one, given);
              }
            });
    input.material().ifPresent(copy::material);
    input.condition().ifPresent(copy::condition);
    input.faceSoil().ifPresent(copy::faceSoil);
    input.baseSoil().ifPresent(copy::baseSoil);
    input.standUp().ifPresent(copy::standUp);
    input.oshaType().ifPresent(copy::oshaType);
    input.bracePossible().ifPresent(copy::bracePossible);
    input.lateralStabilityVerified().ifPresent(copy::lateralStabilityVerified);
    return copy.build();
  }

  @Test
  @DisplayName(
      "Own case: soft base of 2 MPa: the reckoned settlement passes the 13 mm of experience")
  void movement_of_a_soft_base() {
    Sheet soft =
        size(rubble().amount(PitsFact.MOVEMENT_LIMIT, 0.05).amount(PitsFact.BASE_MODULUS, 2000));
    double settled = soft.step("base-settlement").orElseThrow().result().si();
    double shortening = 50 * 1.5 / (57_000 * Math.sqrt(3000) * PSI);
    assertThat(settled).isGreaterThan(0.013);
    new HandSheet().step("pier-shortening", shortening).hasStepsOf(soft);
    new HandSheet().passes("movement", settled + shortening, 0.05).hasChecksOf(soft);
    Sheet unknown = size(rubble().amount(PitsFact.MOVEMENT_LIMIT, 0.013));
    new HandSheet().passes("movement", 0.013, 0.013).hasChecksOf(unknown);
    assertThat(unknown.step("base-settlement")).isEmpty();
    assertThat(unknown.check("movement").orElseThrow().note().in(UnitSystem.SI))
        .startsWith("The experience value; no modulus");
    assertThat(soft.check("movement").orElseThrow().note().in(UnitSystem.SI))
        .startsWith("The greater of the experience value");
  }

  @Test
  @DisplayName(
      "Own case: footing 3.2 m wide over a box of 1.5 m: three bays of 1.067 m; nothing passes, so"
          + " the thickest board")
  void wide_footing_has_posts_between_its_boards() {
    Sheet wide = size(rubble().amount(PitsFact.FOOTING_WIDTH, 3.2));
    new HandSheet().step("board-span", 3.2 / 3).hasStepsOf(wide);
    Sheet even = size(rubble().amount(PitsFact.FOOTING_WIDTH, 1.5));
    new HandSheet().step("board-span", 1.5).hasStepsOf(even);
    Sheet deep =
        size(
            rubble()
                .amount(PitsFact.FOUNDING_DEPTH, 4)
                .amount(PitsFact.WALL_LINE_LOAD, 200)
                .amount(PitsFact.WATER_ABOVE_PIT_BASE, -3));
    double b = 4 * 0.0254;
    new HandSheet().step("board-modulus", b * b / 6).hasStepsOf(deep);
    assertThat(deep.check("approach-bending").orElseThrow().verdict()).isEqualTo(Verdict.FAILS);
  }

  @Test
  @DisplayName(
      "Own case: thin long boards under a great thrust buckle: the check is of thrust, no sum is"
          + " given")
  void boards_that_buckle() {
    Sheet sheet =
        PitsSizing.size(
            rubble()
                .amount(PitsFact.FOOTING_WIDTH, 0.8)
                .amount(PitsFact.WALL_LINE_LOAD, 5000)
                .amount(PitsFact.FOUNDING_DEPTH, 29)
                .amount(PitsFact.EXCAVATION_BELOW_FOOTING, 20)
                .amount(PitsFact.SURCHARGE, 500)
                .amount(PitsFact.WATER_ABOVE_PIT_BASE, -3)
                .amount(PitsFact.FACE_FRICTION_ANGLE, 0)
                .build(),
            PitsSettings.parse(List.of("approach-width=2.5 m", "board-loss=12.7 mm")).settings());
    // 0.822 x 3,627 MPa x (88.9 / 2,500)^2 = 3,770 kPa; over 700 kPa on 2.5 m give 9,800
    assertThat(sheet.step("approach-use")).isEmpty();
    assertThat(sheet.check("approach-use").orElseThrow().title())
        .isEqualTo("Thrust along an approach board against buckling");
    assertThat(sheet.check("approach-use").orElseThrow().verdict()).isEqualTo(Verdict.FAILS);
    double pressure = sheet.step("approach-pressure").orElseThrow().result().si();
    assertThat(sheet.check("approach-use").orElseThrow().demand().si())
        .isCloseTo(pressure * 2.5 / 2 / (3.5 * 0.0254), within(1e-6));
  }

  @Test
  @DisplayName(
      "Own cases: walls too short for their end pits, or that do not divide into workable ones")
  void short_walls() {
    Sheet ends = size(rubble().amount(PitsFact.WALL_LENGTH, 1.2).amount(PitsFact.CORNERS, 2));
    assertThat(ends.quantities().get(6).amount().si()).isEqualTo(2);
    new HandSheet().refers("pit-width-least", 0.75, 0.6).hasChecksOf(ends);
    Sheet odd = size(rubble().amount(PitsFact.WALL_LENGTH, 0.75));
    new HandSheet()
        .passes("pit-width-least", 0.75, 0.75)
        .refers("open-share-one-pit", 0.75, 0.125)
        .hasChecksOf(odd);
    assertThat(odd.quantities().get(6).amount().si()).isEqualTo(1);
  }

  @Test
  @DisplayName("Own case: pits that end above the bottom of the excavation are undermined")
  void pits_that_do_not_reach() {
    Sheet sheet = size(rubble().amount(PitsFact.PIT_DEPTH, 1));
    new HandSheet().fails("pit-reaches", 1.2, 1).hasChecksOf(sheet);
    new HandSheet().step("bearing-overburden", 0).hasStepsOf(sheet);
    Sheet same = size(rubble().amount(PitsFact.PIT_DEPTH, 1.2));
    new HandSheet().passes("pit-reaches", 1.2, 1.2).hasChecksOf(same);
  }

  @ParameterizedTest(name = "{0}: {1} m3 a day")
  @DisplayName("Cost-book rates (from memory): light soils 6.1, others 3.05 m3 a day and crew")
  @CsvSource({
    "LOOSE_SAND, 6.1", "DENSE_SAND, 6.1", "SILT, 6.1", "SOFT_CLAY, 6.1", "PEAT, 6.1",
    "STIFF_CLAY, 3.05", "DENSE_GRAVEL, 3.05", "HARD, 3.05", "FILL, 3.05", "ROCK, 3.05"
  })
  void rate_of_digging(SoilClass soil, double rate) {
    Sheet sheet = size(rubble().faceSoil(Given.stated(soil)));
    new HandSheet().step("pit-dig-time", 5.4 / rate * 1.5 * 8).hasStepsOf(sheet);
  }

  @Test
  @DisplayName(
      "Own case: 2.5 crews dig as two; shifts of 4 h; 1.5 + 1 days of a crew, 2.5 + 1 + 0.5 + 2"
          + " open")
  void time_by_the_settings() {
    PitsSettings settings =
        PitsSettings.parse(
                List.of("shift=4 h", "crews=2.5", "crew-size=4", "dig-rate=12 m3", "bulking=1.5"))
            .settings();
    Sheet sheet = PitsSizing.size(rubble().build(), settings);
    // 5.4 / 12 x 1.5 x 4 = 2.7 h of 4: 1 day by halves; concrete 1 day
    assertThat(sheet.time().get(0).amount().si()).isEqualTo(8);
    assertThat(sheet.time().get(1).amount().si()).isEqualTo(5.5); // 2 + 1 + 0.5 + 2
    assertThat(sheet.time().get(5).amount().si()).isEqualTo(16 * 2 * 4 * 4);
    assertThat(PitsSizing.order(rubble().build(), settings).orElseThrow().rules().crews())
        .isEqualTo(2);
    assertThat(sheet.quantities().get(5).amount().si())
        .isCloseTo(1.5 * sheet.quantities().get(4).amount().si(), within(1e-9));
  }
}
