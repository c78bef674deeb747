package underhold.report.drawing.kit;

import java.awt.Color;

/**
 * The palette. Every ink stands out by 4.5 to 1 or more from white and from every tint, in grey as
 * in colour (contrast of relative luminance, W3C, WCAG 2.2, 1.4.3), and nothing is told by colour
 * alone: lines differ by dash or label, areas by hatch, rounds by number.
 */
public final class Colours {
  /** Outlines and words. */
  public static final Color INK = new Color(0x1B2026);

  /** Dimensions, extension lines, hatches. */
  public static final Color FINE = new Color(0x46505A);

  /** Water. */
  public static final Color WATER = new Color(0x0A4C86);

  /** Influence lines, loads: what must be minded. */
  public static final Color ALERT = new Color(0x96360B);

  /** Parts that are new. */
  public static final Color NEW = new Color(0x17604A);

  public static final Color PAPER = Color.WHITE;
  public static final Color TINT_CONCRETE = new Color(0xECEEF0);
  public static final Color TINT_NEW = new Color(0xDDEFE6);
  public static final Color TINT_TIMBER = new Color(0xF6E8CC);
  public static final Color TINT_STEEL = new Color(0xDAE3EC);
  public static final Color TINT_MASONRY = new Color(0xF6E3DA);
  public static final Color TINT_WATER = new Color(0xE3F0FA);
  public static final Color TINT_FINE_SOIL = new Color(0xF1EDE2);
  public static final Color TINT_COARSE_SOIL = new Color(0xFAF3DC);
  public static final Color TINT_ROCK = new Color(0xE6E6E2);
  public static final Color TINT_ORGANIC = new Color(0xE6E8D4);

  private Colours() {}
}
