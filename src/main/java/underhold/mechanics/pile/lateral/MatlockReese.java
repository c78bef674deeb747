package underhold.mechanics.pile.lateral;

import underhold.mechanics.soil.Require;

/**
 * A long pile in ground whose stiffness grows with depth, under shear and moment at ground level.
 *
 * <p>Deflection at ground y = 2.43 Q T^3/(E I) + 1.62 M T^2/(E I); moment at depth z = Am Q T + Bm
 * M with Am, Bm read at z/T. For a known deflection T follows by halving. Symbols: Q shear [kN], M
 * moment [kN m], E I [kN m2], T relative stiffness [m]. Assumptions: head free to turn, pile longer
 * than 5 T. Source: H. Matlock and L. Reese; coefficients as used in B. M. Das, Principles of
 * Foundation Engineering, example 12.7b, from a companion to the book (seen).
 */
public final class MatlockReese {
  private static final double SHEAR_COEFFICIENT = 2.43;
  private static final double MOMENT_COEFFICIENT = 1.62;
  private static final double LARGEST_METRES = 1000;
  private static final int HALVINGS = 200;

  private MatlockReese() {}

  /** Deflection at ground level, m. */
  public static double deflectionMetres(
      double shearKilonewtons,
      double momentKilonewtonMetres,
      double bendingStiffness,
      double relativeStiffnessMetres) {
    Require.notNegative(shearKilonewtons, "shear", "kN");
    Require.notNegative(momentKilonewtonMetres, "moment", "kN m");
    Require.positive(bendingStiffness, "bending stiffness", "kN m2");
    double t = Require.notNegative(relativeStiffnessMetres, "T", "m");
    return (SHEAR_COEFFICIENT * shearKilonewtons * t + MOMENT_COEFFICIENT * momentKilonewtonMetres)
        * t
        * t
        / bendingStiffness;
  }

  /** T that gives a deflection, m; at most 1000 m. */
  public static double relativeStiffnessMetres(
      double deflectionMetres,
      double shearKilonewtons,
      double momentKilonewtonMetres,
      double bendingStiffness) {
    Require.positive(deflectionMetres, "deflection", "m");
    double low = 0;
    double high = LARGEST_METRES;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (deflectionMetres(shearKilonewtons, momentKilonewtonMetres, bendingStiffness, middle)
          < deflectionMetres) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }

  /** Moment at the depth where Am and Bm were read, kN m. */
  public static double momentKilonewtonMetres(
      double shearKilonewtons,
      double momentAtGroundKilonewtonMetres,
      double relativeStiffnessMetres,
      double shearCoefficient,
      double momentCoefficient) {
    return Require.finite(shearCoefficient, "Am", "")
            * Require.finite(shearKilonewtons, "shear", "kN")
            * Require.notNegative(relativeStiffnessMetres, "T", "m")
        + Require.finite(momentCoefficient, "Bm", "")
            * Require.finite(momentAtGroundKilonewtonMetres, "moment", "kN m");
  }
}
