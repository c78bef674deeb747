package underhold.report.drawing.pits;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import underhold.quantity.UnitSystem;
import underhold.report.drawing.Drawn;
import underhold.report.drawing.Figure;
import underhold.report.drawing.kit.Canvas;
import underhold.report.drawing.kit.Colours;
import underhold.report.drawing.kit.Dimensions;
import underhold.report.drawing.kit.DrawingScale;
import underhold.report.drawing.kit.Hatch;
import underhold.report.drawing.kit.Letters;
import underhold.report.drawing.kit.Pen;
import underhold.report.drawing.kit.Symbols;
import underhold.report.drawing.kit.View;
import underhold.report.drawing.numbers.SheetNumbers;
import underhold.report.drawing.pits.PitLayout.Pit;
import underhold.sizing.Amount;
import underhold.sizing.Sheet;
import underhold.sizing.SheetInput;

/** The row of pits in plan, each with its number, width and round; a long wall lies in strips. */
public final class PitPlan {
  private static final double WIDTH = 180;
  private static final double EDGE = 12;

  /** A pit narrower than this on paper has no room for its number [mm]. */
  private static final double NARROWEST = 7;

  /** What a figure needs besides strips and rounds: heading, notes, foot [mm]. */
  private static final double AROUND = 64;

  /** Rows of dimensions below a strip, with what stands clear of them [mm]. */
  private static final double MEASURES = 13;

  private static final double LEGEND = 4.7;
  private static final double LEAST_BAND = 6;
  private static final double ROUNDS = 6;
  private static final double BETWEEN = 9;

  private final PitLayout layout;
  private final Sheet sheet;
  private final UnitSystem units;
  private final DrawingScale scale;

  private PitPlan(PitLayout layout, Sheet sheet, UnitSystem units) {
    this.layout = layout;
    this.sheet = sheet;
    this.units = units;
    this.scale = scale();
  }

  /**
   * The plan of a sheet of pits.
   *
   * @param sheet the sheet
   * @param of what stands under the title: site and zone
   * @param units the reader's units
   * @param id of the figure; parts after the first get a number behind it
   */
  public static Drawn of(Sheet sheet, String of, UnitSystem units, String id) {
    Optional<PitLayout> layout = PitLayout.of(sheet);
    if (layout.isEmpty()) {
      return Drawn.none(whyNot(sheet));
    }
    PitPlan plan = new PitPlan(layout.get(), sheet, units);
    List<List<List<Pit>>> sheets = plan.sheets();
    List<Figure> figures = new ArrayList<>();
    for (int part = 0; part < sheets.size(); part++) {
      String partId = part == 0 ? id : id + "-part-" + (part + 1);
      String suffix = sheets.size() == 1 ? "" : ", part " + (part + 1) + " of " + sheets.size();
      figures.add(plan.draw(sheets.get(part), of, partId, suffix));
    }
    return Drawn.of(figures);
  }

  static String whyNot(Sheet sheet) {
    return sheet.complete()
        ? "The sheet holds no rounds of pits, so there is nothing to draw."
        : "No pits are drawn: the sheet still asks for " + SheetNumbers.asked(sheet) + ".";
  }

  /** The whole wall on one strip if that leaves room for the numbers, else the next best scale. */
  private DrawingScale scale() {
    double narrowest = layout.pits().stream().mapToDouble(pit -> pit.width().si()).min().orElse(1);
    double room = WIDTH - 2 * EDGE;
    DrawingScale whole = DrawingScale.fitting(wall(), 0, room, 1, units);
    if (whole.paper(narrowest) >= NARROWEST) {
      return whole;
    }
    return DrawingScale.atLeast(narrowest, NARROWEST, units);
  }

  private double wall() {
    return layout.pits().get(layout.pits().size() - 1).endMetres();
  }

  /** Pits by strip, strips by sheet of paper. */
  private List<List<List<Pit>>> sheets() {
    double room = scale.world(WIDTH - 2 * EDGE) + 1e-9;
    List<List<Pit>> strips = new ArrayList<>();
    for (Pit pit : layout.pits()) {
      boolean fresh =
          strips.isEmpty()
              || pit.endMetres() - strips.get(strips.size() - 1).get(0).startMetres() > room;
      if (fresh) {
        strips.add(new ArrayList<>());
      }
      strips.get(strips.size() - 1).add(pit);
    }
    List<List<List<Pit>>> sheets = new ArrayList<>();
    int most = strips();
    for (int from = 0; from < strips.size(); from += most) {
      sheets.add(strips.subList(from, Math.min(strips.size(), from + most)));
    }
    return sheets;
  }

  /** How many strips a page has room for, at least one. */
  private int strips() {
    double strip =
        ROUNDS
            + Math.max(LEAST_BAND, scale.paper(amount("footing-width").orElse(0.0)))
            + scale.paper(amount("approach-width").orElse(0.0))
            + MEASURES
            + BETWEEN;
    double room = DrawingScale.page(units) - AROUND - LEGEND * layout.rounds().size();
    return Math.max(1, (int) (room / strip));
  }

  private Figure draw(List<List<Pit>> strips, String of, String id, String suffix) {
    String title = "Pits in plan, with the rounds in which they are dug" + suffix;
    Canvas canvas = new Canvas(id, WIDTH);
    double y = Symbols.heading(canvas, title, of) + 2;
    for (List<Pit> strip : strips) {
      y = strip(canvas, strip, y) + BETWEEN;
    }
    legend(canvas, y - 2);
    Symbols.foot(canvas, scale, units);
    PitPlanText text = new PitPlanText(layout, units);
    List<String> words = new ArrayList<>(text.lines(100));
    words.addAll(text.words());
    words.add("Scale " + scale.label() + ".");
    return canvas.finish(
        title,
        layout.pits().size()
            + " pits along "
            + layout.wall().in(units)
            + " of wall, dug in "
            + layout.rounds().size()
            + " rounds. The same follows in words.",
        words);
  }

  private double strip(Canvas canvas, List<Pit> strip, double top) {
    double start = strip.get(0).startMetres();
    View view = new View(scale, EDGE - scale.paper(start), top + ROUNDS);
    double band = Math.max(LEAST_BAND, scale.paper(amount("footing-width").orElse(0.0)));
    double low = view.y(0) + band;
    for (Pit pit : strip) {
      canvas.group(
          "pit-" + pit.number(),
          Map.of("round", String.valueOf(pit.round()), "number", String.valueOf(pit.number())),
          () -> pit(canvas, view, pit, band));
    }
    double approach = approaches(canvas, view, strip, low);
    ends(canvas, view, strip, band);
    double bandWorld = scale.world(approach - view.y(0));
    Dimensions dimensions = new Dimensions(canvas, view, Dimensions.Side.BELOW, approach + 6);
    for (Pit pit : strip) {
      dimensions.add(
          "pit-" + pit.number(),
          pit.startMetres(),
          pit.endMetres(),
          bandWorld,
          pit.width().in(units));
    }
    if (strip.size() == layout.pits().size()) {
      dimensions.add("wall", 0, wall(), bandWorld, layout.wall().in(units));
    }
    return dimensions.draw() + 2;
  }

  private void pit(Canvas canvas, View view, Pit pit, double band) {
    java.awt.geom.Rectangle2D box =
        new java.awt.geom.Rectangle2D.Double(
            view.x(pit.startMetres()), view.y(0), scale.paper(pit.width().si()), band);
    canvas.hatch(Hatch.nth(pit.round()), box);
    canvas.outline(Pen.MEDIUM, box);
    canvas.label(
        String.valueOf(pit.number()),
        box.getCenterX(),
        box.getCenterY() + 1.05,
        Letters.LABEL.middle());
    String round = "round " + pit.round();
    boolean fits = Letters.NOTE.width(round) < box.getWidth() - 0.6;
    canvas.text(
        fits ? round : "R" + pit.round(), box.getCenterX(), view.y(0) - 1.4, Letters.NOTE.middle());
  }

  /** The approach pits of the first round; gives how low they reach [mm]. */
  private double approaches(Canvas canvas, View view, List<Pit> strip, double low) {
    Optional<Double> along = amount("approach-length");
    Optional<Double> out = amount("approach-width");
    if (along.isEmpty() || out.isEmpty()) {
      return low;
    }
    double deep = scale.paper(out.get());
    boolean any = false;
    for (Pit pit : strip) {
      if (pit.round() == 1) {
        any = true;
        double middle = (pit.startMetres() + pit.endMetres()) / 2;
        double left = Math.max(1, view.x(middle - along.get() / 2));
        double right = Math.min(WIDTH - 1, view.x(middle + along.get() / 2));
        canvas.outline(
            Pen.HIDDEN, new java.awt.geom.Rectangle2D.Double(left, low, right - left, deep));
      }
    }
    return any ? low + deep : low;
  }

  /** Bold lines where the wall ends, break lines where the strip goes on. */
  private void ends(Canvas canvas, View view, List<Pit> strip, double band) {
    Pit first = strip.get(0);
    Pit last = strip.get(strip.size() - 1);
    end(canvas, view.x(first.startMetres()), view.y(0), band, first.number() == 1, -1);
    end(
        canvas,
        view.x(last.endMetres()),
        view.y(0),
        band,
        last.number() == layout.pits().size(),
        1);
  }

  private void end(Canvas canvas, double x, double top, double band, boolean wall, int side) {
    if (wall) {
      canvas.line(Pen.OUTLINE, x, top - 1, x, top + band + 1);
      return;
    }
    java.awt.geom.Path2D zigzag = new java.awt.geom.Path2D.Double();
    double middle = top + band / 2;
    zigzag.moveTo(x + side, top - 1.5);
    zigzag.lineTo(x + side, middle - 1);
    zigzag.lineTo(x + side * 2.2, middle - 0.4);
    zigzag.lineTo(x - side * 0.2, middle + 0.4);
    zigzag.lineTo(x + side, middle + 1);
    zigzag.lineTo(x + side, top + band + 1.5);
    canvas.outline(Pen.THIN, zigzag);
  }

  private void legend(Canvas canvas, double top) {
    double y = top + 3;
    double words = WIDTH - EDGE - 24;
    for (int round = 1; round <= layout.rounds().size(); round++) {
      java.awt.geom.Rectangle2D box = new java.awt.geom.Rectangle2D.Double(EDGE, y - 2.6, 8, 3.6);
      canvas.hatch(Hatch.nth(round), box);
      canvas.outline(Pen.THIN, box);
      canvas.text("R" + round, EDGE + 10, y, Letters.LABEL);
      y = canvas.paragraph(PitPlanText.pits(layout, round), EDGE + 18, y, words, Letters.NOTE) + 1;
    }
    y += 1;
    for (String note : notes()) {
      y = canvas.paragraph(note, EDGE, y, WIDTH - 2 * EDGE, Letters.NOTE.in(Colours.FINE)) + 0.6;
    }
  }

  private List<String> notes() {
    List<String> notes = new ArrayList<>();
    Amount open = Amount.length(layout.rounds().get(0).mayBeOpenMetres());
    notes.add(
        layout.pits().size()
            + " pits along "
            + layout.wall().in(units)
            + " of wall; no more than "
            + open.in(units)
            + " open at once. A round begins when the hold point before it is released.");
    if (amount("footing-width").isEmpty()) {
      notes.add("The width of the footing is not known; the band is not to scale across.");
    } else if (scale.paper(amount("footing-width").orElse(0.0)) < LEAST_BAND) {
      notes.add("Across the wall the band is drawn wider than to scale.");
    }
    if (amount("approach-length").isPresent()) {
      notes.add(
          "Dashed: the approach pits of round 1, "
              + text("approach-length")
              + " along the wall and "
              + text("approach-width")
              + " out from it; every pit has one, on the side that access allows.");
    }
    return notes;
  }

  private Optional<Double> amount(String input) {
    return sheet.input(input).flatMap(SheetInput::amount).map(Amount::si);
  }

  private String text(String input) {
    return sheet.input(input).map(found -> found.value(units)).orElse("?");
  }
}
