package underhold.report.drawing.needles;

import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import underhold.quantity.UnitSystem;
import underhold.report.drawing.Drawn;
import underhold.report.drawing.Figure;
import underhold.report.drawing.kit.Canvas;
import underhold.report.drawing.kit.Dimensions;
import underhold.report.drawing.kit.DrawingScale;
import underhold.report.drawing.kit.Hatch;
import underhold.report.drawing.kit.Letters;
import underhold.report.drawing.kit.Notes;
import underhold.report.drawing.kit.Pen;
import underhold.report.drawing.kit.Symbols;
import underhold.report.drawing.kit.View;
import underhold.report.drawing.section.GroundBands;
import underhold.site.Site;
import underhold.site.Zone;
import underhold.sizing.Amount;
import underhold.sizing.Sheet;
import underhold.sizing.Verdict;

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
  private final double seatDepth;
  private final double pad;
  private final double end;

  /** Drawing heights above ground, in shares of the length of the needle [m]. */
  private final double module;

  private NeedleElevation(NeedleSheet needle, Site site, Zone zone, UnitSystem units) {
    this.needle = needle;
    this.ground = new GroundBands(site, zone);
    this.units = units;
    this.seatDepth = needle.input("seat-depth").map(Amount::si).orElse(0.0);
    this.pad = needle.symbol("seat-pressure", "B").map(Amount::si).orElse(0.0);
    this.end = needle.input("end-distance").map(Amount::si).orElse(0.0);
    this.module = Math.max(0.25, (needle.rightEnd() - needle.leftSupport()) / 24);
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
              : "No needle is drawn: the sheet still asks for "
                  + sheet.missing().stream()
                      .map(one -> one.name())
                      .collect(Collectors.joining(", "))
                  + ".");
    }
    NeedleElevation elevation = new NeedleElevation(needle.get(), site, zone, units);
    return Drawn.of(elevation.draw(site.name() + ", " + zone.name(), id));
  }

  private Optional<Double> excavationDepth() {
    return needle.input("excavation-depth").map(Amount::si);
  }

  private Optional<Double> excavationWidth() {
    return needle.input("excavation-width").map(Amount::si);
  }

  private double top() {
    return -6.5 * module;
  }

  private double bottom() {
    return Math.max(excavationDepth().orElse(0.0), seatDepth) + 2 * module;
  }

  private double under() {
    return -1.5 * module;
  }

  private double over() {
    return under() - 1.3 * module;
  }

  private double leftEnd() {
    double more = needle.cantilever() ? halfExcavation() : pad / 2;
    return needle.leftSupport() - Math.max(end, more) - module;
  }

  private double rightEnd() {
    return needle.rightEnd() + Math.max(end, pad / 2) + module;
  }

  private double halfExcavation() {
    return excavationWidth().orElse(0.0) / 2;
  }

  private Figure draw(String of, String id) {
    Canvas canvas = new Canvas(id, WIDTH);
    double head = Symbols.heading(canvas, TITLE, of);
    DrawingScale scale =
        DrawingScale.fitting(rightEnd() - leftEnd(), bottom() - top(), ROOM, HIGH, units);
    double spare = (ROOM - scale.paper(rightEnd() - leftEnd())) / 2;
    View view =
        new View(scale, LEFT + spare - scale.paper(leftEnd()), head + 9 - scale.paper(top()));
    ground.draw(canvas, view, leftEnd(), rightEnd(), bottom(), holes(view));
    canvas.line(Pen.OUTLINE, view.x(leftEnd()), view.y(0), view.x(rightEnd()), view.y(0));
    excavation(canvas, view);
    seats(canvas, view);
    carried(canvas, view);
    beam(canvas, view);
    notes(canvas, view, head);
    depths(canvas, view);
    double low = lengths(canvas, view);
    new NeedleDiagrams(canvas, view, needle, units).draw(low + 8, LEFT, LEFT + ROOM);
    Symbols.foot(canvas, scale, units);
    return canvas.finish(TITLE, description(), words(scale));
  }

  private List<Shape> holes(View view) {
    List<Shape> holes = new ArrayList<>();
    if (excavationKnown()) {
      holes.add(excavationBox(view));
    }
    for (double seat : seatPlaces()) {
      if (seatDepth > 0 && pad > 0) {
        holes.add(view.box(seat - pad / 2, 0, seat + pad / 2, seatDepth));
      }
    }
    return holes;
  }

  private boolean excavationKnown() {
    return excavationDepth().isPresent() && excavationWidth().orElse(0.0) > 0;
  }

  private Rectangle2D excavationBox(View view) {
    double middle = needle.middle();
    return view.box(
        middle - halfExcavation(), 0, middle + halfExcavation(), excavationDepth().orElse(0.0));
  }

  private List<Double> seatPlaces() {
    return needle.cantilever()
        ? List.of(needle.rightSupport())
        : List.of(needle.leftSupport(), needle.rightSupport());
  }

  private void excavation(Canvas canvas, View view) {
    if (!excavationKnown()) {
      return;
    }
    Rectangle2D box = excavationBox(view);
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
    double depth = excavationDepth().orElse(0.0);
    double half = halfExcavation();
    double middle = needle.middle();
    canvas.group(
        "influence",
        () -> {
          for (int side : needle.cantilever() ? new int[] {1} : new int[] {-1, 1}) {
            double toe = middle + side * half;
            double limit = side < 0 ? leftEnd() : rightEnd();
            double full = toe + side * setback;
            boolean cut = side * full > side * limit;
            double share = cut ? (limit - toe) / (full - toe) : 1;
            canvas.line(
                Pen.ALERT,
                view.x(toe),
                view.y(depth),
                view.x(toe + (full - toe) * share),
                view.y(depth + (seatDepth - depth) * share));
          }
        });
  }

  private void seats(Canvas canvas, View view) {
    int number = 1;
    for (double seat : seatPlaces()) {
      canvas.group("seat-" + number++, () -> seat(canvas, view, seat));
    }
    if (needle.cantilever()) {
      canvas.group("tail", () -> tail(canvas, view));
    }
  }

  private void seat(Canvas canvas, View view, double seat) {
    double half = pad / 2;
    double thick = 0.6 * module;
    double post = 0.5 * module;
    if (seatDepth > 0 && pad > 0) {
      canvas.outline(Pen.THIN, view.box(seat - half, 0, seat + half, seatDepth));
    }
    if (pad > 0) {
      Shape mat = view.box(seat - half, seatDepth - thick, seat + half, seatDepth);
      canvas.hatch(Hatch.TIMBER, mat);
      canvas.outline(Pen.OUTLINE, mat);
    }
    Shape blocks = view.box(seat - post, seatDepth - thick, seat + post, under() + 0.9 * module);
    canvas.hatch(Hatch.STEEL, blocks);
    canvas.outline(Pen.MEDIUM, blocks);
    Shape jack =
        view.box(seat - 0.3 * module, under() + 0.9 * module, seat + 0.3 * module, under());
    canvas.fill(Hatch.PLAIN.tint(), jack);
    canvas.outline(Pen.OUTLINE, jack);
  }

  /** What holds the tail down is not designed: a dashed tie. */
  private void tail(Canvas canvas, View view) {
    double tail = needle.rightEnd();
    canvas.line(Pen.HIDDEN, view.x(tail), view.y(over()), view.x(tail), view.y(bottom()));
  }

  private void carried(Canvas canvas, View view) {
    double half = needle.carried().map(Amount::si).orElse(module) / 2;
    boolean known = needle.carried().isPresent();
    Hatch hatch =
        switch (needle.words("material")) {
          case "reinforced-concrete" -> Hatch.CONCRETE;
          case "steel", "cast-iron" -> Hatch.STEEL;
          case "timber" -> Hatch.TIMBER;
          default -> Hatch.MASONRY;
        };
    Shape shaft = view.box(-half, top(), half, 0);
    canvas.group(
        "carried",
        () -> {
          canvas.hatch(hatch, shaft);
          canvas.outline(known ? Pen.OUTLINE : Pen.UNKNOWN, shaft);
          Shape collar =
              view.box(-half - 0.5 * module, over() - 0.7 * module, half + 0.5 * module, over());
          canvas.hatch(Hatch.STEEL, collar);
          canvas.outline(Pen.MEDIUM, collar);
        });
    double x = view.x(0);
    canvas.arrow(Pen.FORCE, x, view.y(top()) - 7, x, view.y(top()) - 0.8);
    canvas.text(
        "N = " + needle.text("needle-load", units) + " on one needle",
        x + 2,
        view.y(top()) - 3.5,
        Letters.LABEL);
  }

  private void beam(Canvas canvas, View view) {
    double left = needle.leftSupport() - end;
    double right = needle.rightEnd() + end;
    double flange = 0.18 * module;
    Rectangle2D whole = view.box(left, over(), right, under());
    canvas.group(
        "needle",
        () -> {
          canvas.fill(Hatch.STEEL.tint(), whole);
          canvas.outline(Pen.OUTLINE, whole);
          canvas.line(
              Pen.MEDIUM,
              view.x(left),
              view.y(over() + flange),
              view.x(right),
              view.y(over() + flange));
          canvas.line(
              Pen.MEDIUM,
              view.x(left),
              view.y(under() - flange),
              view.x(right),
              view.y(under() - flange));
        });
  }

  private void notes(Canvas canvas, View view, double head) {
    Notes notes = new Notes(canvas, NOTES, head + 8, WIDTH - NOTES - 2);
    double right = needle.rightSupport();
    notes.add(
        view.x(right - 1.5 * module),
        view.y((over() + under()) / 2),
        "needle " + needle.section() + ", its depth not to scale");
    notes.add(view.x(right), view.y(under() + 0.45 * module), "jack and lock nut" + rating());
    notes.add(
        view.x(right + 0.3 * module),
        view.y((under() + 0.9 * module + seatDepth) / 2),
        (needle.words("seat").equals("crib") ? "timber crib" : "steel blocks, packing")
            + ", height not to scale");
    needle
        .symbol("seat-pressure", "B")
        .ifPresent(
            side ->
                notes.add(
                    view.x(right + pad / 3),
                    view.y(seatDepth - 0.3 * module),
                    "pad, " + side.in(units) + " along the needle"));
    if (needle.cantilever()) {
      notes.add(
          view.x(needle.rightEnd()),
          view.y(seatDepth + module),
          "tail held down for " + needle.text("tail-demand", units));
    }
    influenceNote(notes, view);
    notes.draw();
    Notes soils = new Notes(canvas, 2, view.y(0) + 1, LEFT - 6);
    ground.note(soils, view, leftEnd() + 0.6 * module, bottom(), units);
    if (!excavationKnown()) {
      soils.add(
          view.x(needle.middle()) - 2,
          view.y(0.5 * module),
          "excavation: width or depth not known (?), not drawn");
    }
    soils.draw();
  }

  private void influenceNote(Notes notes, View view) {
    if (!excavationKnown() || needle.result("setback").isEmpty()) {
      return;
    }
    double toe = needle.middle() + halfExcavation();
    double depth = excavationDepth().orElse(0.0);
    double setback = needle.result("setback").map(Amount::si).orElse(0.0);
    String slope = needle.symbol("setback", "k").map(k -> k.in(units)).orElse("?");
    boolean inside = insideLine();
    notes.add(
        view.x(toe + 0.2 * Math.min(setback, rightEnd() - toe)),
        view.y(
            depth
                + 0.2
                    * Math.min(setback, rightEnd() - toe)
                    / Math.max(setback, 1e-9)
                    * (seatDepth - depth)),
        "influence line, "
            + slope
            + " across to 1 up"
            + (inside ? ": the seats stand inside it; see check seat-setback" : ""));
  }

  private boolean insideLine() {
    return needle
        .sheet()
        .check("seat-setback")
        .filter(check -> check.verdict() != Verdict.PASSES)
        .isPresent();
  }

  private String rating() {
    return needle.sheet().quantities().stream()
        .filter(item -> item.name().equals("rating of a jack"))
        .map(item -> ", rated " + item.amount().in(units))
        .findFirst()
        .orElse("");
  }

  private void depths(Canvas canvas, View view) {
    Dimensions side = new Dimensions(canvas, view, Dimensions.Side.RIGHT, view.x(rightEnd()) + 5);
    needle
        .input("seat-depth")
        .filter(depth -> depth.si() > 0)
        .ifPresent(depth -> side.add("seat-depth", 0, seatDepth, rightEnd(), depth.in(units)));
    if (excavationKnown()) {
      needle
          .input("excavation-depth")
          .ifPresent(
              depth -> side.add("excavation-depth", 0, depth.si(), rightEnd(), depth.in(units)));
    }
    side.draw();
  }

  private double lengths(Canvas canvas, View view) {
    double edge = bottom();
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
              for (double seat : seatPlaces()) {
                chain.add("pad-" + number++, seat - pad / 2, seat + pad / 2, edge, side.in(units));
              }
            });
    if (excavationKnown()) {
      double middle = needle.middle();
      needle
          .input("excavation-width")
          .ifPresent(
              wide ->
                  chain.add(
                      "excavation-width",
                      middle - halfExcavation(),
                      middle + halfExcavation(),
                      edge,
                      wide.in(units) + " excavation"));
    }
    return chain.draw();
  }

  private String description() {
    return (needle.cantilever()
            ? "A needle over a fulcrum, overhang " + needle.near().in(units)
            : "A needle on seats "
                + needle.far().in(units)
                + " and "
                + needle.near().in(units)
                + " from the load")
        + ", largest moment "
        + needle.text("needle-moment", units)
        + ". The same follows in words.";
  }

  private List<String> words(DrawingScale scale) {
    List<String> words = new ArrayList<>();
    words.add("Needle: " + needle.section() + ".");
    words.add("Load on one needle: " + needle.text("needle-load", units) + ".");
    if (needle.cantilever()) {
      words.add("Overhang, from the fulcrum to the load: " + needle.near().in(units) + ".");
      words.add("Back span, from the fulcrum to the tail: " + needle.far().in(units) + ".");
    } else {
      words.add("From the load to the farther seat: " + needle.far().in(units) + ".");
      words.add("From the load to the nearer seat: " + needle.near().in(units) + ".");
      needle.span().ifPresent(span -> words.add("Between the seats: " + span.in(units) + "."));
    }
    word(words, "Width of the excavation", needle.input("excavation-width"));
    word(words, "Depth of the excavation", needle.input("excavation-depth"));
    word(words, "Depth of the seats", needle.input("seat-depth"));
    word(words, "Setback by the influence line", needle.result("setback"));
    word(words, "Side of a pad", needle.symbol("seat-pressure", "B"));
    words.add("Largest moment: " + needle.text("needle-moment", units) + ".");
    words.add("Largest shear: " + needle.text("needle-shear", units) + ".");
    words.add(
        (needle.cantilever() ? "Reaction of the fulcrum: " : "Reaction of the nearer seat: ")
            + needle.text("needle-reaction", units)
            + ".");
    if (insideLine()) {
      words.add("The seats stand inside the influence line; see check seat-setback.");
    }
    words.addAll(ground.words(bottom(), units));
    words.add(
        "The excavation is drawn midway between the seats; heights above ground are not to scale.");
    words.add("Scale " + scale.label() + ".");
    return words;
  }

  private void word(List<String> words, String name, Optional<Amount> amount) {
    words.add(name + ": " + amount.map(value -> value.in(units)).orElse("not known") + ".");
  }
}
