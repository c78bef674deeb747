package underhold.sizing.zone;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import underhold.quantity.Quantity;
import underhold.site.GroundLayer;
import underhold.site.GroundProfile;
import underhold.sizing.Basis;
import underhold.sizing.Given;
import underhold.sizing.Origin;
import underhold.sizing.Source;

/**
 * The strata below a zone, from the ground surface down. A strength or weight that no layer states
 * is the careful one of its class, and assumed.
 *
 * @param strata from the top down, each to the top of the next; the last has no known bottom
 */
public record GroundColumn(List<Stratum> strata) {
  /** Unit weight of water, kN/m3. */
  private static final double WATER = 9.81;

  public GroundColumn {
    strata = List.copyOf(strata);
  }

  /** The column of a zone. */
  public static GroundColumn of(GroundProfile ground, SiteFacts facts) {
    Optional<Given<Double>> softest = facts.number("undrainedStrength");
    Given<Double> weight =
        facts
            .numberOrAssumed("soilUnitWeight")
            .orElseThrow(() -> new IllegalStateException("the dictionary assumes a unit weight"));
    List<Stratum> strata = new ArrayList<>();
    for (GroundLayer layer : ground.layers()) {
      for (LayerSoil soil : LayerSoil.of(List.of(layer), softest)) {
        strata.add(
            new Stratum(
                LayerSoil.words(List.of(soil)),
                soil.soil(),
                layer.top().si(),
                ground.bottomMetres(layer),
                soil.unitWeight().orElse(weight),
                soil.undrainedStrength(),
                soil.frictionAngle(),
                stated(layer, layer.n60()),
                stated(layer, layer.unconfinedStrength()),
                stated(layer, layer.rqd())));
      }
    }
    return new GroundColumn(strata);
  }

  /** Whether nothing is known of the ground. */
  public boolean isEmpty() {
    return strata.isEmpty();
  }

  /** The stratum at a depth, m; the lower one at a boundary. */
  public Optional<Stratum> at(double depthMetres) {
    return strata.stream()
        .filter(one -> one.topMetres() <= depthMetres && depthMetres < one.bottomMetres())
        .findFirst();
  }

  /** The strata between two depths, m, clipped to them. */
  public List<Stratum> between(double fromMetres, double toMetres) {
    return strata.stream()
        .map(one -> one.clipped(fromMetres, toMetres))
        .filter(one -> one.thicknessMetres() > 0)
        .toList();
  }

  /** Depth of the deepest boundary that a boring met, m: what lies below is taken to reach on. */
  public double knownToMetres() {
    return strata.isEmpty() ? 0 : strata.get(strata.size() - 1).topMetres();
  }

  /**
   * Vertical effective stress, kPa, at a depth below a level surface cut down to a lower level,
   * hydrostatic water.
   *
   * @param depthMetres depth below ground surface
   * @param surfaceMetres depth of the surface that is left (0 before digging)
   * @param waterMetres depth of ground water below ground surface
   */
  public double effectiveStress(double depthMetres, double surfaceMetres, double waterMetres) {
    double total = 0;
    for (Stratum one : between(surfaceMetres, depthMetres)) {
      total += one.unitWeight().value() * one.thicknessMetres();
    }
    double pore = WATER * Math.max(0, depthMetres - Math.max(waterMetres, surfaceMetres));
    return Math.max(0, total - pore);
  }

  private static Optional<Given<Double>> stated(GroundLayer layer, @Nullable Quantity quantity) {
    return Optional.ofNullable(quantity)
        .map(
            one ->
                new Given<>(
                    one.si(),
                    Origin.STATED,
                    new Source(layer.soil() + " from " + layer.top().text(), Basis.SITE_FACT)));
  }
}
