package underhold.mechanics.bracket;

/**
 * Plate thickness above which prying on a bolt may be neglected: sqrt(6.66 T b' / (p Fu))
 * allowable, sqrt(4.44 Tu b' / (p Fu)) factored.
 *
 * <p>b' = b - db/2, p tributary length of one bolt, at most 2b. Source: AISC Manual Part 9. Basis:
 * from memory, verify.
 *
 * @param leverMetres b'
 * @param tributaryMetres p
 * @param ultimateKilopascals Fu of the plate
 */
public record Prying(double leverMetres, double tributaryMetres, double ultimateKilopascals) {
  private static final double ALLOWABLE = 6.66;
  private static final double FACTORED = 4.44;

  public Prying {
    Require.positive("lever", leverMetres);
    Require.positive("tributary length", tributaryMetres);
    Require.positive("ultimate strength", ultimateKilopascals);
  }

  /** Thickness for a bolt tension by allowable stress, m. */
  public double thickness(double tensionKilonewtons) {
    return thickness(ALLOWABLE, tensionKilonewtons);
  }

  /** Thickness for a factored bolt tension, m. */
  public double thicknessFactored(double tensionKilonewtons) {
    return thickness(FACTORED, tensionKilonewtons);
  }

  private double thickness(double factor, double tension) {
    Require.notNegative("tension", tension);
    return Math.sqrt(factor * tension * leverMetres / (tributaryMetres * ultimateKilopascals));
  }
}
