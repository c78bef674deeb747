package underhold.report.drawing.edgepits;

import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import underhold.quantity.UnitSystem;
import underhold.report.drawing.kit.Canvas;
import underhold.report.drawing.kit.Hatch;
import underhold.report.drawing.kit.Letters;
import underhold.report.drawing.kit.Pen;
import underhold.report.drawing.kit.View;
import underhold.sizing.Amount;

/** The pressure behind the wall as a diagram to the left of it, part beside part. */
final class PressureDiagram {
  private static final double WIDE = 34;
  private static final double NONE = 0.005;

  private final Canvas canvas;
  private final View view;
  private final Pressures pressures;
  private final UnitSystem units;
  private final double base;
  private final double scale;

  /**
   * A part of the pressure.
   *
   * @param words what brings it
   * @param hatch how it is drawn
   * @param at its value at a depth [kPa]
   */
  record Part(String words, Hatch hatch, DoubleUnaryOperator at) {}

  PressureDiagram(Canvas canvas, View view, Pressures pressures, UnitSystem units, double base) {
    this.canvas = canvas;
    this.view = view;
    this.pressures = pressures;
    this.units = units;
    this.base = base;
    double most = Math.max(pressures.total(pressures.height()), pressures.total(0));
    this.scale = WIDE / Math.max(most, NONE);
  }

  /** The parts that are there, the soil next to the wall. */
  List<Part> parts() {
    List<Part> parts = new ArrayList<>();
    parts.add(new Part("soil", Hatch.SAND, pressures::soil));
    parts.add(new Part("surcharge on the ground", Hatch.FILL, depth -> pressures.surcharge()));
    parts.add(new Part("structure's share", Hatch.CONCRETE, depth -> pressures.structure()));
    parts.add(new Part("water", Hatch.WATER, pressures::water));
    return parts.stream()
        .filter(
            part ->
                pressures.corners().stream()
                    .anyMatch(depth -> Math.abs(part.at().applyAsDouble(depth)) > NONE))
        .toList();
  }

  void draw() {
    List<Double> corners = pressures.corners();
    double[] sum = new double[corners.size()];
    for (Part part : parts()) {
      Path2D band = new Path2D.Double();
      for (int i = 0; i < corners.size(); i++) {
        double x = base - scale * sum[i];
        if (i == 0) {
          band.moveTo(x, view.y(corners.get(i)));
        } else {
          band.lineTo(x, view.y(corners.get(i)));
        }
      }
      for (int i = corners.size() - 1; i >= 0; i--) {
        sum[i] += part.at().applyAsDouble(corners.get(i));
        band.lineTo(base - scale * sum[i], view.y(corners.get(i)));
      }
      band.closePath();
      canvas.group(
          "pressure-" + part.words().replaceAll("[^a-z]+", "-"),
          Map.of(
              "top", pressure(part.at().applyAsDouble(0)),
              "base", pressure(part.at().applyAsDouble(pressures.height()))),
          () -> {
            canvas.hatch(part.hatch(), band);
            canvas.outline(Pen.THIN, band);
          });
    }
    total(corners);
  }

  private void total(List<Double> corners) {
    Path2D edge = new Path2D.Double();
    edge.moveTo(base, view.y(0));
    corners.forEach(depth -> edge.lineTo(base - scale * pressures.total(depth), view.y(depth)));
    edge.lineTo(base, view.y(pressures.height()));
    edge.closePath();
    canvas.group(
        "pressure-total",
        Map.of(
            "top", pressure(pressures.total(0)),
            "base", pressure(pressures.total(pressures.height())),
            "scale", String.valueOf(scale)),
        () -> canvas.outline(Pen.FORCE, edge));
    canvas.text(
        "total " + pressure(pressures.total(0)),
        base,
        view.y(0) - 1.2,
        Letters.DIMENSION.end().heavy());
    canvas.text(
        "total " + pressure(pressures.total(pressures.height())),
        base,
        view.y(pressures.height()) + 3.2,
        Letters.DIMENSION.end().heavy());
  }

  /** The parts and their sum at a depth, in words. */
  String words(String place, double depth) {
    StringBuilder words = new StringBuilder(place);
    String join = ": ";
    for (Part part : parts()) {
      words
          .append(join)
          .append(part.words())
          .append(' ')
          .append(pressure(part.at().applyAsDouble(depth)));
      join = ", ";
    }
    return words.append("; total ").append(pressure(pressures.total(depth))).append('.').toString();
  }

  /** A key of the parts, from left to right; gives where it ends. */
  double key(double left, double y) {
    double x = left;
    for (Part part : parts()) {
      canvas.hatch(part.hatch(), new java.awt.geom.Rectangle2D.Double(x, y, 6, 3.4));
      canvas.outline(Pen.THIN, new java.awt.geom.Rectangle2D.Double(x, y, 6, 3.4));
      canvas.text(part.words(), x + 7.5, y + 2.7, Letters.NOTE);
      x += 7.5 + Letters.NOTE.width(part.words()) + 5;
    }
    return y + 5;
  }

  private String pressure(double kilopascals) {
    return Amount.pressure(Math.abs(kilopascals) < NONE ? 0 : kilopascals).in(units);
  }
}
