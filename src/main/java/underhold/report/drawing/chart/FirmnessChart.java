package underhold.report.drawing.chart;

import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import underhold.advice.SupportOption;
import underhold.consult.ZoneAdvice;
import underhold.consult.firmness.Firmness;
import underhold.report.drawing.Figure;
import underhold.report.drawing.kit.Canvas;
import underhold.report.drawing.kit.Colours;
import underhold.report.drawing.kit.Letters;
import underhold.report.drawing.kit.Pen;

/** How often each option comes first when weights, limits and open facts are drawn. */
public final class FirmnessChart {
  private static final double ROW = 8;
  private static final double BAR = 4.6;
  private static final double LEFT = 62;
  private static final double RIGHT = 134;
  private static final double STEP = 20;
  private static final double HUNDRED = 100;

  /**
   * A bar.
   *
   * @param id names it in the drawing
   * @param name the option, or that there is none
   * @param count in how many draws
   * @param role what it is: now first, next, other
   */
  private record Row(String id, String name, int count, String role) {}

  private final ZoneAdvice zone;
  private final Firmness firmness;
  private final List<Row> rows;
  private final ChartPage page;
  private final Canvas canvas;

  private FirmnessChart(ZoneAdvice zone, Firmness firmness, String id) {
    this.zone = zone;
    this.firmness = firmness;
    this.rows = rows(firmness);
    this.page =
        new ChartPage(
            id, "How firm the first place is: share of draws that each wins", zone.name());
    this.canvas = page.canvas();
  }

  /** The chart; empty where it was not asked how firm the answer is. */
  public static Optional<Figure> of(ZoneAdvice zone, String id) {
    return zone.firmness()
        .filter(firmness -> firmness.draws() > 0)
        .map(firmness -> new FirmnessChart(zone, firmness, id).draw());
  }

  private static List<Row> rows(Firmness firmness) {
    Optional<SupportOption> next = firmness.runnerUp();
    List<Row> rows = new ArrayList<>();
    for (SupportOption option : firmness.byFirsts()) {
      String role =
          option == firmness.leader()
              ? "leads now"
              : next.filter(option::equals).isPresent() ? "next" : "other";
      rows.add(new Row(option.id(), option.label(), firmness.first(option), role));
    }
    SupportOption leader = firmness.leader();
    if (leader != null && firmness.first(leader) == 0) {
      rows.add(0, new Row(leader.id(), leader.label(), 0, "leads now"));
    }
    if (firmness.none() > 0 || leader == null) {
      rows.add(
          new Row("none", "no clear choice", firmness.none(), leader == null ? "now" : "none"));
    }
    return rows;
  }

  private Figure draw() {
    Axis axis = new Axis(0, HUNDRED, STEP, LEFT, RIGHT);
    double top = page.top() + 1;
    double bottom = top + rows.size() * ROW;
    page.levelAxis(axis, top, bottom, "share of " + firmness.draws() + " draws, %");
    for (int i = 0; i < rows.size(); i++) {
      row(rows.get(i), axis, top + i * ROW);
    }
    page.key(
        bottom + 12,
        List.of(
            new ChartPage.Key(Fill.SOLID, Colours.NEW, "the answer as it stands"),
            new ChartPage.Key(Fill.STRIPED, Colours.ALERT, "next after it"),
            new ChartPage.Key(Fill.OPEN, Colours.INK, "others"),
            new ChartPage.Key(Fill.DOTTED, Colours.INK, "no clear choice")));
    return page.finish(
        List.of(note()),
        "Bars of the share of draws in which each option comes first.",
        equivalent());
  }

  private String note() {
    return "A draw gives each of %d open facts a value at random, good or bad alike, and moves weights and %d limits: a measure of what is not known, not a probability. Seed %d."
        .formatted(firmness.factsDrawn(), firmness.limitsDrawn(), firmness.seed());
  }

  private void row(Row row, Axis axis, double y) {
    double share = HUNDRED * row.count() / firmness.draws();
    double bar = y + (ROW - BAR) / 2;
    double wide = LEFT - 4 - ChartPage.EDGE;
    canvas.text(
        canvas.fit(row.name(), wide, Letters.LABEL), ChartPage.EDGE, bar + 3.3, Letters.LABEL);
    canvas.line(Pen.MEDIUM, LEFT, y, LEFT, y + ROW);
    canvas.group(
        "share-" + row.id(),
        Map.of("draws", String.valueOf(row.count()), "of", String.valueOf(firmness.draws())),
        () -> {
          fill(row)
              .draw(
                  canvas, ink(row), new Rectangle2D.Double(LEFT, bar, axis.at(share) - LEFT, BAR));
          canvas.label(words(row), axis.at(share) + 1.2, bar + 3.3, Letters.NOTE);
        });
  }

  private String words(Row row) {
    String role = row.role().equals("other") || row.role().equals("none") ? "" : ", " + row.role();
    return firmness.perHundred(row.count()) + " %" + role;
  }

  private static Fill fill(Row row) {
    return switch (row.role()) {
      case "leads now" -> Fill.SOLID;
      case "next" -> Fill.STRIPED;
      case "other" -> Fill.OPEN;
      default -> Fill.DOTTED;
    };
  }

  private static Color ink(Row row) {
    return switch (row.role()) {
      case "leads now" -> Colours.NEW;
      case "next" -> Colours.ALERT;
      default -> Colours.INK;
    };
  }

  private List<String> equivalent() {
    List<String> lines = new ArrayList<>();
    lines.add("How often each option of " + zone.name() + " comes first.");
    rows.forEach(
        row ->
            lines.add(
                "%s: first in %d of %d draws, %s."
                    .formatted(row.name(), row.count(), firmness.draws(), words(row))));
    lines.add(note());
    return lines;
  }
}
