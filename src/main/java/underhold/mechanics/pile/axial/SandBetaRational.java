package underhold.mechanics.pile.axial;

import underhold.mechanics.pile.Atmosphere;
import underhold.mechanics.soil.Require;

/**
 * beta of bored piles in sand from the stress history: fs = beta sv'.
 *
 * <p>beta = (1 - sin phi') (sp'/sv')^(sin phi') tan phi', at most Kp tan phi'; sp'/pa = 0.47 N60^m
 * with m = 0.6 in clean sand and 0.8 in silty sand, or 0.15 N60 in gravel; phi' = 27.5 + 9.2
 * log10[(N1)60]. Symbols: sp' preconsolidation stress [kPa], sv' effective vertical stress [kPa],
 * Kp = tan^2(45 + phi'/2). Where sp' is below sv' the sand is taken as normally loaded (sp' = sv').
 * Valid range: N60 above 0, phi' taken from 20 to 45 degrees (judgement). Source: FHWA GEC 10,
 * 2010, 13.3.5.1, as quoted by a third party; m for clean sand, gravel and the limit by Kp are from
 * memory, verify.
 */
public final class SandBetaRational {
  private static final double STRESS_FACTOR = 0.47;
  private static final double GRAVEL_FACTOR = 0.15;
  private static final double ANGLE_AT_ONE = 27.5;
  private static final double ANGLE_PER_DECADE = 9.2;
  private static final double LEAST_ANGLE = 20;
  private static final double MOST_ANGLE = 45;

  private SandBetaRational() {}

  /** Grain of the sand, which sets how blow count gives the past stress. */
  public enum Grain {
    /** Clean quartz sand, m = 0.6. */
    CLEAN_SAND(0.6),
    /** Silty sand to sandy silt, m = 0.8. */
    SILTY_SAND(0.8),
    /** Gravel, 0.15 N60. */
    GRAVEL(1);

    private final double power;

    Grain(double power) {
      this.power = power;
    }

    /** sp', kPa. */
    public double preconsolidationKilopascals(double blowCount) {
      Require.notNegative(blowCount, "N60", "");
      double factor = this == GRAVEL ? GRAVEL_FACTOR : STRESS_FACTOR;
      return factor * Math.pow(blowCount, power) * Atmosphere.KILOPASCALS;
    }
  }

  /** phi' by the blow count corrected to one atmosphere, degrees, kept from 20 to 45. */
  public static double frictionAngleDegrees(double correctedBlowCount) {
    Require.notNegative(correctedBlowCount, "(N1)60", "");
    double angle = ANGLE_AT_ONE + ANGLE_PER_DECADE * Math.log10(Math.max(correctedBlowCount, 0.1));
    return Math.min(Math.max(angle, LEAST_ANGLE), MOST_ANGLE);
  }

  /** (N1)60 = N60 (pa/sv')^0.5, at most 2 N60 (from memory, verify). */
  public static double correctedBlowCount(double blowCount, double effectiveStressKilopascals) {
    Require.notNegative(blowCount, "N60", "");
    Require.positive(effectiveStressKilopascals, "effective stress", "kPa");
    return blowCount * Math.min(Math.sqrt(Atmosphere.KILOPASCALS / effectiveStressKilopascals), 2);
  }

  /**
   * beta.
   *
   * @param frictionAngleDegrees phi', above 0
   * @param preconsolidationKilopascals sp'
   * @param effectiveStressKilopascals sv', above 0
   */
  public static double beta(
      double frictionAngleDegrees,
      double preconsolidationKilopascals,
      double effectiveStressKilopascals) {
    double phi = Math.toRadians(Require.frictionAngle(frictionAngleDegrees));
    Require.notNegative(preconsolidationKilopascals, "preconsolidation stress", "kPa");
    Require.positive(effectiveStressKilopascals, "effective stress", "kPa");
    double ratio = Math.max(preconsolidationKilopascals / effectiveStressKilopascals, 1);
    double sine = Math.sin(phi);
    return Math.min(
        (1 - sine) * Math.pow(ratio, sine) * Math.tan(phi), largestBeta(frictionAngleDegrees));
  }

  /** Kp tan phi', which beta cannot pass. */
  public static double largestBeta(double frictionAngleDegrees) {
    double phi = Math.toRadians(Require.frictionAngle(frictionAngleDegrees));
    return Math.pow(Math.tan(Math.PI / 4 + phi / 2), 2) * Math.tan(phi);
  }
}
