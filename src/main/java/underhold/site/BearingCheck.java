package underhold.site;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import underhold.quantity.Quantity;

/**
 * Holds stated good bearing against the layers. Where good bearing begins is the engineer's
 * judgement, so another layer than {@link BearingDerivations} would take is no contradiction; a
 * soil that does not bear, or bears otherwise than stated, is.
 */
final class BearingCheck {
  private BearingCheck() {}

  /** What cannot be; null where all is well or not enough is known. */
  static @Nullable String contradiction(FactView known, GroundProfile ground) {
    Optional<Quantity> founding = known.amount("foundingDepth");
    Optional<Quantity> bearing = known.amount("bearingDepth");
    // A kind that follows from the layers is the weakest of several and need not be that of the
    // first.
    boolean kindStated = known.fact("bearingKind").origin() == Origin.STATED;
    String kind = kindStated ? known.word("bearingKind").orElse("") : "";
    if (founding.isEmpty() || bearing.isEmpty()) {
      return null;
    }
    double levelMetres = founding.get().si() + bearing.get().si();
    List<GroundLayer> layers =
        Stream.of(levelMetres, levelMetres + Agreement.LENGTH_METRES)
            .flatMap(depth -> ground.at(depth).stream())
            .toList();
    boolean fits =
        layers.isEmpty()
            || layers.stream()
                .anyMatch(
                    layer ->
                        kind.isEmpty()
                            ? BearingSoils.bears(layer)
                            : BearingSoils.bearsAs(layer, kind));
    return fits ? null : text(known, kind, layers.get(0));
  }

  private static String text(FactView known, String kind, GroundLayer layer) {
    return known.fact("bearingDepth").definition().label()
        + " is "
        + PlainText.shown(known.fact("bearingDepth").text())
        + " below "
        + known.fact("foundingDepth").definition().label()
        + " "
        + PlainText.shown(known.fact("foundingDepth").text())
        + ", but the layer there, "
        + Stretch.words(layer)
        + (", does not bear" + (kind.isEmpty() ? "" : " as " + kind));
  }
}
