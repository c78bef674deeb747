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
  PLAIN("", Colours.PAPER);

  private final String label;
  private final Color tint;

  Hatch(String label, Color tint) {
    this.label = label;
    this.tint = tint;
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
      case STEEL -> 0.16;
      default -> 0.13;
    };
  }
}
