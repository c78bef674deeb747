package underhold.sizing.drilledpiles;

import underhold.sizing.zone.SoilClass;

/**
 * A layer as the piles meet it. Depths are below ground; what a kind does not need is 0.
 *
 * @param name in words
 * @param soil its class
 * @param topMetres depth of its top
 * @param bottomMetres depth of its bottom, infinite for the last
 * @param unitWeight kN/m3
 * @param undrainedStrength su, kPa
 * @param blowCount N60
 * @param rockStrength qu, kPa
 * @param rockQuality RQD, ratio
 */
record BondLayer(
    String name,
    SoilClass soil,
    double topMetres,
    double bottomMetres,
    double unitWeight,
    double undrainedStrength,
    double blowCount,
    double rockStrength,
    double rockQuality) {

  /** How side resistance is found. */
  enum Kind {
    /** By undrained strength. */
    CLAY,
    /** By effective stress. */
    SAND,
    /** By the strength of rock. */
    ROCK,
    /** Not counted: fill, peat. */
    NONE;

    static Kind of(SoilClass soil) {
      return switch (soil) {
        case ROCK -> ROCK;
        case STIFF_CLAY, SOFT_CLAY -> CLAY;
        case HARD, DENSE_GRAVEL, DENSE_SAND, LOOSE_SAND, SILT -> SAND;
        case FILL, PEAT -> NONE;
      };
    }
  }

  Kind kind() {
    return Kind.of(soil);
  }

  /** Whether it holds a pile sideways only far down. */
  boolean soft() {
    return switch (soil) {
      case LOOSE_SAND, SILT, SOFT_CLAY, FILL, PEAT -> true;
      case ROCK, HARD, DENSE_GRAVEL, DENSE_SAND, STIFF_CLAY -> false;
    };
  }
}
