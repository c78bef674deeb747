package underhold.report.drawing.needles;

import java.awt.Shape;
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
import underhold.report.drawing.numbers.SheetNumbers;
import underhold.report.drawing.section.GroundBands;
import underhold.site.Site;
import underhold.site.Zone;
import underhold.sizing.Amount;
import underhold.sizing.Sheet;

/**
 * A needle in elevation: what it picks up, its seats clear of the excavation and of the influence
 * line, and below it the load and moment of the sheet. Heights above ground are not on the sheet:
 * needle, jacks and packing are drawn where they have room, which a note says.
 */
public final class NeedleElevation {
  private static final double WIDTH = 180;
  private static final double LEFT = 28;
  private static final double ROOM = 100;
  private static final double HIGH = 90;
  private static final double NOTES = 147;
  private static final String TITLE = "Needle in elevation, with its load and moment";

  private final NeedleSheet needle;
  private final GroundBands ground;
  private final UnitSystem units;
  private final NeedlePlace place;

  private NeedleElevation(NeedleSheet needle, Site site, Zone zone, UnitSystem units) {
    this.needle = needle;
    this.ground = new GroundBands(site, zone);
    this.units = units;
    this.place = NeedlePlace.of(needle);
  }

  /**
   * The elevation of a sheet of needles.
   *
   * @param site the site
   * @param zone the zone of the sheet
   * @param sheet the sheet
   * @param units the reader's units
   * @param id of the figure
   */
  public static Drawn of(Site site, Zone zone, Sheet sheet, UnitSystem units, String id) {
    Optional<NeedleSheet> needle = NeedleSheet.of(sheet);
    if (needle.isEmpty()) {
      return Drawn.none(
          sheet.complete()
              ? "No needle is drawn: the sheet holds no span with its moment."
              : "No needle is drawn: the sheet still asks for " + SheetNumbers.asked(sheet) + ".");
    }
    NeedleElevation elevation = new NeedleElevation(needle.get(), site, zone, units);
    return Drawn.of(elevation.draw(site.name() + ", " + zone.name(), id));
  }

  private Figure draw(String of, String id) {
    Canvas canvas = new Canvas(id, WIDTH);
    double head = Symbols.heading(canvas, TITLE, of);
    DrawingScale scale =
        DrawingScale.fitting(
            place.rightEnd() - place.leftEnd(), place.bottom() - place.top(), ROOM, HIGH, units);
    double spare = (ROOM - scale.paper(place.rightEnd() - place.leftEnd())) / 2;
    View view =
        new View(
            scale,
            LEFT + spare - scale.paper(place.leftEnd()),
            head + 9 - scale.paper(place.top()));
    ground.draw(canvas, view, place.leftEnd(), place.rightEnd(), place.bottom(), holes(view));
    canvas.line(
        Pen.OUTLINE, view.x(place.leftEnd()), view.y(0), view.x(place.rightEnd()), view.y(0));
    excavation(canvas, view);
    new NeedleParts(canvas, view, place, units).draw();
    notes(canvas, view, head);
    depths(canvas, view);
    double low = lengths(canvas, view);
    new NeedleDiagrams(canvas, view, needle, units).draw(low + 8, LEFT, LEFT + ROOM);
    Symbols.foot(canvas, scale, units);
    NeedleWords words = new NeedleWords(place, ground, units);
    return canvas.finish(TITLE, words.description(), words.words(scale));
  }

  private List<Shape> holes(View view) {
    List<Shape> holes = new ArrayList<>();
    if (place.excavationKnown()) {
      holes.add(place.excavationBox(view));
    }
    for (double seat : place.seatPlaces()) {
      if (place.seatDepth() > 0 && place.pad() > 0) {
        holes.add(view.box(seat - place.pad() / 2, 0, seat + place.pad() / 2, place.seatDepth()));
      }
    }
    return holes;
  }

  private void excavation(Canvas canvas, View view) {
    if (!place.excavationKnown()) {
      return;
    }
    Rectangle2D box = place.excavationBox(view);
    canvas.group(
        "excavation",
        () -> {
          canvas.fill(Hatch.PLAIN.tint(), box);
          canvas.line(Pen.OUTLINE, box.getMinX(), view.y(0), box.getMinX(), box.getMaxY());
          canvas.line(Pen.OUTLINE, box.getMaxX(), view.y(0), box.getMaxX(), box.getMaxY());
          canvas.line(Pen.OUTLINE, box.getMinX(), box.getMaxY(), box.getMaxX(), box.getMaxY());
        });
    needle.result("setback").ifPresent(setback -> influence(canvas, view, setback.si()));
  }

  private void influence(Canvas canvas, View view, double setback) {
    double depth = place.excavationDepth().orElse(0.0);
    double half = place.halfExcavation();
    double middle = needle.middle();
    canvas.group(
        "influence",
        () -> {
          for (int side : needle.cantilever() ? new int[] {1} : new int[] {-1, 1}) {
            double toe = middle + side * half;
            double limit = side < 0 ? place.leftEnd() : place.rightEnd();
            double full = toe + side * setback;
            boolean cut = side * full > side * limit;
            double share = cut ? (limit - toe) / (full - toe) : 1;
            canvas.line(
                Pen.ALERT,
                view.x(toe),
                view.y(depth),
                view.x(toe + (full - toe) * share),
                view.y(depth + (place.seatDepth() - depth) * share));
          }
        });
  }

  private void notes(Canvas canvas, View view, double head) {
    Notes notes = new Notes(canvas, NOTES, head + 8, WIDTH - NOTES - 2);
    double right = needle.rightSupport();
    notes.add(
        view.x(right - 1.5 * place.module()),
        view.y((place.over() + place.under()) / 2),
        "needle " + needle.section() + ", its depth not to scale");
    notes.add(
        view.x(right),
        view.y(place.under() + 0.45 * place.module()),
        "jack and lock nut" + rating());
    notes.add(
        view.x(right + 0.3 * place.module()),
        view.y((place.under() + 0.9 * place.module() + place.seatDepth()) / 2),
        (needle.words("seat").equals("crib") ? "timber crib" : "steel blocks, packing")
            + ", height not to scale");
    needle
        .symbol("seat-pressure", "B")
        .ifPresent(
            side ->
                notes.add(
                    view.x(right + place.pad() / 3),
                    view.y(place.seatDepth() - 0.3 * place.module()),
                    "pad, " + side.in(units) + " along the needle"));
    if (needle.cantilever()) {
      notes.add(
          view.x(needle.rightEnd()),
          view.y(place.seatDepth() + place.module()),
          "tail held down for " + needle.text("tail-demand", units));
    }
    influenceNote(notes, view);
    notes.draw();
    Notes soils = new Notes(canvas, 2, view.y(0) + 1, LEFT - 6);
    ground.note(soils, view, place.leftEnd() + 0.6 * place.module(), place.bottom(), units);
    if (!place.excavationKnown()) {
      soils.add(
          view.x(needle.middle()) - 2,
          view.y(0.5 * place.module()),
          "excavation: width or depth not known (?), not drawn");
    }
    soils.draw();
  }

  private void influenceNote(Notes notes, View view) {
    if (!place.excavationKnown() || needle.result("setback").isEmpty()) {
      return;
    }
    double toe = needle.middle() + place.halfExcavation();
    double depth = place.excavationDepth().orElse(0.0);
    double setback = needle.result("setback").map(Amount::si).orElse(0.0);
    String slope = needle.symbol("setback", "k").map(k -> k.in(units)).orElse("?");
    boolean inside = needle.insideLine();
    notes.add(
        view.x(toe + 0.2 * Math.min(setback, place.rightEnd() - toe)),
        view.y(
            depth
                + 0.2
                    * Math.min(setback, place.rightEnd() - toe)
                    / Math.max(setback, 1e-9)
                    * (place.seatDepth() - depth)),
        "influence line, "
            + slope
            + " across to 1 up"
            + (inside ? ": the seats stand inside it; see the check of their setback" : ""));
  }

  private String rating() {
    return needle.sheet().quantities().stream()
        .filter(item -> item.name().equals("rating of a jack"))
        .map(item -> ", rated " + item.amount().in(units))
        .findFirst()
        .orElse("");
  }

  private void depths(Canvas canvas, View view) {
    Dimensions side =
        new Dimensions(canvas, view, Dimensions.Side.RIGHT, view.x(place.rightEnd()) + 5);
    needle
        .input("seat-depth")
        .filter(depth -> depth.si() > 0)
        .ifPresent(
            depth ->
                side.add("seat-depth", 0, place.seatDepth(), place.rightEnd(), depth.in(units)));
    if (place.excavationKnown()) {
      needle
          .input("excavation-depth")
          .ifPresent(
              depth ->
                  side.add("excavation-depth", 0, depth.si(), place.rightEnd(), depth.in(units)));
    }
    side.draw();
  }

  private double lengths(Canvas canvas, View view) {
    double edge = place.bottom();
    Dimensions chain = new Dimensions(canvas, view, Dimensions.Side.BELOW, view.y(edge) + 6);
    double load = 0;
    double right = needle.rightSupport();
    if (needle.cantilever()) {
      chain.add("overhang", load, right, edge, needle.near().in(units));
      chain.add("back-span", right, needle.rightEnd(), edge, needle.far().in(units));
    } else {
      chain.add("far-distance", needle.leftSupport(), load, edge, needle.far().in(units));
      chain.add("near-distance", load, right, edge, needle.near().in(units));
      needle
          .span()
          .ifPresent(
              span ->
                  chain.add(
                      "span",
                      needle.leftSupport(),
                      right,
                      edge,
                      span.in(units) + " between seats"));
    }
    needle
        .symbol("seat-pressure", "B")
        .ifPresent(
            side -> {
              int number = 1;
              for (double seat : place.seatPlaces()) {
                chain.add(
                    "pad-" + number++,
                    seat - place.pad() / 2,
                    seat + place.pad() / 2,
                    edge,
                    side.in(units));
              }
            });
    if (place.excavationKnown()) {
      double middle = needle.middle();
      needle
          .input("excavation-width")
          .ifPresent(
              wide ->
                  chain.add(
                      "excavation-width",
                      middle - place.halfExcavation(),
                      middle + place.halfExcavation(),
                      edge,
                      wide.in(units) + " excavation"));
    }
    return chain.draw();
  }
}
