package underhold.classroom;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import underhold.review.file.Raw;

/**
 * The same site with a few facts otherwise. A fact is changed where the site states it, in the zone
 * or for the whole site.
 *
 * @param zone the zone spoken of
 * @param facts the facts that are otherwise, as a site file states them
 * @param ground the ground of the site, where that is otherwise
 * @param leader the id of the method that leads the zone then, or the word for none
 */
public record Counterpart(
    String zone, Map<String, String> facts, Optional<Raw> ground, String leader) {
  public Counterpart {
    facts = Collections.unmodifiableMap(new LinkedHashMap<>(facts));
    Expected.mustBeMethod(leader);
  }
}
