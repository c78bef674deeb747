package underhold.sizing.zone;

import java.util.Optional;
import underhold.sizing.Given;

/**
 * One layer of the ground with what a sizing needs of it. Depths are below ground surface.
 *
 * @param name in words: "stiff-clay from 2 m"
 * @param soil its class
 * @param topMetres depth of its top
 * @param bottomMetres depth of its bottom; infinite where nothing is known below
 * @param unitWeight total unit weight, kN/m3
 * @param undrainedStrength of clay, kPa; 0 for other soils
 * @param frictionAngle degrees
 * @param blowCount N60, where stated
 * @param unconfinedStrength qu, kPa, where stated
 * @param rockQuality RQD as a ratio, where stated
 */
public record Stratum(
    String name,
    SoilClass soil,
    double topMetres,
    double bottomMetres,
    Given<Double> unitWeight,
    Given<Double> undrainedStrength,
    Given<Double> frictionAngle,
    Optional<Given<Double>> blowCount,
    Optional<Given<Double>> unconfinedStrength,
    Optional<Given<Double>> rockQuality) {

  /** The same stratum between two depths, as far as it reaches. */
  public Stratum clipped(double fromMetres, double toMetres) {
    return new Stratum(
        name,
        soil,
        Math.max(topMetres, fromMetres),
        Math.min(bottomMetres, toMetres),
        unitWeight,
        undrainedStrength,
        frictionAngle,
        blowCount,
        unconfinedStrength,
        rockQuality);
  }

  /** The same stratum, its strengths replaced. */
  public Stratum with(Given<Double> weight, Given<Double> strength, Given<Double> angle) {
    return new Stratum(
        name,
        soil,
        topMetres,
        bottomMetres,
        weight,
        strength,
        angle,
        blowCount,
        unconfinedStrength,
        rockQuality);
  }

  /** Thickness, m; infinite for the last one. */
  public double thicknessMetres() {
    return bottomMetres - topMetres;
  }
}
