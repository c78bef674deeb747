package underhold.mechanics.soil.bearing;

import underhold.mechanics.soil.Require;

/**
 * Bearing capacity factors of one author; those of different authors are never mixed.
 *
 * @param cohesion Nc, dimensionless
 * @param surcharge Nq, dimensionless
 * @param weight N-gamma, dimensionless
 */
public record BearingFactors(double cohesion, double surcharge, double weight) {
  public BearingFactors {
    Require.positive(cohesion, "Nc", "");
    Require.positive(surcharge, "Nq", "");
    Require.notNegative(weight, "N-gamma", "");
  }
}
