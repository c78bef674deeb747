package underhold.site;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import underhold.site.SiteProblem.Code;

/** Finds facts of a site that cannot all be true. */
public final class SiteChecks {
  /** Depths that only a mistake puts outside the limits of the dictionary. */
  private static final List<String> DEPTHS =
      List.of("excavationDepth", "foundingDepth", "excavationBelowFooting");

  /** Facts that follow by judgement, which a stated one may override. */
  private static final Set<String> JUDGED = Set.of("bearingDepth", "bearingKind");

  private final Site site;
  private final FactDictionary dictionary;
  private final Problems problems;

  private SiteChecks(Site site, FactDictionary dictionary, Problems problems) {
    this.site = site;
    this.dictionary = dictionary;
    this.problems = problems;
  }

  /**
   * All contradictions in a site; empty where there are none.
   *
   * @param fileName the name that problems show
   */
  public static List<SiteProblem> contradictions(
      Site site, FactDictionary dictionary, String fileName) {
    Problems problems = new Problems(fileName);
    check(site, dictionary, problems);
    return problems.all();
  }

  static void check(Site site, FactDictionary dictionary, Problems problems) {
    SiteChecks checks = new SiteChecks(site, dictionary, problems);
    for (int i = 0; i < site.zones().size() && !problems.isFull(); i++) {
      checks.zone(i);
    }
    checks.purpose();
  }

  /**
   * Whether the facts of a zone alone can all be true.
   *
   * @param known all that is known of it
   * @param deductions what followed before in its ground
   */
  public static boolean fits(Site site, Zone zone, FactView known, Deductions deductions) {
    Problems problems = new Problems("");
    new SiteChecks(of(site, List.of(zone)), known.dictionary(), problems)
        .zone(0, known, deductions, true);
    return problems.isEmpty();
  }

  /** Whether a new excavation, where one is the purpose, passes at least one of the zones. */
  public static boolean fitsPurpose(Site site, List<Zone> zones, FactDictionary dictionary) {
    Problems problems = new Problems("");
    new SiteChecks(of(site, zones), dictionary, problems).purpose();
    return problems.isEmpty();
  }

  private static Site of(Site site, List<Zone> zones) {
    return new Site(
        site.name(), site.units(), site.facts(), site.ground(), zones, site.sizing(), "");
  }

  private void zone(int index) {
    Zone zone = site.zones().get(index);
    Deductions deductions = Deductions.once(ZoneViews.ground(site, zone));
    zone(index, ZoneViews.known(site, zone, dictionary, deductions), deductions, false);
  }

  /** Checks a zone; where one problem is enough, it may leave out the rest. */
  private void zone(int index, FactView known, Deductions deductions, boolean oneIsEnough) {
    GroundProfile ground = deductions.ground();
    againstDerived(index, known, deductions);
    if (oneIsEnough && !problems.isEmpty()) {
      return;
    }
    String bearing = BearingCheck.contradiction(known, ground);
    if (bearing != null) {
      report(index, List.of("bearingDepth", "bearingKind", "ground"), bearing);
    }
    LayerChecks.rock(known, ground)
        .ifPresent(found -> report(index, found.facts(), found.message()));
    LayerChecks.clay(known, ground)
        .ifPresent(found -> report(index, found.facts(), found.message()));
    for (ConsistencyCheck check : ConsistencyChecks.ALL) {
      String contradiction = check.rule().contradiction(known);
      if (contradiction != null) {
        report(index, check.facts(), contradiction + ": " + check.name());
      }
    }
    for (String name : DEPTHS) {
      outOfRange(index, known.fact(name));
    }
  }

  /**
   * Each stated fact against what follows from the others. Where one relation can be turned round
   * several ways it is reported once, and only if it holds in none of them.
   */
  private void againstDerived(int index, FactView known, Deductions deductions) {
    Set<Set<String>> agreed = new HashSet<>();
    Map<Set<String>, Runnable> disagreed = new LinkedHashMap<>();
    for (int i = 0; i < Derivations.ALL.size(); i++) {
      Derivation derivation = Derivations.ALL.get(i);
      Fact stated = known.fact(derivation.target());
      FactValue value = stated.value();
      if (stated.origin() != Origin.STATED || value == null || JUDGED.contains(stated.name())) {
        continue;
      }
      Deductions.Found found = deductions.of(i, known);
      Derived derived = found.derived();
      if (derived == null) {
        continue;
      }
      Set<String> facts = new LinkedHashSet<>(List.of(derivation.target()));
      facts.addAll(found.read());
      facts.remove("excavationPosition");
      if (Agreement.agree(stated.definition(), value, derived.value())) {
        agreed.add(facts);
      } else {
        disagreed.putIfAbsent(facts, () -> reportDerived(index, stated, derived, facts));
      }
    }
    disagreed.keySet().removeAll(agreed);
    disagreed.values().forEach(Runnable::run);
  }

  private void reportDerived(int index, Fact stated, Derived derived, Set<String> facts) {
    report(
        index,
        List.copyOf(facts),
        stated.definition().label()
            + " is stated as "
            + PlainText.shown(stated.text())
            + ", but from the other facts it is "
            + derived.how());
  }

  private void outOfRange(int index, Fact fact) {
    if (fact.origin() != Origin.DERIVED || !(fact.value() instanceof FactValue.Amount amount)) {
      return;
    }
    FactDefinition.Range range = fact.definition().requireRange();
    double si = amount.quantity().si();
    if (si < range.min() || si > range.max()) {
      problems.add(
          Code.OUT_OF_RANGE,
          "zones[" + index + "]",
          inZone(index)
              + (fact.definition().label() + " comes out at " + fact.how())
              + ("; it must lie between " + range.minText() + " and " + range.maxText()),
          "check the depths");
    }
  }

  /** The site as a whole: a new excavation must pass at least one zone. */
  private void purpose() {
    boolean wanted =
        site.zones().stream()
            .map(zone -> ZoneViews.stated(site, zone, dictionary))
            .allMatch(
                stated ->
                    stated.word("purpose").filter("new-excavation"::equals).isPresent()
                        && stated
                            .word("excavationPosition")
                            .filter("no-excavation"::equals)
                            .isPresent());
    if (wanted) {
      problems.add(
          Code.CONTRADICTION,
          placeOf(0, "purpose"),
          "the purpose is a new excavation, but there is none at any zone",
          "correct the purpose or the position of the excavation");
    }
  }

  private void report(int index, List<String> facts, String message) {
    problems.add(
        Code.CONTRADICTION,
        placeOf(index, facts.get(0)),
        inZone(index) + message,
        "correct or leave out one of: " + String.join(", ", facts));
  }

  private String inZone(int index) {
    return site.zones().size() == 1
        ? ""
        : "zone " + PlainText.quoted(site.zones().get(index).name()) + ": ";
  }

  /** Where the fact is stated: in the zone, for the whole site, or nowhere. */
  private String placeOf(int index, String fact) {
    String zone = "zones[" + index + "]";
    if (site.zones().get(index).facts().containsKey(fact)) {
      return zone + ".facts." + fact;
    }
    return site.facts().containsKey(fact) ? "facts." + fact : zone;
  }
}
