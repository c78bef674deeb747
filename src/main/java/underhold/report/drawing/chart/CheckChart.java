package underhold.report.drawing.chart;

import java.awt.Color;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import underhold.quantity.UnitSystem;
import underhold.report.drawing.Drawn;
import underhold.report.drawing.Figure;
import underhold.report.drawing.kit.Canvas;
import underhold.report.drawing.kit.Colours;
import underhold.report.drawing.kit.DrawingScale;
import underhold.report.drawing.kit.Lettering;
import underhold.report.drawing.kit.Letters;
import underhold.report.drawing.kit.Pen;
import underhold.report.drawing.numbers.SheetNumbers;
import underhold.sizing.Check;
import underhold.sizing.Sheet;
import underhold.sizing.Verdict;

/** The checks of a sheet as bars of what is asked over what there is, on up to so many pages. */
public final class CheckChart {
  /** What a figure needs besides the checks: heading, axis, signs, notes, foot [mm]. */
  private static final double AROUND = 62;

  private static final double ROW = 6;
  private static final double LINE = 3.4;
  private static final double BAR = 3.4;
  private static final double LEFT = 78;
  private static final double RIGHT = 128;
  private static final double TITLE = LEFT - 3 - ChartPage.EDGE;
  private static final double HUNDRED = 100;
  private static final double END = 150;
  private static final double STEP = 50;

  private final SheetNumbers numbers;
  private final String zone;
  private final List<Check> checks;
  private final ChartPage page;
  private final Canvas canvas;

  private CheckChart(
      SheetNumbers numbers, String zone, List<Check> checks, String id, String part) {
    this.numbers = numbers;
    this.zone = zone;
    this.checks = checks;
    this.page = new ChartPage(id, numbers.sheet().title() + ": checks" + part, zone);
    this.canvas = page.canvas();
  }

  /**
   * The figures, one or more; one reason where the sheet holds no check.
   *
   * @param sheet any calculation sheet
   * @param zone the zone's name
   * @param units in which it is read
   * @param id the first figure's id; further ones end in a number
   */
  public static Drawn of(Sheet sheet, String zone, UnitSystem units, String id) {
    SheetNumbers numbers = new SheetNumbers(sheet, units);
    if (!sheet.complete()) {
      return numbers.refusal(List.of(), List.of()).orElseThrow();
    }
    if (sheet.checks().isEmpty()) {
      return numbers.withheld("it holds no check").orElseThrow();
    }
    List<Figure> figures = new ArrayList<>();
    double room = DrawingScale.page(units) - AROUND;
    int count = (int) Math.ceil(sheet.checks().stream().mapToDouble(CheckChart::high).sum() / room);
    int each = (sheet.checks().size() + count - 1) / count;
    for (int i = 0; i < count; i++) {
      int to = Math.min(sheet.checks().size(), (i + 1) * each);
      String part = count == 1 ? "" : ", part " + (i + 1) + " of " + count;
      figures.add(
          new CheckChart(
                  numbers,
                  zone,
                  sheet.checks().subList(i * each, to),
                  i == 0 ? id : id + "-" + (i + 1),
                  part)
              .draw());
    }
    return Drawn.of(figures);
  }

  /** What a check takes [mm]. */
  private static double high(Check check) {
    return high(Lettering.wrap(check.title(), TITLE, Letters.NOTE));
  }

  private static double high(List<String> title) {
    return ROW + (title.size() - 1) * LINE;
  }

  private Figure draw() {
    Axis axis = new Axis(0, END, STEP, LEFT, RIGHT);
    double top = page.top() + 1;
    List<List<String>> titles =
        checks.stream().map(check -> page.lines(check.title(), TITLE, Letters.NOTE)).toList();
    double bottom = top + titles.stream().mapToDouble(CheckChart::high).sum();
    page.levelAxis(axis, top, bottom, "share used, %");
    List<String> words = new ArrayList<>();
    words.add("Checks of the sheet of " + numbers.sheet().title() + " for " + zone + ".");
    double at = top;
    for (int i = 0; i < checks.size(); i++) {
      row(checks.get(i), titles.get(i), axis, at);
      at += high(titles.get(i));
      words.add(words(checks.get(i)));
    }
    canvas.line(Pen.OUTLINE, axis.at(HUNDRED), top - 1, axis.at(HUNDRED), bottom);
    double y = bottom + 13;
    double x = ChartPage.EDGE + 2;
    for (Verdict verdict : Verdict.values()) {
      Verdicts.sign(canvas, verdict, x, y);
      String meaning = meaning(verdict);
      canvas.text(meaning, x + 2.5, y + 0.9, Letters.NOTE);
      x += Letters.NOTE.width(meaning) + 9;
    }
    return page.finish(
        List.of(
            "A bar shows what is asked as a share of what there is. The factor of safety asked for is in the demand, so a bar to 100 % has just the factor asked. A bar with a point goes on past the chart. A check may refer below 100 % because it rests on what nobody stated."),
        "Bars of the share used in each check, with its verdict.",
        words);
  }

  private static String meaning(Verdict verdict) {
    return switch (verdict) {
      case PASSES -> "passes";
      case FAILS -> "fails";
      case REFER -> "refers to the engineer";
    };
  }

  private void row(Check check, List<String> title, Axis axis, double y) {
    double bar = y + (ROW - BAR) / 2;
    for (int i = 0; i < title.size(); i++) {
      canvas.text(title.get(i), ChartPage.EDGE, bar + 2.6 + i * LINE, Letters.NOTE);
    }
    OptionalDouble use = check.utilisation();
    canvas.group(
        "check-" + check.id(),
        Map.of(
            "utilisation",
            use.isPresent() ? String.valueOf(use.getAsDouble()) : "none",
            "verdict",
            check.verdict().label()),
        () -> bar(check, use, axis, bar));
    Verdicts.sign(canvas, check.verdict(), RIGHT + 4, y + ROW / 2);
    canvas.text(share(check) + ", " + check.verdict().label(), RIGHT + 7, bar + 2.6, Letters.NOTE);
  }

  private void bar(Check check, OptionalDouble use, Axis axis, double y) {
    double share = use.isPresent() ? HUNDRED * use.getAsDouble() : END;
    double end = axis.at(Math.min(share, END));
    Rectangle2D box = new Rectangle2D.Double(LEFT, y, end - LEFT, BAR);
    fill(check.verdict()).draw(canvas, ink(check.verdict()), box);
    if (share > END || use.isEmpty()) {
      Path2D point = new Path2D.Double();
      point.moveTo(end, y);
      point.lineTo(end + 1.8, y + BAR / 2);
      point.lineTo(end, y + BAR);
      point.closePath();
      canvas.fill(ink(check.verdict()), point);
    }
  }

  private static Fill fill(Verdict verdict) {
    return switch (verdict) {
      case PASSES -> Fill.SOLID;
      case FAILS -> Fill.STRIPED;
      case REFER -> Fill.DOTTED;
    };
  }

  private static Color ink(Verdict verdict) {
    return switch (verdict) {
      case PASSES -> Colours.NEW;
      case FAILS -> Colours.ALERT;
      case REFER -> Colours.WATER;
    };
  }

  private static String share(Check check) {
    return check.utilisation().isPresent()
        ? String.format(Locale.ROOT, "%.0f %%", HUNDRED * check.utilisation().getAsDouble())
        : "no capacity";
  }

  private String words(Check check) {
    return "%s: %s of %s, %s, %s."
        .formatted(
            check.title(),
            check.demand().in(numbers.units()),
            check.capacity().in(numbers.units()),
            share(check),
            check.verdict().label());
  }
}
