package underhold.report.drawing.monitoring;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import underhold.quantity.UnitSystem;
import underhold.report.drawing.Drawn;
import underhold.report.drawing.ground.Strata;
import underhold.report.drawing.kit.Canvas;
import underhold.report.drawing.kit.Colours;
import underhold.report.drawing.kit.Dimensions;
import underhold.report.drawing.kit.DrawingScale;
import underhold.report.drawing.kit.Hatch;
import underhold.report.drawing.kit.Letters;
import underhold.report.drawing.kit.Notes;
import underhold.report.drawing.kit.Pen;
import underhold.report.drawing.kit.Symbols;
import underhold.report.drawing.kit.View;
import underhold.report.drawing.monitoring.Reaches.Line;
import underhold.report.drawing.monitoring.Reaches.Rule;
import underhold.report.drawing.numbers.SheetNumbers;
import underhold.site.Site;
import underhold.sizing.Sheet;

/**
 * The excavation in section with the reach of each rule, and below it on the same scale the reaches
 * side by side against the place of the element.
 */
public final class InfluenceSection {
  private static final double WIDTH = 170;
  private static final double EDGE = 2;
  private static final double LEFT = 40;
  private static final double FACE = 78;
  private static final double RIGHT = 143;
  private static final double HIGHEST = 85;
  private static final double BELOW = 1.15;
  private static final double ROW = 5.6;
  private static final double BAR = 3;
  private static final double FOOTING = 7;

  private final SheetNumbers numbers;
  private final Reaches reaches;
  private final String zone;
  private final Canvas canvas;
  private final DrawingScale scale;
  private final View view;
  private final Strata strata;
  private final double bottom;
  private final double left;
  private final double right;

  private InfluenceSection(Site site, String zone, SheetNumbers numbers, String id) {
    this.numbers = numbers;
    this.reaches = Reaches.of(numbers);
    this.zone = zone;
    this.canvas = new Canvas(id, WIDTH);
    double top = Symbols.heading(canvas, "How far the excavation reaches, by each rule", zone);
    this.bottom = Math.max(reaches.depth(), reaches.footing()) * BELOW;
    this.scale =
        DrawingScale.fitting(
            Math.max(reaches.widest(), 0.1),
            bottom,
            RIGHT - FACE - FOOTING - 1,
            HIGHEST,
            numbers.units());
    this.view = new View(scale, FACE, top + 14);
    this.left = scale.world(LEFT - FACE);
    this.right = scale.world(RIGHT - FACE);
    this.strata = Strata.of(site, zone, 0, bottom);
  }

  /**
   * The section, or why there is none.
   *
   * @param site the site, for the layers
   * @param zone the zone's name
   * @param sheet the sheet of watching without underpinning
   * @param units in which it is read
   * @param id the figure's id
   */
  public static Drawn of(Site site, String zone, Sheet sheet, UnitSystem units, String id) {
    SheetNumbers numbers = new SheetNumbers(sheet, units);
    return numbers
        .refusal(List.of("in-zone"), List.of("gap", "excavation-depth", "excavation-below-footing"))
        .or(
            () ->
                numbers.input("excavation-depth").filter(depth -> depth.si() > 0).isEmpty()
                    ? numbers.withheld("there is no depth to draw")
                    : Optional.empty())
        .orElseGet(() -> new InfluenceSection(site, zone, numbers, id).draw());
  }

  private Drawn draw() {
    ground();
    lines();
    element();
    dimensions();
    double y = rows(Math.max(view.y(bottom) + 10, canvas.bottom() + 4));
    List<String> below = below();
    for (String note : below) {
      y = canvas.paragraph(note, EDGE, y + 3, WIDTH - 2 * EDGE, Letters.NOTE) - 1.5;
    }
    Symbols.foot(canvas, scale, numbers.units());
    List<String> words = new ArrayList<>();
    words.add("How far the excavation beside " + zone + " reaches, by each rule of the sheet.");
    words.add(
        "Excavation "
            + numbers.length(reaches.depth())
            + " deep, element "
            + numbers.length(reaches.gap())
            + " from its face, footing "
            + numbers.length(reaches.footing())
            + " below ground.");
    for (int i = 0; i < reaches.rules().size(); i++) {
      Rule rule = reaches.rules().get(i);
      words.add(
          (i + 1)
              + ". "
              + rule.title()
              + ": "
              + rule.text().in(numbers.units())
              + ". "
              + rule.note());
    }
    words.addAll(below);
    return Drawn.of(
        canvas.finish(
            "How far the excavation reaches, by each rule, " + zone,
            "Section of the excavation with the reach of each rule, and the reaches side by side.",
            words));
  }

  private void ground() {
    canvas.group(
        "ground",
        () -> {
          strata.fill(canvas, view, 0, right);
          strata.between(reaches.depth(), bottom).fill(canvas, view, left, 0);
        });
    Notes names = new Notes(canvas, RIGHT + 5, view.y(0) - 2, WIDTH - EDGE - RIGHT - 5);
    for (Strata.Stratum layer : strata.layers()) {
      names.addWithin(RIGHT - 1, view.y(layer.top()), view.y(layer.bottom()), layer.name());
    }
    names.draw();
    line(Pen.OUTLINE, 0, 0, right, 0);
    line(Pen.OUTLINE, 0, 0, 0, reaches.depth());
    line(Pen.OUTLINE, left, reaches.depth(), 0, reaches.depth());
    canvas.text(
        "excavation", (LEFT + FACE) / 2, view.y(reaches.depth()) - 2, Letters.NOTE.middle());
  }

  private void lines() {
    for (Rule rule : reaches.rules()) {
      canvas.group(
          rule.id(),
          Map.of(
              "reach", rule.text().in(numbers.units()), "x", String.valueOf(view.x(rule.reach()))),
          () -> line(rule));
    }
    reaches.rules().stream()
        .mapToDouble(Rule::reach)
        .filter(reach -> reach > 0)
        .distinct()
        .forEach(this::numbersAt);
  }

  private void line(Rule rule) {
    Pen pen = rule.comparison() ? Pen.HIDDEN : Pen.ALERT;
    if (rule.line() == Line.DISTANCE) {
      double y = view.y(0);
      canvas.line(pen, view.x(rule.reach()), y - 3, view.x(rule.reach()), y + 3);
    } else if (rule.line() == Line.BERM) {
      line(pen, 0, reaches.depth(), rule.berm(), rule.bermLevel());
      line(pen, rule.berm(), rule.bermLevel(), rule.reach(), rule.bermLevel());
    } else if (rule.reach() > 0) {
      line(pen, 0, reaches.depth(), rule.reach(), reaches.footing());
    }
  }

  /** The numbers of the rules that reach just there, above the ground. */
  private void numbersAt(double reach) {
    StringBuilder words = new StringBuilder();
    for (int i = 0; i < reaches.rules().size(); i++) {
      if (reaches.rules().get(i).reach() == reach) {
        words.append(words.length() == 0 ? "" : ", ").append(i + 1);
      }
    }
    double x = view.x(reach);
    double y = view.y(0) - 4;
    while (!canvas.isFree(Canvas.box(words.toString(), x, y, Letters.DIMENSION.heavy()))
        && y > view.y(0) - 11) {
      y -= 3;
    }
    canvas.line(Pen.HATCH, x, y + 0.6, x, view.y(reaches.footing()));
    canvas.text(words.toString(), x, y, Letters.DIMENSION.heavy());
  }

  /** The footing in its place; its width and height are not of this sheet. */
  private void element() {
    double x = view.x(reaches.gap());
    double low = view.y(reaches.footing());
    double high = Math.min(low - 3, view.y(0));
    canvas.group(
        "element",
        Map.of("x", String.valueOf(x)),
        () -> {
          Rectangle2D box = new Rectangle2D.Double(x, high, FOOTING, low - high);
          canvas.hatch(Hatch.CONCRETE, box);
          canvas.outline(Pen.MEDIUM, box);
        });
  }

  private void dimensions() {
    Dimensions beside = new Dimensions(canvas, view, Dimensions.Side.LEFT, LEFT - 4);
    beside.add("depth", 0, reaches.depth(), left, numbers.length(reaches.depth()));
    if (reaches.footing() > 0 && reaches.footing() < reaches.depth()) {
      beside.add(
          "below-footing",
          reaches.footing(),
          reaches.depth(),
          left,
          "below footing " + numbers.length(reaches.depth() - reaches.footing()));
    }
    beside.draw();
    if (reaches.gap() > 0) {
      new Dimensions(canvas, view, Dimensions.Side.BELOW, view.y(bottom) + 5)
          .add("gap", 0, reaches.gap(), bottom, "gap " + numbers.length(reaches.gap()))
          .draw();
    }
  }

  private double rows(double top) {
    double y = top;
    double low = top;
    for (int i = 0; i < reaches.rules().size(); i++) {
      Rule rule = reaches.rules().get(i);
      double bar = y + (ROW - BAR) / 2;
      double feet =
          canvas.paragraph(
              (i + 1) + " " + rule.title(), EDGE, bar + 2.4, FACE - EDGE - 3, Letters.NOTE);
      Rectangle2D box =
          new Rectangle2D.Double(FACE, bar, scale.paper(Math.max(rule.reach(), 0)), BAR);
      canvas.group(
          "bar-" + rule.id(),
          Map.of("reach", rule.text().in(numbers.units())),
          () -> {
            if (!box.isEmpty()) {
              canvas.fill(rule.comparison() ? Colours.PAPER : Colours.TINT_MASONRY, box);
              canvas.outline(rule.comparison() ? Pen.HIDDEN : Pen.MEDIUM, box);
            }
          });
      canvas.label(
          rule.text().in(numbers.units())
              + (rule.inside() ? ", inside" : ", outside")
              + (rule.comparison() ? ", compare" : ""),
          Math.max(box.getMaxX(), view.x(reaches.gap())) + 1.5,
          bar + 2.4,
          Letters.NOTE);
      y = Math.max(y + ROW, feet - 1.2);
      low = y;
    }
    canvas.line(Pen.OUTLINE, FACE, top, FACE, low);
    double x = view.x(reaches.gap());
    canvas.line(Pen.WATER, x, top, x, low);
    canvas.text("element", x, low + 3, Letters.DIMENSION.heavy());
    return low + 5;
  }

  private List<String> below() {
    List<String> words = new ArrayList<>();
    words.add(
        "The rules were made for different grounds and ends, and none replaces a prediction. Numbers above the ground name the rules below; \"inside\" means that the element lies within that reach. Rules named \"compare\" were not made for excavations.");
    numbers.sheet().step("in-zone").ifPresent(step -> words.add(step.note().in(numbers.units())));
    numbers
        .result("movement-limit")
        .ifPresent(
            limit ->
                words.add(
                    "Movement limit that governs "
                        + limit.in(numbers.units())
                        + ": alert "
                        + numbers.in(numbers.result("alert-level"))
                        + ", action "
                        + numbers.in(numbers.result("action-level"))
                        + ", stop "
                        + numbers.in(numbers.result("stop-level"))
                        + "."));
    return words;
  }

  private void line(Pen pen, double fromX, double fromY, double toX, double toY) {
    canvas.line(pen, view.x(fromX), view.y(fromY), view.x(toX), view.y(toY));
  }
}
