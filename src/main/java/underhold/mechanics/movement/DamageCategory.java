package underhold.mechanics.movement;

import underhold.mechanics.soil.Require;

/**
 * Visible damage by limiting tensile strain and by crack width.
 *
 * <p>Source: Burland, Broms and de Mello 1977 (crack widths); Boscardin and Cording 1989 and
 * Burland 1995 (strains), in two secondary copies, one of which misprints 0.0075 for 0.075 %.
 * Basis: cited, secondary. Bounds belong to the lower category. Strain does not part severe from
 * very severe: both lie above 0.3 %.
 */
public enum DamageCategory {
  /** Hairline cracks below 0.1 mm. */
  NEGLIGIBLE(0, "negligible", 0.05e-2, 0.1e-3),
  /** Cracks to 1 mm. */
  VERY_SLIGHT(1, "very slight", 0.075e-2, 1e-3),
  /** Cracks to 5 mm. */
  SLIGHT(2, "slight", 0.15e-2, 5e-3),
  /** Cracks of 5 to 15 mm, or several above 3 mm. */
  MODERATE(3, "moderate", 0.3e-2, 15e-3),
  /** Cracks of 15 to 25 mm; depends on their number. */
  SEVERE(4, "severe", Double.MAX_VALUE, 25e-3),
  /** Cracks above 25 mm. */
  VERY_SEVERE(5, "very severe", Double.MAX_VALUE, Double.MAX_VALUE);

  /** Where the table stands. */
  public static final Citation CITATION =
      new Citation(
          "Burland 1995 and Boscardin and Cording 1989, limiting tensile strain by damage category (secondary)",
          Provenance.PUBLISHED);

  /** Width from which several cracks make the damage moderate, m. */
  public static final double SEVERAL_CRACKS_METRES = 3e-3;

  private final int number;
  private final String label;
  private final double mostStrain;
  private final double widestCrack;

  DamageCategory(int number, String label, double mostStrain, double widestCrack) {
    this.number = number;
    this.label = label;
    this.mostStrain = mostStrain;
    this.widestCrack = widestCrack;
  }

  /** The category of a tensile strain; above 0.3 % severe, which may be very severe. */
  public static DamageCategory ofStrain(double tensileStrain) {
    Require.notNegative(tensileStrain, "tensile strain", "");
    for (DamageCategory category : values()) {
      if (tensileStrain <= category.mostStrain) {
        return category;
      }
    }
    return VERY_SEVERE;
  }

  /** The category of the widest crack. */
  public static DamageCategory ofCrack(double widthMetres) {
    Require.notNegative(widthMetres, "crack width", "m");
    for (DamageCategory category : values()) {
      if (widthMetres <= category.widestCrack) {
        return category;
      }
    }
    return VERY_SEVERE;
  }

  /** The category of that number, 0 to 5. */
  public static DamageCategory numbered(int number) {
    if (number < 0 || number >= values().length) {
      throw new IllegalArgumentException("damage category is " + number + ", it must be 0 to 5");
    }
    return values()[number];
  }

  /** Number, 0 to 5. */
  public int number() {
    return number;
  }

  /** Name in words. */
  public String label() {
    return label;
  }

  /** Whether an upper strain bounds the category: 0 to 3. */
  public boolean bounded() {
    return mostStrain < 1;
  }

  /** Upper limiting tensile strain of a bounded category. */
  public double mostStrain() {
    if (!bounded()) {
      throw new IllegalStateException("no strain bounds damage category " + number);
    }
    return mostStrain;
  }

  /** Widest crack of categories 0 to 4, m. */
  public double widestCrackMetres() {
    if (this == VERY_SEVERE) {
      throw new IllegalStateException("no crack width bounds damage category 5");
    }
    return widestCrack;
  }
}
