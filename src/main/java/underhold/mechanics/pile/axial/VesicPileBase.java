package underhold.mechanics.pile.axial;

import underhold.mechanics.soil.Outcome;
import underhold.mechanics.soil.Require;

/**
 * Net unit base resistance of a bored pile in sand, after Vesic, reduced for the stiffness of the
 * sand.
 *
 * <p>qb = q (Nq - 1) Fqs Fqd Fqc with Fqs = 1 + tan phi; Fqd = 1 + 2 tan phi (1 - sin phi)^2
 * atan(L/D); Ir = Es/[2 (1 + v) q tan phi]; Delta = 0.005 [1 - (phi - 25)/20] q/pa' with pa' = 100
 * kPa; Irr = Ir/(1 + Ir Delta); Fqc = exp{-3.8 tan phi + 3.07 sin phi log10(2 Irr)/(1 + sin phi)},
 * at most 1. Symbols: q effective vertical stress at the base [kPa], phi [degrees], Nq bearing
 * factor, Es modulus [kPa], v Poisson's ratio, L embedment, D diameter of the base [m]. Valid
 * range: phi from 25 to 45 degrees. Source: B. M. Das, Principles of Foundation Engineering,
 * example 12.1, from a companion to the book (the formulas were seen, the problem statement was
 * not).
 */
public final class VesicPileBase {
  private static final double LEAST_ANGLE = 25;
  private static final double MOST_ANGLE = 45;
  private static final double VOLUME_STRAIN = 0.005;
  private static final double STRAIN_RANGE = 20;
  private static final double REFERENCE_KILOPASCALS = 100;
  private static final double COMPRESSIBILITY_TAN = 3.8;
  private static final double COMPRESSIBILITY_SIN = 3.07;

  private VesicPileBase() {}

  /**
   * The base and the sand.
   *
   * @param effectiveStressKilopascals q, above 0
   * @param frictionAngleDegrees phi
   * @param bearingFactor Nq, above 1
   * @param modulusKilopascals Es
   * @param poissonRatio v
   * @param lengthMetres L
   * @param diameterMetres D
   */
  public record Case(
      double effectiveStressKilopascals,
      double frictionAngleDegrees,
      double bearingFactor,
      double modulusKilopascals,
      double poissonRatio,
      double lengthMetres,
      double diameterMetres) {
    public Case {
      Require.positive(effectiveStressKilopascals, "effective stress", "kPa");
      Require.frictionAngle(frictionAngleDegrees);
      Require.between(bearingFactor, 1, 1e4, "Nq", "");
      Require.positive(modulusKilopascals, "modulus", "kPa");
      Require.between(poissonRatio, 0, 0.5, "Poisson's ratio", "");
      Require.positive(lengthMetres, "length", "m");
      Require.positive(diameterMetres, "diameter", "m");
    }
  }

  /**
   * The parts of the answer.
   *
   * @param rigidityIndex Ir
   * @param reducedIndex Irr
   * @param shape Fqs
   * @param depth Fqd
   * @param compressibility Fqc
   * @param baseKilopascals net unit base resistance
   */
  public record Result(
      double rigidityIndex,
      double reducedIndex,
      double shape,
      double depth,
      double compressibility,
      double baseKilopascals) {}

  /** The net unit base resistance; out of range where phi is not from 25 to 45 degrees. */
  public static Outcome<Result> base(Case one) {
    if (one.frictionAngleDegrees() < LEAST_ANGLE || one.frictionAngleDegrees() > MOST_ANGLE) {
      return Outcome.outOfRange("the volume change of the sand is given for 25 to 45 degrees only");
    }
    double phi = Math.toRadians(one.frictionAngleDegrees());
    double tangent = Math.tan(phi);
    double sine = Math.sin(phi);
    double stress = one.effectiveStressKilopascals();
    double rigidity = one.modulusKilopascals() / (2 * (1 + one.poissonRatio()) * stress * tangent);
    double strain =
        VOLUME_STRAIN
            * (1 - (one.frictionAngleDegrees() - LEAST_ANGLE) / STRAIN_RANGE)
            * stress
            / REFERENCE_KILOPASCALS;
    double reduced = rigidity / (1 + rigidity * strain);
    double shape = 1 + tangent;
    double depth =
        1
            + 2
                * tangent
                * Math.pow(1 - sine, 2)
                * Math.atan(one.lengthMetres() / one.diameterMetres());
    double compressibility =
        Math.min(
            Math.exp(
                -COMPRESSIBILITY_TAN * tangent
                    + COMPRESSIBILITY_SIN * sine * Math.log10(2 * reduced) / (1 + sine)),
            1);
    double base = stress * (one.bearingFactor() - 1) * shape * depth * compressibility;
    return Outcome.of(new Result(rigidity, reduced, shape, depth, compressibility, base));
  }
}
