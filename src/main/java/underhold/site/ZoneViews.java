package underhold.site;

import java.util.ArrayList;
import java.util.List;

/** Makes the flat view of a zone's facts that rules and sizing read. */
public final class ZoneViews {
  private ZoneViews() {}

  /** What was stated for the zone or the whole site, and what follows from it. */
  public static FactView known(Site site, Zone zone, FactDictionary dictionary) {
    return known(site, zone, dictionary, Deductions.once(ground(site, zone)));
  }

  /**
   * The same, for many trials of one zone.
   *
   * @param deductions what followed before in the zone's ground
   */
  public static FactView known(
      Site site, Zone zone, FactDictionary dictionary, Deductions deductions) {
    return derived(stated(site, zone, dictionary), deductions);
  }

  /**
   * The same, with the worse value assumed wherever the dictionary says so, and with what follows
   * from that. Nothing known is replaced; whatever rests on an assumption is itself {@link
   * Origin#ASSUMED}.
   */
  public static FactView cautious(FactView known) {
    return known.cautious(view -> derived(Assumptions.added(view), GroundProfile.NONE));
  }

  /** The facts from which a fact may follow by calculation; empty where rules make it. */
  public static List<String> sources(String target) {
    return Derivations.sources(target);
  }

  /** What was stated, nothing else; the zone's own word overrides the site's. */
  static FactView stated(Site site, Zone zone, FactDictionary dictionary) {
    List<Fact> facts = new ArrayList<>(site.facts().size() + zone.facts().size());
    site.facts().forEach((name, fact) -> facts.add(fact(dictionary.require(name), fact)));
    zone.facts().forEach((name, fact) -> facts.add(fact(dictionary.require(name), fact)));
    return FactView.of(dictionary, facts);
  }

  private static Fact fact(FactDefinition definition, StatedFact stated) {
    Origin origin = stated.value() == null ? Origin.UNKNOWN : Origin.STATED;
    return new Fact(definition, origin, stated.value(), stated.note());
  }

  /** The profile that holds at the zone. */
  static GroundProfile ground(Site site, Zone zone) {
    return zone.ground().isEmpty() ? site.ground() : zone.ground();
  }

  /** The view with all that follows from it. */
  static FactView derived(FactView view, GroundProfile ground) {
    return derived(view, Deductions.once(ground));
  }

  private static FactView derived(FactView view, Deductions deductions) {
    FactView current = view;
    boolean changed = true;
    while (changed) { // ends: each round makes at least one more fact known
      changed = false;
      for (int i = 0; i < Derivations.ALL.size(); i++) {
        Fact before = current.fact(Derivations.ALL.get(i).target());
        if (before.origin() != Origin.UNKNOWN) {
          continue;
        }
        Deductions.Found found = deductions.of(i, current);
        Derived derived = found.derived();
        if (derived != null) {
          Origin origin = found.assumed() ? Origin.ASSUMED : Origin.DERIVED;
          current =
              current.with(new Fact(before.definition(), origin, derived.value(), derived.how()));
          changed = true;
        }
      }
    }
    return current;
  }
}
