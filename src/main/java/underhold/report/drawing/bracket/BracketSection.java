package underhold.report.drawing.bracket;

import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import underhold.quantity.UnitSystem;
import underhold.report.drawing.Drawn;
import underhold.report.drawing.ground.Strata;
import underhold.report.drawing.kit.Canvas;
import underhold.report.drawing.kit.Colours;
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

/**
 * A mini pile beside the edge it holds, to scale: excavation, fixity, casing, bond and layers; the
 * far pile that holds it down where piles stand in pairs.
 */
public final class BracketSection {
  private static final double WIDTH = 170;
  private static final double EDGE = 2;
  private static final double LEFT = 36;
  private static final double RIGHT = 102;
  private static final double NOTES = 109;
  private static final double PILE = 74;

  /** What a figure needs besides what is to scale: heading, notes below, foot [mm]. */
  private static final double AROUND = 68;

  private static final double BELOW = 0.06;
  private static final double OUTER = 0.4;

  /** A pile is drawn no thinner, and the drawing then says so [mm]. */
  private static final double LEAST_PILE = 1.2;

  private static final double HEAD = 2;
  private static final double CAP = 3.5;
  private static final double STRUCTURE = 22;
  private static final double LOAD = 14;

  private final SheetNumbers numbers;
  private final BracketNumbers bracket;
  private final String zone;
  private final Canvas canvas;
  private final DrawingScale scale;
  private final View view;
  private final Strata strata;
  private final double bottom;
  private final double left;
  private final double right;
  private final double half;
  private final double face;

  private BracketSection(Site site, String zone, SheetNumbers numbers, String id) {
    this.numbers = numbers;
    this.bracket = BracketNumbers.of(numbers);
    this.zone = zone;
    this.canvas = new Canvas(id, WIDTH);
    double top = Symbols.heading(canvas, "Mini pile with bracket beside the edge", zone);
    this.bottom = bracket.toe() * (1 + BELOW);
    double outer = bracket.apart().orElse(0.0) + bracket.casing() / 2 + OUTER;
    this.scale =
        DrawingScale.fitting(
            outer,
            bottom,
            PILE - LEFT,
            DrawingScale.page(numbers.units()) - AROUND,
            numbers.units());
    this.view = new View(scale, PILE, top + 8);
    this.left = scale.world(LEFT - PILE);
    this.right = scale.world(RIGHT - PILE);
    this.half = Math.max(bracket.casing(), scale.world(LEAST_PILE)) / 2;
    this.face = Math.max(bracket.face(), half);
    this.strata = Strata.of(site, zone, 0, bottom);
  }

  /**
   * The section, or why there is none.
   *
   * @param site the site, for the layers
   * @param zone the zone's name
   * @param sheet the sheet of mini piles with brackets
   * @param units in which it is read
   * @param id the figure's id
   */
  public static Drawn of(Site site, String zone, Sheet sheet, UnitSystem units, String id) {
    SheetNumbers numbers = new SheetNumbers(sheet, units);
    return BracketNumbers.refusal(numbers)
        .orElseGet(() -> new BracketSection(site, zone, numbers, id).draw());
  }

  private Drawn draw() {
    ground();
    structure();
    levels();
    bracket.apart().ifPresent(this::pair);
    pile("", 0);
    plates();
    notes();
    dimensions();
    List<String> below = below();
    Symbols.foot(canvas, below, scale, numbers.units());
    List<String> words = new ArrayList<>();
    words.add("A mini pile with its bracket beside the edge of " + zone + ".");
    words.addAll(strata.words(numbers.units()));
    words.addAll(told());
    words.addAll(below);
    return Drawn.of(
        canvas.finish(
            "Mini pile with bracket beside the edge, " + zone,
            "Section of a mini pile beside the edge with excavation, casing, bond length and layers.",
            words));
  }

  /** Dug away on the outer side where the pile is bared; else only the level of the base shows. */
  private void ground() {
    double from = bracket.bared() ? face : left;
    double base = bracket.base();
    canvas.group(
        "ground",
        () -> {
          strata.between(0, base).fill(canvas, view, from, right);
          strata.between(base, bottom).fill(canvas, view, left, right);
        });
    if (bracket.bared()) {
      line(Pen.OUTLINE, left, base, face, base);
      line(Pen.HIDDEN, face, bracket.footing(), face, base);
    } else {
      line(Pen.HIDDEN, left, base, right, base);
    }
    line(Pen.MEDIUM, face, 0, right, 0);
  }

  private void structure() {
    double end = face + scale.world(STRUCTURE);
    canvas.group(
        "edge",
        () -> {
          canvas.hatch(BracketDetail.material(numbers), view.box(face, 0, end, bracket.footing()));
          canvas.outline(Pen.HIDDEN, view.box(face, 0, end, bracket.footing()));
          line(Pen.OUTLINE, face, bracket.footing(), end, bracket.footing());
        });
  }

  private void pile(String name, double at) {
    double bond = Math.max(bracket.hole(), scale.world(LEAST_PILE)) / 2;
    double head = bracket.footing() - scale.world(HEAD);
    canvas.group(
        name + "bond",
        Map.of("top", bracket.casingBottom() + " m", "bottom", bracket.toe() + " m"),
        () ->
            outlined(
                Hatch.NEW_CONCRETE,
                Pen.NEW,
                view.box(at - bond, bracket.casingBottom(), at + bond, bracket.toe())));
    canvas.group(
        name + "casing",
        Map.of("bottom", bracket.casingBottom() + " m"),
        () ->
            outlined(
                Hatch.STEEL,
                Pen.MEDIUM,
                view.box(at - half, head, at + half, bracket.casingBottom())));
  }

  private void outlined(Hatch hatch, Pen pen, Rectangle2D box) {
    canvas.hatch(hatch, box);
    canvas.outline(pen, box);
  }

  /** The far pile and the cap beam, which no sheet sizes. */
  private void pair(double apart) {
    pile("far-", -apart);
    double low = bracket.footing() - scale.world(HEAD);
    canvas.group(
        "cap-beam",
        () -> {
          Rectangle2D beam = view.box(-apart - half, low - scale.world(CAP), half, low);
          canvas.hatch(Hatch.CONCRETE, beam);
          canvas.outline(Pen.UNKNOWN, beam);
        });
  }

  private void plates() {
    double end = face + bracket.seat();
    double low = bracket.footing() + bracket.seatPlate() + bracket.plateDepth();
    double tip = bracket.footing() + bracket.seatPlate() + bracket.plateDepth() / 3;
    canvas.group(
        "bracket",
        Map.of("eccentricity", numbers.in(numbers.result("eccentricity"))),
        () -> {
          Shape shape =
              view.shape(half, bracket.footing(), end, bracket.footing(), end, tip, half, low);
          canvas.fill(Colours.TINT_NEW, shape);
          canvas.outline(Pen.MEDIUM, Colours.NEW, shape);
        });
    double at = view.x(bracket.resultant() + face - bracket.face());
    canvas.group(
        "load",
        Map.of("value", numbers.in(numbers.result("bracket-load")), "x", String.valueOf(at)),
        () ->
            canvas.arrow(
                Pen.FORCE,
                at,
                Math.max(view.y(0), view.y(bracket.footing()) - LOAD),
                at,
                view.y(bracket.footing())));
  }

  private void levels() {
    for (int i = 0; i < bracket.braces().size(); i++) {
      double depth = bracket.braces().get(i);
      canvas.group(
          "waler-" + (i + 1),
          Map.of("depth", depth + " m"),
          () -> line(Pen.OUTLINE, left, depth, face, depth));
    }
    bracket.fixity().ifPresent(depth -> line(Pen.CENTRE, left, depth, right, depth));
    line(Pen.ALERT, left, bracket.casingBottom(), right, bracket.casingBottom());
  }

  private void dimensions() {
    Dimensions beside = new Dimensions(canvas, view, Dimensions.Side.LEFT, LEFT - 5);
    if (bracket.base() > bracket.footing()) {
      span(beside, "excavation", "below edge ", bracket.footing(), bracket.base());
    }
    bracket.fixity().ifPresent(depth -> span(beside, "fixity", "", bracket.base(), depth));
    span(beside, "bond", "bond ", bracket.casingBottom(), bracket.toe());
    span(beside, "pile", "pile ", bracket.footing(), bracket.toe());
    beside.draw();
    bracket
        .apart()
        .ifPresent(
            apart ->
                new Dimensions(canvas, view, Dimensions.Side.BELOW, view.y(bottom) + 7)
                    .add("apart", -apart, 0, bottom, "pair " + numbers.length(apart) + " apart")
                    .draw());
  }

  private void span(Dimensions beside, String name, String words, double from, double to) {
    beside.add(name, from, to, left, words + numbers.length(to - from));
  }

  private void notes() {
    double edge = view.x(right);
    double side = view.x(face) + 1;
    Notes notes = new Notes(canvas, NOTES, view.y(0) - 6, WIDTH - EDGE - NOTES);
    notes.add(
        view.x(bracket.resultant() + face - bracket.face()),
        view.y(bracket.footing()) - 3,
        "P "
            + numbers.in(numbers.result("bracket-load"))
            + " on one bracket, e "
            + numbers.in(numbers.result("eccentricity"))
            + forces());
    notes.add(
        side + STRUCTURE - 4,
        view.y(bracket.footing()),
        "Underside of the edge "
            + numbers.ground(bracket.footing())
            + "; its width and height are not told");
    for (int i = 0; i < bracket.braces().size(); i++) {
      double depth = bracket.braces().get(i);
      notes.add(view.x(face), view.y(depth), waler(i));
    }
    notes.add(
        bracket.bared() ? view.x(left) + 4 : edge,
        view.y(bracket.base()),
        "Bottom of the excavation " + numbers.ground(bracket.base()));
    bracket
        .fixity()
        .ifPresent(
            depth -> notes.add(edge, view.y(depth), "Fixity by rule, " + numbers.ground(depth)));
    notes.add(
        edge,
        view.y(bracket.casingBottom()),
        "Casing ends, bond begins " + numbers.ground(bracket.casingBottom()));
    notes.addWithin(
        view.x(half),
        view.y(Math.max(bracket.base(), bracket.footing())),
        view.y(bracket.casingBottom()),
        BracketDetail.casing(numbers) + (widened() ? ", drawn wider than to scale" : ""));
    if (bracket.toe() > bracket.casingBottom() + 1e-6) {
      notes.addWithin(
          view.x(0),
          view.y(bracket.casingBottom()),
          view.y(bracket.toe()),
          "Bond length, hole " + numbers.thick(bracket.hole()));
    }
    notes.add(view.x(0), view.y(bracket.toe()), "Toe " + numbers.ground(bracket.toe()));
    for (Strata.Stratum layer : strata.layers()) {
      notes.addWithin(
          edge - 2, view.y(layer.top()), view.y(layer.bottom()), layer.words(numbers.units()));
    }
    notes.draw();
  }

  private String waler(int level) {
    return "Waler level " + (level + 1) + ", " + numbers.ground(bracket.braces().get(level));
  }

  /** What a pair carries; empty for a single pile. */
  private String forces() {
    return bracket.apart().isEmpty()
        ? ""
        : "; near pile pressed by "
            + numbers.in(numbers.result("near-pile"))
            + ", far pile pulled by "
            + numbers.in(numbers.result("far-pile"));
  }

  private boolean widened() {
    return half > bracket.casing() / 2 + 1e-9;
  }

  private List<String> told() {
    List<String> words = new ArrayList<>();
    words.add(
        "Load of one bracket "
            + numbers.in(numbers.result("bracket-load"))
            + ", eccentricity "
            + numbers.in(numbers.result("eccentricity"))
            + forces()
            + ".");
    words.add("Underside of the edge " + numbers.ground(bracket.footing()) + ".");
    words.add("Bottom of the excavation " + numbers.ground(bracket.base()) + ".");
    bracket.fixity().ifPresent(depth -> words.add("Fixity by rule " + numbers.ground(depth) + "."));
    words.add(
        "Bond from "
            + numbers.length(bracket.casingBottom())
            + " to "
            + numbers.length(bracket.toe())
            + " below ground, "
            + numbers.length(bracket.toe() - bracket.casingBottom())
            + " long; pile "
            + numbers.length(bracket.toe() - bracket.footing())
            + " long below the edge.");
    for (int i = 0; i < bracket.braces().size(); i++) {
      words.add(waler(i) + ".");
    }
    words.add(BracketDetail.casing(numbers) + ".");
    bracket
        .apart()
        .ifPresent(
            apart ->
                words.add(
                    "A far pile of the same kind stands "
                        + numbers.length(apart)
                        + " further out and holds down."));
    return words;
  }

  private List<String> below() {
    List<String> words = new ArrayList<>();
    words.add(
        (bracket.bared()
                ? "Drawn bared by the excavation"
                : "Drawn in the ground that a wall built first keeps round it")
            + (numbers.assumed("bared") ? ", which is assumed" : "")
            + ". The face under the edge and its support are not of this sheet. The bracket is drawn at its size; the detail shows it larger."
            + (bracket.apart().isPresent()
                ? " The cap beam over the pair is drawn for its place alone: the sheet does not size it."
                : ""));
    check("Bond", "pile-bond", words);
    check("Bond of the far pile, pulled", "tension-bond", words);
    return words;
  }

  private void check(String name, String id, List<String> words) {
    numbers
        .check(id)
        .ifPresent(
            check ->
                words.add(
                    name
                        + ": load "
                        + check.demand().in(numbers.units())
                        + " of "
                        + check.capacity().in(numbers.units())
                        + ", "
                        + check.verdict().label()
                        + "."));
  }

  private void line(Pen pen, double fromX, double fromY, double toX, double toY) {
    canvas.line(pen, view.x(fromX), view.y(fromY), view.x(toX), view.y(toY));
  }
}
