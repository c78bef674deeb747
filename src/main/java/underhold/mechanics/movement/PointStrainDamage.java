package underhold.mechanics.movement;

import underhold.mechanics.soil.Require;

/**
 * Damage by the largest tensile strain at a point.
 *
 * <p>Source: Son and Cording 2005, bounds 0.5, 0.75, 1.67 and 3.33 x 10^-3. Basis: from memory,
 * verify; the last two agree with angular distortions of 1/300 and 1/150 without horizontal strain.
 * Bounds belong to the lower class.
 */
public enum PointStrainDamage {
  /** To 0.5 x 10^-3. */
  NEGLIGIBLE(0.5e-3),
  /** To 0.75 x 10^-3. */
  VERY_SLIGHT(0.75e-3),
  /** To 1.67 x 10^-3, angular distortion of 1/300 by itself. */
  SLIGHT(1.67e-3),
  /** To 3.33 x 10^-3, angular distortion of 1/150 by itself. */
  MODERATE_TO_SEVERE(3.33e-3),
  /** Above. */
  SEVERE_TO_VERY_SEVERE(Double.MAX_VALUE);

  /** Where the bounds stand. */
  public static final Citation CITATION =
      new Citation(
          "Son and Cording, Estimation of building damage due to excavation-induced ground movements, 2005",
          Provenance.FROM_MEMORY);

  private final double most;

  PointStrainDamage(double most) {
    this.most = most;
  }

  /** The class of a principal tensile strain. */
  public static PointStrainDamage of(double principalStrain) {
    Require.notNegative(principalStrain, "principal strain", "");
    for (PointStrainDamage damage : values()) {
      if (principalStrain <= damage.most) {
        return damage;
      }
    }
    return SEVERE_TO_VERY_SEVERE;
  }
}
