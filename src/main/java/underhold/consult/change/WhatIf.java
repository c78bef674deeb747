package underhold.consult.change;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import underhold.consult.Consultant;
import underhold.site.Site;
import underhold.site.Zone;

/** Answers a site as it is and as it would be, and tells the differences. */
public final class WhatIf {
  private final Consultant consultant;

  public WhatIf(Consultant consultant) {
    this.consultant = consultant;
  }

  /**
   * The differences that a change makes. The changed site must be free of contradictions.
   *
   * @param trial the change
   * @param zone the place of the only zone to look at; empty for all
   */
  public SiteChange of(Trial trial, OptionalInt zone) {
    List<ZoneChange> zones = new ArrayList<>();
    for (int i = 0; i < trial.before().zones().size(); i++) {
      if (zone.isEmpty() || zone.getAsInt() == i) {
        zones.add(zone(trial.before(), trial.after(), i));
      }
    }
    return new SiteChange(trial, consultant.pack(), zones);
  }

  private ZoneChange zone(Site before, Site after, int index) {
    Zone was = before.zones().get(index);
    Zone is = after.zones().get(index);
    return ZoneChange.between(consultant.advise(before, was), consultant.advise(after, is));
  }
}
