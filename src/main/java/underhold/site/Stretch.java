package underhold.site;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import underhold.quantity.Quantity;

/**
 * The layers from the footing down to the base of the digging: the base of the excavation or of a
 * pit that goes down to good bearing, whichever is deeper. The layer right under the footing always
 * belongs to it, also where the excavation does not reach so deep.
 *
 * @param layers at least one, from the top down
 * @param between where it reaches from and to, in words
 */
record Stretch(List<GroundLayer> layers, String between) {
  /** Depths that differ by less are the same depth. */
  private static final double SAME_DEPTH_METRES = 0.001;

  /** The stretch; null where a depth is unknown or the layers do not begin above the footing. */
  static @Nullable Stretch footingToBase(Inputs in) {
    Stretch toExcavation = in.digs() ? footingToExcavation(in) : null;
    if (in.digs() && toExcavation == null) {
      return null;
    }
    Quantity founding = in.amount("foundingDepth");
    Quantity bearing = in.amount("bearingDepth");
    if (founding == null || bearing == null || in.ground().at(founding.si()).isEmpty()) {
      return toExcavation;
    }
    double pitBase = founding.si() + bearing.si();
    Quantity base = in.amount("excavationDepth");
    boolean deeper = !in.digs() || base == null || pitBase > base.si() + SAME_DEPTH_METRES;
    return deeper ? of(in, founding.si(), pitBase, in.show("bearingDepth")) : toExcavation;
  }

  /** The stretch down to the base of the excavation only; null where a depth is unknown. */
  static @Nullable Stretch footingToExcavation(Inputs in) {
    Quantity founding = in.amount("foundingDepth");
    Quantity base = in.amount("excavationDepth");
    return founding == null || base == null || in.ground().at(founding.si()).isEmpty()
        ? null
        : of(in, founding.si(), base.si(), in.show("excavationDepth"));
  }

  private static Stretch of(Inputs in, double fromMetres, double toMetres, String base) {
    GroundLayer first = in.ground().at(fromMetres).orElseThrow();
    List<GroundLayer> layers = in.ground().between(fromMetres, toMetres);
    return new Stretch(
        layers.isEmpty() ? List.of(first) : layers,
        "between " + in.show("foundingDepth") + " and " + base);
  }

  /** Whether every layer states the property. */
  <T> boolean allState(Function<GroundLayer, @Nullable T> property) {
    return layers.stream().allMatch(layer -> property.apply(layer) != null);
  }

  /** The layers in words: {@code fill from 0 m, silt from 2.5 m}. */
  String words() {
    return layers.stream().map(Stretch::words).collect(Collectors.joining(", "));
  }

  static String words(GroundLayer layer) {
    return layer.soil() + " from " + layer.top().text();
  }
}
