package underhold.sizing.pits;

import static org.assertj.core.api.Assertions.assertThat;
import static underhold.sizing.pits.HandZones.input;
import static underhold.sizing.pits.HandZones.number;
import static underhold.sizing.pits.HandZones.size;
import static underhold.sizing.pits.HandZones.wall;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.quantity.UnitSystem;
import underhold.sizing.Origin;
import underhold.sizing.Sheet;
import underhold.sizing.zone.SoilClass;

/** What pits take from the layers of a site; own cases. */
class PitsFromLayersByHandTest {
  private static final String LAYERS =
      """
      { "top": "0 m", "soil": "fill", "unitWeight": "17 kN/m3" },
      { "top": "0.8 m", "soil": "dense-sand", "unitWeight": "20 kN/m3", "frictionAngle": "36 deg",
        "standUp": "minutes" },
      { "top": "1.6 m", "soil": "stiff-clay", "unitWeight": "19 kN/m3",
        "undrainedStrength": "60 kPa", "standUp": "days" },
      { "top": "3.5 m", "soil": "loose-sand", "unitWeight": "18 kN/m3" },
      { "top": "4.6 m", "soil": "peat" }
      """;

  @Test
  @DisplayName(
      "Own case: faces from 1 to 2.8 m in sand and clay, base to 2.8 + 1.8 = 4.6 m in clay and"
          + " loose sand")
  void layers_at_the_faces_and_below_the_base() {
    PitsInput input = input(wall("worstSoil", "-"), LAYERS);
    // 90 / 0.9 = 100 kPa: sand presses 0.26 x 100, clay 100 - 120 < 0
    assertThat(input.faceSoil().orElseThrow().value()).isEqualTo(SoilClass.DENSE_SAND);
    assertThat(input.faceSoil().orElseThrow().source().citation())
        .isEqualTo(
            "presses most of the layers at the faces: dense-sand from 0.8 m, stiff-clay from 1.6"
                + " m");
    assertThat(input.facesRun().orElseThrow().value()).isTrue();
    assertThat(number(input, PitsFact.FACE_FRICTION_ANGLE)).isEqualTo(24); // clay's careful one
    assertThat(number(input, PitsFact.FACE_UNDRAINED_STRENGTH)).isEqualTo(60);
    assertThat(number(input, PitsFact.FACE_UNIT_WEIGHT)).isEqualTo(20);
    // clay bears 5.14 x 60 = 308 kPa; loose sand 28 degrees: 0.5 x 8 x 0.9 x 16.7 = 60 kPa
    assertThat(input.baseSoil().orElseThrow().value()).isEqualTo(SoilClass.LOOSE_SAND);
    assertThat(input.baseSoil().orElseThrow().source().citation())
        .contains("bears least within two footing widths", "loose-sand from 3.5 m");
    assertThat(number(input, PitsFact.BASE_UNIT_WEIGHT)).isEqualTo(18);
    assertThat(number(input, PitsFact.BASE_FRICTION_ANGLE)).isEqualTo(28);
    assertThat(input.standUp().orElseThrow().origin()).isEqualTo(Origin.DERIVED);
    assertThat(input.standUp().orElseThrow().value()).isEqualTo(StandUp.MINUTES);
  }

  @Test
  void layer_that_begins_where_the_range_ends_is_out_of_it() {
    String layers =
        """
        { "top": "0 m", "soil": "stiff-clay", "undrainedStrength": "80 kPa" },
        { "top": "1 m", "soil": "dense-sand" },
        { "top": "2.8 m", "soil": "dense-gravel" },
        { "top": "4.6 m", "soil": "peat" }
        """;
    PitsInput input = input(wall("worstSoil", "-"), layers);
    assertThat(input.faceSoil().orElseThrow().value()).isEqualTo(SoilClass.DENSE_SAND);
    assertThat(input.facesRun().orElseThrow().value()).isTrue();
    assertThat(input.baseSoil().orElseThrow().value()).isEqualTo(SoilClass.DENSE_GRAVEL);
    assertThat(input.amount(PitsFact.FACE_UNDRAINED_STRENGTH)).isEmpty();
    assertThat(number(input, PitsFact.FACE_UNIT_WEIGHT)).isEqualTo(19); // not every layer states it
    Sheet sheet = size(wall("worstSoil", "-"), layers);
    assertThat(sheet.cautions().get(0).hazard()).isEqualTo("soil above the footing");
    assertThat(sheet.cautions().get(0).advice().in(UnitSystem.SI))
        .contains("also go through: stiff-clay from 0 m.");
    PitsInput wide = input(wall("footingWidth", "0.91 m", "worstSoil", "-"), layers);
    assertThat(wide.baseSoil().orElseThrow().value()).isEqualTo(SoilClass.PEAT);
  }

  @Test
  void heavier_load_makes_the_clay_press_more_than_the_sand() {
    // 200 / 0.9 = 222 kPa: sand of 36 degrees 0.26 x 222 = 58, clay 222 - 120 = 102
    assertThat(
            input(wall("lineLoad", "200 kN/m", "worstSoil", "-"), LAYERS)
                .faceSoil()
                .orElseThrow()
                .value())
        .isEqualTo(SoilClass.STIFF_CLAY);
    // without a load 100 kPa stand in
    assertThat(
            input(wall("lineLoad", "-", "worstSoil", "-"), LAYERS).faceSoil().orElseThrow().value())
        .isEqualTo(SoilClass.DENSE_SAND);
  }

  @Test
  void clay_all_the_way_neither_runs_nor_lends_its_strength_to_another_layer() {
    String layers =
        """
        { "top": "0 m", "soil": "stiff-clay", "undrainedStrength": "80 kPa" },
        { "top": "1.2 m", "soil": "stiff-clay", "undrainedStrength": "60 kPa" },
        { "top": "2.8 m", "soil": "stiff-clay", "undrainedStrength": "90 kPa" }
        """;
    PitsInput input = input(wall("worstSoil", "-", "bearingDepth", "1.5 m"), layers);
    assertThat(input.facesRun().orElseThrow().value()).isFalse();
    assertThat(input.faceSoil().orElseThrow().value()).isEqualTo(SoilClass.STIFF_CLAY);
    assertThat(number(input, PitsFact.FACE_UNDRAINED_STRENGTH)).isEqualTo(60);
    assertThat(input.baseSoil().orElseThrow().value()).isEqualTo(SoilClass.STIFF_CLAY);
    assertThat(number(input, PitsFact.BASE_UNDRAINED_STRENGTH)).isEqualTo(90);
    // the first layer goes on below the footing: it is no layer of the approach pits alone
    assertThat(
            size(wall("worstSoil", "-", "bearingDepth", "1.5 m"), layers)
                .cautions()
                .get(0)
                .hazard())
        .isEqualTo("cave-in");
  }
}
