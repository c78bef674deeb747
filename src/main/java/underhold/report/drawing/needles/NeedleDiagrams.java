package underhold.report.drawing.needles;

import java.awt.Color;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.math.BigDecimal;
import java.util.Map;
import underhold.quantity.Measure;
import underhold.quantity.QuantityPrinter;
import underhold.quantity.UnitSystem;
import underhold.report.drawing.kit.Canvas;
import underhold.report.drawing.kit.Colours;
import underhold.report.drawing.kit.Letters;
import underhold.report.drawing.kit.Pen;
import underhold.report.drawing.kit.View;
import underhold.sizing.Amount;

/**
 * Load and moment of a needle under its elevation. The moment is drawn on the side in tension, as
 * straight lines to the peak of the sheet, which the weight of the needle is part of.
 */
final class NeedleDiagrams {
  private static final double HIGHEST = 24;
  private static final Color TINT = new Color(0xF7E6DC);

  private final Canvas canvas;
  private final View view;
  private final NeedleSheet needle;
  private final UnitSystem units;

  NeedleDiagrams(Canvas canvas, View view, NeedleSheet needle, UnitSystem units) {
    this.canvas = canvas;
    this.view = view;
    this.needle = needle;
    this.units = units;
  }

  /** Draws both from there downwards between two margins [mm]. */
  void draw(double top, double left, double right) {
    canvas.text("Loads", 2, top + 9, Letters.LABEL);
    loads(top + 12);
    moment(top + 36);
  }

  private void loads(double y) {
    double load = view.x(0);
    double near = view.x(needle.rightSupport());
    canvas.group(
        "loads",
        () -> {
          canvas.line(Pen.OUTLINE, view.x(needle.leftSupport()), y, view.x(needle.rightEnd()), y);
          canvas.arrow(Pen.FORCE, load, y - 9, load, y - 0.5);
          canvas.text("N = " + needle.text("needle-load", units), load + 1.5, y - 5, Letters.NOTE);
          canvas.arrow(Pen.FORCE, near, y + 9, near, y + 0.5);
          canvas.text(
              "Rn = " + needle.text("needle-reaction", units), near, y + 12, Letters.NOTE.middle());
          if (needle.cantilever()) {
            double tail = view.x(needle.rightEnd());
            canvas.arrow(Pen.FORCE, tail, y - 9, tail, y - 0.5);
            canvas.text(
                "U = " + needle.text("tail-uplift", units), tail, y - 10.5, Letters.NOTE.middle());
          } else {
            double far = view.x(needle.leftSupport());
            canvas.arrow(Pen.FORCE, far, y + 9, far, y + 0.5);
            canvas.text("no more than Rn", far, y + 12, Letters.NOTE.middle());
          }
          canvas.text(
              "and the weight of the needle, "
                  + needle.symbol("needle-moment", "g").map(weight -> weight.in(units)).orElse("?"),
              2,
              y + 17,
              Letters.NOTE);
        });
  }

  private void moment(double top) {
    Amount peak = needle.result("needle-moment").orElseThrow();
    double perMillimetre = scale(peak);
    double high = peak.si() / perMillimetre;
    boolean hogging = needle.cantilever();
    double base = hogging ? top + high + 4 : top;
    double tip = hogging ? base - high : base + high;
    double at = view.x(hogging ? needle.rightSupport() : 0);
    Path2D shape = new Path2D.Double();
    shape.moveTo(view.x(needle.leftSupport()), base);
    shape.lineTo(at, tip);
    shape.lineTo(view.x(needle.rightEnd()), base);
    shape.closePath();
    canvas.group(
        "moment",
        Map.of(
            "peak", String.valueOf(high),
            "per-millimetre", String.valueOf(perMillimetre),
            "text", peak.in(units)),
        () -> {
          canvas.fill(TINT, shape);
          canvas.outline(Pen.FORCE, shape);
          canvas.line(
              Pen.OUTLINE, view.x(needle.leftSupport()), base, view.x(needle.rightEnd()), base);
        });
    String words = "M = " + peak.in(units);
    double feet = hogging ? tip - 1.2 : tip + 3.4;
    canvas.label(words, at, feet, Letters.LABEL.middle());
    canvas.text("Moment", 2, hogging ? base - high / 2 : base + 4, Letters.LABEL);
    key(Math.max(base, tip) + 9, perMillimetre, peak);
  }

  /** The scale of the moments as a bar of ten millimetres. */
  private void key(double y, double perMillimetre, Amount peak) {
    double length = 10;
    Rectangle2D bar = new Rectangle2D.Double(3, y - length + 1, 1.4, length);
    canvas.fill(Colours.INK, bar);
    canvas.text(
        "this bar: "
            + QuantityPrinter.print(length * perMillimetre, Measure.MOMENT, peak.unit(units))
            + "; drawn on the side in tension, as straight lines to the peak",
        6.5,
        y,
        Letters.NOTE);
  }

  /** Moment of a millimetre of paper, so that ten of them are 1, 2 or 5 times a power of ten. */
  private double scale(Amount peak) {
    double unit = Measure.MOMENT.requireUnit(peak.unit(units)).toInside(1);
    for (int power = -3; power <= 7; power++) {
      for (int lead : new int[] {1, 2, 5}) {
        double ten = BigDecimal.valueOf(lead).scaleByPowerOfTen(power).doubleValue() * unit;
        if (peak.si() / (ten / 10) <= HIGHEST) {
          return ten / 10;
        }
      }
    }
    return peak.si() / HIGHEST;
  }
}
