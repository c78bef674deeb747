package underhold.sizing.bracketpiles;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import underhold.mechanics.micropile.BondZone;
import underhold.mechanics.micropile.GroutBond;
import underhold.mechanics.micropile.GroutBond.Grouting;
import underhold.sizing.Basis;
import underhold.sizing.Given;
import underhold.sizing.Origin;
import underhold.sizing.Source;
import underhold.sizing.zone.GroundColumn;
import underhold.sizing.zone.SoilClass;
import underhold.sizing.zone.Stratum;

/**
 * What the layers give a pile: sideways stiffness and bond. Stiffness is the low end of its class
 * (FHWA NHI-05-039 Table 5-12, from memory; fill and peat judgement), for clay 67 su. Bond by FHWA
 * Table 5-3 (from memory); soft rock for any rock, no bond in fill and peat (judgement).
 */
final class PileGround {
  /** Depth below the head over which the weakest layer stands for all; judgement. */
  static final double HEAD_REACH = 3.0;

  private static final double CLAY_FACTOR = 67;
  private static final double ROUND_METRES = 0.1;

  private static final Map<SoilClass, Double> STIFFNESS =
      Map.of(
          SoilClass.ROCK, 48_000.0,
          SoilClass.HARD, 48_000.0,
          SoilClass.DENSE_GRAVEL, 29_000.0,
          SoilClass.DENSE_SAND, 29_000.0,
          SoilClass.LOOSE_SAND, 10_000.0,
          SoilClass.SILT, 2_400.0,
          SoilClass.FILL, 2_400.0,
          SoilClass.PEAT, 500.0);

  private static final Map<SoilClass, String> BOND =
      Map.of(
          SoilClass.ROCK, "soft-shale",
          SoilClass.HARD, "glacial-till",
          SoilClass.DENSE_GRAVEL, "gravel",
          SoilClass.DENSE_SAND, "dense-sand",
          SoilClass.LOOSE_SAND, "loose-sand",
          SoilClass.SILT, "soft-silt-clay",
          SoilClass.STIFF_CLAY, "stiff-silt-clay",
          SoilClass.SOFT_CLAY, "soft-silt-clay");

  /**
   * A piece of the bond length in one layer.
   *
   * @param layer the layer, in words
   * @param topMetres depth of its top below ground
   * @param lengthMetres length used
   * @param bondKilopascals nominal bond; 0 where none counts
   */
  record Piece(String layer, double topMetres, double lengthMetres, double bondKilopascals) {}

  private PileGround() {}

  /** Sideways stiffness of a layer, kPa. */
  static Given<Double> stiffness(Stratum layer) {
    Source why =
        new Source(layer.name() + "; " + Sources.FHWA_STIFFNESS.citation(), Basis.FROM_MEMORY);
    if (layer.soil().clay()) {
      Given<Double> strength = layer.undrainedStrength();
      double k = CLAY_FACTOR * strength.value();
      return strength.origin() == Origin.ASSUMED
          ? Given.assumed(k, why)
          : new Given<>(k, Origin.DERIVED, why);
    }
    return new Given<>(STIFFNESS.getOrDefault(layer.soil(), 500.0), Origin.DERIVED, why);
  }

  /** The weakest layer between two depths. */
  static Optional<Given<Double>> weakest(GroundColumn column, double from, double to) {
    return column.between(from, to).stream()
        .map(PileGround::stiffness)
        .min(Comparator.comparingDouble(Given::value));
  }

  /** Whether the soil there is soft: it gives fixity only deep down, and must not be trusted. */
  static boolean soft(SoilClass soil) {
    return soil == SoilClass.SOFT_CLAY
        || soil == SoilClass.PEAT
        || soil == SoilClass.FILL
        || soil == SoilClass.SILT;
  }

  /** Whether any layer near the head is soft. */
  static boolean softHead(GroundColumn column, double depth) {
    return column.between(depth, depth + HEAD_REACH).stream().anyMatch(one -> soft(one.soil()));
  }

  /** Nominal bond of a layer, kPa; 0 where none counts. */
  static double bond(SoilClass soil, Grouting grouting, double share) {
    return Optional.ofNullable(BOND.get(soil))
        .flatMap(GroutBond::named)
        .flatMap(row -> row.range(grouting).or(() -> row.range(Grouting.GRAVITY)))
        .map(range -> range.at(share))
        .orElse(0.0);
  }

  /**
   * The bond length, layer by layer from a depth down, until it carries the load or the limit is
   * reached.
   *
   * @param from depth below ground at which bond begins
   * @param limit depth of the deepest toe
   */
  static List<Piece> bondLength(GroundColumn column, double from, double limit, BondDemand demand) {
    List<Piece> pieces = new ArrayList<>();
    double load = demand.load();
    double least = demand.leastLength();
    for (Stratum layer : column.between(from, limit)) {
      if (load <= 0 && least <= 0) {
        break;
      }
      double alpha = bond(layer.soil(), demand.grouting(), demand.share());
      double there = layer.thicknessMetres();
      double length = there;
      if (alpha > 0) {
        double per = new BondZone(alpha, demand.hole(), demand.safety()).perMetre();
        double wanted = Math.max(load / per, least);
        length = Math.min(there, Math.ceil(wanted / ROUND_METRES - 1e-9) * ROUND_METRES);
        load -= per * length;
        least -= length;
      }
      pieces.add(new Piece(layer.name(), layer.topMetres(), length, alpha));
    }
    return pieces;
  }

  /**
   * What the bond length must do.
   *
   * @param load load, kN
   * @param leastLength least length, m
   * @param hole diameter of the hole, m
   * @param safety factor of safety
   * @param grouting how it is grouted
   * @param share where in the table's range
   */
  record BondDemand(
      double load,
      double leastLength,
      double hole,
      double safety,
      Grouting grouting,
      double share) {

    /** What the pieces carry, kN. */
    double capacity(List<Piece> pieces) {
      return pieces.stream()
          .filter(one -> one.bondKilopascals() > 0)
          .mapToDouble(
              one ->
                  new BondZone(one.bondKilopascals(), hole, safety)
                      .allowableLoad(one.lengthMetres()))
          .sum();
    }
  }
}
