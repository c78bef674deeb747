package underhold.sizing.pits;

import static org.assertj.core.api.Assertions.assertThat;
import static underhold.sizing.pits.HandSites.bare;
import static underhold.sizing.pits.HandSites.rubble;
import static underhold.sizing.pits.HandSites.size;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.quantity.UnitSystem;
import underhold.sizing.Given;
import underhold.sizing.Sheet;
import underhold.sizing.Source;

/** What strips and walls span over a pit, worked apart from the code; own cases. */
class SpannedPitsByHandTest {
  private static final double PSI = 6.894757293168361;

  @Test
  @DisplayName(
      "Own case, by hand: reinforced strip of 36 x 12 in, bars too far from a free end to help"
          + " there")
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
      "Own case, by hand: plain strip 0.8 x 0.6 m under 40 kN/m, free at both ends: narrow end"
          + " pits")
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
      "Own case: wall too weak for the narrowest pit: by stated numbers it fails, by practice it"
          + " refers")
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

  @Test
  void bars_that_do_not_count_are_spoken_of() {
    PitsInputBuilder plain =
        rubble()
            .material(Given.stated(WallMaterial.PLAIN_CONCRETE))
            .amount(PitsFact.WALL_HEIGHT, 0.6)
            .amount(PitsFact.WALL_THICKNESS, 0.8)
            .amount(PitsFact.WALL_CONCRETE_STRENGTH, 2500 * PSI);
    assertThat(note(plain)).isEqualTo("Bars that are not known are not counted.");
    assertThat(note(plain.amount(PitsFact.WALL_STEEL_AREA, 0.001)))
        .isEqualTo("Bars that are not known are not counted.");
    assertThat(note(plain.amount(PitsFact.WALL_STEEL_DEPTH, 0.5)))
        .startsWith("The bars are not counted: the concrete would crush before they yield");
  }

  private static String note(PitsInputBuilder input) {
    return size(input).step("span-depth").orElseThrow().note().in(UnitSystem.SI);
  }
}
