package underhold.sizing.needles;

import underhold.sizing.zone.SoilClass;

/** Careful moduli of soils under a seat, first loading; judgement. */
final class SeatSoil {
  /** Modulus of clay over its undrained strength, low in the usual range; judgement. */
  private static final double CLAY_RATIO = 200;

  private SeatSoil() {}

  /** E, kPa. */
  static double modulusKilopascals(SoilClass soil, double undrainedStrength) {
    return switch (soil) {
      case ROCK -> 500_000;
      case HARD -> 80_000;
      case DENSE_GRAVEL -> 60_000;
      case DENSE_SAND -> 40_000;
      case LOOSE_SAND -> 10_000;
      case SILT -> 6_000;
      case STIFF_CLAY, SOFT_CLAY -> Math.max(1_000, CLAY_RATIO * undrainedStrength);
      case FILL -> 4_000;
      case PEAT -> 1_000;
    };
  }
}
