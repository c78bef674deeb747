package underhold.mechanics.movement;

import underhold.mechanics.soil.Require;

/**
 * Tensile strain of a wall that bends and is pulled.
 *
 * <p>ebt = eb + eh; edt = eh (1 - v) / 2 + sqrt( (eh (1 + v) / 2)^2 + ed^2 ), which at v = 0.3 is
 * 0.35 eh + sqrt((0.65 eh)^2 + ed^2). The second is the principal strain of eh along the wall, -v
 * eh across and ed in shear. Derived; the same as Burland 1995 and Mair, Taylor and Burland 1996.
 * Horizontal tension only: compression is not credited.
 */
public final class CombinedStrain {
  /** Poisson's ratio in the published form. */
  public static final double POISSON = 0.3;

  private CombinedStrain() {}

  /** Outermost fibre. */
  public static double bending(double bendingStrain, double horizontalStrain) {
    return Require.notNegative(bendingStrain, "bending strain", "")
        + Require.notNegative(horizontalStrain, "horizontal strain", "");
  }

  /** Diagonal tension. */
  public static double diagonal(double diagonalStrain, double horizontalStrain, double poisson) {
    Require.notNegative(diagonalStrain, "diagonal strain", "");
    Require.notNegative(horizontalStrain, "horizontal strain", "");
    Require.between(poisson, 0, 0.5, "Poisson's ratio", "");
    return horizontalStrain * (1 - poisson) / 2
        + Math.hypot(horizontalStrain * (1 + poisson) / 2, diagonalStrain);
  }
}
