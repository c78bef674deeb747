package underhold.consult.trial;

import org.jspecify.annotations.Nullable;
import underhold.site.Deductions;
import underhold.site.FactDictionary;
import underhold.site.FactView;
import underhold.site.Site;
import underhold.site.SiteChecks;
import underhold.site.Zone;
import underhold.site.ZoneViews;

/**
 * What is known of one zone of a site, changed again and again over the same ground. Several
 * threads may ask at once.
 */
final class Known {
  private final Site site;
  private final FactDictionary dictionary;
  private final Latest<Last> last = new Latest<>();
  private volatile @Nullable Deductions deductions;

  private record Last(Zone zone, FactView view) {}

  Known(Site site, FactDictionary dictionary) {
    this.site = site;
    this.dictionary = dictionary;
  }

  /** All that is known of the zone, without what rules derive from it. */
  FactView of(Zone zone) {
    Last one = last.get();
    if (one == null || one.zone != zone) {
      one = new Last(zone, ZoneViews.known(site, zone, dictionary, deductions(zone)));
      last.put(one);
    }
    return one.view;
  }

  /** Whether the facts of the zone alone can all be true. */
  boolean fits(Zone zone) {
    FactView known = of(zone);
    return SiteChecks.fits(site, zone, known, deductions(zone));
  }

  private Deductions deductions(Zone zone) {
    Deductions kept = deductions;
    if (kept == null || !kept.isOf(site, zone)) {
      kept = Deductions.in(site, zone);
      deductions = kept;
    }
    return kept;
  }
}
