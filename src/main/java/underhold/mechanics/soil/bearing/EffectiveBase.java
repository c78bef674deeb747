package underhold.mechanics.soil.bearing;

import underhold.mechanics.soil.Outcome;

/**
 * The part of the base that carries an eccentric load uniformly.
 *
 * <p>Formula: B' = B - 2 eB, L' = L - 2 eL. Symbols: B, L sides [m]; eB, eL eccentricities [m].
 * Valid range: the resultant inside the base (e below half the side); for a circle only a central
 * load; for a strip no eccentricity along its run. Accuracy: exact by definition. Source: UFC
 * 3-220-20 (16 January 2025), chapter 5, equations 5-4 to 5-9; basis: cited, seen in a secondary
 * digest. The same source wants e within B/6 under service load: see {@link ContactPressure}.
 *
 * @param shape plan shape of the footing
 * @param parallelMetres effective side parallel to the horizontal load
 * @param acrossMetres effective side across it; 1 m for a strip
 */
public record EffectiveBase(Footing.Shape shape, double parallelMetres, double acrossMetres) {

  /** The effective base of a footing under a load. */
  public static Outcome<EffectiveBase> of(Footing footing, FootingLoad load) {
    double eccentricityWidth = load.eccentricityWidthMetres();
    double eccentricityLength = load.eccentricityLengthMetres();
    if (footing.shape() == Footing.Shape.CIRCLE && eccentricityWidth + eccentricityLength > 0) {
      return Outcome.outOfRange(
          "an eccentric load on a circle has no effective rectangle here; use the inscribed square");
    }
    if (footing.shape() == Footing.Shape.STRIP && eccentricityLength > 0) {
      return Outcome.outOfRange("a strip has no eccentricity along its run");
    }
    double width = footing.widthMetres() - 2 * eccentricityWidth;
    double length = footing.lengthMetres() - 2 * eccentricityLength;
    if (width < NO_WIDTH * footing.widthMetres() || length < NO_WIDTH * footing.lengthMetres()) {
      return Outcome.outOfRange(
          "the resultant lies at or beyond the edge of the base: the footing overturns");
    }
    return Outcome.of(new EffectiveBase(footing.shape(), width, length));
  }

  /**
   * Share of the actual side below which no effective side is left (judgement, guards the
   * arithmetic).
   */
  private static final double NO_WIDTH = 1e-6;

  /** The shorter effective side B' [m], which enters the weight term. */
  public double widthMetres() {
    return shape == Footing.Shape.STRIP ? parallelMetres : Math.min(parallelMetres, acrossMetres);
  }

  /** B'/L', 0 for a strip, 1 for a circle. */
  public double widthToLength() {
    return switch (shape) {
      case STRIP -> 0;
      case CIRCLE -> 1;
      case RECTANGLE ->
          Math.min(parallelMetres, acrossMetres) / Math.max(parallelMetres, acrossMetres);
    };
  }

  /** Effective area A' [m2]; per metre of run for a strip. */
  public double areaSquareMetres() {
    double rectangle = parallelMetres * acrossMetres;
    return shape == Footing.Shape.CIRCLE ? Math.PI / 4 * rectangle : rectangle;
  }

  /**
   * Exponent m = (2 + r)/(1 + r) of the inclination factors, r the side parallel to the load over
   * the side across.
   */
  double inclinationExponent() {
    double ratio = shape == Footing.Shape.STRIP ? 0 : parallelMetres / acrossMetres;
    return (2 + ratio) / (1 + ratio);
  }
}
