package underhold.review.recheck;

import java.util.ArrayList;
import java.util.List;
import underhold.consult.Consultant;
import underhold.consult.Consultation;
import underhold.consult.ZoneAdvice;
import underhold.review.saved.AdviceSaver;
import underhold.review.saved.SavedAdvice;
import underhold.review.saved.SavedMaking;
import underhold.review.saved.SavedZone;
import underhold.site.Site;
import underhold.threads.AllProcessors;

/**
 * A saved consultation run again.
 *
 * @param was as it was saved
 * @param now as it is answered now
 * @param sameSite whether it was run on the site as saved
 * @param rules what the rules differ in, what moves answers first
 * @param zones zone by zone, in the order saved; zones that are new last
 * @param whole what the scheme and the plan differ in, the most important first
 */
public record Recheck(
    SavedAdvice was,
    SavedAdvice now,
    boolean sameSite,
    List<PackChange> rules,
    List<ZoneRecheck> zones,
    List<Difference> whole) {
  public Recheck {
    rules = List.copyOf(rules);
    zones = List.copyOf(zones);
    whole = List.copyOf(whole);
  }

  /**
   * Runs a saved consultation again.
   *
   * @param was the consultation
   * @param site the site to answer: the one saved, or what its file has become
   * @param consultant who answers, by the rules of today
   * @param making what program does so, and when
   */
  public static Recheck run(SavedAdvice was, Site site, Consultant consultant, SavedMaking making) {
    boolean firm = was.zones().stream().anyMatch(zone -> zone.firmness().isPresent());
    List<ZoneAdvice> advice =
        AllProcessors.each(
            site.zones(),
            zone -> firm ? consultant.firm(site, zone) : consultant.advise(site, zone));
    Consultation answer = new Consultation(site, consultant.pack(), advice);
    return of(was, new AdviceSaver(consultant.engine()).save(answer, making));
  }

  /** Compares two answers. */
  public static Recheck of(SavedAdvice was, SavedAdvice now) {
    return new Recheck(
        was,
        now,
        was.site().equals(now.site()),
        PackComparison.of(was.rulePack(), now.rulePack()),
        zones(was, now),
        WholeComparison.of(was, now));
  }

  private static List<ZoneRecheck> zones(SavedAdvice was, SavedAdvice now) {
    List<ZoneRecheck> zones = new ArrayList<>();
    for (Pairs<SavedZone> pair : Pairs.of(was.zones(), now.zones(), SavedZone::name)) {
      if (pair.both()) {
        zones.add(ZoneComparison.of(pair.was().orElseThrow(), pair.now().orElseThrow()));
      } else {
        String before = pair.was().map(SavedZone::line).orElse("not there");
        String after = pair.now().map(SavedZone::line).orElse("not there");
        List<Difference> gone = List.of(Difference.worse(Topic.ZONE, pair.name(), before, after));
        zones.add(new ZoneRecheck(pair.name(), before, after, Stand.FALLEN, gone));
      }
    }
    return zones;
  }

  /** Whether program and rules are the same as then. */
  public boolean sameProgram() {
    return was.made().version().equals(now.made().version())
        && was.rulePack().fingerprint().equals(now.rulePack().fingerprint());
  }

  /** Whether the scheme or the plan still stands. */
  public Stand wholeStand() {
    if (whole.isEmpty()) {
      return Stand.IDENTICAL;
    }
    boolean fallen =
        whole.stream()
            .filter(Difference::worse)
            .anyMatch(one -> one.topic() == Topic.SCHEME || one.topic() == Topic.PLAN);
    if (fallen) {
      return Stand.FALLEN;
    }
    return whole.stream().anyMatch(Difference::worse) ? Stand.LOOK_AGAIN : Stand.STANDS;
  }

  /** Whether the advice stands in all zones and together. */
  public Stand stand() {
    return zones.stream().map(ZoneRecheck::stand).reduce(wholeStand(), Stand::worst);
  }
}
