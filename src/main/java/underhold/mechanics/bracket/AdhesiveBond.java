package underhold.mechanics.bracket;

/**
 * Bond of an adhesive anchor without a product report: tau pi da hef, 0.55 of it under sustained
 * tension.
 *
 * <p>tau in cracked concrete 200 psi outdoors, 300 psi indoors (ACI 318-19 17.6.5, from memory,
 * verify); 0.55 read in a 2025 design guide.
 *
 * @param diameterMetres da
 * @param embedmentMetres hef
 */
public record AdhesiveBond(double diameterMetres, double embedmentMetres) {
  /** tau outdoors, kPa. */
  public static final double OUTDOORS_KILOPASCALS = 200 * Units.PSI;

  /** tau indoors, kPa. */
  public static final double INDOORS_KILOPASCALS = 300 * Units.PSI;

  /** Share left under sustained tension. */
  public static final double SUSTAINED_SHARE = 0.55;

  public AdhesiveBond {
    Require.positive("diameter", diameterMetres);
    Require.positive("embedment", embedmentMetres);
  }

  /** Basic bond strength Nba, kN, before phi. */
  public double basic(double bondKilopascals) {
    Require.positive("bond", bondKilopascals);
    return bondKilopascals * Math.PI * diameterMetres * embedmentMetres;
  }

  /** The same under sustained tension, kN. */
  public double sustained(double bondKilopascals) {
    return SUSTAINED_SHARE * basic(bondKilopascals);
  }
}
