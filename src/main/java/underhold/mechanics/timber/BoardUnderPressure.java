package underhold.mechanics.timber;

/**
 * A sheeting board on the flat, simply supported in its corners, under uniform soil pressure; all
 * effects per metre of board height.
 *
 * <p>M = p L^2 / 8, V = p L / 2, S = t^2 / 6, I = t^3 / 12, fb = M / S, fv = 1.5 V / t, deflection
 * 5 p L^4 / (384 E I). Exact for a prismatic elastic board with pinned ends; no arching of the soil
 * behind it is taken. Statics; no source needed.
 *
 * @param pressureKilopascals p, uniform over the board
 * @param spanMetres L, clear span between the corners
 * @param thicknessMetres t, actual thickness
 */
public record BoardUnderPressure(
    double pressureKilopascals, double spanMetres, double thicknessMetres) {

  public BoardUnderPressure {
    TableRows.requireNotNegative("pressure on the board", pressureKilopascals);
    TableRows.requirePositive("span of the board", spanMetres);
    TableRows.requirePositive("thickness of the board", thicknessMetres);
  }

  /** M, kN m per metre of height. */
  public double moment() {
    return pressureKilopascals * spanMetres * spanMetres / 8;
  }

  /** V, kN per metre of height: the reaction that each corner takes. */
  public double shear() {
    return pressureKilopascals * spanMetres / 2;
  }

  /** S, m3 per metre of height. */
  public double sectionModulus() {
    return thicknessMetres * thicknessMetres / 6;
  }

  /** I, m4 per metre of height. */
  public double secondMoment() {
    return Math.pow(thicknessMetres, 3) / 12;
  }

  /** fb, kPa. */
  public double bendingStress() {
    return moment() / sectionModulus();
  }

  /** fv, kPa. */
  public double shearStress() {
    return 1.5 * shear() / thicknessMetres;
  }

  /** Mid-span deflection, m. */
  public double deflection(double elasticModulusKilopascals) {
    TableRows.requirePositive("elastic modulus", elasticModulusKilopascals);
    return 5
        * pressureKilopascals
        * Math.pow(spanMetres, 4)
        / (384 * elasticModulusKilopascals * secondMoment());
  }

  /** Stress across the grain where the board end bears on its corner, kPa. */
  public double endBearingStress(double bearingLengthMetres) {
    TableRows.requirePositive("bearing length", bearingLengthMetres);
    return shear() / bearingLengthMetres;
  }

  /**
   * Thinnest board that keeps a bending stress, m.
   *
   * @param allowableKilopascals allowable bending stress
   */
  public static double thicknessForBending(
      double pressureKilopascals, double spanMetres, double allowableKilopascals) {
    TableRows.requireNotNegative("pressure on the board", pressureKilopascals);
    TableRows.requirePositive("span of the board", spanMetres);
    TableRows.requirePositive("allowable stress", allowableKilopascals);
    return spanMetres * Math.sqrt(6 * pressureKilopascals / (8 * allowableKilopascals));
  }
}
