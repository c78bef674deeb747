package underhold.report.drawing.kit;

import java.awt.BasicStroke;
import java.awt.Color;
import org.jspecify.annotations.Nullable;

/** Lines by weight and kind. */
public enum Pen {
  /** What is cut. */
  OUTLINE(0.5, Colours.INK),
  /** What is seen behind. */
  MEDIUM(0.3, Colours.INK),
  /** Boundaries, leaders, dimensions. */
  THIN(0.18, Colours.FINE),
  /** Marks of a hatch. */
  HATCH(0.12, Colours.FINE),
  /** What is hidden behind something. */
  HIDDEN(0.25, Colours.INK, 1.8f, 1.0f),
  /** What is not known. */
  UNKNOWN(0.3, Colours.INK, 0.9f, 0.9f),
  /** Axes. */
  CENTRE(0.18, Colours.INK, 5f, 1f, 0.8f, 1f),
  /** Water level. */
  WATER(0.35, Colours.WATER, 4f, 1.2f),
  /** Influence lines. */
  ALERT(0.35, Colours.ALERT, 2.6f, 0.8f, 0.6f, 0.8f),
  /** Loads and diagrams. */
  FORCE(0.35, Colours.ALERT),
  /** What is built anew. */
  NEW(0.5, Colours.NEW);

  private final double width;
  private final Color colour;
  private final float @Nullable [] dash;

  Pen(double width, Color colour, float... dash) {
    this.width = width;
    this.colour = colour;
    this.dash = dash.length == 0 ? null : dash;
  }

  /** Width on paper [mm]. */
  public double width() {
    return width;
  }

  Color colour() {
    return colour;
  }

  BasicStroke stroke() {
    return new BasicStroke(
        (float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10f, dash, 0f);
  }
}
