package underhold.shell;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import underhold.quantity.UnitSystem;
import underhold.site.FactDefinition;
import underhold.site.GroundProfile;
import underhold.site.Relation;
import underhold.site.Site;
import underhold.site.StatedFact;
import underhold.site.Zone;

/** Sites with one thing changed. */
final class Edits {
  private Edits() {}

  /** A site of which nothing is known but its name and one zone. */
  static Site fresh(String name, String zone) {
    return new Site(
        name, UnitSystem.SI, Map.of(), GroundProfile.NONE, List.of(zone(zone)), Map.of(), "");
  }

  static Zone zone(String name) {
    return new Zone(name, Map.of(), GroundProfile.NONE, "");
  }

  static Site named(Site site, String name) {
    return copy(site, name, site.units(), site.facts(), site.zones());
  }

  static Site in(Site site, UnitSystem units) {
    return copy(site, site.name(), units, site.facts(), site.zones());
  }

  static Site with(Site site, int index, Zone zone) {
    List<Zone> zones = new ArrayList<>(site.zones());
    if (index == zones.size()) {
      zones.add(zone);
    } else {
      zones.set(index, zone);
    }
    return copy(site, site.name(), site.units(), site.facts(), zones);
  }

  /** The site without that zone. */
  static Site withoutZone(Site site, int index) {
    List<Zone> zones = new ArrayList<>(site.zones());
    zones.remove(index);
    return copy(site, site.name(), site.units(), site.facts(), zones);
  }

  /** The site with a fact stated for one zone. */
  static Site with(Site site, int index, FactDefinition fact, StatedFact stated) {
    Zone zone = site.zones().get(index);
    Map<String, StatedFact> facts = new LinkedHashMap<>(zone.facts());
    facts.put(fact.name(), stated);
    return with(site, index, new Zone(zone.name(), facts, zone.ground(), zone.note()));
  }

  /** The site with a fact stated for the whole of it. */
  static Site with(Site site, FactDefinition fact, StatedFact stated) {
    Map<String, StatedFact> facts = new LinkedHashMap<>(site.facts());
    facts.put(fact.name(), stated);
    return copy(site, site.name(), site.units(), facts, site.zones());
  }

  /** The site without what is said of a fact in one zone. */
  static Site without(Site site, int index, FactDefinition fact) {
    Zone zone = site.zones().get(index);
    Map<String, StatedFact> facts = new LinkedHashMap<>(zone.facts());
    facts.remove(fact.name());
    return with(site, index, new Zone(zone.name(), facts, zone.ground(), zone.note()));
  }

  /** The site without what is said of a fact for the whole of it. */
  static Site without(Site site, FactDefinition fact) {
    Map<String, StatedFact> facts = new LinkedHashMap<>(site.facts());
    facts.remove(fact.name());
    return copy(site, site.name(), site.units(), facts, site.zones());
  }

  /** The place of the zone of that name, in any case. */
  static OptionalInt find(Site site, String zone) {
    return IntStream.range(0, site.zones().size())
        .filter(i -> site.zones().get(i).name().equalsIgnoreCase(zone.strip()))
        .findFirst();
  }

  private static Site copy(
      Site site, String name, UnitSystem units, Map<String, StatedFact> facts, List<Zone> zones) {
    List<Relation> relations =
        site.relations().stream()
            .filter(relation -> isThere(zones, relation.first()))
            .filter(relation -> isThere(zones, relation.second()))
            .toList();
    return new Site(
        name, units, facts, site.ground(), zones, relations, site.sizing(), site.note());
  }

  private static boolean isThere(List<Zone> zones, String name) {
    return zones.stream().anyMatch(zone -> zone.name().equalsIgnoreCase(name));
  }
}
