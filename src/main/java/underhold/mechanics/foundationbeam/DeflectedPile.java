package underhold.mechanics.foundationbeam;

/**
 * A long pile bent by what acts at its head.
 *
 * <p>Deflection y(z), rotation y', moment EI y'' and shear EI y''' down the pile. Signs follow the
 * deflection; the methods that name the head give sizes.
 *
 * @param deflection y, m
 * @param stiffnessKilonewtonSquareMetres EI
 * @param headForceKilonewtons sideways force between head and structure, kN
 */
public record DeflectedPile(
    HetenyiCurve deflection, double stiffnessKilonewtonSquareMetres, double headForceKilonewtons) {

  /** Halvings of an interval: more than a double can tell apart. */
  private static final int BISECTIONS = 200;

  /** Size of the sideways movement at the head, m. */
  public double headDeflection() {
    return Math.abs(deflection.at(0));
  }

  /** Size of the rotation at the head, radians. */
  public double headRotation() {
    return Math.abs(deflection.slope().at(0));
  }

  /** Moment, kN m, with its sign. */
  public double moment(double depthMetres) {
    return moments().at(depthMetres);
  }

  /** Shear, kN, with its sign. */
  public double shear(double depthMetres) {
    return moments().slope().at(depthMetres);
  }

  /** Depth at which the moment is first zero below the head, m; 0 where nothing bends the pile. */
  public double depthOfNoMoment() {
    HetenyiCurve curve = moments();
    if (curve.a() == 0 && curve.b() == 0 && curve.c() == 0 && curve.d() == 0) {
      return 0;
    }
    double step = 0.01 / curve.lambda();
    double upper = step;
    while (curve.at(upper) * curve.at(step / 2) > 0) {
      upper += step;
    }
    return root(curve, 0, upper - step, upper);
  }

  /**
   * Least depth from which the moment stays at or below a strength down to its first zero, m; 0
   * where the head moment is below it. Written for a head moment that dies away with depth.
   */
  public double depthWhereMomentFallsTo(double strengthKilonewtonMetres) {
    Require.notNegative("strength", strengthKilonewtonMetres);
    double head = moments().at(0);
    if (Math.abs(head) <= strengthKilonewtonMetres) {
      return 0;
    }
    return root(moments(), Math.copySign(strengthKilonewtonMetres, head), 0, depthOfNoMoment());
  }

  private HetenyiCurve moments() {
    return deflection.slope().slope().times(stiffnessKilonewtonSquareMetres);
  }

  private static double root(HetenyiCurve curve, double level, double from, double to) {
    double low = from;
    double high = to;
    boolean above = curve.at(low) > level;
    for (int i = 0; i < BISECTIONS && low < high; i++) {
      double middle = (low + high) / 2;
      if ((curve.at(middle) > level) == above) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }
}
