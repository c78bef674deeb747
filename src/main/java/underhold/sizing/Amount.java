package underhold.sizing;

import underhold.quantity.Measure;
import underhold.quantity.QuantityPrinter;
import underhold.quantity.UnitSystem;

/**
 * A value in the measure's inside unit, with the units in which it reads best.
 *
 * @param si the value, finite
 * @param measure its measure
 * @param siUnit unit for metric readers
 * @param usUnit unit for US readers
 */
public record Amount(double si, Measure measure, String siUnit, String usUnit) {
  public Amount {
    if (!Double.isFinite(si)) {
      throw new IllegalArgumentException(measure.phrase() + " must be finite, not " + si);
    }
    siUnit = measure.requireUnit(siUnit).symbol();
    usUnit = measure.requireUnit(usUnit).symbol();
  }

  /** In the usual units of the measure. */
  public static Amount of(double si, Measure measure) {
    return new Amount(
        si, measure, measure.printUnit(UnitSystem.SI), measure.printUnit(UnitSystem.US));
  }

  /** A length, m or ft. */
  public static Amount length(double metres) {
    return of(metres, Measure.LENGTH);
  }

  /** A small length, mm or in. */
  public static Amount thickness(double metres) {
    return new Amount(metres, Measure.LENGTH, "mm", "in");
  }

  /** An area, m2 or ft2. */
  public static Amount area(double squareMetres) {
    return of(squareMetres, Measure.AREA);
  }

  /** A section modulus per length of section, mm3/mm or in3/in. */
  public static Amount modulusPerLength(double squareMetres) {
    return new Amount(squareMetres, Measure.AREA, "mm2", "in2");
  }

  /** A volume, m3 or yd3. */
  public static Amount volume(double cubicMetres) {
    return of(cubicMetres, Measure.VOLUME);
  }

  /** A force, kN or kip. */
  public static Amount force(double kilonewtons) {
    return of(kilonewtons, Measure.FORCE);
  }

  /** A force per length, kN/m or lb/ft. */
  public static Amount lineLoad(double kilonewtonsPerMetre) {
    return new Amount(kilonewtonsPerMetre, Measure.FORCE_PER_LENGTH, "kN/m", "lb/ft");
  }

  /** A soil pressure, kPa or psf. */
  public static Amount pressure(double kilopascals) {
    return new Amount(kilopascals, Measure.PRESSURE, "kPa", "psf");
  }

  /** A stress in a material, MPa or psi. */
  public static Amount stress(double kilopascals) {
    return new Amount(kilopascals, Measure.PRESSURE, "MPa", "psi");
  }

  /** A unit weight, kN/m3 or pcf. */
  public static Amount unitWeight(double kilonewtonsPerCubicMetre) {
    return of(kilonewtonsPerCubicMetre, Measure.UNIT_WEIGHT);
  }

  /** An angle in degrees. */
  public static Amount angle(double degrees) {
    return of(degrees, Measure.ANGLE);
  }

  /** A duration, hours. */
  public static Amount hours(double hours) {
    return of(hours, Measure.DURATION);
  }

  /** A moment, kN m or kip-ft. */
  public static Amount moment(double kilonewtonMetres) {
    return of(kilonewtonMetres, Measure.MOMENT);
  }

  /** A moment per length, kN m/m or lb-ft/ft. */
  public static Amount momentPerLength(double kilonewtonMetresPerMetre) {
    return new Amount(kilonewtonMetresPerMetre, Measure.MOMENT_PER_LENGTH, "kN·m/m", "lb-ft/ft");
  }

  /** A count. */
  public static Amount count(double number) {
    return of(number, Measure.COUNT);
  }

  /** A ratio, factor or coefficient. */
  public static Amount ratio(double number) {
    return of(number, Measure.RATIO);
  }

  /** The same kind of amount with another value. */
  public Amount with(double otherSi) {
    return new Amount(otherSi, measure, siUnit, usUnit);
  }

  /** The value with its unit, to four significant figures. */
  public String in(UnitSystem system) {
    return QuantityPrinter.print(si, measure, unit(system));
  }

  /** The symbol of the unit in that system; empty for plain numbers. */
  public String unit(UnitSystem system) {
    return system == UnitSystem.US ? usUnit : siUnit;
  }
}
