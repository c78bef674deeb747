package underhold.site;

import java.util.List;
import java.util.Optional;

/** The layers of the ground from the surface down; each reaches to the top of the next. */
public record GroundProfile(List<GroundLayer> layers) {
  /** A profile of which nothing is known. */
  public static final GroundProfile NONE = new GroundProfile(List.of());

  /**
   * Takes the layers from the top down.
   *
   * @throws IllegalArgumentException if the tops do not go down from layer to layer
   */
  public GroundProfile {
    layers = List.copyOf(layers);
    for (int i = 1; i < layers.size(); i++) {
      if (layers.get(i).top().si() <= layers.get(i - 1).top().si()) {
        throw new IllegalArgumentException("layer " + (i + 1) + " does not start below layer " + i);
      }
    }
  }

  public boolean isEmpty() {
    return layers.isEmpty();
  }

  /** The layer at that depth below ground; the upper one at a boundary's very level is left. */
  public Optional<GroundLayer> at(double depthMetres) {
    GroundLayer found = null;
    for (GroundLayer layer : layers) {
      if (layer.top().si() <= depthMetres) {
        found = layer;
      }
    }
    return Optional.ofNullable(found);
  }

  /** The layers met between two depths below ground, in order. */
  public List<GroundLayer> between(double fromMetres, double toMetres) {
    return layers.stream()
        .filter(layer -> layer.top().si() < toMetres && bottomMetres(layer) > fromMetres)
        .toList();
  }

  /** Depth of the layer's bottom; the last one has no known bottom and reaches on. */
  public double bottomMetres(GroundLayer layer) {
    int next = layers.indexOf(layer) + 1;
    return next < layers.size() ? layers.get(next).top().si() : Double.POSITIVE_INFINITY;
  }
}
