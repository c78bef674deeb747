package underhold.site;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One way in which a fact follows from others.
 *
 * @param target the name of the fact
 * @param from the facts it may follow from, besides the ground layers and the position of the
 *     excavation
 * @param rule the calculation
 */
record Derivation(String target, List<String> from, Rule rule) {
  Derivation {
    from = List.copyOf(from);
  }

  /** A calculation from other facts. */
  @FunctionalInterface
  interface Rule {
    /** The value; null where the facts it needs are not all known. */
    @Nullable Derived from(Inputs inputs);
  }
}
