package underhold.report.drawing.kit;

import java.awt.Color;

/** What an area is made of, told by its marks first and by its tint second. */
public enum Hatch {
  CONCRETE("concrete", Colours.TINT_CONCRETE),
  NEW_CONCRETE("new concrete", Colours.TINT_NEW),
  MASONRY("masonry", Colours.TINT_MASONRY),
  STEEL("steel", Colours.TINT_STEEL),
  TIMBER("timber", Colours.TINT_TIMBER),
  DRY_PACK("dry pack", Colours.PAPER),
  CLAY("clay", Colours.TINT_FINE_SOIL),
  SILT("silt", Colours.TINT_FINE_SOIL),
  SAND("sand", Colours.TINT_COARSE_SOIL),
  GRAVEL("gravel", Colours.TINT_COARSE_SOIL),
  FILL("fill", Colours.TINT_ORGANIC),
  ROCK("rock", Colours.TINT_ROCK),
  ORGANIC("organic soil", Colours.TINT_ORGANIC),
  /** Soil that nobody named. */
  UNKNOWN("ground not known", Colours.PAPER),
  WATER("water", Colours.TINT_WATER),
  /** The following tell things apart that are of one kind, in this order. */
  STRIPES("slanted lines", Colours.PAPER),
  DOTS("dots", Colours.PAPER),
  LEVELS("level lines", Colours.PAPER),
  CROSSES("crosses", Colours.PAPER),
  UPRIGHTS("upright lines", Colours.PAPER),
  RINGS("rings", Colours.PAPER),
  PLAIN("", Colours.PAPER);

  private static final Hatch[] ONE_OF_MANY = {STRIPES, DOTS, LEVELS, CROSSES, UPRIGHTS, RINGS};

  private final String label;
  private final Color tint;

  Hatch(String label, Color tint) {
    this.label = label;
    this.tint = tint;
  }

  /** The hatch of the n-th of many, from 1; after six they begin again, so a number stands by. */
  public static Hatch nth(int number) {
    return ONE_OF_MANY[Math.floorMod(number - 1, ONE_OF_MANY.length)];
  }

  /** In words. */
  public String label() {
    return label;
  }

  public Color tint() {
    return tint;
  }

  /** Weight of its marks [mm]. */
  double weight() {
    return switch (this) {
      case SAND, DRY_PACK -> 0.28;
      case DOTS -> 0.45;
      case STRIPES, LEVELS, CROSSES, UPRIGHTS, RINGS -> 0.2;
      case STEEL -> 0.16;
      default -> 0.13;
    };
  }
}
