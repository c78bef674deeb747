package underhold.mechanics.movement;

import underhold.mechanics.soil.Require;

/**
 * A wall as an elastic deep beam under a load at its centre: strain by deflection ratio D / L.
 *
 * <p>D / L = eb [ L / (12 t) + 3 I E / (2 t L H G) ] for the strain eb of the outermost fibre, D /
 * L = ed [ 1 + H L^2 G / (18 I E) ] for the diagonal strain ed; L length between the ends of the
 * bent part, H height, t distance of the tension fibre from the neutral axis, I second moment of a
 * wall one metre thick. Sagging: I = H^3 / 12, t = H / 2. Hogging: neutral axis at the base, I =
 * H^3 / 3, t = H.
 *
 * <p>Assumes an elastic, weightless, unbroken wall of rectangle shape. E / G about 2.6 for masonry
 * (isotropic), 12.5 for frames, 0.5 for walls stiff in bending only (from memory). Exact under
 * these assumptions. Source: Burland and Wroth, Settlement of buildings and associated damage,
 * 1974; here derived from the deflection of a centre-loaded beam with shear. The axis at the base
 * in hogging is cited (secondary), the rest from memory.
 *
 * @param lengthMetres L
 * @param heightMetres H
 * @param bending which way it bends
 * @param modulusRatio E / G
 */
public record DeepBeam(
    double lengthMetres, double heightMetres, Bending bending, double modulusRatio) {
  /** E / G of masonry walls (from memory). */
  public static final double MASONRY_RATIO = 2.6;

  /** E / G of framed structures (from memory). */
  public static final double FRAME_RATIO = 12.5;

  /** E / G of walls with little stiffness in bending against shear (from memory). */
  public static final double FLEXURAL_RATIO = 0.5;

  /** Where the formulas stand. */
  public static final Citation CITATION =
      new Citation(
          "Burland and Wroth, Settlement of buildings and associated damage, 1974",
          Provenance.FROM_MEMORY);

  /** The way a wall bends. */
  public enum Bending {
    /** The middle goes down; neutral axis at mid-height. */
    SAGGING(12, 0.5),
    /** The ends go down; neutral axis at the base, which the footing holds. */
    HOGGING(3, 1);

    private final double secondMomentDivisor;
    private final double tensionShare;

    Bending(double secondMomentDivisor, double tensionShare) {
      this.secondMomentDivisor = secondMomentDivisor;
      this.tensionShare = tensionShare;
    }
  }

  /** Largest slenderness taken either way, L / H and H / L (judgement; keeps results finite). */
  private static final double MOST_SLENDER = 10_000;

  public DeepBeam {
    Require.positive(lengthMetres, "length of the wall", "m");
    Require.positive(heightMetres, "height of the wall", "m");
    Require.between(
        lengthMetres / heightMetres, 1 / MOST_SLENDER, MOST_SLENDER, "length over height", "");
    Require.between(modulusRatio, 0.01, 1000, "E / G", "");
  }

  /** I of a wall one metre thick, m4/m. */
  public double secondMoment() {
    return Math.pow(heightMetres, 3) / bending.secondMomentDivisor;
  }

  /** t, m. */
  public double tensionFibreMetres() {
    return heightMetres * bending.tensionShare;
  }

  /** D / L at an outermost fibre strain of one. */
  public double bendingFactor() {
    double t = tensionFibreMetres();
    return lengthMetres / (12 * t)
        + 1.5 * secondMoment() * modulusRatio / (t * lengthMetres * heightMetres);
  }

  /** D / L at a diagonal strain of one. */
  public double diagonalFactor() {
    return 1 + heightMetres * lengthMetres * lengthMetres / (18 * secondMoment() * modulusRatio);
  }

  /** Strain of the outermost fibre at a deflection ratio. */
  public double bendingStrain(double deflectionRatio) {
    return Require.notNegative(deflectionRatio, "deflection ratio", "") / bendingFactor();
  }

  /** Diagonal strain at a deflection ratio. */
  public double diagonalStrain(double deflectionRatio) {
    return Require.notNegative(deflectionRatio, "deflection ratio", "") / diagonalFactor();
  }

  /**
   * Deflection ratio at which the first of the two strains reaches a limit, no horizontal strain.
   */
  public double criticalDeflectionRatio(double limitingStrain) {
    return Require.notNegative(limitingStrain, "limiting strain", "")
        * Math.min(bendingFactor(), diagonalFactor());
  }

  /**
   * The larger of the two tensile strains with a horizontal strain of the ground added.
   *
   * @param deflectionRatio D / L
   * @param horizontalStrain tension positive, 0 or above
   */
  public double tensileStrain(double deflectionRatio, double horizontalStrain) {
    return Math.max(
        CombinedStrain.bending(bendingStrain(deflectionRatio), horizontalStrain),
        CombinedStrain.diagonal(
            diagonalStrain(deflectionRatio), horizontalStrain, CombinedStrain.POISSON));
  }
}
