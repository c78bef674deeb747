package underhold.mechanics.bracket;

/**
 * Who resists the moment of a load P outside the pile line. All by statics.
 *
 * <pre>
 * M = P e                                free bracket: the pile head takes it
 * T = C = P e / h                        couple with the structure over an arm h
 * near P (1 + a/L), far -P a/L, M = P a  a pair of piles L apart, load a beyond the near one
 * P/2 each                               piles on both sides
 * </pre>
 *
 * @param loadKilonewtons P
 * @param eccentricityMetres e, or a for a pair: from the (near) pile to the load
 */
public record EccentricLoad(double loadKilonewtons, double eccentricityMetres) {
  public EccentricLoad {
    Require.notNegative("load", loadKilonewtons);
    Require.notNegative("eccentricity", eccentricityMetres);
  }

  /** M = P e, kN m. */
  public double moment() {
    return loadKilonewtons * eccentricityMetres;
  }

  /** T = C = P e / h, kN. */
  public double couple(double armMetres) {
    Require.positive("arm", armMetres);
    return moment() / armMetres;
  }

  /** Load of the near pile of a pair, compression, kN. */
  public double nearPile(double apartMetres) {
    return loadKilonewtons + farPileUplift(apartMetres);
  }

  /** Pull on the far pile of a pair, kN. */
  public double farPileUplift(double apartMetres) {
    return couple(apartMetres);
  }

  /** Moment per length that the couple twists into the structure at a bracket spacing, kN m/m. */
  public double twistPerMetre(double spacingMetres) {
    Require.positive("spacing", spacingMetres);
    return moment() / spacingMetres;
  }

  /** Seat drop from the rotation of the head, theta e, m. */
  public double seatDrop(double rotationRadians) {
    Require.notNegative("rotation", rotationRadians);
    return rotationRadians * eccentricityMetres;
  }
}
