package underhold.mechanics.soil.bearing;

import java.util.List;
import underhold.mechanics.soil.Outcome;

/**
 * Ultimate bearing capacity after Terzaghi.
 *
 * <p>Formula: q = sc c Nc + s Nq + 0.5 sg g B' Ng with shape factors (sc, sg): strip 1, 1; square
 * 1.3, 0.8; circle 1.3, 0.6. Nq = a^2/(2 cos^2(45 + f/2)), a = exp((0.75 pi - f/2) tan f); Nc = (Nq
 * - 1) cot f, 5.7 at f = 0. Ng has no closed form: authors print different tables, so it is an
 * input (see {@link TerzaghiWeightFactor}).
 *
 * <p>Symbols: as in {@link VesicBearing}. Assumptions: rough base, general shear, no strength above
 * the base (no depth factor), vertical load (no inclination factor). Valid range: strip, square,
 * circle; f = 0 or 1 to 50 degrees; no horizontal load. Accuracy: see {@link VesicBearing}. Source:
 * shape factors UFC 3-220-20 (16 January 2025), Table 5-5; basis: cited, secondary digest. Nc and
 * Nq: K. Terzaghi, Theoretical Soil Mechanics, 1943; basis: from memory, verify.
 */
public final class TerzaghiBearing {

  /** Nc at f = 0 for a rough base, 1.5 pi + 1 as printed, dimensionless; from memory, verify. */
  private static final double NC_UNDRAINED = 5.7;

  /** Share of the width by which the sides of a square may differ (judgement). */
  private static final double SQUARE_TOLERANCE = 1e-6;

  private TerzaghiBearing() {}

  /** Nc and Nq for an angle in degrees, joined with an N-gamma taken from a table. */
  public static BearingFactors factors(double frictionAngleDegrees, double weightFactor) {
    double friction = Math.toRadians(frictionAngleDegrees);
    double spiral = Math.exp((0.75 * Math.PI - friction / 2) * Math.tan(friction));
    double cosine = Math.cos(Math.PI / 4 + friction / 2);
    double nq = friction == 0 ? 1 : spiral * spiral / (2 * cosine * cosine);
    double nc = friction == 0 ? NC_UNDRAINED : (nq - 1) / Math.tan(friction);
    return new BearingFactors(nc, nq, weightFactor);
  }

  /** Ultimate capacity with an N-gamma from a table; the other two factors from the formulas. */
  public static Outcome<BearingCapacity> ultimate(BearingCase question, double weightFactor) {
    return ultimate(question, factors(question.ground().frictionAngleDegrees(), weightFactor));
  }

  /** Ultimate capacity with all three factors from a table of one author. */
  public static Outcome<BearingCapacity> ultimate(BearingCase question, BearingFactors factors) {
    if (question.load().horizontalKilonewtons() > 0) {
      return Outcome.outOfRange("Terzaghi's method has no inclination factors: use another author");
    }
    return BearingRange.check(question)
        .flatMap(
            base ->
                shape(base)
                    .map(
                        shape ->
                            BearingCapacity.sum(
                                question,
                                base,
                                factors,
                                shape,
                                CorrectionFactors.NONE,
                                CorrectionFactors.NONE,
                                List.of())));
  }

  private static Outcome<CorrectionFactors> shape(EffectiveBase base) {
    return switch (base.shape()) {
      case STRIP -> Outcome.of(CorrectionFactors.NONE);
      case CIRCLE -> Outcome.of(new CorrectionFactors(1.3, 1, 0.6));
      case RECTANGLE ->
          base.widthToLength() > 1 - SQUARE_TOLERANCE
              ? Outcome.of(new CorrectionFactors(1.3, 1, 0.8))
              : Outcome.outOfRange(
                  "Terzaghi's shape factors are for strip, square and circle, not for a rectangle");
    };
  }
}
