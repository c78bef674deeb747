package underhold.consult.trial;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import underhold.site.FactDictionary;
import underhold.site.FactValue;
import underhold.site.Site;
import underhold.site.SiteChecks;
import underhold.site.SiteProblem;
import underhold.site.StatedFact;
import underhold.site.Zone;

/** One zone of a site with facts changed, and whether the change can be. */
public final class Changes {
  /** Facts that are checked over all zones of a site together. */
  private static final Set<String> OF_ALL_ZONES = Set.of("purpose", "excavationPosition");

  private final Site site;
  private final Zone zone;
  private final FactDictionary dictionary = FactDictionary.standard();
  private final Set<String> told;

  /** Changes of a zone of a site. */
  public Changes(Site site, Zone zone) {
    this.site = site;
    this.zone = zone;
    this.told = new HashSet<>(contradictions(zone, false));
    this.told.addAll(contradictions(zone, true));
  }

  /** The zone with one fact stated. */
  public Zone with(String fact, FactValue value) {
    return with(Map.of(fact, value));
  }

  /** The zone with some facts stated. */
  public Zone with(Map<String, FactValue> values) {
    Map<String, StatedFact> facts = new LinkedHashMap<>(zone.facts());
    values.forEach((name, value) -> facts.put(name, new StatedFact(value, "")));
    return new Zone(zone.name(), facts, zone.ground(), zone.note());
  }

  /**
   * Whether the facts of a changed zone can all be true, as far as those of the zone itself can.
   */
  public boolean possible(Zone changed) {
    boolean all =
        OF_ALL_ZONES.stream()
            .anyMatch(fact -> !Objects.equals(zone.facts().get(fact), changed.facts().get(fact)));
    return told.containsAll(contradictions(changed, all));
  }

  private List<String> contradictions(Zone changed, boolean all) {
    List<Zone> zones = new ArrayList<>();
    for (Zone one : site.zones()) {
      if (one.name().equals(zone.name())) {
        zones.add(changed);
      } else if (all) {
        zones.add(one);
      }
    }
    Site tried =
        new Site(site.name(), site.units(), site.facts(), site.ground(), zones, site.sizing(), "");
    return SiteChecks.contradictions(tried, dictionary, "").stream()
        .map(SiteProblem::message)
        .toList();
  }
}
