package underhold.site;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * How two zones of a site lie to each other, as stated. Words such as {@code first} in its facts
 * follow the order in which the two zones are named.
 *
 * @param first the name of one zone
 * @param second the name of the other
 * @param facts what was stated, by the names of {@link FactDictionary#pairs()}
 * @param note the user's note; may be empty
 */
public record Relation(String first, String second, Map<String, StatedFact> facts, String note) {
  public Relation {
    facts = Collections.unmodifiableMap(new LinkedHashMap<>(facts));
  }

  /** Whether it speaks of these two zones, in either order. */
  public boolean isOf(String one, String other) {
    return (first.equalsIgnoreCase(one) && second.equalsIgnoreCase(other))
        || (first.equalsIgnoreCase(other) && second.equalsIgnoreCase(one));
  }

  /** Whether it speaks of that zone. */
  public boolean names(String zone) {
    return first.equalsIgnoreCase(zone) || second.equalsIgnoreCase(zone);
  }
}
