package underhold.report.drawing.bracket;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import underhold.quantity.UnitSystem;
import underhold.report.drawing.Drawn;
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
import underhold.sizing.Sheet;

/** The head of a mini pile beside the edge: bracket, seat, shims, load and eccentricity. */
public final class BracketDetail {
  private static final double WIDTH = 170;
  private static final double EDGE = 2;
  private static final double LEFT = 16;
  private static final double DRAWN = 96;
  private static final double NOTES = 120;
  private static final double HIGHEST = 120;

  /** Parts whose size no sheet holds are drawn so large [m]. */
  private static final double SHIMS = 0.04;

  private static final double EDGE_DEPTH = 0.4;
  private static final double EDGE_BEYOND = 0.25;
  private static final double PILE_ABOVE = 0.1;
  private static final double PILE_BELOW = 0.3;

  private final SheetNumbers numbers;
  private final BracketNumbers bracket;
  private final String zone;
  private final Canvas canvas;
  private final DrawingScale scale;
  private final View view;
  private final double left;
  private final double right;
  private final double bottom;

  private BracketDetail(String zone, SheetNumbers numbers, String id) {
    this.numbers = numbers;
    this.bracket = BracketNumbers.of(numbers);
    this.zone = zone;
    this.canvas = new Canvas(id, WIDTH);
    double top = Symbols.heading(canvas, "Bracket at the head of a mini pile", zone);
    this.left = -Math.max(bracket.casing() / 2, bracket.mislocation()) - 0.06;
    this.right = bracket.face() + bracket.seat() + EDGE_BEYOND;
    this.bottom = seatTop() + bracket.seatPlate() + bracket.plateDepth() + PILE_BELOW;
    this.scale =
        DrawingScale.fitting(right - left, bottom + EDGE_DEPTH, DRAWN, HIGHEST, numbers.units());
    this.view = new View(scale, LEFT - scale.paper(left), top + 16 + scale.paper(EDGE_DEPTH));
  }

  /**
   * The drawing, or why there is none.
   *
   * @param zone the zone's name
   * @param sheet the sheet of mini piles with brackets
   * @param units in which it is read
   * @param id the figure's id
   */
  public static Drawn of(String zone, Sheet sheet, UnitSystem units, String id) {
    SheetNumbers numbers = new SheetNumbers(sheet, units);
    return BracketNumbers.refusal(numbers)
        .orElseGet(() -> new BracketDetail(zone, numbers, id).draw());
  }

  private double seatTop() {
    return SHIMS;
  }

  private Drawn draw() {
    edge();
    pile();
    bracket();
    load();
    notes();
    dimensions();
    List<String> below = below();
    Symbols.foot(canvas, below, scale, numbers.units());
    List<String> words = new ArrayList<>();
    words.add("The bracket at the head of a mini pile of " + zone + ".");
    words.addAll(parts());
    words.addAll(below);
    return Drawn.of(
        canvas.finish(
            "Bracket at the head of a mini pile, " + zone,
            "Section through the pile head, the bracket and the edge that sits on it, with load and eccentricity.",
            words));
  }

  private void edge() {
    Hatch hatch = material(numbers);
    canvas.group(
        "edge",
        () -> {
          canvas.hatch(hatch, view.box(bracket.face(), -EDGE_DEPTH, right, 0));
          canvas.line(Pen.OUTLINE, x(bracket.face()), y(0), x(right), y(0));
          canvas.line(Pen.OUTLINE, x(bracket.face()), y(0), x(bracket.face()), y(-EDGE_DEPTH));
        });
  }

  /** What the edge is made of. */
  static Hatch material(SheetNumbers numbers) {
    String material = numbers.word("structure-material") + numbers.word("footing-strength");
    return material.contains("masonry") || material.contains("brick") || material.contains("rubble")
        ? Hatch.MASONRY
        : Hatch.CONCRETE;
  }

  private void pile() {
    double half = bracket.casing() / 2;
    canvas.group(
        "casing",
        Map.of("diameter", bracket.casing() + " m"),
        () -> {
          canvas.hatch(Hatch.STEEL, view.box(-half, -PILE_ABOVE, half, bottom));
          canvas.line(Pen.OUTLINE, x(-half), y(-PILE_ABOVE), x(-half), y(bottom));
          canvas.line(Pen.OUTLINE, x(half), y(-PILE_ABOVE), x(half), y(bottom));
          canvas.line(Pen.OUTLINE, x(-half), y(-PILE_ABOVE), x(half), y(-PILE_ABOVE));
          canvas.line(Pen.UNKNOWN, x(-half) - 1.5, y(bottom), x(half) + 1.5, y(bottom));
        });
    canvas.line(Pen.CENTRE, x(0), y(-PILE_ABOVE) - 3, x(0), y(bottom) + 2);
    if (bracket.mislocation() > 0) {
      double at = -bracket.mislocation();
      canvas.line(Pen.UNKNOWN, x(at), y(-EDGE_DEPTH) - 4, x(at), y(bottom) + 2);
    }
  }

  private void bracket() {
    double half = bracket.casing() / 2;
    double end = bracket.face() + bracket.seat();
    double plateTop = seatTop() + bracket.seatPlate();
    double low = plateTop + bracket.plateDepth();
    double tip = plateTop + bracket.plateDepth() / 3;
    canvas.group(
        "plates",
        Map.of("depth", bracket.plateDepth() + " m"),
        () -> {
          canvas.fill(
              Colours.TINT_NEW, view.shape(half, plateTop, end, plateTop, end, tip, half, low));
          canvas.outline(Pen.NEW, view.shape(half, plateTop, end, plateTop, end, tip, half, low));
        });
    canvas.group(
        "seat-plate",
        Map.of("thickness", bracket.seatPlate() + " m"),
        () -> {
          canvas.hatch(Hatch.STEEL, view.box(bracket.face(), seatTop(), end, plateTop));
          canvas.outline(Pen.MEDIUM, view.box(bracket.face(), seatTop(), end, plateTop));
        });
    canvas.group(
        "shims",
        () -> {
          double inner = end - bracket.seat() / 2;
          canvas.fill(Colours.INK, view.shape(bracket.face(), seatTop(), end, 0, end, seatTop()));
          canvas.outline(Pen.MEDIUM, view.box(bracket.face(), 0, end, seatTop()));
          canvas.line(Pen.THIN, x(inner), y(0), x(inner), y(seatTop()));
        });
  }

  private void load() {
    double at = bracket.resultant();
    canvas.group(
        "load",
        Map.of("value", numbers.in(numbers.result("bracket-load"))),
        () -> canvas.arrow(Pen.FORCE, x(at), y(-EDGE_DEPTH) - 9, x(at), y(0)));
    canvas.line(Pen.ALERT, x(at), y(0), x(at), y(bottom) + 2);
    canvas.label(
        "P " + numbers.in(numbers.result("bracket-load")),
        x(at) + 1.5,
        y(-EDGE_DEPTH) - 6,
        Letters.LABEL.in(Colours.ALERT));
  }

  private void dimensions() {
    Dimensions under = new Dimensions(canvas, view, Dimensions.Side.BELOW, y(bottom) + 8);
    if (bracket.offsetStated()) {
      under.add("offset", 0, bracket.offset(), bottom, "stated " + numbers.thick(bracket.offset()));
    } else {
      under.add(
          "gap",
          bracket.casing() / 2,
          bracket.face(),
          bottom,
          "gap " + numbers.thick(bracket.gap()));
    }
    under.add(
        "seat",
        bracket.face(),
        bracket.face() + bracket.seat(),
        bottom,
        "seat " + numbers.thick(bracket.seat()));
    under.add(
        "eccentricity",
        -bracket.mislocation(),
        bracket.resultant(),
        bottom,
        "e " + numbers.in(numbers.result("eccentricity")));
    under.draw();
    new Dimensions(canvas, view, Dimensions.Side.RIGHT, x(right) + 4)
        .add(
            "plate-depth",
            seatTop() + bracket.seatPlate(),
            seatTop() + bracket.seatPlate() + bracket.plateDepth(),
            right,
            numbers.thick(bracket.plateDepth()))
        .draw();
  }

  private void notes() {
    double half = bracket.casing() / 2;
    double end = bracket.face() + bracket.seat();
    double plateTop = seatTop() + bracket.seatPlate();
    Notes notes = new Notes(canvas, NOTES, y(-EDGE_DEPTH) - 4, WIDTH - EDGE - NOTES);
    notes.add(
        x(right) - 6,
        y(-EDGE_DEPTH / 2),
        "Edge that is held; underside " + numbers.ground(bracket.footing()));
    notes.add(
        x(end) - 1, y(seatTop() / 2), "Shims tight at the inner end; their height is not told");
    notes.add(
        x(end) - 2,
        y(seatTop() + bracket.seatPlate() / 2),
        "Seat plate " + numbers.thick(bracket.seatPlate()) + " at least");
    notes.add(
        x((half + end) / 2),
        y(plateTop + bracket.plateDepth() / 3),
        "Two plates "
            + numbers.in(numbers.symbol("plate-moment", "t"))
            + ", "
            + numbers.thick(bracket.plateDepth())
            + " deep at the pile, welded "
            + numbers.in(numbers.symbol("weld-strength", "a"))
            + " fillet");
    notes.add(x(half / 2), y(bottom - PILE_BELOW / 2), casing(numbers));
    notes.draw();
  }

  /** The casing by the bill of the sheet. */
  static String casing(SheetNumbers numbers) {
    return numbers.sheet().quantities().stream()
        .map(item -> item.name())
        .filter(name -> name.startsWith("casing "))
        .findFirst()
        .map(name -> "C" + name.substring(1))
        .orElse("Casing");
  }

  private List<String> below() {
    List<String> words = new ArrayList<>();
    words.add(
        "e is "
            + (bracket.offsetStated()
                ? "the stated line of load " + numbers.thick(bracket.offset())
                : "half the casing, the gap and half the seat, " + numbers.thick(bracket.offset()))
            + ", shifted inwards "
            + numbers.thick(bracket.shift())
            + " by the shims, and "
            + numbers.thick(bracket.mislocation())
            + " for a pile not yet surveyed (dashed axis). M = P e = "
            + numbers.in(numbers.result("eccentric-moment"))
            + ", carried by: "
            + numbers.word("path").replace('-', ' ')
            + (numbers.word("moment-path").equals("undecided")
                ? ", which nobody has decided."
                : "."));
    numbers
        .check("bracket-eccentricity")
        .ifPresent(
            check ->
                words.add(
                    "e "
                        + check.demand().in(numbers.units())
                        + " against "
                        + check.capacity().in(numbers.units())
                        + ": "
                        + check.verdict().label()
                        + "."));
    if (bracket.offsetStated()) {
      words.add(
          "Where the face of the edge lies is not told: the seat is drawn about the stated line of load.");
    }
    return words;
  }

  private List<String> parts() {
    return List.of(
        "Load of one bracket P " + numbers.in(numbers.result("bracket-load")) + ".",
        "Eccentricity e " + numbers.in(numbers.result("eccentricity")) + ".",
        "Seat "
            + numbers.thick(bracket.seat())
            + " deep, seat plate "
            + numbers.thick(bracket.seatPlate())
            + ".",
        "Plates " + numbers.thick(bracket.plateDepth()) + " deep at the pile.",
        casing(numbers) + ".");
  }

  private double x(double metres) {
    return view.x(metres);
  }

  private double y(double metres) {
    return view.y(metres);
  }
}
