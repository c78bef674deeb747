package underhold.mechanics.pile.axial;

import underhold.mechanics.pile.Atmosphere;
import underhold.mechanics.soil.Outcome;
import underhold.mechanics.soil.Require;

/**
 * Unit side resistance of rock sockets.
 *
 * <p>Symbols: qu unconfined compressive strength of the rock [kPa], f'c of the concrete [kPa], pa
 * atmospheric pressure. Each formula takes the <em>weaker</em> of rock and concrete (M. Tomlinson
 * and J. Woodward, Pile Design and Construction Practice, 5th ed., p. 207; seen). Assumptions: a
 * clean rough socket; smeared or slick walls bond less. Accuracy: regression of load tests, wide
 * scatter.
 */
public final class RockSide {
  /** C of a normal socket. */
  public static final double NORMAL_SOCKET = 1.0;

  /** C at the lower bound of the tests. */
  public static final double LOWER_BOUND = 0.63;

  private static final double JOINTED_FACTOR = 0.65;
  private static final double CONCRETE_LIMIT = 7.8;
  private static final double KILOPASCALS_PER_PSI = 6.894757293;
  private static final double DAS_ROOT_FACTOR = 2.5;
  private static final double DAS_SHARE = 0.15;

  private static final double[] QUALITY = {20, 30, 50, 70, 100};
  private static final double[] CLOSED = {0.45, 0.50, 0.60, 0.85, 1.00};
  private static final double[] OPEN = {0.45, 0.50, 0.55, 0.55, 0.85};

  private RockSide() {}

  /** State of the joints. */
  public enum Joints {
    /** Closed. */
    CLOSED,
    /** Open or filled with gouge. */
    OPEN
  }

  /** The weaker of rock and concrete, kPa. */
  public static double weakerKilopascals(double rockKilopascals, double concreteKilopascals) {
    return Math.min(
        Require.positive(rockKilopascals, "strength of rock", "kPa"),
        Require.positive(concreteKilopascals, "strength of concrete", "kPa"));
  }

  /**
   * fs = C pa sqrt(q/pa), q the weaker of rock and concrete, kPa.
   *
   * <p>C = 1.0 for a normal socket, 0.63 at the lower bound. Source: FHWA GEC 10, 2010, 13.3.5.3;
   * Kulhawy, Prakoso and Akbas, 2005; basis: from memory, verify.
   */
  public static double normalSocketKilopascals(
      double coefficient, double rockKilopascals, double concreteKilopascals) {
    Require.positive(coefficient, "coefficient C", "");
    return coefficient * root(weakerKilopascals(rockKilopascals, concreteKilopascals));
  }

  /**
   * fs = 0.65 aE pa sqrt(q/pa), at most 7.8 pa sqrt(f'c/pa), kPa: sockets held by casing or slurry,
   * and jointed rock.
   *
   * <p>Source: O'Neill and Reese 1999; AASHTO LRFD 10.8.3.5.4b; basis: from memory, verify.
   */
  public static double jointedRockKilopascals(
      double jointFactor, double rockKilopascals, double concreteKilopascals) {
    Require.between(jointFactor, 0, 1, "joint factor aE", "");
    return Math.min(
        JOINTED_FACTOR
            * jointFactor
            * root(weakerKilopascals(rockKilopascals, concreteKilopascals)),
        CONCRETE_LIMIT * root(concreteKilopascals));
  }

  /**
   * aE by rock quality designation, linear between the rows 20, 30, 50, 70 and 100 %.
   *
   * <p>Out of range below 20 %. Source: table of FHWA GEC 10 and AASHTO; basis: from memory,
   * verify; interpolation is judgement.
   *
   * @param rqdPercent RQD, 0 to 100
   */
  public static Outcome<Double> jointFactor(double rqdPercent, Joints joints) {
    Require.between(rqdPercent, 0, 100, "RQD", "%");
    if (rqdPercent < QUALITY[0]) {
      return Outcome.outOfRange("RQD is below 20 %: the table ends; test sockets on the site");
    }
    double[] factors = joints == Joints.CLOSED ? CLOSED : OPEN;
    int row = 1;
    while (rqdPercent > QUALITY[row]) {
      row++;
    }
    double share = (rqdPercent - QUALITY[row - 1]) / (QUALITY[row] - QUALITY[row - 1]);
    return Outcome.of(factors[row - 1] + share * (factors[row] - factors[row - 1]));
  }

  /**
   * f = min(2.5 sqrt(q), 0.15 q) in psi, given here in kPa.
   *
   * <p>Source: B. M. Das, Principles of Foundation Engineering, example 12.8; seen in a companion
   * to the book.
   */
  public static double dasKilopascals(double rockKilopascals, double concreteKilopascals) {
    double psi = weakerKilopascals(rockKilopascals, concreteKilopascals) / KILOPASCALS_PER_PSI;
    return Math.min(DAS_ROOT_FACTOR * Math.sqrt(psi), DAS_SHARE * psi) * KILOPASCALS_PER_PSI;
  }

  private static double root(double strengthKilopascals) {
    return Atmosphere.KILOPASCALS * Math.sqrt(strengthKilopascals / Atmosphere.KILOPASCALS);
  }
}
