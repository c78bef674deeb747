package underhold.mechanics.movement;

import underhold.mechanics.soil.Require;

/**
 * Largest tensile strain at a point of a panel: lateral strain and angular distortion together.
 *
 * <p>ep = eL cos^2 q + b sin q cos q with tan 2q = b / eL, so ep = eL / 2 + sqrt(eL^2 + b^2) / 2;
 * eL lateral strain (tension positive), b angular distortion, q angle of the crack's plane. Derived
 * from that strain state; the form is that of Boscardin and Cording 1989 and Son and Cording 2005
 * (from memory). No vertical strain.
 *
 * @param lateralStrain eL, 0 or above
 * @param angularDistortion b, 0 or above
 */
public record PointStrain(double lateralStrain, double angularDistortion) {
  public PointStrain {
    Require.notNegative(lateralStrain, "lateral strain", "");
    Require.notNegative(angularDistortion, "angular distortion", "");
  }

  /** ep. */
  public double principal() {
    return lateralStrain / 2 + Math.hypot(lateralStrain, angularDistortion) / 2;
  }

  /** q, degrees, 0 to 45; 0 where nothing strains. */
  public double angleDegrees() {
    return Math.toDegrees(Math.atan2(angularDistortion, lateralStrain)) / 2;
  }
}
