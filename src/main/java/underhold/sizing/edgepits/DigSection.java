package underhold.sizing.edgepits;

import static underhold.sizing.edgepits.EdgeInputs.*;

import java.util.Locale;
import underhold.sizing.Given;
import underhold.sizing.SheetBuilder;
import underhold.sizing.pits.OpenPits;
import underhold.sizing.pits.PitsFact;
import underhold.sizing.pits.PitsInput;
import underhold.sizing.pits.PitsInputBuilder;
import underhold.sizing.pits.StandUp;
import underhold.sizing.pits.WallCondition;
import underhold.sizing.pits.WallMaterial;
import underhold.sizing.pits.order.PitRow;
import underhold.sizing.zone.NumberInput;

/** The open pits: their row, order, times and boards, by the sheet of pits. */
final class DigSection {
  private DigSection() {}

  /** Fewest pits not wider than the setting; a millionth over is rounding. */
  static PitRow row(EdgeCase site) {
    double length = site.get(EDGE_LENGTH);
    int count = (int) Math.max(1, Math.ceil(length / site.get(EdgeSetting.PIT_WIDTH) - 1e-6));
    return PitRow.equal(count, length / count);
  }

  /** From a bench the soil above it stands behind the pits as a surcharge. */
  static OpenPits write(EdgeCase site, SheetBuilder sheet) {
    PitRow row = row(site);
    double thickness = site.thickness();
    double bench = Math.min(site.get(EdgeSetting.WORKING_LEVEL), site.get(FOUNDING_DEPTH));
    boolean layers = site.inputs.find(BOARD_SOIL).isPresent();
    NumberInput weight = layers ? BOARD_WEIGHT : FACE_WEIGHT;
    NumberInput angle = layers ? BOARD_FRICTION : FACE_FRICTION;
    PitsInputBuilder input =
        PitsInput.builder()
            .amount(
                PitsFact.WALL_LINE_LOAD,
                Math.min(5000, site.designShare() * site.structurePressure() * thickness))
            .amount(PitsFact.WALL_LENGTH, row.lengthMetres())
            .amount(PitsFact.FOOTING_WIDTH, thickness)
            .amount(PitsFact.FOUNDING_DEPTH, site.get(FOUNDING_DEPTH) - bench)
            .amount(PitsFact.EXCAVATION_BELOW_FOOTING, site.get(EXCAVATION))
            .amount(PitsFact.PIT_DEPTH, Math.max(0.3, site.height()))
            .amount(PitsFact.WATER_ABOVE_PIT_BASE, 0)
            .amount(PitsFact.FACE_UNIT_WEIGHT, site.get(weight))
            .amount(PitsFact.FACE_FRICTION_ANGLE, site.get(angle))
            .amount(
                PitsFact.SURCHARGE, site.get(EdgeSetting.SITE_SURCHARGE) + site.get(weight) * bench)
            .material(Given.stated(WallMaterial.REINFORCED_CONCRETE))
            .condition(Given.stated(WallCondition.SOUND))
            .faceSoil(given(layers ? BOARD_SOIL : FACE_SOIL, site))
            .baseSoil(Given.stated(site.base))
            .standUp(
                Given.stated(StandUp.valueOf(site.inputs.get(STAND_UP).toUpperCase(Locale.ROOT))));
    site.inputs
        .find(layers ? BOARD_STRENGTH : FACE_STRENGTH)
        .ifPresent(strength -> input.amount(PitsFact.FACE_UNDRAINED_STRENGTH, strength));
    return OpenPits.write(input.build(), site.settings, row, sheet);
  }

  private static Given<underhold.sizing.zone.SoilClass> given(
      underhold.sizing.zone.WordInput input, EdgeCase site) {
    Given<String> word = site.inputs.find(input).orElseThrow();
    return new Given<>(soil(word.value()), word.origin(), word.source());
  }
}
