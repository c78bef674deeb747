package underhold.mechanics.timber;

/**
 * A crib of crossed timbers pressed across the grain at its nodes: capacity = nodes x contact area
 * x stress; the nodes of one layer are (timbers per layer)^2.
 *
 * <p>Stress: Fc-perp, x 0.67 where wet (NDS), x 0.73 where movement matters (NDS 2018, 4.2.6: the
 * stress at 0.02 in of deformation); load duration never raises it; bearing area factor not taken.
 * Height at most three times the least plan width; layers end about one timber width past the
 * crossing. Statics with published factors; the 0.67 is from memory, verify. A crib at its base
 * stress has squashed: it may crush by a fifth of its height before it fails.
 *
 * @param timberWidthMetres actual width of a square timber
 * @param timbersPerLayer 2 or more
 * @param heightMetres height of the crib
 * @param planWidthMetres least width in plan, over the crossings
 */
public record TimberCrib(
    double timberWidthMetres, int timbersPerLayer, double heightMetres, double planWidthMetres) {
  /** Factor of Fc-perp for movement-critical work, NDS 2018 4.2.6. */
  public static final double SMALL_DEFORMATION = 0.73;

  /** Height over least plan width, published cribbing guidance. */
  public static final double HEIGHT_OVER_WIDTH = 3;

  public TimberCrib {
    TableRows.requirePositive("timber width", timberWidthMetres);
    TableRows.requireNotNegative("height of the crib", heightMetres);
    TableRows.requirePositive("plan width", planWidthMetres);
    if (timbersPerLayer < 2 || timbersPerLayer > 20) {
      throw new IllegalArgumentException(
          timbersPerLayer + " timbers in a layer, it must be 2 to 20");
    }
  }

  /** Contacts that carry, in one layer. */
  public int nodes() {
    return timbersPerLayer * timbersPerLayer;
  }

  /** Contact area of one layer, m2. */
  public double contactArea() {
    return nodes() * timberWidthMetres * timberWidthMetres;
  }

  /**
   * Capacity, kN.
   *
   * @param stressKilopascals allowable stress across the grain
   */
  public double capacity(double stressKilopascals) {
    TableRows.requirePositive("stress across the grain", stressKilopascals);
    return contactArea() * stressKilopascals;
  }

  /** Whether the height is at most three times the plan width. */
  public boolean stable() {
    return heightMetres <= tallestMetres();
  }

  /** Tallest crib on this plan, m. */
  public double tallestMetres() {
    return HEIGHT_OVER_WIDTH * planWidthMetres;
  }

  /**
   * Allowable stress across the grain, kPa.
   *
   * @param tabulatedKilopascals Fc-perp
   * @param wet whether the timber is or gets wet
   * @param movementMatters whether the small-deformation value applies
   */
  public static double allowableStress(
      double tabulatedKilopascals, boolean wet, boolean movementMatters) {
    TableRows.requirePositive("Fc-perp", tabulatedKilopascals);
    return tabulatedKilopascals
        * (wet ? NdsFactors.WET_ACROSS_GRAIN : 1)
        * (movementMatters ? SMALL_DEFORMATION : 1);
  }
}
