package underhold.mechanics.foundationbeam;

/**
 * Ultimate lateral resistance of a free-headed pile in sand: three times the passive pressure.
 *
 * <pre>
 * short pile   M + H L = 0.5 gamma' b Kp L^3
 * long pile    f = 0.816 sqrt(H / (gamma' b Kp))     Mmax = M + (2/3) H f
 * </pre>
 *
 * <p>M and H at ground level, factored. Source: B. B. Broms, Lateral resistance of piles in
 * cohesionless soils, 1964. Basis: from memory, verify.
 *
 * @param unitWeightKilonewtonsPerCubicMetre gamma', effective
 * @param widthMetres b
 * @param passiveCoefficient Kp (Rankine)
 */
public record BromsSand(
    double unitWeightKilonewtonsPerCubicMetre, double widthMetres, double passiveCoefficient) {
  private static final int BISECTIONS = 200;

  public BromsSand {
    Require.positive("unit weight", unitWeightKilonewtonsPerCubicMetre);
    Require.positive("width", widthMetres);
    Require.positive("passive coefficient", passiveCoefficient);
  }

  /** Least length in the ground of a short pile, m; the one positive root of the cubic. */
  public double leastLength(double momentKilonewtonMetres, double forceKilonewtons) {
    Require.notNegative("moment", momentKilonewtonMetres);
    Require.notNegative("force", forceKilonewtons);
    double low = 0;
    double high =
        Math.cbrt(4 * momentKilonewtonMetres / weight())
            + Math.sqrt(4 * forceKilonewtons / weight());
    for (int i = 0; i < BISECTIONS; i++) {
      double middle = (low + high) / 2;
      double resistance = weight() * middle * middle * middle / 2;
      if (resistance < momentKilonewtonMetres + forceKilonewtons * middle) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }

  /** Depth f of the greatest moment, where 1.5 gamma' b Kp f^2 = H, m. */
  public double depthOfGreatestMoment(double forceKilonewtons) {
    Require.notNegative("force", forceKilonewtons);
    return Math.sqrt(2 * forceKilonewtons / (3 * weight()));
  }

  /** Greatest moment, kN m. */
  public double greatestMoment(double momentKilonewtonMetres, double forceKilonewtons) {
    Require.notNegative("moment", momentKilonewtonMetres);
    return momentKilonewtonMetres
        + 2.0 / 3 * forceKilonewtons * depthOfGreatestMoment(forceKilonewtons);
  }

  private double weight() {
    return unitWeightKilonewtonsPerCubicMetre * widthMetres * passiveCoefficient;
  }
}
