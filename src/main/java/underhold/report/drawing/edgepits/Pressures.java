package underhold.report.drawing.edgepits;

import static underhold.report.drawing.numbers.SheetNumbers.si;

import java.util.ArrayList;
import java.util.List;
import underhold.report.drawing.numbers.SheetNumbers;
import underhold.sizing.Amount;

/**
 * The pressure behind the wall for the share of the structure's load that braces and wall are sized
 * for. The total is the sheet's: p = a + b z + c (z - zw) below water. Its parts are told apart by
 * the sheet's own factors; what is neither water, structure nor surcharge is soil, so the parts add
 * up to the total. Depths are below the top of the wall [m], pressures [kPa].
 *
 * @param top pressure at the top, a
 * @param rise per depth, b
 * @param riseInWater further rise per depth below water, c
 * @param water depth of the water; the wall's height or more where none stands behind it
 * @param above water above the top of the wall
 * @param waterWeight unit weight of water [kN/m3]
 * @param structure what the structure's share brings, at every depth
 * @param surcharge what the surcharge on the ground brings, at every depth
 * @param height height of the wall
 */
record Pressures(
    double top,
    double rise,
    double riseInWater,
    double water,
    double above,
    double waterWeight,
    double structure,
    double surcharge,
    double height) {

  static Pressures of(SheetNumbers numbers) {
    String step = "pressure-top-design";
    double coefficient = si(numbers.result("earth-coefficient"));
    double height = si(numbers.result("wall-height"));
    return new Pressures(
        si(numbers.result(step)),
        si(numbers.result("pressure-rise")),
        si(numbers.result("pressure-water")),
        numbers.result("water-below-top").map(Amount::si).orElse(height),
        si(numbers.symbol(step, "w0")),
        si(numbers.symbol("pressure-water", "gw")),
        coefficient * si(numbers.symbol(step, "s")) * si(numbers.symbol(step, "p")),
        coefficient * si(numbers.symbol("vertical-at-top", "qs")),
        height);
  }

  /** All of it at a depth. */
  double total(double depth) {
    return top + rise * depth + riseInWater * Math.max(0, depth - water);
  }

  /** Water's part at a depth. */
  double water(double depth) {
    return waterWeight * (above + Math.max(0, depth - water));
  }

  /** The soil's part at a depth. */
  double soil(double depth) {
    return total(depth) - water(depth) - structure - surcharge;
  }

  /** The depths at which the diagram has its corners. */
  List<Double> corners() {
    List<Double> corners = new ArrayList<>(List.of(0.0));
    if (water > 0 && water < height) {
      corners.add(water);
    }
    corners.add(height);
    return corners;
  }
}
