package underhold.site;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Something that cannot be true of one zone.
 *
 * @param name what must hold, in words
 * @param facts the facts concerned; the first is where the problem is shown
 * @param rule tells what is wrong
 */
record ConsistencyCheck(String name, List<String> facts, Rule rule) {
  ConsistencyCheck {
    facts = List.copyOf(facts);
  }

  /** Reads the known facts. */
  @FunctionalInterface
  interface Rule {
    /** What cannot be; null where all is well or not enough is known. */
    @Nullable String contradiction(FactView known);
  }
}
