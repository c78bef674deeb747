package underhold.mechanics.soil.settlement;

import java.util.List;
import underhold.mechanics.soil.Outcome;
import underhold.mechanics.soil.Require;

/**
 * Settlement of a footing on sand after Schmertmann, Hartman and Brown 1978.
 *
 * <p>Formula: S = C1 C2 dq sum(Iz dz/Es); C1 = 1 - 0.5 s0/dq, at least 0.5; C2 = 1 + 0.2
 * log10(t/0.1 year); peak Iz = 0.5 + 0.1 sqrt(dq/sp). Square: Iz = 0.1 at the base, peak at B/2, 0
 * at 2 B. Strip (L/B of 10 and above): 0.2, B, 4 B. Between, straight lines on L/B. Es = 2.5 qc
 * (square) to 3.5 qc (strip).
 *
 * <p>Symbols: dq net pressure, s0 effective overburden at the base, sp effective overburden at the
 * depth of the peak [kPa]; t time [years]; B, L sides, dz, S [m]; Es modulus, qc cone resistance
 * [kPa]. Assumptions: sand, drained. Valid range: t from 0.1 year; layers known to the end of the
 * influence depth. Accuracy: a review of 2020 (L. Pantelidis, Geotechnical and Geological
 * Engineering 38:1-18) finds the method a poor predictor with weak calibration. Source: J. H.
 * Schmertmann and others, ASCE 1978, with the interpolation of R. Salgado; basis: from memory,
 * verify (the review: abstract seen).
 */
public final class Schmertmann1978 {

  /** Time to which the creep factor refers [years]; from memory, verify. */
  private static final double REFERENCE_YEARS = 0.1;

  /** L/B from which a footing counts as a strip, dimensionless; from memory, verify. */
  private static final double STRIP_RATIO = 10;

  private Schmertmann1978() {}

  /**
   * A layer below the base.
   *
   * @param thicknessMetres thickness
   * @param modulusKilopascals Es
   */
  public record Layer(double thicknessMetres, double modulusKilopascals) {
    public Layer {
      Require.positive(thicknessMetres, "layer thickness", "m");
      Require.positive(modulusKilopascals, "modulus", "kPa");
    }
  }

  /**
   * The footing, its load and the ground.
   *
   * @param widthMetres B
   * @param lengthMetres L
   * @param netPressureKilopascals dq
   * @param overburdenKilopascals s0, effective, at the base
   * @param overburdenAtPeakKilopascals sp, effective, at the depth of the peak
   * @param years t
   * @param layers from the base downward
   */
  public record Case(
      double widthMetres,
      double lengthMetres,
      double netPressureKilopascals,
      double overburdenKilopascals,
      double overburdenAtPeakKilopascals,
      double years,
      List<Layer> layers) {
    public Case {
      Require.positive(widthMetres, "width", "m");
      Require.between(lengthMetres, widthMetres, Require.LARGEST, "length", "m");
      Require.notNegative(netPressureKilopascals, "net pressure", "kPa");
      Require.notNegative(overburdenKilopascals, "overburden", "kPa");
      Require.positive(overburdenAtPeakKilopascals, "overburden at the peak", "kPa");
      Require.notNegative(years, "time", "years");
      layers = List.copyOf(layers);
    }
  }

  /**
   * The strain influence diagram.
   *
   * @param atBase Iz at the base, dimensionless
   * @param peak largest Iz, dimensionless
   * @param peakDepthMetres depth of the peak below the base
   * @param endDepthMetres depth below which nothing counts
   */
  public record Influence(
      double atBase, double peak, double peakDepthMetres, double endDepthMetres) {

    /** Iz at a depth below the base, dimensionless. */
    public double at(double depthMetres) {
      if (depthMetres <= peakDepthMetres) {
        return atBase + (peak - atBase) * depthMetres / peakDepthMetres;
      }
      double left = (endDepthMetres - depthMetres) / (endDepthMetres - peakDepthMetres);
      return peak * Math.max(0, left);
    }

    /** Exact integral of Iz between two depths [m]. */
    double areaMetres(double from, double to) {
      double end = Math.min(to, endDepthMetres);
      double start = Math.min(from, endDepthMetres);
      double middle = Math.min(end, Math.max(start, peakDepthMetres));
      return (at(start) + at(middle)) / 2 * (middle - start)
          + (at(middle) + at(end)) / 2 * (end - middle);
    }
  }

  /** The influence diagram of a case. */
  public static Influence influence(Case footing) {
    double share = stripShare(footing.lengthMetres() / footing.widthMetres());
    double peak =
        0.5
            + 0.1
                * Math.sqrt(
                    footing.netPressureKilopascals() / footing.overburdenAtPeakKilopascals());
    double width = footing.widthMetres();
    return new Influence(
        0.1 + 0.1 * share, peak, width * (0.5 + 0.5 * share), width * (2 + 2 * share));
  }

  /** Es from a cone resistance: 2.5 qc for a square to 3.5 qc for a strip [kPa]. */
  public static double modulusKilopascals(double coneResistanceKilopascals, double lengthToWidth) {
    Require.positive(coneResistanceKilopascals, "cone resistance", "kPa");
    Require.between(lengthToWidth, 1, Require.LARGEST, "L/B", "");
    return (2.5 + stripShare(lengthToWidth)) * coneResistanceKilopascals;
  }

  /** Settlement [m]; out of range before 0.1 year or when the layers end too high. */
  public static Outcome<Double> settlementMetres(Case footing) {
    if (footing.years() < REFERENCE_YEARS) {
      return Outcome.outOfRange("the creep factor starts at 0.1 year");
    }
    double pressure = footing.netPressureKilopascals();
    Influence influence = influence(footing);
    double depth = 0;
    double sum = 0;
    for (Layer layer : footing.layers()) {
      double next = depth + layer.thicknessMetres();
      sum += influence.areaMetres(depth, next) / layer.modulusKilopascals();
      depth = next;
    }
    // the sum of many thicknesses may miss the end by rounding
    if (depth < influence.endDepthMetres() * (1 - 1e-9)) {
      return Outcome.outOfRange(
          "the layers end at "
              + depth
              + " m, the influence reaches "
              + influence.endDepthMetres()
              + " m below the base");
    }
    if (pressure == 0) {
      return Outcome.of(0.0);
    }
    double embedment = Math.max(0.5, 1 - 0.5 * footing.overburdenKilopascals() / pressure);
    double creep = 1 + 0.2 * Math.log10(footing.years() / REFERENCE_YEARS);
    return Outcome.of(embedment * creep * pressure * sum);
  }

  /** 0 for a square, 1 for a strip, straight between on L/B. */
  private static double stripShare(double lengthToWidth) {
    return Math.min(1, (lengthToWidth - 1) / (STRIP_RATIO - 1));
  }
}
