package underhold.classroom.making;

import java.math.BigDecimal;
import java.math.RoundingMode;
import underhold.quantity.Measure;
import underhold.quantity.Quantity;
import underhold.quantity.UnitSystem;

/**
 * Writes amounts as people do: in the units of the job and no finer than anybody would measure.
 *
 * @param units the units of the job
 */
record Typing(UnitSystem units) {
  private static final double METRES_A_FOOT = 0.3048;
  private static final double METRES_AN_INCH = 0.0254;
  private static final double KILONEWTONS_A_KIP = 4.4482216;
  private static final double KILOPASCALS_A_POUND_PER_FOOT = 0.04788026;
  private static final double NEWTONS_PER_METRE_A_POUND_PER_FOOT = 0.15708746;

  boolean us() {
    return units == UnitSystem.US;
  }

  /** A length on a job, from metres: to a tenth of a metre, or half a foot; coarser where long. */
  String length(double metres) {
    return us()
        ? stepped(metres / METRES_A_FOOT, metres < 6 ? 0.5 : 1, "ft")
        : stepped(metres, metres < 10 ? 0.1 : metres < 20 ? 0.5 : 1, "m");
  }

  /** A length within a hand's breadth, such as the distance from a pile to a wall. */
  String fineLength(double metres) {
    return us() ? stepped(metres / METRES_AN_INCH, 1, "in") : stepped(metres, 0.05, "m");
  }

  /** The thickness of a wall: in centimetres, or in inches. */
  String thickness(double metres) {
    return us() ? stepped(metres / METRES_AN_INCH, 1, "in") : stepped(metres, 0.01, "m");
  }

  /** A movement, from millimetres. */
  String movement(double millimetres) {
    return us()
        ? stepped(millimetres / METRES_AN_INCH / 1000, millimetres < 8 ? 0.05 : 0.1, "in")
        : stepped(millimetres, millimetres < 20 ? 1 : 5, "mm");
  }

  /** A load along a line, from kN/m. */
  String lineLoad(double perMetre) {
    return us()
        ? stepped(perMetre * METRES_A_FOOT / KILONEWTONS_A_KIP, 0.5, "kip/ft")
        : stepped(perMetre, perMetre < 100 ? 5 : 10, "kN/m");
  }

  /** A load at a point, from kN. */
  String load(double kilonewtons) {
    return us()
        ? stepped(kilonewtons / KILONEWTONS_A_KIP, kilonewtons < 1000 ? 5 : 10, "kip")
        : stepped(kilonewtons, kilonewtons < 500 ? 10 : kilonewtons < 2000 ? 50 : 100, "kN");
  }

  /** A load over an area, from kPa. */
  String areaLoad(double kilopascals) {
    return us()
        ? stepped(kilopascals / KILOPASCALS_A_POUND_PER_FOOT, 100, "psf")
        : stepped(kilopascals, 5, "kPa");
  }

  /** A strength of soil, from kPa. */
  String strength(double kilopascals) {
    return us()
        ? stepped(kilopascals / KILOPASCALS_A_POUND_PER_FOOT, kilopascals < 100 ? 50 : 100, "psf")
        : stepped(kilopascals, kilopascals < 50 ? 1 : kilopascals < 150 ? 5 : 10, "kPa");
  }

  /** A unit weight, from kN/m³. */
  String unitWeight(double perCubicMetre) {
    return us()
        ? stepped(perCubicMetre / NEWTONS_PER_METRE_A_POUND_PER_FOOT, 1, "pcf")
        : stepped(perCubicMetre, 0.5, "kN/m3");
  }

  /** An angle of friction. */
  String angle(double degrees) {
    return stepped(degrees, 1, "deg");
  }

  /** Hours. */
  String hours(double hours) {
    return stepped(hours, 1, "h");
  }

  /** How freely water passes: one figure times ten to the power of minus something, in m/s. */
  String speed(int figure, int power) {
    return us() ? figure + "e-" + (power - 2) + " cm/s" : figure + "e-" + power + " m/s";
  }

  /** A typed length in metres. */
  static double metres(String typed) {
    return si(typed, Measure.LENGTH);
  }

  /** A typed amount in the inside unit of its measure. */
  static double si(String typed, Measure measure) {
    return Quantity.parse(typed, measure)
        .toOptional()
        .map(Quantity::si)
        .orElseThrow(() -> new IllegalStateException("made a bad amount: " + typed));
  }

  private static String stepped(double number, double step, String unit) {
    BigDecimal exact = BigDecimal.valueOf(step);
    BigDecimal steps =
        BigDecimal.valueOf(number).divide(exact, 0, RoundingMode.HALF_UP).max(BigDecimal.ZERO);
    BigDecimal rounded = steps.multiply(exact).stripTrailingZeros();
    return rounded.toPlainString() + " " + unit;
  }
}
