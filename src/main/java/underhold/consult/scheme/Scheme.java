package underhold.consult.scheme;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underhold.advice.RulePack;
import underhold.advice.SupportOption;
import underhold.site.Site;

/**
 * The methods of a site married into one: what carries, what closes an edge, what props, what is
 * watched, and what is decided first.
 *
 * @param site the site
 * @param pack the rules it rests on
 * @param best the best combination
 * @param others the next best, best first
 * @param heldAbove one that would come first, were it not held by an open rule between zones
 * @param primary the zone whose method carries most; empty where none carries
 * @param questions what to ask of pairs of zones, those that hold the scheme first
 */
public record Scheme(
    Site site,
    RulePack pack,
    Combination best,
    List<Combination> others,
    Optional<Combination> heldAbove,
    Optional<String> primary,
    List<PairQuestion> questions) {
  public Scheme {
    others = List.copyOf(others);
    questions = List.copyOf(questions);
  }

  /** The part of a zone's method. */
  public Part part(String zone) {
    return Part.of(best.of(zone));
  }

  /** Whether the method of that zone is the primary one. */
  public boolean isPrimary(String zone) {
    Optional<SupportOption> method = primary.flatMap(name -> best.of(name).method());
    return method.isPresent()
        && part(zone) == Part.CARRIES
        && best.of(zone).method().equals(method);
  }

  /**
   * What another combination does otherwise.
   *
   * @param changes zone by zone, where the method differs
   * @param lost what holds between zones in the best combination and not in this one
   * @param gained what holds in this one and not in the best
   * @param points its points less those of the best
   */
  public record Trade(
      List<Change> changes, List<PairFinding> lost, List<PairFinding> gained, int points) {
    public Trade {
      changes = List.copyOf(changes);
      lost = List.copyOf(lost);
      gained = List.copyOf(gained);
    }
  }

  /** A zone with another method than in the best combination. */
  public record Change(ZoneChoice from, ZoneChoice to) {}

  /** What another combination trades against the best one. */
  public Trade trade(Combination other) {
    List<Change> changes = new ArrayList<>();
    for (ZoneChoice from : best.zones()) {
      ZoneChoice to = other.of(from.name());
      if (!to.method().equals(from.method())) {
        changes.add(new Change(from, to));
      }
    }
    return new Trade(
        changes,
        without(best.findings(), other.findings()),
        without(other.findings(), best.findings()),
        other.points() - best.points());
  }

  private static List<PairFinding> without(List<PairFinding> these, List<PairFinding> those) {
    return these.stream()
        .filter(one -> those.stream().noneMatch(other -> same(one, other)))
        .toList();
  }

  private static boolean same(PairFinding one, PairFinding other) {
    return one.id().equals(other.id())
        && one.first().equals(other.first())
        && one.second().equals(other.second());
  }
}
