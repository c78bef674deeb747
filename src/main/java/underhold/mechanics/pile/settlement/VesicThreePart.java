package underhold.mechanics.pile.settlement;

import underhold.mechanics.soil.Require;

/**
 * Settlement of a single pile in three parts, after Vesic.
 *
 * <p>s1 = (Qwp + xi Qws) L/(A Ep), shortening of the pile; s2 = Qwp Cp/(D qp), by the load at the
 * base; s3 = (Qws/(p L)) (D/Es)(1 - v^2) Iws with Iws = 2 + 0.35 sqrt(L/D), by the load along the
 * side. Symbols: Qwp, Qws working loads of base and side [kN], xi 0.5 for even, 0.67 for growing
 * side resistance, L length, D diameter, p perimeter [m], A area [m2], Ep, Es moduli [kPa], v
 * Poisson's ratio, qp ultimate unit base resistance [kPa], Cp empirical (bored: sand 0.09 to 0.18,
 * clay 0.03 to 0.06, from memory). Assumptions: working load far below failure. Accuracy: within a
 * factor of 2 at best (judgement). Source: B. M. Das, Principles of Foundation Engineering, example
 * 12.6, from a companion to the book (seen).
 */
public final class VesicThreePart {
  private static final double SIDE_BASE = 2;
  private static final double SIDE_GAIN = 0.35;

  private VesicThreePart() {}

  /**
   * The pile, its loads and the soil.
   *
   * @param sideKilonewtons Qws
   * @param baseKilonewtons Qwp
   * @param sideShape xi
   * @param lengthMetres L
   * @param diameterMetres D
   * @param pileModulusKilopascals Ep
   * @param soilModulusKilopascals Es
   * @param poissonRatio v
   * @param baseCoefficient Cp
   * @param baseUltimateKilopascals qp
   */
  public record Case(
      double sideKilonewtons,
      double baseKilonewtons,
      double sideShape,
      double lengthMetres,
      double diameterMetres,
      double pileModulusKilopascals,
      double soilModulusKilopascals,
      double poissonRatio,
      double baseCoefficient,
      double baseUltimateKilopascals) {
    public Case {
      Require.notNegative(sideKilonewtons, "side load", "kN");
      Require.notNegative(baseKilonewtons, "base load", "kN");
      Require.between(sideShape, 0, 1, "xi", "");
      Require.positive(lengthMetres, "length", "m");
      Require.positive(diameterMetres, "diameter", "m");
      Require.positive(pileModulusKilopascals, "modulus of the pile", "kPa");
      Require.positive(soilModulusKilopascals, "modulus of the soil", "kPa");
      Require.between(poissonRatio, 0, 0.5, "Poisson's ratio", "");
      Require.notNegative(baseCoefficient, "Cp", "");
      Require.positive(baseUltimateKilopascals, "unit base resistance", "kPa");
    }
  }

  /**
   * The parts.
   *
   * @param shorteningMetres s1
   * @param baseMetres s2
   * @param sideMetres s3
   */
  public record Result(double shorteningMetres, double baseMetres, double sideMetres) {
    /** Settlement of the head, m. */
    public double totalMetres() {
      return shorteningMetres + baseMetres + sideMetres;
    }
  }

  /** The settlement. */
  public static Result of(Case one) {
    double length = one.lengthMetres();
    double diameter = one.diameterMetres();
    double area = Math.PI * diameter * diameter / 4;
    return new Result(
        (one.baseKilonewtons() + one.sideShape() * one.sideKilonewtons())
            * length
            / (area * one.pileModulusKilopascals()),
        one.baseKilonewtons() * one.baseCoefficient() / (diameter * one.baseUltimateKilopascals()),
        one.sideKilonewtons()
            / (Math.PI * diameter * length)
            * diameter
            / one.soilModulusKilopascals()
            * (1 - one.poissonRatio() * one.poissonRatio())
            * (SIDE_BASE + SIDE_GAIN * Math.sqrt(length / diameter)));
  }
}
