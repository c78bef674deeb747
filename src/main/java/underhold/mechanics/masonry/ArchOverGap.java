package underhold.mechanics.masonry;

/**
 * A wall that arches over a gap under uniform load.
 *
 * <p>Rise r = lesser of a share of the wall height and half the span; thrust H = w L^2 / (8 r);
 * stress = H / (share of height x thickness). Thrust by statics; the shares (rise at most 0.6 to
 * 0.7 of the height, compressed zone 0.1 to 0.2 of it) are from memory, verify. The thrust needs an
 * abutment at both ends: there is no arching at a free corner.
 *
 * @param loadPerMetre w, kN/m
 * @param wallHeightMetres height of sound, unopened wall above the gap
 * @param wallThicknessMetres thickness that takes the thrust
 * @param riseShare rise as a share of the height
 * @param compressedShare compressed zone as a share of the height
 */
public record ArchOverGap(
    double loadPerMetre,
    double wallHeightMetres,
    double wallThicknessMetres,
    double riseShare,
    double compressedShare) {

  public ArchOverGap {
    Require.positive("line load", loadPerMetre);
    Require.positive("wall height", wallHeightMetres);
    Require.positive("wall thickness", wallThicknessMetres);
    Require.positive("rise share", riseShare);
    Require.positive("compressed share", compressedShare);
  }

  /** Rise over a span, m. */
  public double rise(double spanMetres) {
    Require.positive("span", spanMetres);
    return Math.min(riseShare * wallHeightMetres, spanMetres / 2);
  }

  /** Thrust H, kN. */
  public double thrust(double spanMetres) {
    return loadPerMetre * spanMetres * spanMetres / (8 * rise(spanMetres));
  }

  /** Compression in the arch, kPa. */
  public double compression(double spanMetres) {
    return thrust(spanMetres) / (compressedShare * wallHeightMetres * wallThicknessMetres);
  }

  /**
   * Longest span that keeps an allowable compression, m. While the span is up to twice the greatest
   * rise, r = L/2 and H = w L/4; beyond, the rise stays and H grows with the square of the span.
   */
  public double longestSpan(double allowableKilopascals) {
    Require.positive("allowable compression", allowableKilopascals);
    double greatestThrust =
        allowableKilopascals * compressedShare * wallHeightMetres * wallThicknessMetres;
    double greatestRise = riseShare * wallHeightMetres;
    double withHalfSpanRise = 4 * greatestThrust / loadPerMetre;
    return withHalfSpanRise <= 2 * greatestRise
        ? withHalfSpanRise
        : Math.sqrt(8 * greatestRise * greatestThrust / loadPerMetre);
  }
}
