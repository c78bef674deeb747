package underhold.site;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import underhold.quantity.Quantity;

/** Stated facts against the stated layers of the ground, where neither follows from the other. */
final class LayerChecks {
  private static final Set<String> ROCK = Set.of("rock", "decomposed-rock");
  private static final Set<String> CLAY =
      Set.of("soft-clay", "stiff-clay", "hard-clay-or-till", "cohesive-fill");

  private LayerChecks() {}

  /** A contradiction, and the facts concerned; the first is where it is shown. */
  record Found(List<String> facts, String message) {}

  static Optional<Found> rock(FactView known, GroundProfile ground) {
    Optional<Quantity> founding = known.amount("foundingDepth");
    Optional<Quantity> rock = known.amount("rockDepth");
    if (founding.isEmpty() || rock.isEmpty() || ground.isEmpty() || follows(known, "rockDepth")) {
      return Optional.empty();
    }
    double level = founding.get().si() + rock.get().si();
    List<GroundLayer> layers = ground.layers();
    // How far down the last layer goes is not stated: rock may lie anywhere below its top.
    boolean inLast = level > layers.get(layers.size() - 1).top().si() + Agreement.LENGTH_METRES;
    GroundLayer above = at(ground, level - Agreement.LENGTH_METRES);
    GroundLayer below = at(ground, level + Agreement.LENGTH_METRES);
    if (below == null) {
      return Optional.empty();
    }
    boolean fits = inLast || above == null || isRock(above) || isRock(below);
    return fits
        ? Optional.empty()
        : Optional.of(
            new Found(
                List.of("rockDepth", "foundingDepth", "ground"),
                known.fact("rockDepth").definition().label()
                    + " is "
                    + PlainText.shown(rock.get().text())
                    + " below the footing, but the layer there is "
                    + Stretch.words(below)));
  }

  static Optional<Found> clay(FactView known, GroundProfile ground) {
    boolean none =
        !ground.isEmpty()
            && ground.layers().stream().noneMatch(layer -> CLAY.contains(layer.soil()));
    return known.amount("undrainedStrength").isPresent() && none
        ? Optional.of(
            new Found(
                List.of("undrainedStrength", "ground"),
                known.fact("undrainedStrength").definition().label()
                    + " is "
                    + PlainText.shown(known.fact("undrainedStrength").text())
                    + ", but no layer of the ground is clay"))
        : Optional.empty();
  }

  /** What follows from the layers agrees with them. */
  private static boolean follows(FactView known, String fact) {
    return known.fact(fact).origin() != Origin.STATED;
  }

  private static @Nullable GroundLayer at(GroundProfile ground, double level) {
    return ground.at(level).orElse(null);
  }

  private static boolean isRock(GroundLayer layer) {
    return ROCK.contains(layer.soil());
  }
}
