package underhold.report.drawing.edgepits;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import underhold.quantity.UnitSystem;
import underhold.report.drawing.Drawn;
import underhold.report.drawing.edgepits.EdgeWallNumbers.Level;
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
import underhold.sizing.Sheet;

/** The wall of pits in section under the structure, with pressures, braces, toe and piles. */
public final class EdgeWallSection {
  private static final double WIDTH = 170;
  private static final double EDGE = 2;
  private static final double DIAGRAM = 40;
  private static final double LEFT = 57;
  private static final double RIGHT = 112;
  private static final double NOTES = 117.5;
  private static final double WALL = 80;
  private static final double HIGHEST = 140;
  private static final double BELOW = 1.22;
  private static final double STRUCTURE = 9;

  /** Wall, ledge and pile are drawn no thinner, and the drawing then says so [mm]. */
  private static final double LEAST = 1.5;

  private static final double BRACE = 1.6;

  /** From the right edge of what is drawn to the pile [mm]. */
  private static final double PILE_OFF = 3;

  /** Least that is drawn between wall and pile [m]. */
  private static final double CLEAR = 0.6;

  private final SheetNumbers numbers;
  private final EdgeWallNumbers wall;
  private final Pressures pressures;
  private final String zone;
  private final Canvas canvas;
  private final DrawingScale scale;
  private final View view;
  private final View ground;
  private final Strata strata;
  private final double bottom;
  private final double left;
  private final double right;
  private final double front;

  private EdgeWallSection(Site site, String zone, SheetNumbers numbers, String id) {
    this.numbers = numbers;
    this.wall = EdgeWallNumbers.of(numbers);
    this.pressures = Pressures.of(numbers);
    this.zone = zone;
    this.canvas = new Canvas(id, WIDTH);
    double top = Symbols.heading(canvas, "Wall of pits at the edge, in section", zone) + 12;
    this.bottom = wall.deepest() * BELOW;
    this.scale =
        DrawingScale.fitting(
            wall.thickness() + wall.pile().orElse(0.0) + CLEAR,
            bottom,
            RIGHT - WALL - PILE_OFF,
            HIGHEST,
            numbers.units());
    this.view = new View(scale, WALL, top + STRUCTURE);
    this.ground = new View(scale, WALL, view.zeroY() - scale.paper(wall.founding()));
    this.left = scale.world(LEFT - WALL);
    this.right = scale.world(RIGHT - WALL);
    this.front = Math.max(wall.thickness(), scale.world(LEAST));
    this.strata = Strata.of(site, zone, wall.founding(), wall.founding() + bottom);
  }

  /**
   * The section, or why there is none.
   *
   * @param site the site, for the layers
   * @param zone the zone's name
   * @param sheet the sheet of drilled piles with edge pits
   * @param units in which it is read
   * @param id the figure's id
   */
  public static Drawn of(Site site, String zone, Sheet sheet, UnitSystem units, String id) {
    SheetNumbers numbers = new SheetNumbers(sheet, units);
    return EdgeWallNumbers.refusal(numbers)
        .orElseGet(() -> new EdgeWallSection(site, zone, numbers, id).draw());
  }

  private Drawn draw() {
    PressureDiagram diagram =
        new PressureDiagram(canvas, view, pressures, numbers.units(), DIAGRAM);
    ground();
    pile();
    braces();
    wall();
    structure();
    toe();
    names();
    diagram.draw();
    notes();
    dimensions();
    canvas.text("pressure behind the wall", DIAGRAM, view.y(0) - 5.2, Letters.DIMENSION.end());
    double y = diagram.key(EDGE, canvas.bottom() + 3) + 1;
    EdgeWallWords wording = new EdgeWallWords(numbers, wall);
    List<String> below = wording.below(diagram, pressures.height());
    for (String note : below) {
      y = canvas.paragraph(note, EDGE, y + 3, WIDTH - 2 * EDGE, Letters.NOTE) - 1.5;
    }
    Symbols.foot(canvas, scale, numbers.units());
    List<String> words = new ArrayList<>();
    words.add("The wall of pits at the edge of the excavation under " + zone + ".");
    words.addAll(strata.words(numbers.units()));
    words.addAll(wording.told());
    words.addAll(below);
    return Drawn.of(
        canvas.finish(
            "Wall of pits at the edge, in section, " + zone,
            "Section of the wall of pits under the structure, with the pressure behind it, its braces and its toe.",
            words));
  }

  private void ground() {
    canvas.group(
        "ground",
        () -> {
          below(0, left, 0);
          below(wall.height(), 0, front);
          below(wall.onLedge() ? wall.height() : wall.excavation(), front, shoulder());
          below(wall.excavation(), shoulder(), right);
        });
    line(Pen.OUTLINE, shoulder(), wall.excavation(), right, wall.excavation());
    if (wall.onLedge()) {
      line(Pen.OUTLINE, front, wall.height(), shoulder(), wall.height());
      line(Pen.OUTLINE, shoulder(), wall.height(), shoulder(), wall.excavation());
    } else if (shoulder() > front) {
      line(Pen.OUTLINE, front, wall.excavation(), shoulder(), wall.excavation());
    }
    double water = pressures.water();
    if (water < wall.height() && pressures.above() == 0) {
      line(Pen.WATER, left, water, 0, water);
      Symbols.water(canvas, view.x(left) + 5, view.y(water));
      canvas.label(
          numbers.length(water) + " down",
          view.x(left) + 8,
          view.y(water) - 1.2,
          Letters.DIMENSION.start());
    }
    wall.rock()
        .filter(depth -> depth <= bottom)
        .ifPresent(depth -> line(Pen.CENTRE, left, depth, right, depth));
  }

  /** The layers' names in the soil behind the wall. */
  private void names() {
    strata
        .layers()
        .forEach(
            layer ->
                canvas.name(
                    layer.name(),
                    ground.box(left, layer.top(), 0, layer.bottom()),
                    Letters.DIMENSION));
  }

  /** The soil that stays below a depth under the structure [m]. */
  private void below(double depth, double from, double to) {
    strata
        .between(wall.founding() + depth, wall.founding() + bottom)
        .fill(canvas, ground, from, to);
  }

  /** Where the ledge in front of a wall on rock ends; else the front of the wall. */
  private double shoulder() {
    return wall.onLedge() ? front + Math.max(wall.ledge(), scale.world(LEAST)) : front;
  }

  private void structure() {
    double high = -scale.world(STRUCTURE);
    canvas.group(
        "structure",
        () -> {
          canvas.hatch(Hatch.CONCRETE, view.box(left, high, right, 0));
          line(Pen.OUTLINE, left, 0, right, 0);
          line(Pen.HIDDEN, left, high, right, high);
        });
  }

  private void wall() {
    canvas.group(
        "wall",
        Map.of("height", wall.height() + " m", "thickness", wall.thickness() + " m"),
        () -> {
          canvas.hatch(Hatch.NEW_CONCRETE, view.box(0, 0, front, wall.height()));
          canvas.outline(Pen.NEW, view.box(0, 0, front, wall.height()));
        });
  }

  private void pile() {
    wall.pile()
        .ifPresent(
            diameter -> {
              double half = Math.max(diameter, scale.world(LEAST)) / 2;
              double middle = right - scale.world(PILE_OFF) - half;
              canvas.group(
                  "pile",
                  () -> {
                    canvas.hatch(Hatch.STEEL, view.box(middle - half, 0, middle + half, bottom));
                    line(Pen.MEDIUM, middle - half, 0, middle - half, bottom);
                    line(Pen.MEDIUM, middle + half, 0, middle + half, bottom);
                  });
            });
  }

  private void braces() {
    for (int i = 0; i < wall.levels().size(); i++) {
      Level level = wall.levels().get(i);
      canvas.group(
          "brace-" + (i + 1),
          Map.of(
              "depth", level.depth() + " m",
              "y", String.valueOf(view.y(level.depth())),
              "line", level.line().in(numbers.units()),
              "force", level.brace().in(numbers.units())),
          () -> brace(level.depth()));
    }
  }

  private void brace(double depth) {
    boolean tie = wall.kind().equals("tie");
    double from = tie ? 0 : front;
    double to = tie ? left : right;
    double half = scale.world(BRACE / 2);
    double drop =
        wall.kind().equals("strut")
            ? 0
            : Math.abs(to - from) * Math.tan(Math.toRadians(wall.slope()));
    double room = bottom - depth - half;
    double share = drop > room ? Math.max(room, 0) / drop : 1;
    double end = from + (to - from) * share;
    double low = depth + drop * share;
    canvas.fill(
        Colours.TINT_STEEL,
        view.shape(from, depth - half, end, low - half, end, low + half, from, depth + half));
    line(Pen.MEDIUM, from, depth - half, end, low - half);
    line(Pen.MEDIUM, from, depth + half, end, low + half);
  }

  private void toe() {
    numbers
        .result("toe-force")
        .filter(force -> force.si() > 0)
        .ifPresent(
            force ->
                canvas.group(
                    "toe-force",
                    Map.of("value", force.in(numbers.units())),
                    () ->
                        canvas.arrow(
                            Pen.FORCE,
                            view.x(front) + 12,
                            view.y(wall.height()) - 0.6,
                            view.x(front),
                            view.y(wall.height()) - 0.6)));
  }

  /** Says of a part that it had to be drawn wider. */
  private String widened(double metres) {
    return scale.paper(metres) < LEAST - 1e-9 ? ", drawn wider than to scale" : "";
  }

  /** What holds the toe: on rock its dowels or the rock, else what was chosen. */
  private String toeSupport() {
    if (wall.rock().filter(depth -> depth <= wall.height()).isEmpty()) {
      return "held by: " + numbers.word("toe-support");
    }
    return numbers.check("toe-dowels").isPresent() ? "on rock, dowels" : "on rock";
  }

  private void dimensions() {
    Dimensions beside = new Dimensions(canvas, view, Dimensions.Side.LEFT, LEFT - 4);
    beside.add("wall-height", 0, wall.height(), left, "wall " + numbers.length(wall.height()));
    beside.add(
        "excavation",
        0,
        wall.excavation(),
        left,
        "excavation " + numbers.length(wall.excavation()));
    beside.draw();
    new Dimensions(canvas, view, Dimensions.Side.ABOVE, view.y(0) - STRUCTURE - 3)
        .add(
            "thickness",
            0,
            wall.thickness(),
            -scale.world(STRUCTURE),
            numbers.length(wall.thickness()))
        .draw();
  }

  private void notes() {
    double edge = view.x(right);
    Notes notes = new Notes(canvas, NOTES, view.y(0) - STRUCTURE - 6, WIDTH - EDGE - NOTES);
    notes.add(
        edge - 2,
        view.y(0) - STRUCTURE / 2,
        "Structure, underside "
            + numbers.length(wall.founding())
            + " below ground; its depth is not told");
    for (int i = 0; i < wall.levels().size(); i++) {
      Level level = wall.levels().get(i);
      notes.add(
          wall.kind().equals("strut") ? edge : view.x(front),
          view.y(level.depth()),
          "Level "
              + (i + 1)
              + ", "
              + numbers.length(level.depth())
              + " down: "
              + level.line().in(numbers.units())
              + ", "
              + level.brace().in(numbers.units())
              + " in each "
              + wall.kind());
    }
    notes.addWithin(
        view.x(front) - 1,
        view.y(0),
        view.y(wall.height()),
        "Wall of pits, " + numbers.length(wall.thickness()) + " thick" + widened(wall.thickness()));
    if (wall.onLedge()) {
      notes.add(
          (view.x(front) + view.x(shoulder())) / 2,
          view.y(wall.height()),
          "Ledge of rock, " + numbers.length(wall.ledge()) + " wide" + widened(wall.ledge()));
    }
    notes.add(
        edge - 4,
        view.y(wall.excavation()),
        "Bottom of the excavation " + numbers.length(wall.excavation()) + " down");
    numbers
        .result("toe-force")
        .ifPresent(
            force ->
                notes.add(
                    view.x(front) + 12,
                    view.y(wall.height()) - 0.6,
                    "Toe " + force.in(numbers.units()) + ", " + toeSupport()));
    wall.rock()
        .filter(depth -> depth <= bottom)
        .ifPresent(
            depth ->
                notes.add(edge, view.y(depth), "Rock head " + numbers.length(depth) + " down"));
    wall.pile()
        .ifPresent(
            diameter ->
                notes.add(
                    view.x(right) - PILE_OFF - 1,
                    view.y(bottom) - 2,
                    "Drilled piles carry the structure: "
                        + numbers.in(numbers.input("primary-piles"))
                        + " of "
                        + numbers.in(numbers.input("primary-pile-diameter"))
                        + ", toes "
                        + numbers.in(numbers.input("primary-pile-toe"))
                        + " below ground"
                        + widened(diameter)));
    notes.draw();
  }

  private void line(Pen pen, double fromX, double fromY, double toX, double toY) {
    canvas.line(pen, view.x(fromX), view.y(fromY), view.x(toX), view.y(toY));
  }
}
