package underhold.sizing.zone;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import underhold.mechanics.soil.bearing.VesicBearing;
import underhold.mechanics.soil.pressure.RankinePressure;
import underhold.quantity.Quantity;
import underhold.site.GroundLayer;
import underhold.sizing.Basis;
import underhold.sizing.Given;
import underhold.sizing.Origin;
import underhold.sizing.Source;

/**
 * A layer of the site's ground as soil of the sizing. A strength that nobody stated is the careful
 * one of its class, and assumed.
 *
 * @param layer the layer
 * @param soil its class
 * @param undrainedStrength of clay, kPa; 0 for other soils
 * @param frictionAngle degrees
 */
public record LayerSoil(
    GroundLayer layer,
    SoilClass soil,
    Given<Double> undrainedStrength,
    Given<Double> frictionAngle) {

  /** A steeper angle is not counted; judgement. */
  private static final double STEEPEST_DEGREES = 50;

  /** Unit weight under water, kN/m3; it ranks layers only. */
  private static final double LIGHT = 8;

  /**
   * The layers as soils.
   *
   * @param layers layers of the ground
   * @param softestClay undrained strength of the softest clay, for clays that state none
   */
  public static List<LayerSoil> of(List<GroundLayer> layers, Optional<Given<Double>> softestClay) {
    return layers.stream()
        .flatMap(
            layer ->
                SiteSoils.soil(layer.soil()).stream().map(soil -> of(layer, soil, softestClay)))
        .toList();
  }

  private static LayerSoil of(
      GroundLayer layer, SoilClass soil, Optional<Given<Double>> softestClay) {
    Given<Double> careful = careful(layer, soil.undrainedStrengthKilopascals());
    Given<Double> unstated = soil.clay() ? softestClay.orElse(careful) : careful;
    Given<Double> strength = stated(layer, layer.undrainedStrength()).orElse(unstated);
    Given<Double> angle =
        stated(layer, layer.frictionAngle())
            .map(given -> SiteFacts.as(given, Math.min(given.value(), STEEPEST_DEGREES)))
            .orElseGet(() -> careful(layer, soil.frictionAngleDegrees()));
    return new LayerSoil(layer, soil, strength, angle);
  }

  private static Optional<Given<Double>> stated(GroundLayer layer, @Nullable Quantity quantity) {
    return Optional.ofNullable(quantity)
        .map(
            stated ->
                new Given<>(stated.si(), Origin.STATED, new Source(words(layer), Basis.SITE_FACT)));
  }

  private static Given<Double> careful(GroundLayer layer, double value) {
    String why = words(layer) + ": careful value of its class";
    return Given.assumed(value, new Source(why, Basis.JUDGEMENT));
  }

  /** Unit weight, if the layer states it. */
  public Optional<Given<Double>> unitWeight() {
    return stated(layer, layer.unitWeight());
  }

  /** The layer that presses most on boards under that vertical stress, kPa. */
  public static Optional<LayerSoil> pressingMost(List<LayerSoil> layers, double stress) {
    return layers.stream().max(Comparator.comparingDouble(one -> one.pressure(stress)));
  }

  /** The layer that bears least under a strip of that width, m, on its surface. */
  public static Optional<LayerSoil> bearingLeast(List<LayerSoil> layers, double width) {
    return layers.stream().min(Comparator.comparingDouble(one -> one.bearing(width)));
  }

  /** Rock comes after any soil, also one that does not press. */
  private double pressure(double stress) {
    if (soil == SoilClass.ROCK) {
      return -1;
    }
    return soil.clay()
        ? Math.max(stress - 2 * undrainedStrength.value(), 0)
        : RankinePressure.activeCoefficient(frictionAngle.value()) * stress;
  }

  private double bearing(double width) {
    if (soil == SoilClass.ROCK) {
      return Double.MAX_VALUE;
    }
    return soil.clay()
        ? VesicBearing.factors(0).cohesion() * undrainedStrength.value()
        : 0.5 * LIGHT * width * VesicBearing.factors(frictionAngle.value()).weight();
  }

  /** Several layers in words. */
  public static String words(List<LayerSoil> layers) {
    return layers.stream().map(one -> words(one.layer)).collect(Collectors.joining(", "));
  }

  private static String words(GroundLayer layer) {
    return layer.soil() + " from " + layer.top().text();
  }
}
