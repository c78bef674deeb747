package underhold.sizing.pits;

import underhold.mechanics.timber.SheetingSoil;
import underhold.sizing.Given;
import underhold.sizing.Sheet;
import underhold.sizing.zone.SoilClass;

/** Sites of pits worked by hand; own cases. */
final class HandSites {
  private HandSites() {}

  static Sheet size(PitsInputBuilder input) {
    return PitsSizing.size(input.build(), PitsSettings.defaults());
  }

  /** Rubble on loose sand, water over the base of the pits, everything stated. */
  static PitsInputBuilder rubble() {
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

  /** The least that the sizing can do with. */
  static PitsInputBuilder bare() {
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
