package underhold.report.drawing.needles;

import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import underhold.report.drawing.kit.View;
import underhold.sizing.Amount;

/**
 * Where the parts of a needle lie in its elevation [m]. Lengths are those of the sheet; heights
 * above ground are not on it and come as shares of a module of the drawing's own.
 *
 * @param needle what the sheet holds
 * @param seatDepth of the pads below ground
 * @param pad side of a pad along the needle; 0 where none is on the sheet
 * @param end from the middle of a seat to the end of the needle
 * @param module heights of the drawing's own
 */
record NeedlePlace(NeedleSheet needle, double seatDepth, double pad, double end, double module) {
  private static final double LEAST_MODULE = 0.25;

  static NeedlePlace of(NeedleSheet needle) {
    return new NeedlePlace(
        needle,
        needle.input("seat-depth").map(Amount::si).orElse(0.0),
        needle.symbol("seat-pressure", "B").map(Amount::si).orElse(0.0),
        needle.input("end-distance").map(Amount::si).orElse(0.0),
        Math.max(LEAST_MODULE, (needle.rightEnd() - needle.leftSupport()) / 24));
  }

  Optional<Double> excavationDepth() {
    return needle.input("excavation-depth").map(Amount::si);
  }

  Optional<Double> excavationWidth() {
    return needle.input("excavation-width").map(Amount::si);
  }

  double top() {
    return -6.5 * module;
  }

  double bottom() {
    return Math.max(excavationDepth().orElse(0.0), seatDepth) + 2 * module;
  }

  double under() {
    return -1.5 * module;
  }

  double over() {
    return under() - 1.3 * module;
  }

  double leftEnd() {
    double more = needle.cantilever() ? halfExcavation() : pad / 2;
    return needle.leftSupport() - Math.max(end, more) - module;
  }

  double rightEnd() {
    return needle.rightEnd() + Math.max(end, pad / 2) + module;
  }

  double halfExcavation() {
    return excavationWidth().orElse(0.0) / 2;
  }

  boolean excavationKnown() {
    return excavationDepth().isPresent() && excavationWidth().orElse(0.0) > 0;
  }

  Rectangle2D excavationBox(View view) {
    double middle = needle.middle();
    return view.box(
        middle - halfExcavation(), 0, middle + halfExcavation(), excavationDepth().orElse(0.0));
  }

  List<Double> seatPlaces() {
    return needle.cantilever()
        ? List.of(needle.rightSupport())
        : List.of(needle.leftSupport(), needle.rightSupport());
  }
}
