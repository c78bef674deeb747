package underhold.mechanics.timber;

/**
 * Bending about one axis with axial compression: (fc / Fc')^2 + fb / (Fb' (1 - fc / FcE)) at most
 * 1, with FcE = 0.822 Emin' / (L / t)^2.
 *
 * <p>In a box of sheeting the boards of one side brace those of the next, so each carries its
 * neighbour's reaction along the grain. Source: NDS 2018, 3.9.2 and 3.7.1. Basis: from memory,
 * verify. The column stability factor is left to FcE: here the axial stress must stay below FcE,
 * otherwise the board has no capacity left.
 */
public final class CombinedStress {
  private static final double EULER = 0.822;

  private CombinedStress() {}

  /** FcE, kPa. */
  public static double bucklingStress(
      double stabilityModulusKilopascals, double lengthMetres, double thicknessMetres) {
    TableRows.requirePositive("stability modulus", stabilityModulusKilopascals);
    TableRows.requirePositive("length", lengthMetres);
    TableRows.requirePositive("thickness", thicknessMetres);
    double slenderness = lengthMetres / thicknessMetres;
    return EULER * stabilityModulusKilopascals / (slenderness * slenderness);
  }

  /** Whether the axial stress leaves any room for bending. */
  public static boolean stable(double axialKilopascals, double bucklingKilopascals) {
    return axialKilopascals < bucklingKilopascals;
  }

  /**
   * The sum, at most 1 where the board passes.
   *
   * @throws IllegalArgumentException where the axial stress reaches the buckling stress
   */
  public static double sum(
      double axialKilopascals,
      double allowableAxialKilopascals,
      double bendingKilopascals,
      double allowableBendingKilopascals,
      double bucklingKilopascals) {
    TableRows.requireNotNegative("axial stress", axialKilopascals);
    TableRows.requireNotNegative("bending stress", bendingKilopascals);
    TableRows.requirePositive("allowable axial stress", allowableAxialKilopascals);
    TableRows.requirePositive("allowable bending stress", allowableBendingKilopascals);
    if (!stable(axialKilopascals, bucklingKilopascals)) {
      throw new IllegalArgumentException("the axial stress reaches the buckling stress");
    }
    double axial = axialKilopascals / allowableAxialKilopascals;
    return axial * axial
        + bendingKilopascals
            / (allowableBendingKilopascals * (1 - axialKilopascals / bucklingKilopascals));
  }
}
