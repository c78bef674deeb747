package underhold.consult.change;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import underhold.consult.Consultant;
import underhold.consult.ZoneAdvice;
import underhold.site.Site;
import underhold.site.Zone;
import underhold.threads.AllProcessors;

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
    List<Zone> before = zones(trial.before(), zone);
    List<Zone> after = zones(trial.after(), zone);
    List<ZoneAdvice> advice =
        AllProcessors.each(
            IntStream.range(0, 2 * before.size()).boxed().toList(),
            i ->
                i % 2 == 0
                    ? consultant.advise(trial.before(), before.get(i / 2))
                    : consultant.advise(trial.after(), after.get(i / 2)));
    List<ZoneChange> changes = new ArrayList<>();
    for (int i = 0; i < advice.size(); i += 2) {
      changes.add(ZoneChange.between(advice.get(i), advice.get(i + 1)));
    }
    return new SiteChange(trial, consultant.pack(), changes);
  }

  private static List<Zone> zones(Site site, OptionalInt zone) {
    return zone.isEmpty() ? site.zones() : List.of(site.zones().get(zone.getAsInt()));
  }
}
