package underhold.report.drawing.section;

import java.awt.Shape;
import java.awt.geom.Area;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underhold.advice.Limits;
import underhold.quantity.UnitSystem;
import underhold.report.drawing.Drawn;
import underhold.report.drawing.Figure;
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
import underhold.site.Site;
import underhold.site.Zone;

/**
 * A zone in section: ground, water, foundation, excavation and its influence lines, from the facts
 * of the site alone. What is not known is dashed and marked with a question mark.
 */
public final class SectionDrawing {
  private static final double WIDTH = 180;
  private static final double LEFT = 34;
  private static final double ROOM = 92;
  private static final double HIGH = 120;
  private static final double NOTES = 148;

  private final SectionModel model;
  private final GroundBands ground;

  private SectionDrawing(SectionModel model) {
    this.model = model;
    this.ground = new GroundBands(model.site(), model.zone());
  }

  /**
   * The section of a zone.
   *
   * @param site the site
   * @param zone one of its zones
   * @param limits the thresholds of the rules, for the slopes of the influence lines
   * @param units the reader's units
   * @param id of the figure
   */
  public static Drawn of(Site site, Zone zone, Limits limits, UnitSystem units, String id) {
    SectionModel model = SectionModel.of(site, zone, limits, units);
    Optional<String> whyNot = model.whyNot();
    return whyNot.isPresent()
        ? Drawn.none(whyNot.get())
        : Drawn.of(new SectionDrawing(model).draw(id));
  }

  private Figure draw(String id) {
    String title = "Section: " + model.zone().name();
    Canvas canvas = new Canvas(id, WIDTH);
    double top = Symbols.heading(canvas, title, model.site().name());
    double left = model.left();
    double right = model.right();
    DrawingScale scale =
        DrawingScale.fitting(
            right - left, model.above() + model.bottom(), ROOM, HIGH, model.units());
    double spare = (ROOM - scale.paper(right - left)) / 2;
    View view =
        new View(scale, LEFT + spare - scale.paper(left), top + 2 + scale.paper(model.above()));
    ground.draw(canvas, view, left, right, model.bottom(), holes(view));
    surface(canvas, view);
    excavation(canvas, view);
    StructurePart structure = new StructurePart(canvas, view, model);
    structure.draw();
    influence(canvas, view);
    water(canvas, view);
    notes(canvas, view, top, structure);
    depths(canvas, view);
    lengths(canvas, view);
    if (model.digs()) {
      canvas.paragraph(
          SectionText.BARE, 2, canvas.bottom() + 6, WIDTH - 4, Letters.NOTE.in(Colours.FINE));
    }
    new Neighbours(model.site(), model.zone()).draw(canvas);
    Symbols.foot(canvas, scale, model.units());
    SectionText text = new SectionText(model, ground);
    List<String> words = new ArrayList<>(text.lines(80));
    words.addAll(text.words());
    words.add("Scale " + scale.label() + ".");
    return canvas.finish(title, text.description(), words);
  }

  private List<Shape> holes(View view) {
    List<Shape> holes = new ArrayList<>();
    if (model.digs()) {
      holes.add(view.box(0, 0, model.dugRight(), model.excavation()));
    }
    if (model.slab()) {
      holes.add(
          view.box(model.footingLeft(), model.inside(), model.footingRight(), model.founding()));
    }
    return holes;
  }

  private void surface(Canvas canvas, View view) {
    double y = view.y(0);
    canvas.line(Pen.OUTLINE, view.x(model.left()), y, view.x(0), y);
    if (!model.digs() || model.whollyUnder()) {
      double from = model.digs() ? model.dugRight() : 0;
      canvas.line(Pen.OUTLINE, view.x(from), y, view.x(model.right()), y);
    }
    Symbols.level(canvas, view.x(model.left()) + 3, y);
  }

  private void excavation(Canvas canvas, View view) {
    if (!model.digs()) {
      return;
    }
    Pen base = model.known("excavationDepth").isPresent() ? Pen.OUTLINE : Pen.UNKNOWN;
    Pen face = model.positionKnown() ? Pen.OUTLINE : Pen.UNKNOWN;
    double deep = model.excavation();
    canvas.group(
        "excavation",
        () -> {
          boolean through = model.slab() && model.partlyUnder();
          double upper = through ? model.inside() : deep;
          canvas.line(face, view.x(0), view.y(0), view.x(0), view.y(upper));
          if (through) {
            canvas.line(face, view.x(0), view.y(model.founding()), view.x(0), view.y(deep));
          }
          canvas.line(base, view.x(0), view.y(deep), view.x(model.dugRight()), view.y(deep));
          if (model.whollyUnder()) {
            Pen far = model.known("underminedWidth").isPresent() ? Pen.OUTLINE : Pen.UNKNOWN;
            canvas.line(
                far, view.x(model.dugRight()), view.y(0), view.x(model.dugRight()), view.y(deep));
          }
        });
    wall(canvas, view, deep);
  }

  /** A wall that is built first, as a band of no known thickness and no known toe. */
  private void wall(Canvas canvas, View view, double deep) {
    String kind = model.word("excavationWall");
    if (kind.isEmpty() || kind.equals("none")) {
      return;
    }
    double toe = Math.min(model.bottom() - 0.2, 1.25 * deep);
    double top = model.partlyUnder() ? Math.min(model.founding(), 0.8 * deep) : 0;
    Area band =
        new Area(
            new java.awt.geom.Rectangle2D.Double(
                view.x(0) - 1.8, view.y(top), 1.8, view.y(toe) - view.y(top)));
    canvas.group(
        "excavation-wall",
        () -> {
          canvas.hatch(Hatch.STEEL, band);
          canvas.outline(Pen.HIDDEN, band);
        });
  }

  private void influence(Canvas canvas, View view) {
    if (!model.hasInfluence()) {
      return;
    }
    line(canvas, view, "core", model.core());
    line(canvas, view, "screening", model.screening());
  }

  private void line(Canvas canvas, View view, String name, double slope) {
    double full = model.reach(slope);
    double room = -model.left();
    double share = Math.min(1, room / Math.max(full, 1e-9));
    double low = model.excavation();
    double rise = low - model.founding();
    canvas.group(
        "influence-" + name,
        () ->
            canvas.line(
                Pen.ALERT,
                view.x(0),
                view.y(low),
                view.x(-full * share),
                view.y(low - rise * share)));
  }

  private void water(Canvas canvas, View view) {
    model
        .known("groundWaterDepth")
        .filter(level -> level < model.bottom())
        .ifPresent(
            level ->
                canvas.group(
                    "water",
                    () -> {
                      double y = view.y(level);
                      double right = model.digs() && level < model.excavation() ? 0 : model.right();
                      canvas.line(Pen.WATER, view.x(model.left()), y, view.x(right), y);
                      Symbols.water(canvas, view.x(model.left()) + 8, y);
                    }));
  }

  private void notes(Canvas canvas, View view, double top, StructurePart structure) {
    Notes notes = new Notes(canvas, NOTES, top + 2, WIDTH - NOTES - 2);
    Notes left = new Notes(canvas, 2, top + 2, LEFT - 8);
    structure.note(notes);
    Notes beside = model.whollyUnder() ? left : notes;
    if (model.digs()) {
      notes.add(
          view.x(0.75 * model.dugRight()), view.y(0.8 * model.excavation()), excavationWords());
      String kind = model.word("excavationWall");
      if (!kind.isEmpty() && !kind.equals("none")) {
        beside.add(
            view.x(0) - 0.9,
            view.y(0.9 * model.excavation()),
            kind.replace('-', ' ') + " wall, thickness and toe not known (?)");
      }
    }
    if (model.hasInfluence()) {
      beside.add(
          view.x(-0.35 * Math.min(model.reach(model.core()), -model.left())),
          view.y(at(model.core(), 0.35)),
          "core zone, " + number(model.core()) + " across to 1 up");
      beside.add(
          view.x(-0.2 * Math.min(model.reach(model.screening()), -model.left())),
          view.y(at(model.screening(), 0.2)),
          "screening zone, " + number(model.screening()) + " across to 1 up");
    }
    notes.draw();
    ground.note(left, view, model.left() + 0.3, model.bottom(), model.units());
    Optional<Double> level = model.known("groundWaterDepth");
    boolean shown = level.filter(depth -> depth < model.bottom()).isPresent();
    left.add(
        view.x(model.left()) + 1,
        view.y(shown ? level.orElse(0.0) : model.bottom()),
        level.isEmpty()
            ? "ground water: depth not known (?)"
            : "ground water at "
                + model.text("groundWaterDepth")
                + (shown ? "" : ", below this drawing"));
    left.draw();
  }

  private double at(double slope, double share) {
    double full = model.reach(slope);
    double drawn = Math.min(1, -model.left() / Math.max(full, 1e-9));
    return model.excavation() - share * drawn * (model.excavation() - model.founding());
  }

  private static String number(double slope) {
    return slope == Math.rint(slope) ? String.valueOf((long) slope) : String.valueOf(slope);
  }

  private String excavationWords() {
    String depth =
        model.known("excavationDepth").isPresent()
            ? "excavation, " + model.text("excavationDepth") + " deep"
            : "excavation, depth not known (?)";
    return model.positionKnown() ? depth : depth + "; where it lies in plan is not known (?)";
  }

  private void depths(Canvas canvas, View view) {
    double edge = model.right();
    Dimensions side = new Dimensions(canvas, view, Dimensions.Side.RIGHT, view.x(edge) + 5);
    depth(side, "founding-depth", "foundingDepth", 0, model.founding(), edge);
    if (model.digs()) {
      if (model.known("excavationBelowFooting").filter(below -> below > 0).isPresent()) {
        side.add(
            "excavation-below-footing",
            model.founding(),
            model.excavation(),
            edge,
            model.text("excavationBelowFooting"));
      }
      depth(side, "excavation-depth", "excavationDepth", 0, model.excavation(), edge);
    }
    model
        .known("groundWaterDepth")
        .filter(level -> level > 0 && level < model.bottom())
        .ifPresent(
            level -> side.add("ground-water", 0, level, edge, model.text("groundWaterDepth")));
    side.draw();
  }

  private void depth(
      Dimensions side, String name, String fact, double from, double to, double edge) {
    if (model.known(fact).isPresent()) {
      side.add(name, from, to, edge, model.text(fact));
    } else {
      side.unknown(name, from, to, edge, "?");
    }
  }

  private void lengths(Canvas canvas, View view) {
    double edge = model.bottom();
    Dimensions below = new Dimensions(canvas, view, Dimensions.Side.BELOW, view.y(edge) + 6);
    length(below, "footing-width", "footingWidth", model.footingLeft(), model.footingRight(), edge);
    if (model.digs() && model.whollyUnder()) {
      length(below, "undermined-width", "underminedWidth", 0, model.dugWidth(), edge);
    } else if (model.digs() && model.partlyUnder()) {
      length(below, "undermined-width", "underminedWidth", 0, model.overhang(), edge);
    } else if (model.digs() && model.known("gapToExcavation").orElse(1.0) > 0) {
      length(below, "gap", "gapToExcavation", model.footingRight(), 0, edge);
    }
    below.draw();
  }

  private void length(
      Dimensions below, String name, String fact, double from, double to, double edge) {
    if (model.known(fact).filter(value -> value > 0).isPresent()) {
      below.add(name, from, to, edge, model.text(fact));
    } else {
      below.unknown(name, from, to, edge, "?");
    }
  }
}
