package underhold.report.drawing.needles;

import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import underhold.quantity.UnitSystem;
import underhold.report.drawing.kit.Canvas;
import underhold.report.drawing.kit.Hatch;
import underhold.report.drawing.kit.Letters;
import underhold.report.drawing.kit.Pen;
import underhold.report.drawing.kit.View;
import underhold.sizing.Amount;

/** Seats, needle and what it picks up, drawn in elevation. */
final class NeedleParts {
  private final Canvas canvas;
  private final View view;
  private final NeedlePlace place;
  private final NeedleSheet needle;
  private final UnitSystem units;

  NeedleParts(Canvas canvas, View view, NeedlePlace place, UnitSystem units) {
    this.canvas = canvas;
    this.view = view;
    this.place = place;
    this.needle = place.needle();
    this.units = units;
  }

  void draw() {
    seats();
    carried();
    beam();
  }

  private void seats() {
    int number = 1;
    for (double seat : place.seatPlaces()) {
      canvas.group("seat-" + number++, () -> seat(seat));
    }
    if (needle.cantilever()) {
      canvas.group("tail", () -> tail());
    }
  }

  private void seat(double seat) {
    double half = place.pad() / 2;
    double thick = 0.6 * place.module();
    double post = 0.5 * place.module();
    if (place.seatDepth() > 0 && place.pad() > 0) {
      canvas.outline(Pen.THIN, view.box(seat - half, 0, seat + half, place.seatDepth()));
    }
    if (place.pad() > 0) {
      Shape mat = view.box(seat - half, place.seatDepth() - thick, seat + half, place.seatDepth());
      canvas.hatch(Hatch.TIMBER, mat);
      canvas.outline(Pen.OUTLINE, mat);
    }
    Shape blocks =
        view.box(
            seat - post,
            place.seatDepth() - thick,
            seat + post,
            place.under() + 0.9 * place.module());
    canvas.hatch(Hatch.STEEL, blocks);
    canvas.outline(Pen.MEDIUM, blocks);
    Shape jack =
        view.box(
            seat - 0.3 * place.module(),
            place.under() + 0.9 * place.module(),
            seat + 0.3 * place.module(),
            place.under());
    canvas.fill(Hatch.PLAIN.tint(), jack);
    canvas.outline(Pen.OUTLINE, jack);
  }

  /** What holds the tail down is not designed: a dashed tie. */
  private void tail() {
    double tail = needle.rightEnd();
    canvas.line(
        Pen.HIDDEN, view.x(tail), view.y(place.over()), view.x(tail), view.y(place.bottom()));
  }

  private void carried() {
    double half = needle.carried().map(Amount::si).orElse(place.module()) / 2;
    boolean known = needle.carried().isPresent();
    Hatch hatch =
        switch (needle.words("material")) {
          case "reinforced-concrete" -> Hatch.CONCRETE;
          case "steel", "cast-iron" -> Hatch.STEEL;
          case "timber" -> Hatch.TIMBER;
          default -> Hatch.MASONRY;
        };
    Shape shaft = view.box(-half, place.top(), half, 0);
    canvas.group(
        "carried",
        () -> {
          canvas.hatch(hatch, shaft);
          canvas.outline(known ? Pen.OUTLINE : Pen.UNKNOWN, shaft);
          Shape collar =
              view.box(
                  -half - 0.5 * place.module(),
                  place.over() - 0.7 * place.module(),
                  half + 0.5 * place.module(),
                  place.over());
          canvas.hatch(Hatch.STEEL, collar);
          canvas.outline(Pen.MEDIUM, collar);
        });
    double x = view.x(0);
    canvas.arrow(Pen.FORCE, x, view.y(place.top()) - 7, x, view.y(place.top()) - 0.8);
    canvas.text(
        "N = " + needle.text("needle-load", units) + " on one needle",
        x + 2,
        view.y(place.top()) - 3.5,
        Letters.LABEL);
  }

  private void beam() {
    double left = needle.leftSupport() - place.end();
    double right = needle.rightEnd() + place.end();
    double flange = 0.18 * place.module();
    Rectangle2D whole = view.box(left, place.over(), right, place.under());
    canvas.group(
        "needle",
        () -> {
          canvas.fill(Hatch.STEEL.tint(), whole);
          canvas.outline(Pen.OUTLINE, whole);
          canvas.line(
              Pen.MEDIUM,
              view.x(left),
              view.y(place.over() + flange),
              view.x(right),
              view.y(place.over() + flange));
          canvas.line(
              Pen.MEDIUM,
              view.x(left),
              view.y(place.under() - flange),
              view.x(right),
              view.y(place.under() - flange));
        });
  }
}
