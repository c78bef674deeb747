package underhold.sizing.bracketpiles;

import underhold.mechanics.micropile.CasingSection;
import underhold.quantity.Measure;
import underhold.sizing.Amount;

/** Amounts in the units in which steel and piles are read. */
final class Amounts {
  private Amounts() {}

  /** A steel area, mm2 or in2. */
  static Amount steelArea(double squareMetres) {
    return new Amount(squareMetres, Measure.AREA, "mm2", "in2");
  }

  /** A section modulus, cm3 or in3. */
  static Amount modulus(double cubicMetres) {
    return new Amount(cubicMetres, Measure.VOLUME, "cm3", "in3");
  }

  /** A force per length of weld, kN/m or kip/in. */
  static Amount weldForce(double kilonewtonsPerMetre) {
    return new Amount(kilonewtonsPerMetre, Measure.FORCE_PER_LENGTH, "kN/m", "kip/in");
  }

  /** A bond stress, kPa or psi. */
  static Amount bond(double kilopascals) {
    return new Amount(kilopascals, Measure.PRESSURE, "kPa", "psi");
  }

  static Amount outside(CasingSection casing) {
    return Amount.thickness(casing.outsideDiameterMetres());
  }

  static Amount inside(CasingSection casing) {
    return Amount.thickness(casing.insideDiameter());
  }
}
