package underhold.report.drawing.chart;

import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import underhold.quantity.UnitSystem;
import underhold.report.drawing.Drawn;
import underhold.report.drawing.kit.Canvas;
import underhold.report.drawing.kit.Colours;
import underhold.report.drawing.kit.Letters;
import underhold.report.drawing.kit.Pen;
import underhold.report.drawing.numbers.SheetNumbers;
import underhold.sizing.Amount;
import underhold.sizing.Check;
import underhold.sizing.Sheet;

/** Load and settlement of the head of one drilled pile, as the points of its sheet. */
public final class LoadSettlementChart {
  private static final int[] PERCENT = {25, 50, 75, 100, 150, 200};
  private static final double HEIGHT = 78;
  private static final double LEFT = 24;
  private static final double RIGHT = 160;
  private static final int PARTS = 8;

  /** A limit further off than this many times the curve is told, not drawn. */
  private static final double FAR = 6;

  /**
   * A point of the curve.
   *
   * @param percent of the working load
   */
  private record Point(int percent, Amount load, Amount settlement) {}

  private final SheetNumbers numbers;
  private final String zone;
  private final List<Point> points;
  private final ChartPage page;
  private final Canvas canvas;
  private final List<String> words = new ArrayList<>();
  private final List<Double> lines = new ArrayList<>();
  private final List<Double> levels = new ArrayList<>();
  private final List<Line2D> segments = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();

  private LoadSettlementChart(SheetNumbers numbers, String zone, String id) {
    this.numbers = numbers;
    this.zone = zone;
    this.points = points(numbers);
    this.page = new ChartPage(id, "Load and settlement of the head of one drilled pile", zone);
    this.canvas = page.canvas();
  }

  /**
   * The chart, or why there is none.
   *
   * @param sheet the sheet of drilled piles
   * @param zone the zone's name
   * @param units in which it is read
   * @param id the figure's id
   */
  public static Drawn of(Sheet sheet, String zone, UnitSystem units, String id) {
    SheetNumbers numbers = new SheetNumbers(sheet, units);
    return numbers
        .refusal(List.of("pile-load"), List.of())
        .or(
            () ->
                points(numbers).size() < 2
                    ? numbers.withheld(
                        "it holds no curve, because the ground does not carry the working load or the curve was not asked for")
                    : Optional.empty())
        .orElseGet(() -> new LoadSettlementChart(numbers, zone, id).draw());
  }

  private static List<Point> points(SheetNumbers numbers) {
    List<Point> points = new ArrayList<>();
    for (int percent : PERCENT) {
      String step = "settlement-" + percent;
      Optional<Amount> load = numbers.symbol(step, "P");
      Optional<Amount> settlement = numbers.result(step);
      if (load.isPresent() && settlement.isPresent()) {
        points.add(new Point(percent, load.get(), settlement.get()));
      }
    }
    return points;
  }

  private Drawn draw() {
    Point last = points.get(points.size() - 1);
    double top = page.top() + 13;
    double deepest =
        points.stream().mapToDouble(p -> numbers.shown(p.settlement())).max().orElse(1);
    Optional<Check> limit = numbers.check("head-settlement");
    double allowed = limit.map(check -> numbers.shown(check.capacity())).orElse(0.0);
    boolean near = allowed > 0 && allowed <= FAR * deepest;
    Axis loads = Axis.upTo(numbers.shown(last.load()) * 1.08, PARTS, LEFT, RIGHT);
    Axis down =
        Axis.upTo((near ? Math.max(deepest, allowed) : deepest) * 1.08, PARTS, top, top + HEIGHT);
    String length = last.settlement().unit(numbers.units());
    page.depthAxis(down, LEFT, RIGHT, "settlement of the head, " + length);
    page.levelAxis(loads, top, down.to(), "load on the head, " + last.load().unit(numbers.units()));
    words.add("Load and settlement of the head of one drilled pile of " + zone + ".");
    load(loads, down, "working-load", "working load", numbers.result("pile-load"), top - 8.5);
    load(
        loads,
        down,
        "allowable",
        "allowable by the ground, in the group",
        numbers.result("pile-in-group-allowable"),
        top - 5);
    load(
        loads,
        down,
        "ultimate",
        "ultimate side resistance",
        numbers.result("side-total"),
        top - 1.5);
    limit.ifPresent(check -> limit(loads, down, check, near));
    curve(loads, down);
    notes.add(
        "A single pile by the side and base curves of its sheet; points at shares of the working load, straight between them. Creep, the group, caps and beams are not in it.");
    return Drawn.of(
        page.finish(
            notes,
            "Curve of load against settlement of one pile, with the working load and the limits marked.",
            words));
  }

  private void curve(Axis loads, Axis down) {
    Path2D path = new Path2D.Double();
    path.moveTo(loads.at(0), down.at(0));
    for (Point point : points) {
      double x = loads.at(numbers.shown(point.load()));
      double y = down.at(numbers.shown(point.settlement()));
      segments.add(new Line2D.Double(path.getCurrentPoint(), new Point2D.Double(x, y)));
      path.lineTo(x, y);
    }
    canvas.group("curve", () -> canvas.outline(Pen.OUTLINE, Colours.INK, path));
    for (Point point : points) {
      point(
          point, loads.at(numbers.shown(point.load())), down.at(numbers.shown(point.settlement())));
    }
  }

  private void point(Point point, double x, double y) {
    String load = numbers.in(Optional.of(point.load()));
    String settlement = numbers.in(Optional.of(point.settlement()));
    canvas.group(
        "point-" + point.percent(),
        Map.of(
            "x", String.valueOf(x), "y", String.valueOf(y), "load", load, "settlement", settlement),
        () -> {
          double size = point.percent() == 100 ? 2.4 : 1.6;
          Ellipse2D dot = new Ellipse2D.Double(x - size / 2, y - size / 2, size, size);
          canvas.fill(point.percent() == 100 ? Colours.INK : Colours.PAPER, dot);
          canvas.outline(Pen.MEDIUM, Colours.INK, dot);
        });
    label(point.percent() + " %: " + settlement, x, y);
    words.add("At %d %% of the working load, %s: %s.".formatted(point.percent(), load, settlement));
  }

  /** Above and to the right of its point, or below and to the left where that is not free. */
  private void label(String text, double x, double y) {
    Letters letters = Letters.DIMENSION;
    double[][] places = {
      {1.5, -1.4, 0},
      {-1.5, 3.6, 1},
      {1.5, 3.6, 0},
      {-1.5, -1.4, 1},
      {1.5, 7, 0},
      {-1.5, 7, 1},
      {-1.5, 10, 1}
    };
    for (double[] place : places) {
      Letters way = place[2] == 0 ? letters.start() : letters.end();
      Rectangle2D box = Canvas.box(text, x + place[0], y + place[1], way);
      boolean crossed = lines.stream().anyMatch(at -> at > box.getMinX() && at < box.getMaxX());
      crossed |= levels.stream().anyMatch(at -> at > box.getMinY() && at < box.getMaxY());
      crossed |= segments.stream().anyMatch(segment -> segment.intersects(box));
      boolean inside = box.getMaxX() < ChartPage.WIDTH && box.getMinX() > LEFT;
      if (inside && !crossed && canvas.isFree(box)) {
        canvas.label(text, x + place[0], y + place[1], way);
        return;
      }
    }
  }

  private void load(
      Axis loads, Axis down, String name, String what, Optional<Amount> amount, double y) {
    if (amount.isEmpty()) {
      return;
    }
    String text = what + " " + numbers.in(amount);
    double value = numbers.shown(amount.get());
    words.add(text + ".");
    if (value > loads.high()) {
      notes.add(text + ": beyond the chart to the right.");
      return;
    }
    double x = loads.at(value);
    lines.add(x);
    boolean left = x + Letters.NOTE.width(text) + 2 > ChartPage.WIDTH;
    canvas.group(
        name,
        Map.of("x", String.valueOf(x), "value", numbers.in(amount)),
        () -> {
          canvas.line(name.equals("working-load") ? Pen.FORCE : Pen.ALERT, x, y - 2, x, down.to());
          canvas.label(text, left ? x - 1 : x + 1, y, left ? Letters.NOTE.end() : Letters.NOTE);
        });
  }

  private void limit(Axis loads, Axis down, Check check, boolean near) {
    Amount allowed = check.capacity();
    String text = "settlement allowed " + numbers.in(Optional.of(allowed));
    words.add(
        "%s; felt by the structure at the working load %s, %s."
            .formatted(text, numbers.in(Optional.of(check.demand())), check.verdict().label()));
    if (!near) {
      notes.add(
          text
              + (allowed.si() > 0
                  ? ": below the end of the chart."
                  : ": no settlement is allowed."));
      return;
    }
    double y = down.at(numbers.shown(allowed));
    levels.add(y);
    canvas.group(
        "limit",
        Map.of("y", String.valueOf(y), "value", numbers.in(Optional.of(allowed))),
        () -> {
          canvas.line(Pen.ALERT, loads.from(), y, loads.to(), y);
          canvas.label(text, LEFT + 2, y - 1, Letters.NOTE.in(Colours.ALERT));
        });
  }
}
