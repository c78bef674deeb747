package underhold.mechanics.soil.bearing;

import underhold.mechanics.soil.Require;

/**
 * A foundation in plan and its depth.
 *
 * @param shape plan shape
 * @param widthMetres shorter side B, or the diameter of a circle
 * @param lengthMetres longer side L; 1 m of run for a strip, so that forces on a strip are per
 *     metre
 * @param depthMetres depth D of the base below the lower of the ground levels beside it
 */
public record Footing(Shape shape, double widthMetres, double lengthMetres, double depthMetres) {

  /** Plan shape. */
  public enum Shape {
    /** Long in one direction; forces are per metre of run. */
    STRIP,
    /** Rectangle or square. */
    RECTANGLE,
    /** Circle. */
    CIRCLE
  }

  public Footing {
    Require.positive(widthMetres, "footing width", "m");
    Require.positive(lengthMetres, "footing length", "m");
    Require.notNegative(depthMetres, "footing depth", "m");
    if (shape == Shape.RECTANGLE && widthMetres > lengthMetres) {
      throw new IllegalArgumentException(
          "footing width " + widthMetres + " m is above its length " + lengthMetres + " m");
    }
  }

  /** A strip; forces on it are per metre of run. */
  public static Footing strip(double widthMetres, double depthMetres) {
    return new Footing(Shape.STRIP, widthMetres, 1.0, depthMetres);
  }

  /** A rectangle; the width is the shorter side. */
  public static Footing rectangle(double widthMetres, double lengthMetres, double depthMetres) {
    return new Footing(Shape.RECTANGLE, widthMetres, lengthMetres, depthMetres);
  }

  /** A square. */
  public static Footing square(double sideMetres, double depthMetres) {
    return new Footing(Shape.RECTANGLE, sideMetres, sideMetres, depthMetres);
  }

  /** A circle. */
  public static Footing circle(double diameterMetres, double depthMetres) {
    return new Footing(Shape.CIRCLE, diameterMetres, diameterMetres, depthMetres);
  }

  /** The ratio D/B of depth to actual width. */
  public double depthRatio() {
    return depthMetres / widthMetres;
  }
}
