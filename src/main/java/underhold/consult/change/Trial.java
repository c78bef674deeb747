package underhold.consult.change;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;
import underhold.site.Site;
import underhold.site.SiteChecks;
import underhold.site.SiteProblem;
import underhold.site.StatedFact;
import underhold.site.Zone;

/**
 * A site with some facts stated otherwise, and where.
 *
 * @param before the site as it is
 * @param after the site as it would be
 * @param changed each fact in each place where it is stated now
 * @param left for each fact, the zones where it is not stated and was left so
 */
public record Trial(
    Site before, Site after, List<ChangedFact> changed, Map<FactDefinition, List<String>> left) {
  public Trial {
    changed = List.copyOf(changed);
    left = Map.copyOf(left);
  }

  /**
   * States facts otherwise. With a zone: in that zone alone. Without: for the whole site and for
   * each zone wherever the fact is stated, so that no zone's own word silently stays; where nobody
   * states it, for the only zone of a site with one, else for the whole site.
   *
   * @param site the site
   * @param zone the place of the zone; empty for the whole site
   * @param facts what is to be stated, a fact without value being taken away
   */
  public static Trial of(Site site, OptionalInt zone, Map<FactDefinition, StatedFact> facts) {
    Maker maker = new Maker(site);
    facts.forEach((fact, stated) -> maker.state(fact, stated, zone));
    return new Trial(site, maker.site(), maker.changed, maker.left);
  }

  /** Why the changed site cannot be; empty where it can. */
  public List<Contradiction> contradictions(FactDictionary dictionary, String fileName) {
    List<Contradiction> found = new ArrayList<>();
    Set<String> names = changed.stream().map(one -> one.fact().name()).collect(Collectors.toSet());
    for (SiteProblem problem : SiteChecks.contradictions(after, dictionary, fileName)) {
      found.add(Contradiction.of(problem, after, names));
    }
    for (Zone zone : after.zones()) {
      for (FactDefinition fact : dictionary.all()) {
        if (fact.required() && valueless(zone, fact)) {
          found.add(Contradiction.missing(fact, zone.name(), fileName));
        }
      }
    }
    return found;
  }

  private boolean valueless(Zone zone, FactDefinition fact) {
    StatedFact stated = zone.facts().getOrDefault(fact.name(), after.facts().get(fact.name()));
    return stated == null || stated.value() == null;
  }

  /** Whether facts may follow from layers of the ground, which only the site file can change. */
  public boolean layered() {
    return !after.ground().isEmpty()
        || after.zones().stream().anyMatch(zone -> !zone.ground().isEmpty());
  }

  /** Makes the changed site. */
  private static final class Maker {
    private final Site site;
    private final Map<String, StatedFact> common;
    private final List<Map<String, StatedFact>> own = new ArrayList<>();
    private final List<ChangedFact> changed = new ArrayList<>();
    private final Map<FactDefinition, List<String>> left = new LinkedHashMap<>();

    Maker(Site site) {
      this.site = site;
      this.common = new LinkedHashMap<>(site.facts());
      site.zones().forEach(zone -> own.add(new LinkedHashMap<>(zone.facts())));
    }

    void state(FactDefinition fact, StatedFact stated, OptionalInt zone) {
      if (zone.isPresent()) {
        inZone(zone.getAsInt(), fact, stated);
        return;
      }
      Set<Integer> zones = new TreeSet<>();
      for (int i = 0; i < own.size(); i++) {
        if (own.get(i).containsKey(fact.name())) {
          zones.add(i);
        }
      }
      boolean nowhere = zones.isEmpty() && !common.containsKey(fact.name());
      if (nowhere && own.size() == 1 && fact.scope() == FactDefinition.Scope.ZONE) {
        zones.add(0);
      } else if (nowhere || common.containsKey(fact.name())) {
        StatedFact was = common.put(fact.name(), stated);
        changed.add(new ChangedFact(fact, Optional.empty(), Optional.ofNullable(was), stated));
      } else if (zones.size() < own.size()) {
        left.put(fact, others(zones));
      }
      zones.forEach(index -> inZone(index, fact, stated));
    }

    private List<String> others(Set<Integer> zones) {
      List<String> names = new ArrayList<>();
      for (int i = 0; i < own.size(); i++) {
        if (!zones.contains(i)) {
          names.add(site.zones().get(i).name());
        }
      }
      return names;
    }

    private void inZone(int index, FactDefinition fact, StatedFact stated) {
      StatedFact was = own.get(index).put(fact.name(), stated);
      changed.add(
          new ChangedFact(
              fact,
              Optional.of(site.zones().get(index).name()),
              Optional.ofNullable(was).or(() -> Optional.ofNullable(common.get(fact.name()))),
              stated));
    }

    Site site() {
      List<Zone> zones = new ArrayList<>();
      for (int i = 0; i < own.size(); i++) {
        Zone zone = site.zones().get(i);
        zones.add(new Zone(zone.name(), own.get(i), zone.ground(), zone.note()));
      }
      return new Site(
          site.name(), site.units(), common, site.ground(), zones, site.sizing(), site.note());
    }
  }
}
