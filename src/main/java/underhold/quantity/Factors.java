package underhold.quantity;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * Conversion factors into the inside units.
 *
 * <p>The definitions are exact and from NIST Special Publication 811 (2008), Guide for the Use of
 * the International System of Units, appendix B. All others are built from them in decimal
 * arithmetic of 34 digits. Basis: standard; the values agree with the JSR-385 reference library (a
 * test holds them to it), the places named in the guide are from memory, verify.
 */
final class Factors {
  static final MathContext PRECISION = MathContext.DECIMAL128;

  /** Metres in a foot, exact. NIST SP 811 (2008), B.8: foot. */
  static final BigDecimal METRES_PER_FOOT = new BigDecimal("0.3048");

  /** Metres in an inch, exact. NIST SP 811 (2008), B.8: inch. */
  static final BigDecimal METRES_PER_INCH = new BigDecimal("0.0254");

  /** Metres in a yard, exact. NIST SP 811 (2008), B.8: yard. */
  static final BigDecimal METRES_PER_YARD = new BigDecimal("0.9144");

  /**
   * Kilonewtons in a pound-force, exact: 0.45359237 kg x 9.80665 m/s2. NIST SP 811 (2008), B.8:
   * pound-force, footnote.
   */
  static final BigDecimal KILONEWTONS_PER_POUND_FORCE = new BigDecimal("0.0044482216152605");

  /** Pounds-force in a kip, exact. NIST SP 811 (2008), B.8: kip. */
  static final BigDecimal POUNDS_FORCE_PER_KIP = new BigDecimal("1000");

  /** Pounds-force in a US short ton-force, exact. NIST SP 811 (2008), B.8: ton-force. */
  static final BigDecimal POUNDS_FORCE_PER_TON_FORCE = new BigDecimal("2000");

  /** Cubic inches in a US liquid gallon, exact. NIST Handbook 44, appendix C. */
  static final BigDecimal CUBIC_INCHES_PER_GALLON = new BigDecimal("231");

  /** Degrees in a radian, 180/pi to 34 digits. */
  static final BigDecimal DEGREES_PER_RADIAN =
      new BigDecimal("57.29577951308232087679815481410517");

  static final BigDecimal SECONDS_PER_MINUTE = new BigDecimal("60");
  static final BigDecimal SECONDS_PER_HOUR = new BigDecimal("3600");
  static final BigDecimal SECONDS_PER_DAY = new BigDecimal("86400");
  static final BigDecimal HOURS_PER_DAY = new BigDecimal("24");
  static final BigDecimal HOURS_PER_WEEK = new BigDecimal("168");

  static final BigDecimal KILONEWTONS_PER_KIP =
      KILONEWTONS_PER_POUND_FORCE.multiply(POUNDS_FORCE_PER_KIP);
  static final BigDecimal KILONEWTONS_PER_TON_FORCE =
      KILONEWTONS_PER_POUND_FORCE.multiply(POUNDS_FORCE_PER_TON_FORCE);
  static final BigDecimal CUBIC_METRES_PER_GALLON =
      METRES_PER_INCH.pow(3).multiply(CUBIC_INCHES_PER_GALLON);

  static final BigDecimal MILLI = new BigDecimal("0.001");
  static final BigDecimal CENTI = new BigDecimal("0.01");
  static final BigDecimal KILO = new BigDecimal("1000");
  static final BigDecimal MEGA = new BigDecimal("1000000");

  private Factors() {}

  static BigDecimal ratio(BigDecimal numerator, BigDecimal denominator) {
    return numerator.divide(denominator, PRECISION);
  }
}
