package underhold.report.drawing.piles;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import underhold.quantity.UnitSystem;
import underhold.report.drawing.Drawn;
import underhold.report.drawing.ground.Strata;
import underhold.report.drawing.kit.Canvas;
import underhold.report.drawing.kit.Dimensions;
import underhold.report.drawing.kit.DrawingScale;
import underhold.report.drawing.kit.Hatch;
import underhold.report.drawing.kit.Notes;
import underhold.report.drawing.kit.Pen;
import underhold.report.drawing.kit.Symbols;
import underhold.report.drawing.kit.View;
import underhold.report.drawing.numbers.SheetNumbers;
import underhold.site.Site;
import underhold.sizing.Sheet;

/** One drilled pile against the layers: casing, bond, dug level, bracing, water, dimensions. */
public final class PileElevation {
  private static final double WIDTH = 170;
  private static final double EDGE = 2;
  private static final double LEFT = 34;
  private static final double RIGHT = 100;
  private static final double NOTES = 110;
  private static final double PILE = 72;

  /** What a figure needs besides what is to scale: heading, notes below, foot [mm]. */
  private static final double AROUND = 68;

  private static final double BELOW = 0.06;
  private static final double CAP = 5;

  /** A pile is drawn no thinner, and the drawing then says so [mm]. */
  private static final double LEAST_PILE = 1.2;

  private static final double LOG = 12;

  private final SheetNumbers numbers;
  private final PileLevels levels;
  private final String zone;
  private final Canvas canvas;
  private final DrawingScale scale;
  private final View view;
  private final Strata strata;
  private final double bottom;
  private final double left;
  private final double right;
  private final double half;

  private PileElevation(
      Site site, String zone, SheetNumbers numbers, PileLevels levels, String id) {
    this.numbers = numbers;
    this.levels = levels;
    this.zone = zone;
    this.canvas = new Canvas(id, WIDTH);
    double top = Symbols.heading(canvas, "One drilled pile against the ground", zone);
    this.bottom = levels.toe() * (1 + BELOW);
    this.scale =
        DrawingScale.fitting(
            levels.diameter(),
            bottom,
            RIGHT - LEFT - LOG,
            DrawingScale.page(numbers.units()) - AROUND,
            numbers.units());
    this.view = new View(scale, PILE, top + 6);
    this.left = scale.world(LEFT - PILE);
    this.right = scale.world(RIGHT - PILE);
    this.half = Math.max(levels.diameter(), scale.world(LEAST_PILE)) / 2;
    this.strata = Strata.of(site, zone, 0, bottom);
  }

  /**
   * The elevation, or why there is none.
   *
   * @param site the site, for the layers
   * @param zone the zone's name
   * @param sheet the sheet of drilled piles
   * @param units in which it is read
   * @param id the figure's id
   */
  public static Drawn of(Site site, String zone, Sheet sheet, UnitSystem units, String id) {
    SheetNumbers numbers = new SheetNumbers(sheet, units);
    Optional<Drawn> refusal =
        numbers.refusal(List.of("dug-level", "embedment"), List.of("founding-depth"));
    if (refusal.isPresent()) {
      return refusal.get();
    }
    if (numbers.symbol("side-1", "D").isEmpty()) {
      return numbers.withheld("no layer that the piles reach holds them").orElseThrow();
    }
    return new PileElevation(site, zone, numbers, PileLevels.of(numbers), id).draw();
  }

  private Drawn draw() {
    ground();
    structure();
    pile();
    lines();
    notes();
    dimensions();
    List<String> below = below();
    Symbols.foot(canvas, below, scale, numbers.units());
    List<String> words = new ArrayList<>();
    words.add("One drilled pile of " + zone + " against the ground.");
    words.addAll(strata.words(numbers.units()));
    words.addAll(told());
    words.addAll(below);
    return Drawn.of(
        canvas.finish(
            "One drilled pile against the ground, " + zone,
            "Elevation of a drilled pile with its casing, bond length, the dug level, bracing and the layers.",
            words));
  }

  /** The layers as found in a strip on the left; what stays below the dug level beside the pile. */
  private void ground() {
    strata.draw(canvas, view, left, scale.world(LEFT + LOG - PILE));
    double strip = scale.world(LEFT + LOG + 2 - PILE);
    canvas.group(
        "ground", () -> strata.between(levels.dug(), bottom).fill(canvas, view, strip, right));
    canvas.line(
        Pen.OUTLINE, view.x(strip), view.y(levels.dug()), view.x(right), view.y(levels.dug()));
    canvas.line(Pen.MEDIUM, LEFT, view.y(0), LEFT + LOG, view.y(0));
  }

  /** Structure and cap in their place; the sheet gives no depth for them. */
  private void structure() {
    double strip = scale.world(LEFT + LOG + 2 - PILE);
    double cap = scale.world(CAP);
    canvas.group(
        "structure",
        () -> {
          canvas.hatch(Hatch.CONCRETE, view.box(strip, levels.cap() - cap, right, levels.cap()));
          canvas.outline(Pen.HIDDEN, view.box(strip, levels.cap() - cap, right, levels.cap()));
        });
  }

  private void pile() {
    double bond = Math.max(levels.hole(), scale.world(LEAST_PILE)) / 2;
    canvas.group(
        "bond",
        Map.of(
            "top", levels.casing() + " m",
            "bottom", levels.toe() + " m"),
        () -> {
          canvas.hatch(Hatch.NEW_CONCRETE, view.box(-bond, levels.casing(), bond, levels.toe()));
          canvas.outline(Pen.NEW, view.box(-bond, levels.casing(), bond, levels.toe()));
        });
    canvas.group(
        "casing",
        Map.of("top", levels.cap() + " m", "bottom", levels.casing() + " m"),
        () -> {
          canvas.hatch(Hatch.STEEL, view.box(-half, levels.cap(), half, levels.casing()));
          canvas.outline(Pen.OUTLINE, view.box(-half, levels.cap(), half, levels.casing()));
        });
  }

  private void lines() {
    double strip = scale.world(LEFT + LOG + 2 - PILE);
    for (int i = 0; i < levels.braces().size(); i++) {
      double depth = levels.braces().get(i);
      canvas.group(
          "brace-" + (i + 1),
          Map.of("depth", depth + " m", "y", String.valueOf(view.y(depth))),
          () -> {
            double y = view.y(depth);
            canvas.fill(
                underhold.report.drawing.kit.Colours.TINT_STEEL,
                new java.awt.geom.Rectangle2D.Double(
                    view.x(strip), y - 0.8, view.x(right) - view.x(strip), 1.6));
            canvas.line(Pen.MEDIUM, view.x(strip), y - 0.8, view.x(right), y - 0.8);
            canvas.line(Pen.MEDIUM, view.x(strip), y + 0.8, view.x(right), y + 0.8);
          });
    }
    for (int i = 0; i + 1 < levels.stages().size(); i++) {
      level(Pen.HIDDEN, levels.stages().get(i));
    }
    levels.fixity().ifPresent(depth -> level(Pen.CENTRE, depth));
    level(Pen.ALERT, levels.counted());
    levels.water().filter(depth -> depth <= bottom).ifPresent(this::water);
  }

  /** Water that digging would lower is shown in the strip alone, as it was found. */
  private void water(double depth) {
    double y = view.y(depth);
    if (depth < levels.dug()) {
      canvas.line(Pen.WATER, LEFT, y, LEFT + LOG, y);
      Symbols.water(canvas, LEFT + LOG / 2, y);
    } else {
      level(Pen.WATER, depth);
      Symbols.water(canvas, view.x(right) - 5, y);
    }
  }

  private void level(Pen pen, double depth) {
    double strip = scale.world(LEFT + LOG + 2 - PILE);
    canvas.line(pen, view.x(strip), view.y(depth), view.x(right), view.y(depth));
  }

  private void dimensions() {
    Dimensions beside = new Dimensions(canvas, view, Dimensions.Side.LEFT, LEFT - 5);
    if (levels.dug() > levels.cap()) {
      beside.add(
          "bared",
          levels.cap(),
          levels.dug(),
          left,
          (levels.stages().isEmpty() ? "dug beside " : "bared ")
              + numbers.length(levels.dug() - levels.cap()));
    }
    beside.add(
        "bond",
        levels.casing(),
        levels.toe(),
        left,
        "below the casing " + numbers.length(levels.toe() - levels.casing()));
    beside.add(
        "embedment",
        levels.dug(),
        levels.toe(),
        left,
        "embedment " + numbers.in(numbers.result("embedment")));
    beside.add(
        "pile",
        levels.cap(),
        levels.toe(),
        left,
        "pile " + numbers.length(levels.toe() - levels.cap()));
    beside.draw();
  }

  private void notes() {
    Notes notes = new Notes(canvas, NOTES, view.y(0) - 4, WIDTH - EDGE - NOTES);
    double edge = view.x(right);
    notes.add(
        edge,
        view.y(levels.cap()) - CAP / 2,
        "Structure with cap or beam, drawn for its place alone; underside "
            + numbers.ground(levels.cap()));
    for (int i = 0; i < levels.braces().size(); i++) {
      notes.add(
          edge,
          view.y(levels.braces().get(i)),
          "Bracing level " + (i + 1) + ", " + numbers.ground(levels.braces().get(i)));
    }
    for (int i = 0; i + 1 < levels.stages().size(); i++) {
      notes.add(
          edge,
          view.y(levels.stages().get(i)),
          "Stage " + (i + 1) + " digs to here, " + numbers.ground(levels.stages().get(i)));
    }
    notes.add(edge, view.y(levels.dug()), "Dug level " + numbers.ground(levels.dug()));
    levels
        .fixity()
        .ifPresent(
            depth ->
                notes.add(
                    edge,
                    view.y(depth),
                    (Math.abs(depth - levels.counted()) < 1e-6
                            ? "Fixity of the bared pile; side counts from here, "
                            : "Fixity of the bared pile, ")
                        + numbers.ground(depth)));
    if (levels.fixity().filter(d -> Math.abs(d - levels.counted()) < 1e-6).isEmpty()) {
      notes.add(
          edge, view.y(levels.counted()), "Side counts from " + numbers.ground(levels.counted()));
    }
    levels
        .water()
        .filter(depth -> depth <= bottom)
        .ifPresent(
            depth ->
                notes.add(
                    depth < levels.dug() ? LEFT + LOG - 1 : edge,
                    view.y(depth),
                    "Ground water as found, " + numbers.ground(depth)));
    notes.addWithin(
        view.x(half),
        view.y(levels.cap()),
        view.y(levels.casing()),
        "Casing "
            + numbers.thick(levels.diameter())
            + ", ends "
            + numbers.ground(levels.casing())
            + (widened() ? "; pile drawn wider than to scale" : ""));
    notes.addWithin(
        view.x(0),
        view.y(levels.casing()),
        view.y(levels.toe()),
        "Bond length, hole " + numbers.thick(levels.hole()));
    notes.add(view.x(0), view.y(levels.toe()), "Toe " + numbers.ground(levels.toe()));
    for (Strata.Stratum layer : strata.layers()) {
      boolean stays = layer.bottom() > levels.dug();
      notes.addWithin(
          stays ? edge - 2 : LEFT + LOG - 1,
          view.y(stays ? Math.max(layer.top(), levels.dug()) : layer.top()),
          view.y(layer.bottom()),
          layer.words(numbers.units()));
    }
    notes.draw();
  }

  private boolean widened() {
    return half > levels.diameter() / 2 + 1e-9;
  }

  private List<String> told() {
    List<String> words = new ArrayList<>();
    words.add(
        "Pile from the cap "
            + numbers.ground(levels.cap())
            + " to the toe "
            + numbers.ground(levels.toe())
            + ".");
    words.add("Dug level " + numbers.ground(levels.dug()) + ".");
    words.add(
        "Casing "
            + numbers.thick(levels.diameter())
            + " to "
            + numbers.ground(levels.casing())
            + ", hole below it "
            + numbers.thick(levels.hole())
            + ".");
    for (int i = 0; i < levels.braces().size(); i++) {
      words.add("Bracing level " + (i + 1) + " " + numbers.ground(levels.braces().get(i)) + ".");
    }
    levels.fixity().ifPresent(depth -> words.add("Fixity " + numbers.ground(depth) + "."));
    levels.water().ifPresent(depth -> words.add("Ground water " + numbers.ground(depth) + "."));
    return words;
  }

  private List<String> below() {
    List<String> words = new ArrayList<>();
    words.add(
        "Working load of the pile loaded most "
            + numbers.in(numbers.result("pile-load"))
            + "; "
            + numbers
                .check("pile-bond")
                .map(check -> "against the ground: " + check.verdict().label())
                .orElse("")
            + numbers
                .check("pile-bared")
                .map(check -> "; bared as a column: " + check.verdict().label())
                .orElse("")
            + numbers
                .check("pile-length")
                .map(
                    check ->
                        "; ground known to "
                            + check.capacity().in(numbers.units())
                            + " of "
                            + check.demand().in(numbers.units())
                            + " needed: "
                            + check.verdict().label())
                .orElse("")
            + ".");
    words.add(
        "The strip on the left shows the layers before digging."
            + (levels.braces().isEmpty() ? "" : " Bracing is drawn for its level alone."));
    return words;
  }
}
