package underhold.site;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * One element of the structure with its own load, foundation, position and access.
 *
 * @param name the user's name for it, unique in the site
 * @param facts what was stated for this zone, by fact name; it overrides the site's
 * @param ground the zone's own ground profile; empty where the site's holds
 * @param note the user's note; may be empty
 */
public record Zone(String name, Map<String, StatedFact> facts, GroundProfile ground, String note) {
  public Zone {
    facts = Collections.unmodifiableMap(new LinkedHashMap<>(facts));
  }
}
