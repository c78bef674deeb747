package underhold.consult;

import java.util.List;
import java.util.Optional;
import underhold.advice.RulePack;
import underhold.site.Site;

/**
 * The answer to one site.
 *
 * @param site the site
 * @param pack the rules it rests on
 * @param zones the advice, zone by zone, in the order of the site
 */
public record Consultation(Site site, RulePack pack, List<ZoneAdvice> zones) {
  public Consultation {
    zones = List.copyOf(zones);
  }

  /** The zone of that name, in any case; the only zone where the name is empty. */
  public Optional<ZoneAdvice> zone(String name) {
    if (name.isBlank() && zones.size() == 1) {
      return Optional.of(zones.get(0));
    }
    return zones.stream().filter(zone -> zone.name().equalsIgnoreCase(name.strip())).findFirst();
  }
}
