package underhold.classroom.making;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A site in the making with facts otherwise.
 *
 * @param facts the facts as they would be
 * @param ground the layers as they would be; empty where they stay
 */
record Change(Map<String, String> facts, List<Layer> ground) {
  Change {
    facts = Collections.unmodifiableMap(new LinkedHashMap<>(facts));
    ground = List.copyOf(ground);
  }

  static Change of(String fact, String value) {
    return new Change(Map.of(fact, value), List.of());
  }

  static Change of(String fact, String value, String other, String otherValue) {
    Map<String, String> facts = new LinkedHashMap<>();
    facts.put(fact, value);
    facts.put(other, otherValue);
    return new Change(facts, List.of());
  }

  static Change ground(List<Layer> layers) {
    return new Change(Map.of(), layers);
  }

  /** Whether it is of the ground, of which nothing can be believed that is otherwise. */
  boolean ofGround() {
    return !ground.isEmpty();
  }
}
