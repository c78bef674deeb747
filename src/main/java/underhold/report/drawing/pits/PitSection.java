package underhold.report.drawing.pits;

import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underhold.quantity.UnitSystem;
import underhold.report.drawing.Drawn;
import underhold.report.drawing.Figure;
import underhold.report.drawing.kit.Canvas;
import underhold.report.drawing.kit.Dimensions;
import underhold.report.drawing.kit.DrawingScale;
import underhold.report.drawing.kit.Hatch;
import underhold.report.drawing.kit.Notes;
import underhold.report.drawing.kit.Pen;
import underhold.report.drawing.kit.Symbols;
import underhold.report.drawing.kit.View;
import underhold.report.drawing.section.GroundBands;
import underhold.site.FactDictionary;
import underhold.site.FactView;
import underhold.site.Site;
import underhold.site.Zone;
import underhold.site.ZoneViews;
import underhold.sizing.Amount;
import underhold.sizing.Sheet;
import underhold.sizing.SheetInput;
import underhold.sizing.StageRole;

/**
 * One pit in section across the wall: approach pit, sheeting, pier, dry pack, footing and wall. The
 * face of the footing at the approach pit is x = 0, the wall lies to the left, depth counts from
 * the working level.
 */
public final class PitSection {
  private static final double WIDTH = 180;
  private static final double LEFT = 34;
  private static final double ROOM = 84;
  private static final double HIGH = 130;
  private static final double NOTES = 148;
  private static final String TITLE = "One pit in section, the pier cast and dry packed";

  private final Sheet sheet;
  private final FactView facts;
  private final GroundBands ground;
  private final UnitSystem units;
  private final double founding;
  private final double footing;
  private final double depth;
  private final double gap;
  private final double out;
  private final double approach;
  private final double board;

  private PitSection(Site site, Zone zone, Sheet sheet, UnitSystem units) {
    this.sheet = sheet;
    this.facts = ZoneViews.known(site, zone, FactDictionary.standard());
    this.ground = new GroundBands(site, zone);
    this.units = units;
    this.founding = input("founding-depth").orElse(0.0);
    this.footing = input("footing-width").orElse(0.0);
    this.depth = input("pit-depth").orElse(0.0);
    this.gap = input("dry-pack-gap").orElse(0.0);
    this.out = input("approach-width").orElse(0.0);
    this.approach = rule("Da").map(Amount::si).orElse(0.0);
    this.board = rule("t").map(Amount::si).orElse(0.0);
  }

  /**
   * The section of a sheet of pits.
   *
   * @param site the site
   * @param zone the zone of the sheet
   * @param sheet the sheet
   * @param units the reader's units
   * @param id of the figure
   */
  public static Drawn of(Site site, Zone zone, Sheet sheet, UnitSystem units, String id) {
    if (PitLayout.of(sheet).isEmpty()) {
      return Drawn.none(PitPlan.whyNot(sheet));
    }
    PitSection section = new PitSection(site, zone, sheet, units);
    for (String needed : List.of("founding-depth", "footing-width", "pit-depth")) {
      if (section.input(needed).isEmpty()) {
        return Drawn.none("No pit is drawn in section: the sheet holds no " + needed + ".");
      }
    }
    return Drawn.of(section.draw(site.name() + ", " + zone.name(), id));
  }

  private Optional<Double> input(String name) {
    return sheet.input(name).flatMap(SheetInput::amount).map(Amount::si);
  }

  private String text(String name) {
    return sheet.input(name).map(found -> found.value(units)).orElse("?");
  }

  /** An amount of the rules for each pit on the sheet. */
  private Optional<Amount> rule(String name) {
    return sheet.stages().stream()
        .filter(stage -> stage.role() == StageRole.PIT_RULES)
        .flatMap(stage -> stage.work().stream())
        .map(work -> work.amounts().get(name))
        .filter(java.util.Objects::nonNull)
        .findFirst();
  }

  private double base() {
    return founding + depth;
  }

  private Figure draw(String of, String id) {
    Canvas canvas = new Canvas(id, WIDTH);
    double top = Symbols.heading(canvas, TITLE, of);
    double side = Math.max(0.8, 0.25 * (out + footing));
    double above = Math.max(0.6, 0.25 * base());
    double below = Math.max(0.5, 0.15 * base());
    double left = -footing - side;
    double right = out + side;
    DrawingScale scale =
        DrawingScale.fitting(right - left, above + base() + below, ROOM, HIGH, units);
    double spare = (ROOM - scale.paper(right - left)) / 2;
    View view = new View(scale, LEFT + spare - scale.paper(left), top + 2 + scale.paper(above));
    Rectangle2D pit = view.box(-footing, founding, 0, base());
    Rectangle2D access = view.box(0, 0, out, founding + approach);
    List<Shape> holes = new ArrayList<>(List.of(pit, access, view.box(-footing, 0, 0, founding)));
    ground.draw(canvas, view, left, right, base() + below, holes);
    structure(canvas, view, above);
    pier(canvas, view);
    sheeting(canvas, view);
    water(canvas, view, left, right, below);
    canvas.line(Pen.OUTLINE, view.x(left), view.y(0), view.x(wallLeft()), view.y(0));
    canvas.line(Pen.OUTLINE, view.x(out), view.y(0), view.x(right), view.y(0));
    excavation(canvas, view, right);
    notes(canvas, view, top, below, left);
    dimensions(canvas, view, right, base() + below);
    Symbols.foot(canvas, scale, units);
    return canvas.finish(TITLE, description(), words(scale, below));
  }

  private double wall() {
    return facts.amount("wallThickness").map(q -> Math.min(q.si(), footing)).orElse(0.6 * footing);
  }

  private boolean wallKnown() {
    return facts.amount("wallThickness").isPresent();
  }

  private double wallLeft() {
    return -footing / 2 - wall() / 2;
  }

  /** The footing as deep as a third of its founding depth: its thickness is not on the sheet. */
  private void structure(Canvas canvas, View view, double above) {
    double top = founding - Math.min(founding, Math.max(0.25, 0.33 * founding));
    Shape foot = view.box(-footing, top, 0, founding);
    Shape wall = view.box(wallLeft(), -above, wallLeft() + wall(), top);
    Shape cover = view.box(-footing, 0, 0, top);
    Area over = new Area(cover);
    over.subtract(new Area(wall));
    canvas.group(
        "structure",
        () -> {
          canvas.hatch(Hatch.FILL, over);
          canvas.hatch(material(), wall);
          canvas.outline(wallKnown() ? Pen.OUTLINE : Pen.UNKNOWN, wall);
          canvas.hatch(Hatch.CONCRETE, foot);
          canvas.line(Pen.UNKNOWN, view.x(-footing), view.y(top), view.x(0), view.y(top));
          canvas.line(Pen.OUTLINE, view.x(-footing), view.y(founding), view.x(0), view.y(founding));
          canvas.line(
              Pen.OUTLINE, view.x(-footing), view.y(top), view.x(-footing), view.y(founding));
          canvas.line(Pen.OUTLINE, view.x(0), view.y(top), view.x(0), view.y(founding));
        });
  }

  private Hatch material() {
    return switch (facts.word("structureMaterial").orElse("")) {
      case "reinforced-concrete" -> Hatch.CONCRETE;
      case "steel", "cast-iron" -> Hatch.STEEL;
      case "timber" -> Hatch.TIMBER;
      case "reinforced-masonry", "unreinforced-masonry", "rubble" -> Hatch.MASONRY;
      default -> Hatch.PLAIN;
    };
  }

  private void pier(Canvas canvas, View view) {
    Shape pier = view.box(-footing, founding + gap, 0, base());
    Shape pack = view.box(-footing, founding, 0, founding + gap);
    canvas.group(
        "pier",
        () -> {
          canvas.hatch(Hatch.NEW_CONCRETE, pier);
          canvas.outline(Pen.NEW, pier);
          canvas.hatch(Hatch.DRY_PACK, pack);
          canvas.outline(Pen.THIN, pack);
        });
  }

  private void sheeting(Canvas canvas, View view) {
    double low = founding + approach;
    canvas.group(
        "sheeting",
        () -> {
          canvas.outline(Pen.MEDIUM, view.box(0, 0, out, low));
          timber(canvas, view.box(out, 0, out + board, low));
          timber(canvas, view.box(-footing - board, founding, -footing, base()));
          if (base() > low + 1e-6) {
            timber(canvas, view.box(0, low, board, base()));
          }
        });
  }

  private static void timber(Canvas canvas, Rectangle2D box) {
    canvas.hatch(Hatch.TIMBER, box);
    canvas.outline(Pen.THIN, box);
  }

  /** Ground water above the drawing's bottom is drawn; deeper water is only told. */
  private void water(Canvas canvas, View view, double left, double right, double below) {
    waterDepth()
        .filter(level -> level < base() + below)
        .ifPresent(
            level ->
                canvas.group(
                    "water",
                    () -> {
                      double y = view.y(level);
                      canvas.line(Pen.WATER, view.x(left), y, view.x(-footing - board), y);
                      canvas.line(Pen.WATER, view.x(out + board), y, view.x(right), y);
                      Symbols.water(canvas, view.x(right) - 4, y);
                    }));
  }

  private Optional<Double> waterDepth() {
    return input("water-above-pit-base").map(head -> base() - head);
  }

  private void excavation(Canvas canvas, View view, double right) {
    input("excavation-below-footing")
        .filter(below -> below > 0)
        .ifPresent(
            below ->
                canvas.group(
                    "excavation-later",
                    () ->
                        canvas.line(
                            Pen.HIDDEN,
                            view.x(0),
                            view.y(founding + below),
                            view.x(right),
                            view.y(founding + below))));
  }

  private void dimensions(Canvas canvas, View view, double right, double bottom) {
    Dimensions side = new Dimensions(canvas, view, Dimensions.Side.RIGHT, view.x(right) + 6);
    side.add("founding-depth", 0, founding, right, text("founding-depth"));
    side.add("pit-depth", founding, base(), right, text("pit-depth"));
    input("excavation-below-footing")
        .filter(below -> below > 0)
        .ifPresent(
            below ->
                side.add(
                    "excavation-below-footing",
                    founding,
                    founding + below,
                    right,
                    text("excavation-below-footing")));
    rule("Da")
        .ifPresent(
            deep ->
                side.add("approach-depth", founding, founding + approach, right, deep.in(units)));
    side.add("dry-pack-gap", founding, founding + gap, right, text("dry-pack-gap"));
    side.draw();
    new Dimensions(canvas, view, Dimensions.Side.BELOW, view.y(bottom) + 6)
        .add("footing-width", -footing, 0, bottom, text("footing-width"))
        .add("approach-width", 0, out, bottom, text("approach-width"))
        .draw();
  }

  private void notes(Canvas canvas, View view, double top, double below, double left) {
    Notes notes = new Notes(canvas, NOTES, top + 2, WIDTH - NOTES - 2);
    double wallMiddle = wallLeft() + wall() / 2;
    notes.add(
        view.x(wallMiddle + wall() / 4),
        view.y(-0.3),
        wallKnown()
            ? "wall, " + facts.fact("wallThickness").text() + " thick"
            : "wall, thickness not known (?)");
    notes.add(view.x(out / 2), view.y(0.5 * founding), "approach pit, open");
    notes.add(
        view.x(-footing / 4), view.y(founding - 0.08), "footing, its thickness not known (?)");
    notes.add(
        view.x(-footing / 3), view.y(founding + gap / 2), "dry pack, " + text("dry-pack-gap"));
    notes.add(view.x(-footing / 3), view.y(founding + 0.55 * depth), "pier, concrete");
    rule("t")
        .ifPresent(
            thick ->
                notes.add(
                    view.x(out + board / 2),
                    view.y(founding + 0.7 * approach),
                    "sheeting, " + thick.in(units) + " boards, left in behind"));
    input("excavation-below-footing")
        .filter(deep -> deep > 0)
        .ifPresent(
            deep ->
                notes.add(
                    view.x(0.8 * out),
                    view.y(founding + deep),
                    "excavation, dug once all piers carry"));
    waterDepth()
        .filter(level -> level < base() + below)
        .ifPresent(
            level ->
                notes.add(
                    view.x(out + board) + 3,
                    view.y(level),
                    "ground water, "
                        + text("water-above-pit-base")
                        + " above the pit base (negative: below)"));
    notes.draw();
    Notes soils = new Notes(canvas, 2, view.y(0), LEFT - 6);
    ground.note(soils, view, left + 0.3, base() + below, units);
    soils.draw();
  }

  private String description() {
    return "A pit "
        + text("pit-depth")
        + " deep below a footing "
        + text("footing-width")
        + " wide at "
        + text("founding-depth")
        + ". The same follows in words.";
  }

  private List<String> words(DrawingScale scale, double below) {
    List<String> words = new ArrayList<>();
    words.add("Underside of the footing below the working level: " + text("founding-depth") + ".");
    words.add("Width of the footing: " + text("footing-width") + ".");
    words.add("Depth of the pit below the footing: " + text("pit-depth") + ".");
    words.add(
        "Excavation below the footing, once all piers carry: "
            + text("excavation-below-footing")
            + ".");
    words.add("Gap for dry pack: " + text("dry-pack-gap") + ".");
    words.add("Approach pit, out from the wall: " + text("approach-width") + ".");
    rule("Da")
        .ifPresent(deep -> words.add("Approach pit below the footing: " + deep.in(units) + "."));
    rule("t").ifPresent(thick -> words.add("Boards: " + thick.in(units) + "."));
    words.add("Wall above the footing: " + facts.fact("wallThickness").text() + ".");
    words.add(
        "Ground water above the pit base (negative: below it): "
            + text("water-above-pit-base")
            + ".");
    words.addAll(ground.words(base() + below, units));
    words.add("The thickness of the footing is not known; it is drawn dashed.");
    words.add("Scale " + scale.label() + ".");
    return words;
  }
}
