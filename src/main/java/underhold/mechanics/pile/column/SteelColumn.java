package underhold.mechanics.pile.column;

import underhold.mechanics.soil.Require;

/**
 * Compression strength of a steel member by flexural buckling, without slender walls.
 *
 * <p>r = sqrt(I/A); Fe = pi^2 E/(K L/r)^2; while Fy/Fe is at most 2.25 Fcr = 0.658^(Fy/Fe) Fy, else
 * Fcr = 0.877 Fe; Pn = Fcr A; allowable Pn/1.67, design 0.90 Pn. Symbols: A [m2], I [m4], Fy, E
 * [kPa], L unbraced length [m], K effective length factor. Assumptions: straight within the
 * tolerances of the code, round pipe so that no other buckling governs, axial load only. Valid
 * range: pipe with D/t at most 0.11 E/Fy; K L/r preferably at most 200. Source: ANSI/AISC 360,
 * chapter E3, Table B4.1a; basis: from memory, verify.
 *
 * @param areaSquareMetres A
 * @param inertia I, m4
 * @param yieldKilopascals Fy
 * @param modulusKilopascals E
 */
public record SteelColumn(
    double areaSquareMetres, double inertia, double yieldKilopascals, double modulusKilopascals) {
  /** Omega of compression. */
  public static final double OMEGA = 1.67;

  /** phi of compression. */
  public static final double PHI = 0.90;

  /** K L/r beyond which a column is better avoided. */
  public static final double PREFERRED_SLENDERNESS = 200;

  private static final double INELASTIC_END = 2.25;
  private static final double INELASTIC = 0.658;
  private static final double ELASTIC = 0.877;
  private static final double PIPE_WALL = 0.11;

  public SteelColumn {
    Require.positive(areaSquareMetres, "area", "m2");
    Require.positive(inertia, "second moment of area", "m4");
    Require.positive(yieldKilopascals, "yield stress", "kPa");
    Require.positive(modulusKilopascals, "modulus", "kPa");
  }

  /** r, m. */
  public double radiusOfGyrationMetres() {
    return Math.sqrt(inertia / areaSquareMetres);
  }

  /** K L/r. */
  public double slenderness(double effectiveLengthFactor, double lengthMetres) {
    Require.between(effectiveLengthFactor, 0.5, 10, "K", "");
    return effectiveLengthFactor
        * Require.notNegative(lengthMetres, "length", "m")
        / radiusOfGyrationMetres();
  }

  /** Fcr, kPa; Fy for no length. */
  public double criticalStressKilopascals(double effectiveLengthFactor, double lengthMetres) {
    double slenderness = slenderness(effectiveLengthFactor, lengthMetres);
    // Fy/Fe = Fy (KL/r)^2 / (pi^2 E), so that no length divides by nothing
    double ratio =
        yieldKilopascals * slenderness * slenderness / (Math.PI * Math.PI * modulusKilopascals);
    return ratio <= INELASTIC_END
        ? Math.pow(INELASTIC, ratio) * yieldKilopascals
        : ELASTIC * yieldKilopascals / ratio;
  }

  /** Pn, kN. */
  public double nominalKilonewtons(double effectiveLengthFactor, double lengthMetres) {
    return criticalStressKilopascals(effectiveLengthFactor, lengthMetres) * areaSquareMetres;
  }

  /** Pn/1.67, kN. */
  public double allowableKilonewtons(double effectiveLengthFactor, double lengthMetres) {
    return nominalKilonewtons(effectiveLengthFactor, lengthMetres) / OMEGA;
  }

  /** 0.90 Pn, kN. */
  public double designKilonewtons(double effectiveLengthFactor, double lengthMetres) {
    return PHI * nominalKilonewtons(effectiveLengthFactor, lengthMetres);
  }

  /** Whether a pipe's wall is stocky enough for these formulas. */
  public boolean wallIsStocky(double diameterMetres, double wallMetres) {
    return Require.positive(diameterMetres, "diameter", "m")
            / Require.positive(wallMetres, "wall", "m")
        <= PIPE_WALL * modulusKilopascals / yieldKilopascals;
  }
}
