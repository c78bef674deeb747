package underhold.report.drawing.chart;

import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
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

/** The levels at which movement is told, acted on and stopped, beside what is forecast. */
public final class MovementChart {
  private static final double ROW = 18;
  private static final double BAR = 5;
  private static final double LEFT = 52;
  private static final double RIGHT = 156;
  private static final int PARTS = 8;
  private static final double BEYOND = 1.12;
  private static final int CATEGORIES = 4;

  private final SheetNumbers numbers;
  private final String zone;
  private final ChartPage page;
  private final Canvas canvas;
  private final List<String> words = new ArrayList<>();

  private MovementChart(SheetNumbers numbers, String zone, String id) {
    this.numbers = numbers;
    this.zone = zone;
    this.page = new ChartPage(id, "Levels of movement: alert, action, stop", zone);
    this.canvas = page.canvas();
  }

  /**
   * The chart, or why there is none.
   *
   * @param zone the zone's name
   * @param sheet the sheet of watching without underpinning
   * @param units in which it is read
   * @param id the figure's id
   */
  public static Drawn of(String zone, Sheet sheet, UnitSystem units, String id) {
    SheetNumbers numbers = new SheetNumbers(sheet, units);
    return numbers
        .refusal(List.of("alert-level", "action-level", "stop-level"), List.of())
        .orElseGet(() -> new MovementChart(numbers, zone, id).draw());
  }

  private Drawn draw() {
    Optional<Check> forecast = numbers.check("forecast-movement");
    double most =
        Stream.concat(
                Stream.of("stop-level", "movement-limit", "stop-difference")
                    .map(numbers::result)
                    .flatMap(Optional::stream),
                forecast.map(Check::demand).stream())
            .mapToDouble(numbers::shown)
            .max()
            .orElse(1);
    String unit = numbers.result("stop-level").map(one -> one.unit(numbers.units())).orElse("");
    double top = page.top() + 2;
    boolean differences = numbers.result("alert-difference").isPresent();
    boolean categories = numbers.result("movement-category-0").isPresent();
    int rows = 1 + (differences ? 1 : 0) + (categories ? 1 : 0) + (forecast.isPresent() ? 1 : 0);
    double bottom = top + rows * ROW;
    Axis axis = Axis.upTo(most * BEYOND, PARTS, LEFT, RIGHT);
    page.levelAxis(axis, top, bottom, "movement, " + unit);
    words.add("Levels of movement for " + zone + ".");
    double y = top;
    levels("movement", "level", axis, y);
    if (differences) {
      y += ROW;
      levels("between two points", "difference", axis, y);
    }
    if (categories) {
      y += ROW;
      categories(axis, y);
    }
    if (forecast.isPresent()) {
      y += ROW;
      forecast(forecast.get(), axis, y);
    }
    page.key(
        bottom + 12,
        List.of(
            new ChartPage.Key(Fill.OPEN, Colours.INK, "below alert"),
            new ChartPage.Key(Fill.DOTTED, Colours.WATER, "alert to action"),
            new ChartPage.Key(Fill.STRIPED, Colours.ALERT, "action to stop"),
            new ChartPage.Key(Fill.SOLID, Colours.ALERT, "stop and beyond")));
    return Drawn.of(
        page.finish(
            List.of(
                "Levels count down, up or sideways from the readings before any work. Who acts at each level stands in the stages of the sheet."),
            "Bars of movement parted at the alert, action and stop levels, with the forecast.",
            words));
  }

  private void levels(String name, String ending, Axis axis, double y) {
    Optional<Amount> alert = numbers.result("alert-" + ending);
    Optional<Amount> action = numbers.result("action-" + ending);
    Optional<Amount> stop = numbers.result("stop-" + ending);
    if (alert.isEmpty() || action.isEmpty() || stop.isEmpty()) {
      return;
    }
    title(name, y);
    double bar = y + ROW - BAR - 1;
    List<Double> marks = new ArrayList<>();
    marks.add(axis.low());
    Stream.of(alert, action, stop)
        .flatMap(Optional::stream)
        .forEach(one -> marks.add(numbers.shown(one)));
    marks.add(axis.high());
    Fill[] fills = {Fill.OPEN, Fill.DOTTED, Fill.STRIPED, Fill.SOLID};
    Color[] inks = {Colours.INK, Colours.WATER, Colours.ALERT, Colours.ALERT};
    for (int i = 0; i < fills.length; i++) {
      double from = axis.at(marks.get(i));
      double to = axis.at(marks.get(i + 1));
      Fill fill = fills[i];
      Color ink = inks[i];
      canvas.group(
          ending + "-band-" + (i + 1),
          () -> fill.draw(canvas, ink, new Rectangle2D.Double(from, bar, to - from, BAR)));
    }
    mark(ending, "alert", alert.get(), axis, bar);
    mark(ending, "action", action.get(), axis, bar);
    mark(ending, "stop", stop.get(), axis, bar);
    words.add(
        "%s: alert %s, action %s, stop %s."
            .formatted(name, numbers.in(alert), numbers.in(action), numbers.in(stop)));
  }

  private void title(String name, double y) {
    canvas.text(
        canvas.fit(name, LEFT - 4 - ChartPage.EDGE, Letters.LABEL),
        ChartPage.EDGE,
        y + ROW - 2.6,
        Letters.LABEL);
  }

  private void mark(String row, String name, Amount amount, Axis axis, double bar) {
    double x = axis.at(numbers.shown(amount));
    String text = name + " " + amount.in(numbers.units());
    canvas.group(
        row + "-" + name,
        Map.of("x", String.valueOf(x), "value", amount.in(numbers.units())),
        () -> canvas.line(Pen.OUTLINE, x, bar - 0.8, x, bar + BAR + 0.8));
    write(text, x, bar - 1.2);
  }

  /** Left of its mark where that is free, else right of it, else one line up. */
  private void write(String text, double x, double y) {
    Letters end = Letters.DIMENSION.end();
    Letters start = Letters.DIMENSION.start();
    for (double line = y; line > y - 7; line -= 3.2) {
      Rectangle2D left = Canvas.box(text, x - 0.5, line, end);
      if (left.getMinX() > LEFT && canvas.isFree(left)) {
        canvas.label(text, x - 0.5, line, end);
        return;
      }
      if (canvas.isFree(Canvas.box(text, x + 0.5, line, start))) {
        canvas.label(text, x + 0.5, line, start);
        return;
      }
    }
  }

  private void categories(Axis axis, double y) {
    title("damage category ends", y);
    double bar = y + ROW - BAR - 1;
    canvas.line(Pen.MEDIUM, LEFT, bar + BAR / 2, axis.to(), bar + BAR / 2);
    for (int i = 0; i < CATEGORIES; i++) {
      Optional<Amount> amount = numbers.result("movement-category-" + i);
      if (amount.isEmpty()) {
        continue;
      }
      words.add("Damage category " + i + " ends at " + numbers.in(amount) + ".");
      double value = numbers.shown(amount.get());
      if (value <= axis.high()) {
        double x = axis.at(value);
        canvas.line(Pen.MEDIUM, x, bar, x, bar + BAR);
        write(i + ": " + numbers.in(amount), x, bar - 1.2);
      }
    }
  }

  private void forecast(Check check, Axis axis, double y) {
    title("forecast, no underpinning", y);
    double bar = y + ROW - BAR - 1;
    double to = axis.at(numbers.shown(check.demand()));
    canvas.group(
        "forecast",
        Map.of("value", check.demand().in(numbers.units())),
        () ->
            Fill.OPEN.draw(canvas, Colours.INK, new Rectangle2D.Double(LEFT, bar, to - LEFT, BAR)));
    String words = check.demand().in(numbers.units()) + ", " + check.verdict().label();
    canvas.label(words, LEFT + 2, bar + 3.4, Letters.NOTE);
    this.words.add("Forecast without underpinning against the limit: " + words + ".");
  }
}
