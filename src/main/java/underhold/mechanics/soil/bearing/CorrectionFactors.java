package underhold.mechanics.soil.bearing;

import underhold.mechanics.soil.Require;

/**
 * Shape, depth, inclination or base factors: one multiplier for each term of the bearing equation.
 *
 * @param cohesion multiplier of the cohesion term, dimensionless
 * @param surcharge multiplier of the overburden term, dimensionless
 * @param weight multiplier of the weight term, dimensionless
 */
public record CorrectionFactors(double cohesion, double surcharge, double weight) {

  /** No correction. */
  public static final CorrectionFactors NONE = new CorrectionFactors(1, 1, 1);

  public CorrectionFactors {
    Require.notNegative(cohesion, "cohesion correction", "");
    Require.notNegative(surcharge, "surcharge correction", "");
    Require.notNegative(weight, "weight correction", "");
  }

  CorrectionFactors times(CorrectionFactors other) {
    return new CorrectionFactors(
        cohesion * other.cohesion, surcharge * other.surcharge, weight * other.weight);
  }
}
