package underhold.report.drawing.chart;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import underhold.report.drawing.Figure;
import underhold.report.drawing.ground.Strata;
import underhold.report.drawing.kit.Canvas;
import underhold.report.drawing.kit.Colours;
import underhold.report.drawing.kit.Letters;
import underhold.report.drawing.kit.Notes;
import underhold.report.drawing.kit.Pen;
import underhold.report.drawing.numbers.SheetNumbers;
import underhold.sizing.Amount;

/** Resistance along a pile as bars over depth, beside the layers that give it. */
final class DepthChart {
  private static final double LEAST_HEIGHT = 120;
  private static final double MOST_HEIGHT = 160;

  /** Paper for a metre of a deep pile [mm]. */
  private static final double METRE = 4.5;

  private static final double LEFT = 20;
  private static final double LAYERS = 22;
  private static final double RIGHT = 112;
  private static final double NOTES = 118;
  private static final int PARTS = 10;
  private static final int UNIT_PARTS = 5;
  private static final double BELOW = 1.04;

  /**
   * A piece of the pile.
   *
   * @param name names it in the drawing
   * @param layer the layer, in words
   * @param top depth below ground [m]
   * @param bottom depth below ground [m]
   * @param unit resistance per area of shaft
   * @param force resistance of the piece
   */
  record Piece(String name, String layer, double top, double bottom, Amount unit, Amount force) {}

  /**
   * A level told beside the chart.
   *
   * @param words what lies there
   * @param depth below ground [m]
   * @param pen its line
   */
  record Level(String words, double depth, Pen pen) {}

  private final SheetNumbers numbers;
  private final ChartPage page;
  private final Canvas canvas;

  DepthChart(SheetNumbers numbers, String id, String title, String zone) {
    this.numbers = numbers;
    this.page = new ChartPage(id, title, zone);
    this.canvas = page.canvas();
  }

  /**
   * Draws it.
   *
   * @param toe depth of the toe [m]
   * @param unitName what is drawn to the right, without its unit
   */
  Figure draw(
      Strata strata,
      List<Piece> pieces,
      List<Level> levels,
      double toe,
      String unitName,
      List<String> below,
      String description) {
    double top = page.top() + 3;
    double deepest = shown(toe * BELOW);
    double height = Math.max(LEAST_HEIGHT, Math.min(MOST_HEIGHT, METRE * toe));
    Axis exact = Axis.upTo(deepest, PARTS, top, top + height);
    Axis depth = new Axis(0, deepest, exact.step(), top, top + height);
    Amount most =
        pieces.stream()
            .map(Piece::unit)
            .reduce((one, other) -> one.si() >= other.si() ? one : other)
            .orElse(Amount.pressure(0));
    Axis unit = Axis.upTo(numbers.shown(most) * 1.05, UNIT_PARTS, LEFT + LAYERS, RIGHT);
    page.depthAxis(
        clipped(depth),
        LEFT,
        LEFT,
        "depth below ground, " + Amount.length(1).unit(numbers.units()));
    layers(strata, depth);
    page.levelAxis(unit, top, depth.to(), unitName + ", " + most.unit(numbers.units()));
    pieces.forEach(piece -> bar(piece, depth, unit));
    Notes notes = new Notes(canvas, NOTES, top - 2, ChartPage.WIDTH - ChartPage.EDGE - NOTES);
    for (Level level : levels) {
      double y = depth.at(shown(level.depth()));
      canvas.line(level.pen(), LEFT + LAYERS, y, RIGHT, y);
      notes.add(RIGHT, y, level.words() + " " + numbers.length(level.depth()));
    }
    for (int i = 0; i < pieces.size(); i++) {
      Piece piece = pieces.get(i);
      double middle = depth.at(shown((piece.top() + piece.bottom()) / 2));
      notes.add(
          unit.at(numbers.shown(piece.unit())),
          middle,
          piece.force().in(numbers.units()) + " from " + piece.layer());
    }
    notes.draw();
    List<String> words = new ArrayList<>(strata.words(numbers.units()));
    levels.forEach(level -> words.add(level.words() + " " + numbers.length(level.depth()) + "."));
    pieces.forEach(piece -> words.add(words(piece, unitName)));
    words.addAll(below);
    return page.finish(below, description, words);
  }

  private double shown(double metres) {
    return numbers.shown(Amount.length(metres));
  }

  /** The same scale with its last tick inside. */
  private static Axis clipped(Axis depth) {
    double last = Math.floor(depth.high() / depth.step() + 1e-9) * depth.step();
    return new Axis(0, last, depth.step(), depth.from(), depth.at(last));
  }

  private void layers(Strata strata, Axis depth) {
    for (Strata.Stratum layer : strata.layers()) {
      double from = depth.at(shown(layer.top()));
      double to = depth.at(shown(layer.bottom()));
      Rectangle2D box = new Rectangle2D.Double(LEFT, from, LAYERS, to - from);
      canvas.hatch(layer.hatch(), box);
      canvas.outline(Pen.THIN, Colours.FINE, box);
      canvas.name(layer.name(), box, Letters.DIMENSION);
    }
  }

  private void bar(Piece piece, Axis depth, Axis unit) {
    double from = depth.at(shown(piece.top()));
    double to = depth.at(shown(piece.bottom()));
    double end = unit.at(numbers.shown(piece.unit()));
    canvas.group(
        piece.name(),
        Map.of(
            "unit", piece.unit().in(numbers.units()), "force", piece.force().in(numbers.units())),
        () ->
            Fill.STRIPED.draw(
                canvas,
                Colours.NEW,
                new Rectangle2D.Double(unit.from(), from, end - unit.from(), to - from)));
    String value = piece.unit().in(numbers.units());
    double wide = Letters.DIMENSION.width(value);
    if (end - unit.from() > wide + 4 && to - from > 4) {
      canvas.label(value, unit.from() + 2, (from + to) / 2 + 0.9, Letters.DIMENSION.start());
    }
  }

  private String words(Piece piece, String unitName) {
    return "%s, from %s to %s: %s %s, %s in all."
        .formatted(
            piece.layer(),
            numbers.length(piece.top()),
            numbers.length(piece.bottom()),
            unitName,
            piece.unit().in(numbers.units()),
            piece.force().in(numbers.units()));
  }
}
