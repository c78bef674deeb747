package underhold.consult.trial;

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

/**
 * One zone of a site with facts changed, and whether the change can be. Several threads may ask at
 * once.
 */
public final class Changes {
  /** Facts that are checked over all zones of a site together. */
  private static final Set<String> OF_ALL_ZONES = Set.of("purpose", "excavationPosition");

  private final Site site;
  private final Zone zone;
  private final Known known;
  private final FactDictionary dictionary = FactDictionary.standard();
  private final Set<String> told;
  private final boolean fits;
  private final boolean fitsPurpose;
  private final Latest<Last> last = new Latest<>();

  private record Last(Map<String, FactValue> values, Zone zone) {}

  /**
   * Changes of a zone of a site.
   *
   * @param known what is known of the zone
   */
  Changes(Site site, Zone zone, Known known) {
    this.site = site;
    this.zone = zone;
    this.known = known;
    this.told = new HashSet<>(contradictions(zone, false));
    this.told.addAll(contradictions(zone, true));
    this.fitsPurpose =
        SiteChecks.fitsPurpose(site, List.of(zone), dictionary)
            && SiteChecks.fitsPurpose(site, site.zones(), dictionary);
    this.fits = told.size() == (fitsPurpose ? 0 : 1);
  }

  /** The zone with one fact stated. */
  public Zone with(String fact, FactValue value) {
    return with(Map.of(fact, value));
  }

  /** The zone with some facts stated. */
  public Zone with(Map<String, FactValue> stated) {
    Last one = last.get();
    if (one == null || !one.values.equals(stated)) {
      Map<String, StatedFact> facts = new LinkedHashMap<>(zone.facts());
      stated.forEach((name, value) -> facts.put(name, new StatedFact(value, "")));
      Zone changed = new Zone(zone.name(), facts, zone.ground(), zone.note());
      one = new Last(Map.copyOf(stated), changed);
      last.put(one);
    }
    return one.zone;
  }

  /**
   * Whether the facts of a changed zone can all be true, as far as those of the zone itself can.
   */
  public boolean possible(Zone tried) {
    boolean all =
        OF_ALL_ZONES.stream()
            .anyMatch(fact -> !Objects.equals(zone.facts().get(fact), tried.facts().get(fact)));
    if (!fits) {
      return told.containsAll(contradictions(tried, all));
    }
    boolean asBefore = !all || !fitsPurpose; // what the purpose is checked against has not changed
    return known.fits(tried)
        && (asBefore || SiteChecks.fitsPurpose(site, zones(tried, true), dictionary));
  }

  private List<String> contradictions(Zone one, boolean all) {
    Site tried =
        new Site(
            site.name(),
            site.units(),
            site.facts(),
            site.ground(),
            zones(one, all),
            site.sizing(),
            "");
    return SiteChecks.contradictions(tried, dictionary, "").stream()
        .map(SiteProblem::message)
        .toList();
  }

  /** The zone that is tried, among the others or alone. */
  private List<Zone> zones(Zone tried, boolean all) {
    return site.zones().stream()
        .filter(one -> all || one.name().equals(zone.name()))
        .map(one -> one.name().equals(zone.name()) ? tried : one)
        .toList();
  }
}
