package underhold.report.drawing.bracket;

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
import underhold.report.drawing.kit.Letters;
import underhold.report.drawing.kit.Notes;
import underhold.report.drawing.kit.Pen;
import underhold.report.drawing.kit.Symbols;
import underhold.report.drawing.kit.View;
import underhold.report.drawing.numbers.SheetNumbers;
import underhold.site.Site;
import underhold.sizing.Amount;
import underhold.sizing.Sheet;

/** A mini pile beside the edge it holds: excavation, fixity, casing, bond and layers. */
public final class BracketSection {
  private static final double WIDTH = 170;
  private static final double EDGE = 2;
  private static final double LEFT = 34;
  private static final double RIGHT = 102;
  private static final double NOTES = 111;
  private static final double PILE = 60;
  private static final double HIGHEST = 180;
  private static final double BELOW = 0.06;
  private static final double LEAST_PILE = 2.4;
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
    this.scale = DrawingScale.fitting(0.1, bottom, RIGHT - LEFT, HIGHEST, numbers.units());
    this.view = new View(scale, PILE, top + 8);
    this.left = scale.world(LEFT - PILE);
    this.right = scale.world(RIGHT - PILE);
    this.half = Math.max(bracket.casing() / 2, scale.world(LEAST_PILE / 2));
    this.face = Math.max(bracket.face(), half + scale.world(1.2));
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
    pile();
    levels();
    dimensions();
    notes();
    List<String> below = below();
    double y = canvas.bottom() + 4;
    for (String note : below) {
      y = canvas.paragraph(note, EDGE, y + 1.5, WIDTH - 2 * EDGE, Letters.NOTE);
    }
    Symbols.foot(canvas, scale, numbers.units());
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
    canvas.group(
        "ground",
        () -> {
          for (Strata.Stratum layer : strata.layers()) {
            double shallow = Math.min(layer.bottom(), bracket.base());
            if (layer.top() < shallow) {
              canvas.hatch(layer.hatch(), view.box(from, layer.top(), right, shallow));
              canvas.line(Pen.THIN, view.x(from), view.y(shallow), view.x(right), view.y(shallow));
            }
            double deep = Math.max(layer.top(), bracket.base());
            if (deep < layer.bottom()) {
              canvas.hatch(layer.hatch(), view.box(left, deep, right, layer.bottom()));
              canvas.line(
                  Pen.THIN,
                  view.x(left),
                  view.y(layer.bottom()),
                  view.x(right),
                  view.y(layer.bottom()));
            }
          }
        });
    if (bracket.bared()) {
      canvas.line(
          Pen.OUTLINE, view.x(left), view.y(bracket.base()), view.x(face), view.y(bracket.base()));
      canvas.line(
          Pen.HIDDEN,
          view.x(face),
          view.y(bracket.footing()),
          view.x(face),
          view.y(bracket.base()));
    } else {
      canvas.line(
          Pen.HIDDEN, view.x(left), view.y(bracket.base()), view.x(right), view.y(bracket.base()));
    }
    canvas.line(Pen.MEDIUM, view.x(face), view.y(0), view.x(right), view.y(0));
  }

  private void structure() {
    canvas.group(
        "edge",
        () -> {
          canvas.hatch(
              Hatch.CONCRETE, view.box(face, 0, right - scale.world(14), bracket.footing()));
          canvas.outline(Pen.HIDDEN, view.box(face, 0, right - scale.world(14), bracket.footing()));
          canvas.line(
              Pen.OUTLINE,
              view.x(face),
              view.y(bracket.footing()),
              view.x(right - scale.world(14)),
              view.y(bracket.footing()));
        });
  }

  private void pile() {
    double bond = Math.max(bracket.hole() / 2, scale.world(LEAST_PILE * 0.42));
    double head = bracket.footing() - scale.world(2);
    canvas.group(
        "bond",
        Map.of("top", bracket.casingBottom() + " m", "bottom", bracket.toe() + " m"),
        () -> {
          canvas.hatch(
              Hatch.NEW_CONCRETE, view.box(-bond, bracket.casingBottom(), bond, bracket.toe()));
          canvas.outline(Pen.NEW, view.box(-bond, bracket.casingBottom(), bond, bracket.toe()));
        });
    canvas.group(
        "casing",
        Map.of("bottom", bracket.casingBottom() + " m"),
        () -> {
          canvas.hatch(Hatch.STEEL, view.box(-half, head, half, bracket.casingBottom()));
          canvas.outline(Pen.OUTLINE, view.box(-half, head, half, bracket.casingBottom()));
        });
    double reach = face + scale.world(5);
    double shim = bracket.footing() + scale.world(0.9);
    canvas.group(
        "bracket",
        () -> {
          canvas.fill(
              Colours.TINT_NEW,
              view.shape(
                  half,
                  shim,
                  reach,
                  shim,
                  reach,
                  shim + scale.world(2),
                  half,
                  shim + scale.world(6)));
          canvas.outline(
              Pen.NEW,
              view.shape(
                  half,
                  shim,
                  reach,
                  shim,
                  reach,
                  shim + scale.world(2),
                  half,
                  shim + scale.world(6)));
          canvas.fill(Colours.INK, view.box(face, bracket.footing(), reach, shim));
        });
    double at = view.x(face) + 3.2;
    canvas.group(
        "load",
        Map.of("value", numbers.in(numbers.result("bracket-load"))),
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
          () -> canvas.line(Pen.OUTLINE, view.x(left), view.y(depth), view.x(face), view.y(depth)));
    }
    bracket.fixity().ifPresent(depth -> level(Pen.CENTRE, depth));
    level(Pen.ALERT, bracket.casingBottom());
  }

  private void level(Pen pen, double depth) {
    canvas.line(pen, view.x(left), view.y(depth), view.x(right), view.y(depth));
  }

  private void dimensions() {
    Dimensions beside = new Dimensions(canvas, view, Dimensions.Side.LEFT, LEFT - 5);
    if (bracket.base() > bracket.footing()) {
      beside.add(
          "excavation",
          bracket.footing(),
          bracket.base(),
          left,
          numbers.length(bracket.base() - bracket.footing()));
    }
    bracket
        .fixity()
        .ifPresent(
            depth ->
                beside.add(
                    "fixity", bracket.base(), depth, left, numbers.length(depth - bracket.base())));
    beside.add(
        "bond",
        bracket.casingBottom(),
        bracket.toe(),
        left,
        "bond " + numbers.length(bracket.toe() - bracket.casingBottom()));
    beside.add(
        "pile",
        bracket.footing(),
        bracket.toe(),
        left,
        "pile " + numbers.length(bracket.toe() - bracket.footing()));
    beside.draw();
  }

  private void notes() {
    double edge = view.x(right);
    Notes notes = new Notes(canvas, NOTES, view.y(0) - 4, WIDTH - EDGE - NOTES);
    notes.add(
        view.x(face) + 3.2,
        view.y(bracket.footing()) - 3,
        "P "
            + numbers.in(numbers.result("bracket-load"))
            + " on one bracket, e "
            + numbers.in(numbers.result("eccentricity")));
    notes.add(
        view.x(face) + 8,
        view.y(bracket.footing()),
        "Underside of the edge " + ground(bracket.footing()));
    for (int i = 0; i < bracket.braces().size(); i++) {
      notes.add(
          view.x(face),
          view.y(bracket.braces().get(i)),
          "Waler level " + (i + 1) + ", " + ground(bracket.braces().get(i)));
    }
    notes.add(
        view.x(bracket.bared() ? left + (face - left) / 6 : right),
        view.y(bracket.base()),
        "Bottom of the excavation " + ground(bracket.base()));
    bracket
        .fixity()
        .ifPresent(depth -> notes.add(edge, view.y(depth), "Fixity by rule, " + ground(depth)));
    notes.add(
        edge,
        view.y(bracket.casingBottom()),
        "Casing ends, bond begins " + ground(bracket.casingBottom()));
    notes.add(
        view.x(half),
        view.y((Math.max(bracket.base(), bracket.footing()) + bracket.casingBottom()) / 2),
        BracketDetail.casing(numbers));
    notes.add(
        view.x(0),
        view.y((bracket.casingBottom() + bracket.toe()) / 2),
        "Bond length, hole " + Amount.thickness(bracket.hole()).in(numbers.units()));
    notes.add(view.x(0), view.y(bracket.toe()), "Toe " + ground(bracket.toe()));
    for (Strata.Stratum layer : strata.layers()) {
      notes.add(edge - 2, view.y((layer.top() + layer.bottom()) / 2), layer.words(numbers.units()));
    }
    notes.draw();
  }

  private String ground(double depth) {
    return numbers.length(depth) + " below ground";
  }

  private List<String> told() {
    List<String> words = new ArrayList<>();
    words.add(
        "Load of one bracket "
            + numbers.in(numbers.result("bracket-load"))
            + ", eccentricity "
            + numbers.in(numbers.result("eccentricity"))
            + ".");
    words.add("Underside of the edge " + ground(bracket.footing()) + ".");
    words.add("Bottom of the excavation " + ground(bracket.base()) + ".");
    bracket.fixity().ifPresent(depth -> words.add("Fixity by rule " + ground(depth) + "."));
    words.add(
        "Bond from "
            + numbers.length(bracket.casingBottom())
            + " to "
            + numbers.length(bracket.toe())
            + " below ground.");
    for (int i = 0; i < bracket.braces().size(); i++) {
      words.add("Waler level " + (i + 1) + " " + ground(bracket.braces().get(i)) + ".");
    }
    words.add(BracketDetail.casing(numbers) + ".");
    return words;
  }

  private List<String> below() {
    List<String> words = new ArrayList<>();
    words.add(
        (bracket.bared()
                ? "Drawn bared by the excavation"
                : "Drawn in the ground that a wall built first keeps round it")
            + (numbers.assumed("bared") ? ", which is assumed" : "")
            + ". The face under the edge and its support are not of this sheet. Bracket, gap and pile are drawn wider than to scale where they would be too thin to see: see the detail.");
    numbers
        .check("pile-bond")
        .ifPresent(
            check ->
                words.add(
                    "Bond: load "
                        + check.demand().in(numbers.units())
                        + " of "
                        + check.capacity().in(numbers.units())
                        + ", "
                        + check.verdict().label()
                        + "."));
    return words;
  }
}
