package underhold.mechanics.micropile;

import java.util.List;

/**
 * A round steel casing of uniform wall. Geometry only, exact.
 *
 * @param outsideDiameterMetres OD
 * @param wallMetres t, less than half of OD
 */
public record CasingSection(double outsideDiameterMetres, double wallMetres) {
  private static final List<CasingSection> TABLE =
      TableRows.read("casings.csv").stream()
          .map(row -> inches(TableRows.number(row, 0), TableRows.number(row, 1)))
          .toList();

  public CasingSection {
    Require.positive("outside diameter", outsideDiameterMetres);
    Require.positive("wall", wallMetres);
    if (2 * wallMetres >= outsideDiameterMetres) {
      throw new IllegalArgumentException("the wall fills the casing");
    }
  }

  /** The casings of the table, as listed: by diameter, then wall. Sizes from memory, verify. */
  public static List<CasingSection> table() {
    return TABLE;
  }

  /** A casing in inches. */
  public static CasingSection inches(double outsideDiameter, double wall) {
    return new CasingSection(outsideDiameter * Units.INCH, wall * Units.INCH);
  }

  /** ID, m. */
  public double insideDiameter() {
    return outsideDiameterMetres - 2 * wallMetres;
  }

  /** Steel area, m2. */
  public double area() {
    return Circle.area(outsideDiameterMetres) - boreArea();
  }

  /** Area inside, m2. */
  public double boreArea() {
    return Circle.area(insideDiameter());
  }

  /** I, m4. */
  public double secondMoment() {
    return Circle.secondMoment(outsideDiameterMetres) - Circle.secondMoment(insideDiameter());
  }

  /** S = I / (OD/2), m3. */
  public double sectionModulus() {
    return 2 * secondMoment() / outsideDiameterMetres;
  }

  /** Z = (OD^3 - ID^3) / 6, m3. */
  public double plasticModulus() {
    return (Math.pow(outsideDiameterMetres, 3) - Math.pow(insideDiameter(), 3)) / 6;
  }

  /** r = sqrt(I / A), m. */
  public double radiusOfGyration() {
    return Math.sqrt(secondMoment() / area());
  }

  /**
   * The casing with its outside corroded away.
   *
   * @throws IllegalArgumentException where nothing of the wall is left
   */
  public CasingSection less(double lossMetres) {
    Require.notNegative("loss", lossMetres);
    if (lossMetres >= wallMetres) {
      throw new IllegalArgumentException("the loss takes the whole wall");
    }
    return new CasingSection(outsideDiameterMetres - 2 * lossMetres, wallMetres - lossMetres);
  }
}
