package underhold.mechanics.foundationbeam;

/**
 * A long pile in ground that answers like springs, k = reaction per length per movement.
 *
 * <p>lambda = (k / 4EI)^(1/4). Assumes: straight elastic pile, k constant with depth, ground that
 * both pushes and pulls, no axial effect, lambda L at least 3 (a shorter pile turns as a whole).
 * Small movements: beyond a few per cent of the diameter the ground yields and this is too stiff.
 *
 * <p>Source: M. Hetenyi, Beams on Elastic Foundation, 1946. Basis: from memory, verify; constant k
 * = width x subgrade modulus as in published lecture notes on the Winkler beam.
 *
 * @param stiffnessKilonewtonSquareMetres EI of the pile, kN m2
 * @param reactionKilopascals k, kN/m per m
 */
public record PileOnSprings(double stiffnessKilonewtonSquareMetres, double reactionKilopascals) {
  /** Least lambda L of a long pile. */
  public static final double LONG_PILE = 3;

  public PileOnSprings {
    Require.positive("bending stiffness", stiffnessKilonewtonSquareMetres);
    Require.positive("soil reaction", reactionKilopascals);
  }

  /** lambda, 1/m. */
  public double lambda() {
    return Math.pow(reactionKilopascals / (4 * stiffnessKilonewtonSquareMetres), 0.25);
  }

  /** 1 / lambda, m. */
  public double characteristicLength() {
    return 1 / lambda();
  }

  /** Least length for which the formulas hold, 3 / lambda, m. */
  public double leastLength() {
    return LONG_PILE * characteristicLength();
  }

  /** Moment M on a head that is free: y0 = 2 M lambda^2 / k, theta0 = 4 M lambda^3 / k, M A(x). */
  public DeflectedPile momentOnFreeHead(double momentKilonewtonMetres) {
    double y = 2 * momentKilonewtonMetres * lambda() * lambda() / reactionKilopascals;
    return pile(0, 0, y, 0, 0);
  }

  /**
   * Force H on a free head: y0 = 2 H lambda / k, theta0 = 2 H lambda^2 / k, M = (H/lambda) B(x).
   */
  public DeflectedPile forceOnFreeHead(double forceKilonewtons) {
    double y = 2 * forceKilonewtons * lambda() / reactionKilopascals;
    return pile(0, 0, 0, y, forceKilonewtons);
  }

  /** Force H on a head that cannot turn: y0 = H lambda / k, head moment H / (2 lambda). */
  public DeflectedPile forceOnFixedHead(double forceKilonewtons) {
    double y = forceKilonewtons * lambda() / reactionKilopascals;
    return pile(y, 0, 0, 0, forceKilonewtons);
  }

  /**
   * Moment M on a head held sideways but free to turn, as by a footing or slab edge: theta0 = 2 M
   * lambda^3 / k, moment M D(x), force on the structure H = lambda M. Follows from the two cases
   * above.
   */
  public DeflectedPile momentOnHeldHead(double momentKilonewtonMetres) {
    double y = 2 * momentKilonewtonMetres * lambda() * lambda() / reactionKilopascals;
    return pile(0, -y, 0, 0, lambda() * momentKilonewtonMetres);
  }

  /** Force P inside an endless beam: y = P lambda / (2k), moment P / (4 lambda) under it. */
  public DeflectedPile forceInside(double forceKilonewtons) {
    double y = forceKilonewtons * lambda() / (2 * reactionKilopascals);
    return pile(y, 0, 0, 0, forceKilonewtons);
  }

  /** Rotation of the free head per moment, k / (4 lambda^3), kN m per radian. */
  public double headRotationStiffness() {
    return reactionKilopascals / (4 * Math.pow(lambda(), 3));
  }

  /**
   * Share of a moment that the pile head takes beside a structure that resists turning too: kp /
   * (kp + ks). Elastic, by statics.
   *
   * @param structureStiffness ks, kN m per radian
   */
  public double shareOfMoment(double structureStiffness) {
    Require.notNegative("rotation stiffness of the structure", structureStiffness);
    double pile = headRotationStiffness();
    return pile / (pile + structureStiffness);
  }

  /**
   * Head of a pile that stands free over a length Lf and carries M at its top: rotation theta0 + M
   * Lf / EI, radians. By statics.
   */
  public double freeTopRotation(double momentKilonewtonMetres, double freeLengthMetres) {
    Require.notNegative("free length", freeLengthMetres);
    return momentOnFreeHead(momentKilonewtonMetres).headRotation()
        + Math.abs(momentKilonewtonMetres) * freeLengthMetres / stiffnessKilonewtonSquareMetres;
  }

  /** Its deflection y0 + theta0 Lf + M Lf^2 / (2 EI), m. By statics. */
  public double freeTopDeflection(double momentKilonewtonMetres, double freeLengthMetres) {
    Require.notNegative("free length", freeLengthMetres);
    DeflectedPile ground = momentOnFreeHead(momentKilonewtonMetres);
    return ground.headDeflection()
        + ground.headRotation() * freeLengthMetres
        + Math.abs(momentKilonewtonMetres)
            * freeLengthMetres
            * freeLengthMetres
            / (2 * stiffnessKilonewtonSquareMetres);
  }

  private DeflectedPile pile(double a, double b, double c, double d, double headForce) {
    return new DeflectedPile(
        new HetenyiCurve(a, b, c, d, lambda()), stiffnessKilonewtonSquareMetres, headForce);
  }
}
