package underhold.consult.change;

import java.util.List;
import underhold.advice.RulePack;

/**
 * What a change of facts does to the answer.
 *
 * @param trial the change
 * @param pack the rules the answers rest on
 * @param zones the zones looked at, in the order of the site
 */
public record SiteChange(Trial trial, RulePack pack, List<ZoneChange> zones) {
  public SiteChange {
    zones = List.copyOf(zones);
  }

  /** Whether the answer is what it was in every zone looked at. */
  public boolean nothing() {
    return zones.stream().allMatch(ZoneChange::nothing);
  }
}
