package underhold.site;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import underhold.quantity.UnitSystem;

/**
 * A valid site: what is common, and its zones.
 *
 * @param name the user's name for it
 * @param units the system in which the user reads numbers that nobody typed
 * @param facts what was stated for the whole site, by fact name
 * @param ground the ground profile
 * @param zones at least one
 * @param relations how its zones lie to each other, as far as stated
 * @param sizing settings stated for the sizing, by method and setting name, as typed
 * @param note the user's note; may be empty
 */
public record Site(
    String name,
    UnitSystem units,
    Map<String, StatedFact> facts,
    GroundProfile ground,
    List<Zone> zones,
    List<Relation> relations,
    Map<String, Map<String, String>> sizing,
    String note) {
  public Site {
    facts = Collections.unmodifiableMap(new LinkedHashMap<>(facts));
    zones = List.copyOf(zones);
    relations = List.copyOf(relations);
    Map<String, Map<String, String>> settings = new LinkedHashMap<>();
    sizing.forEach(
        (method, values) ->
            settings.put(method, Collections.unmodifiableMap(new LinkedHashMap<>(values))));
    sizing = Collections.unmodifiableMap(settings);
    if (zones.isEmpty()) {
      throw new IllegalArgumentException("a site has at least one zone");
    }
  }

  /** A site that says nothing of how its zones lie to each other. */
  public Site(
      String name,
      UnitSystem units,
      Map<String, StatedFact> facts,
      GroundProfile ground,
      List<Zone> zones,
      Map<String, Map<String, String>> sizing,
      String note) {
    this(name, units, facts, ground, zones, List.of(), sizing, note);
  }

  /** What is stated of two zones together, in either order. */
  public Optional<Relation> relation(String one, String other) {
    return relations.stream().filter(relation -> relation.isOf(one, other)).findFirst();
  }
}
