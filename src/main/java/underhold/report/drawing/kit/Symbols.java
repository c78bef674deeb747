package underhold.report.drawing.kit;

import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.math.BigDecimal;
import java.util.List;
import underhold.quantity.Measure;
import underhold.quantity.QuantityPrinter;
import underhold.quantity.UnitSystem;

/** Signs that every drawing has: heading, scale, water, levels. */
public final class Symbols {
  /** What stands under every drawing. */
  public static final String NOT_FOR_CONSTRUCTION =
      "Decision support, not for construction: a licensed engineer must check and own the design.";

  private static final double FOOT = 0.3048;
  private static final double LONGEST_BAR = 60;
  private static final double BAR = 1.6;

  private Symbols() {}

  /** A heading at the top, and what it is of; gives where the drawing may begin [mm]. */
  public static double heading(Canvas canvas, String title, String of) {
    double edge = 2;
    double wide = canvas.width() - 2 * edge;
    canvas.text(canvas.fit(title, wide, Letters.TITLE), edge, 6, Letters.TITLE);
    canvas.text(canvas.fit(of, wide, Letters.NOTE), edge, 10.5, Letters.NOTE);
    canvas.line(Pen.MEDIUM, edge, 12.5, canvas.width() - edge, 12.5);
    return 16;
  }

  /** Notes across the paper below what is drawn, then the foot; to be called last. */
  public static void foot(
      Canvas canvas, List<String> notes, DrawingScale scale, UnitSystem system) {
    double edge = 2;
    double y = canvas.bottom() + 4;
    for (String note : notes) {
      y = canvas.paragraph(note, edge, y + 1.5, canvas.width() - 2 * edge, Letters.NOTE);
    }
    foot(canvas, scale, system);
  }

  /** The scale in words, its bar, and the caution; to be called last. */
  public static void foot(Canvas canvas, DrawingScale scale, UnitSystem system) {
    double edge = 2;
    double y = canvas.bottom() + 5;
    canvas.line(Pen.MEDIUM, edge, y, canvas.width() - edge, y);
    canvas.group(
        "scale",
        java.util.Map.of("ratio", String.valueOf(scale.ratio())),
        () -> scale(canvas, scale, system, edge, y + 5));
    canvas.text(NOT_FOR_CONSTRUCTION, edge, y + 13.5, Letters.DIMENSION.start());
  }

  private static void scale(
      Canvas canvas, DrawingScale scale, UnitSystem system, double x, double y) {
    String words = "Scale " + scale.label();
    canvas.text(words, x, y + 1, Letters.LABEL);
    double left = x + Letters.LABEL.width(words) + 8;
    double unit = system == UnitSystem.US ? FOOT : 1;
    double part = part(scale, unit);
    int parts = 4;
    for (int i = 0; i < parts; i++) {
      Rectangle2D box =
          new Rectangle2D.Double(left + i * scale.paper(part), y - BAR, scale.paper(part), BAR);
      canvas.fill(i % 2 == 0 ? Colours.INK : Colours.PAPER, box);
      canvas.outline(Pen.THIN, box);
    }
    canvas.text("0", left, y + 2.6, Letters.DIMENSION);
    canvas.text(
        QuantityPrinter.print(parts * part, Measure.LENGTH, system),
        left + parts * scale.paper(part),
        y + 2.6,
        Letters.DIMENSION);
  }

  /**
   * The longest of 1, 2, 5 times a power of ten whose four parts are no longer than the bar [m].
   */
  private static double part(DrawingScale scale, double unit) {
    double best = unit / 1000;
    for (int power = -3; power <= 4; power++) {
      for (int lead : new int[] {1, 2, 5}) {
        double part = BigDecimal.valueOf(lead).scaleByPowerOfTen(power).doubleValue() * unit;
        if (4 * scale.paper(part) <= LONGEST_BAR) {
          best = part;
        }
      }
    }
    return best;
  }

  /** The sign of a water level: a triangle on the line, three shrinking lines below. */
  public static void water(Canvas canvas, double x, double y) {
    Path2D triangle = new Path2D.Double();
    triangle.moveTo(x, y);
    triangle.lineTo(x - 1.3, y - 2.2);
    triangle.lineTo(x + 1.3, y - 2.2);
    triangle.closePath();
    canvas.fill(Colours.PAPER, triangle);
    canvas.outline(Pen.MEDIUM, Colours.WATER, triangle);
    for (int i = 1; i <= 3; i++) {
      double half = 2.1 - 0.55 * i;
      canvas.outline(
          Pen.THIN,
          Colours.WATER,
          new java.awt.geom.Line2D.Double(x - half, y + 0.7 * i, x + half, y + 0.7 * i));
    }
  }

  /** The mark of a level: a triangle standing on it. */
  public static void level(Canvas canvas, double x, double y) {
    Path2D triangle = new Path2D.Double();
    triangle.moveTo(x, y);
    triangle.lineTo(x - 1, y - 1.7);
    triangle.lineTo(x + 1, y - 1.7);
    triangle.closePath();
    canvas.fill(Colours.INK, triangle);
  }
}
