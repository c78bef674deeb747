package underhold.consult;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.advice.BuiltInPack;
import underhold.advice.Condition;
import underhold.advice.OptionAdvice;
import underhold.advice.Ranking;
import underhold.advice.Rule;
import underhold.advice.Standing;
import underhold.advice.SupportOption;
import underhold.consult.turning.Change;
import underhold.consult.turning.Goal;
import underhold.consult.turning.TurningFinder;
import underhold.consult.turning.TurningPoint;
import underhold.consult.turning.TurningPoints;
import underhold.quantity.Measure;
import underhold.quantity.Quantity;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;
import underhold.site.FactReader;
import underhold.site.FactValue;
import underhold.site.Origin;
import underhold.site.Site;
import underhold.site.SiteChecks;
import underhold.site.StatedFact;
import underhold.site.Zone;
import underhold.site.ZoneViews;

/** Every turning point told against a fresh consultation of the changed site. */
class TurningPointsTest {
  private static final int SITES = 40;
  private static final FactDictionary DICTIONARY = FactDictionary.standard();

  private final Consultant consultant = Consultant.toCheckBy(BuiltInPack.pack());

  @Test
  @DisplayName(
      "Every turning point turns when the changed site is advised anew, its facts can be together, and none of its changes can be left out: 40 random sites")
  void every_turning_point_turns() {
    int points = 0;
    int pairs = 0;
    for (Site site : sites(11)) {
      Zone zone = site.zones().get(0);
      String leader = leader(consultant.ranking(site, zone));
      TurningPoints found = finder(site).another(2);
      for (TurningPoint point : found.all()) {
        Site changed = changed(site, point.values());
        String then = leader(consultant.ranking(changed, changed.zones().get(0)));
        assertThat(then).as(told(point)).isEqualTo(point.after().leaderId()).isNotEqualTo(leader);
        assertThat(SiteChecks.contradictions(changed, DICTIONARY, "")).isEmpty();
        points++;
      }
      for (TurningPoint point : found.pairs()) {
        for (Change left : point.changes()) {
          Map<String, FactValue> fewer = new LinkedHashMap<>(point.values());
          fewer.remove(left.fact().name());
          Site part = changed(site, fewer);
          boolean possible = SiteChecks.contradictions(part, DICTIONARY, "").isEmpty();
          String then = leader(consultant.ranking(part, part.zones().get(0)));
          assertThat(possible && then.equals(point.after().leaderId())).as(told(point)).isFalse();
        }
        pairs++;
      }
    }
    assertThat(points).isGreaterThan(SITES);
    assertThat(pairs).isGreaterThan(SITES / 4);
  }

  @Test
  @DisplayName(
      "No single change that turns is missed on the grid of the dictionary's words and the rules' limits, just below, at and just above each: 40 random sites")
  void no_single_change_is_missed() {
    int turned = 0;
    for (Site site : sites(23)) {
      Zone zone = site.zones().get(0);
      String leader = leader(consultant.ranking(site, zone));
      List<TurningPoint> singles = finder(site).another(1).singles();
      for (FactDefinition fact : DICTIONARY.all()) {
        for (FactValue value : grid(site, fact)) {
          Site changed = changed(site, Map.of(fact.name(), value));
          if (!SiteChecks.contradictions(changed, DICTIONARY, "").isEmpty()) {
            continue;
          }
          String then = leader(consultant.ranking(changed, changed.zones().get(0)));
          if (!then.equals(leader)) {
            turned++;
            assertThat(singles)
                .as(site.note() + fact.name() + " = " + value.text() + " leads to " + then)
                .anyMatch(
                    point ->
                        point.after().leaderId().equals(then)
                            && point.changes().get(0).fact().equals(fact)
                            && point.changes().get(0).covers(value));
          }
        }
      }
    }
    assertThat(turned).isGreaterThan(SITES);
  }

  @Test
  @DisplayName(
      "Where one option is asked for, what is found puts it first, or brings it back, when advised anew: 20 random sites")
  void what_is_asked_for_is_reached() {
    int reached = 0;
    for (Site site : sites(5).subList(0, SITES / 2)) {
      Ranking ranking = consultant.ranking(site, site.zones().get(0));
      TurningFinder finder = finder(site);
      for (SupportOption option : SupportOption.values()) {
        boolean out = ranking.of(option).standing() == Standing.RULED_OUT;
        Goal goal = out ? Goal.back(option) : Goal.first(option);
        for (TurningPoint point : finder.towards(goal, 2).all()) {
          Site changed = changed(site, point.values());
          Standing standing =
              consultant.ranking(changed, changed.zones().get(0)).of(option).standing();
          assertThat(out ? standing != Standing.RULED_OUT : standing == Standing.LEADS)
              .as(option.id() + told(point))
              .isTrue();
          reached++;
        }
      }
    }
    assertThat(reached).isGreaterThan(SITES);
  }

  private TurningFinder finder(Site site) {
    Zone zone = site.zones().get(0);
    return new TurningFinder(consultant.trials(site, zone), zone);
  }

  private static List<Site> sites(long seed) {
    PlausibleSites plausible = new PlausibleSites(seed);
    List<Site> sites = new ArrayList<>();
    for (int i = 0; i < SITES; i++) {
      Map<String, String> facts = plausible.next();
      sites.add(PlausibleSites.site(i % 2 == 0 ? facts : plausible.forget(facts, (i % 5) * 0.15)));
    }
    return sites;
  }

  /** Words, and amounts at the limits of the rules that read the fact, in round figures. */
  private List<FactValue> grid(Site site, FactDefinition fact) {
    if (fact.derived() || calculated(site, fact)) {
      return List.of();
    }
    if (!fact.kind().isNumber()) {
      return fact.values().stream()
          .map(allowed -> (FactValue) new FactValue.Choice(allowed.value()))
          .toList();
    }
    Set<FactValue> values = new HashSet<>();
    for (Rule rule : consultant.pack().rules()) {
      for (Condition condition : rule.conditions()) {
        if (condition.fact().equals(fact.name()) && condition.operator().isNumeric()) {
          for (double part : new double[] {0.95, 1, 1.05}) {
            amount(fact, condition.threshold() * part, values);
          }
        }
      }
    }
    return List.copyOf(values);
  }

  /** What follows by calculation cannot be stated otherwise. */
  private static boolean calculated(Site site, FactDefinition fact) {
    return ZoneViews.known(site, site.zones().get(0), DICTIONARY).fact(fact.name()).origin()
        == Origin.DERIVED;
  }

  private static void amount(FactDefinition fact, double si, Set<FactValue> values) {
    FactDefinition.Range range = fact.requireRange();
    double whole = range.measure() == Measure.COUNT ? Math.rint(si) : si;
    String text = Quantity.of(whole, range.measure(), range.siUnit()).text();
    FactReader.read(fact, text).fold(values::add, () -> false, rejected -> false);
  }

  private static Site changed(Site site, Map<String, FactValue> values) {
    Zone zone = site.zones().get(0);
    Map<String, StatedFact> facts = new LinkedHashMap<>(zone.facts());
    values.forEach((name, value) -> facts.put(name, new StatedFact(value, "")));
    Zone changed = new Zone(zone.name(), facts, zone.ground(), zone.note());
    return new Site(
        site.name(),
        site.units(),
        site.facts(),
        site.ground(),
        List.of(changed),
        site.sizing(),
        "");
  }

  private static String told(TurningPoint point) {
    return point.changes().stream()
        .map(c -> c.fact().name() + ": " + c.was().text() + " -> " + c.tried().text())
        .toList()
        .toString();
  }

  private static String leader(Ranking ranking) {
    return ranking.leader().map(OptionAdvice::option).map(SupportOption::id).orElse("");
  }
}
