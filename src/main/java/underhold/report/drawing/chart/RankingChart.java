package underhold.report.drawing.chart;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import underhold.advice.Effect;
import underhold.advice.Finding;
import underhold.advice.OptionAdvice;
import underhold.advice.RulePack;
import underhold.advice.Standing;
import underhold.consult.ZoneAdvice;
import underhold.report.drawing.Figure;
import underhold.report.drawing.kit.Canvas;
import underhold.report.drawing.kit.Colours;
import underhold.report.drawing.kit.Letters;
import underhold.report.drawing.kit.Pen;

/** The options of a zone in rank order, with the points that speak for and against each. */
public final class RankingChart {
  private static final double ROW = 10.5;
  private static final double BAR = 4.6;
  private static final double LEFT = 68;
  private static final double RIGHT = 138;
  private static final int PARTS = 8;

  /**
   * An option with its points.
   *
   * @param advice what is advised of it
   * @param plus points for it
   * @param minus points against it, above 0
   */
  private record Row(OptionAdvice advice, int plus, int minus) {}

  private final ZoneAdvice zone;
  private final List<Row> rows;
  private final ChartPage page;
  private final Canvas canvas;

  private RankingChart(ZoneAdvice zone, RulePack pack, String id) {
    this.zone = zone;
    this.rows = zone.ranking().options().stream().map(advice -> row(advice, pack)).toList();
    this.page = new ChartPage(id, "The options ranked: points for and against", zone.name());
    this.canvas = page.canvas();
  }

  /**
   * The chart.
   *
   * @param zone what was advised of the zone
   * @param pack the rules it rests on, for the points of each strength
   * @param id the figure's id
   */
  public static Figure of(ZoneAdvice zone, RulePack pack, String id) {
    return new RankingChart(zone, pack, id).draw();
  }

  private static Row row(OptionAdvice advice, RulePack pack) {
    int plus = 0;
    int minus = 0;
    for (Finding finding : advice.findings()) {
      if (finding.effect().scores() && !advice.uncounted().contains(finding)) {
        int points = finding.strength().map(pack.weights()::of).orElse(0);
        boolean against = finding.effect() == Effect.AGAINST;
        plus += against ? 0 : points;
        minus += against ? points : 0;
      }
    }
    if (plus - minus != advice.score()) {
      throw new IllegalStateException(
          advice.option().id() + ": the points drawn do not add up to the score");
    }
    return new Row(advice, plus, minus);
  }

  private Figure draw() {
    int most = Math.max(1, rows.stream().mapToInt(Row::plus).max().orElse(1));
    int least = rows.stream().mapToInt(Row::minus).max().orElse(0);
    double step = Math.max(1, Axis.between(-least, most, PARTS, LEFT, RIGHT).step());
    double low = -Math.ceil(least / step) * step;
    double high = Math.ceil(most / step) * step;
    Axis axis = new Axis(low, high, step, LEFT, RIGHT);
    double top = page.top() + 5;
    double bottom = top + rows.size() * ROW;
    heads(axis, top);
    page.levelAxis(axis, top, bottom, "points: left of 0 against, right of 0 for");
    for (int i = 0; i < rows.size(); i++) {
      row(rows.get(i), i, axis, top + i * ROW);
    }
    canvas.line(Pen.OUTLINE, axis.at(0), top, axis.at(0), bottom);
    page.key(
        bottom + 12,
        List.of(
            new ChartPage.Key(Fill.SOLID, Colours.NEW, "speaks for"),
            new ChartPage.Key(Fill.STRIPED, Colours.ALERT, "speaks against"),
            new ChartPage.Key(
                Fill.DASHED, Colours.FINE, "held or ruled out: points do not bring it back")));
    return page.finish(
        List.of("One cause counts once each way. Points rank the options; they prove none."),
        "Bars of points for and against each option of the zone, in rank order.",
        equivalent());
  }

  private void heads(Axis axis, double top) {
    Letters head = Letters.DIMENSION.heavy();
    canvas.text("option and standing", ChartPage.EDGE, top - 1.5, head.start());
    canvas.text("against", axis.at(0) - 1.5, top - 1.5, head.end());
    canvas.text("for", axis.at(0) + 1.5, top - 1.5, head.start());
    canvas.text("score", ChartPage.WIDTH - ChartPage.EDGE, top - 1.5, head.end());
  }

  private void row(Row row, int index, Axis axis, double y) {
    OptionAdvice advice = row.advice();
    double wide = LEFT - 12 - ChartPage.EDGE;
    String name = (index + 1) + ". " + advice.option().label();
    canvas.line(Pen.HATCH, ChartPage.EDGE, y, ChartPage.WIDTH - ChartPage.EDGE, y);
    canvas.text(canvas.fit(name, wide, Letters.LABEL), ChartPage.EDGE, y + 4.4, Letters.LABEL);
    canvas.text(
        canvas.fit(standing(advice), wide, Letters.NOTE), ChartPage.EDGE, y + 8.4, Letters.NOTE);
    double bar = y + (ROW - BAR) / 2;
    String id = advice.option().id();
    boolean open = !advice.ranked();
    canvas.group(
        "for-" + id,
        Map.of("points", String.valueOf(row.plus())),
        () -> {
          double end = axis.at(row.plus());
          (open ? Fill.DASHED : Fill.SOLID)
              .draw(
                  canvas,
                  open ? Colours.FINE : Colours.NEW,
                  new Rectangle2D.Double(axis.at(0), bar, end - axis.at(0), BAR));
          if (row.plus() > 0) {
            number("+" + row.plus(), end + 1, bar, Letters.NOTE.start());
          }
        });
    canvas.group(
        "against-" + id,
        Map.of("points", String.valueOf(row.minus())),
        () -> {
          double end = axis.at(-row.minus());
          (open ? Fill.DASHED : Fill.STRIPED)
              .draw(
                  canvas,
                  open ? Colours.FINE : Colours.ALERT,
                  new Rectangle2D.Double(end, bar, axis.at(0) - end, BAR));
          if (row.minus() > 0) {
            number("-" + row.minus(), end - 1, bar, Letters.NOTE.end());
          }
        });
    canvas.text(
        score(advice.score()), ChartPage.WIDTH - ChartPage.EDGE, bar + 3.2, Letters.LABEL.end());
  }

  private void number(String words, double x, double bar, Letters letters) {
    canvas.label(words, x, bar + 3.2, letters);
  }

  private static String score(int points) {
    return points > 0 ? "+" + points : String.valueOf(points);
  }

  /** How the option stands, in words. */
  static String standing(OptionAdvice advice) {
    String word =
        switch (advice.standing()) {
          case WORKS_IF -> "works if its conditions are met";
          case HELD -> "held: a safety question is open";
          default -> advice.standing().word();
        };
    boolean unspoken = advice.standing() == Standing.WORKS && !advice.spokenFor();
    return word + (advice.tied() ? ", tied" : "") + (unspoken ? ", nothing speaks for it" : "");
  }

  private List<String> equivalent() {
    List<String> lines = new ArrayList<>();
    lines.add("Points for and against the options of " + zone.name() + ", in rank order.");
    int place = 1;
    for (Row row : rows) {
      lines.add(
          "%d. %s: %s, %d points for, %d points against, score %s."
              .formatted(
                  place++,
                  row.advice().option().label(),
                  standing(row.advice()),
                  row.plus(),
                  row.minus(),
                  score(row.advice().score())));
    }
    return lines;
  }
}
