package underhold.consult;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import underhold.advice.Finding;
import underhold.advice.OptionAdvice;
import underhold.advice.Ranking;
import underhold.advice.Standing;
import underhold.advice.SupportOption;
import underhold.site.Site;

/**
 * What an engineer expects whatever the site (judgement): a worse site never raises an option's own
 * standing, and better access never lowers it. Checked over random plausible sites.
 */
class RankingChecksTest {
  private static final int SITES = 200;
  private static final int RULED_OUT = -1000;

  private final Consultant consultant = Consultant.standard();
  private final List<Map<String, String>> sites = PlausibleSites.many(SITES, 7);

  @Test
  @DisplayName("Pits never rise with more water")
  void pits_never_rise_with_more_water() {
    neverRises(
        SupportOption.PITS,
        "groundWaterDepth",
        List.of("40 m", "15 m", "6 m", "3 m", "1 m", "0 m"));
  }

  @Test
  @DisplayName("Pits never rise with less freedom to lower water")
  void pits_never_rise_with_less_drawdown() {
    neverRises(SupportOption.PITS, "drawdownAllowed", List.of("yes", "limited", "no"));
    neverRises(SupportOption.PITS, "drawdownHarm", List.of("none", "clay-or-peat"));
    neverRises(SupportOption.PITS, "drawdownHarm", List.of("none", "timber-piles"));
  }

  @Test
  @DisplayName("Pits never rise with a shorter stand-up time")
  void pits_never_rise_with_shorter_stand_up() {
    neverRises(SupportOption.PITS, "standUp", List.of("days", "hours", "minutes", "none"));
  }

  @Test
  @DisplayName("Pits never rise with more boulders")
  void pits_never_rise_with_more_boulders() {
    neverRises(SupportOption.PITS, "obstructions", List.of("none", "occasional", "frequent"));
  }

  @Test
  @DisplayName(
      "Pits never rise with a deeper pit, where bearing is not below the excavation and the element stays in the zone")
  void pits_never_rise_with_deeper_pit() {
    List<String> below =
        List.of("0.6 m", "1.5 m", "3 m", "3.1 m", "6 m", "6.1 m", "9 m", "9.1 m", "14 m");
    neverRises(
        SupportOption.PITS,
        below.stream()
            .map(
                depth -> {
                  Map<String, String> change = new LinkedHashMap<>();
                  change.put("excavationBelowFooting", depth);
                  change.put("bearingDepth", "0 m");
                  change.put("gapToExcavation", "0.2 m");
                  change.put("excavationDepth", "");
                  return change;
                })
            .toList(),
        f -> List.of("beside", "inside-walls").contains(f.get("excavationPosition")));
  }

  @Test
  @DisplayName("Pits never fall from soft to stiff to hard clay")
  void pits_never_fall_from_clay_to_hard_clay() {
    neverRises(
        SupportOption.PITS,
        List.of("hard-clay-or-till", "stiff-clay", "soft-clay").stream()
            .map(
                soil ->
                    Map.of(
                        "worstSoil",
                        soil,
                        "soilAtFooting",
                        soil,
                        "runningLayer",
                        "no",
                        "openLayer",
                        "no",
                        "gapToExcavation",
                        "0.2 m"))
            .toList(),
        // Outside the zone firm soil removes the need for pits, which is another matter.
        f -> List.of("beside", "inside-walls").contains(f.get("excavationPosition")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"bracket-piles", "drilled-piles", "needles"})
  @DisplayName("Brackets, drilled piles and needles never fall with more headroom or better access")
  void options_never_fall_with_better_access(String id) {
    SupportOption option = SupportOption.find(id).orElseThrow();
    neverRises(option, "outsideHeadroom", List.of("8 m", "2 m", "1.9 m", "1 m"));
    neverRises(option, "insideHeadroom", List.of("8 m", "2 m", "1.9 m", "1.8 m", "1 m"));
    neverRises(option, "outsideWidth", List.of("8 m", "1 m", "0.9 m"));
    neverRises(option, "insideWidth", List.of("8 m", "1 m", "0.9 m"));
    neverRises(option, "outsideAccess", List.of("large-rig", "small-rig", "hand", "none"));
    neverRises(option, "insideAccess", List.of("large-rig", "small-rig", "hand", "none"));
    neverRises(option, "rigBothSides", List.of("yes", "no"));
    neverRises(option, "drillingFromAbove", List.of("yes", "no"));
    neverRises(option, "roomForBeams", List.of("yes", "no"));
  }

  @Test
  @DisplayName("Edge pits are never alive unless the element is undermined")
  void edge_pits_never_alive_unless_undermined() {
    for (Map<String, String> facts : sites) {
      Ranking ranking = rank(facts);
      if (List.of("beside", "inside-walls", "no-excavation")
          .contains(facts.get("excavationPosition"))) {
        assertThat(ranking.of(SupportOption.EDGE_PITS).standing())
            .as("%s", facts)
            .isEqualTo(Standing.RULED_OUT);
      }
    }
  }

  @Test
  @DisplayName("Watching never falls with a larger gap")
  void monitor_never_falls_with_larger_gap() {
    neverRises(
        SupportOption.MONITOR,
        List.of("40 m", "20 m", "10 m", "5 m", "2 m", "1.9 m", "1 m", "0 m").stream()
            .map(gap -> Map.of("gapToExcavation", gap))
            .toList(),
        f -> List.of("beside", "inside-walls").contains(f.get("excavationPosition")));
  }

  @Test
  @DisplayName("Watching never rises with a tighter movement limit")
  void monitor_never_rises_with_tighter_limit() {
    neverRises(
        SupportOption.MONITOR,
        "movementLimit",
        List.of("60 mm", "25 mm", "10 mm", "6 mm", "5 mm", "2 mm", "1 mm"));
  }

  @Test
  @DisplayName("Nothing assumed scores: forgetting a fact never adds a finding that scores on it")
  void assumed_facts_never_score() {
    PlausibleSites forgetful = new PlausibleSites(11);
    for (Map<String, String> facts : sites.subList(0, 150)) {
      Site site = PlausibleSites.site(forgetful.forget(facts, 0.5));
      for (OptionAdvice option : rank(site).options()) {
        for (Finding finding : option.findings()) {
          assertThat(finding.assumed()).as(finding.rule().id()).isFalse();
          assertThat(finding.facts())
              .as(finding.rule().id())
              .allMatch(
                  fact ->
                      fact.origin().isKnown()
                          || finding.rule().conditions().stream()
                              .anyMatch(
                                  c ->
                                      c.fact().equals(fact.name())
                                          && c.operator()
                                              == underhold.advice.Condition.Operator.UNKNOWN));
        }
      }
    }
  }

  @Test
  @DisplayName("A leader has something that speaks for it and a score above 0")
  void leader_is_spoken_for() {
    PlausibleSites forgetful = new PlausibleSites(12);
    for (Map<String, String> facts : sites) {
      for (double share : new double[] {0, 0.5, 0.9}) {
        rank(forgetful.forget(facts, share))
            .leader()
            .ifPresent(
                leader -> {
                  assertThat(leader.score()).isPositive();
                  assertThat(leader.spokenFor()).isTrue();
                });
      }
    }
  }

  @Test
  @DisplayName("Rules that derive facts never disagree on a plausible site")
  void derive_rules_never_disagree() {
    PlausibleSites forgetful = new PlausibleSites(13);
    for (Map<String, String> facts : sites.subList(0, 200)) {
      for (double share : new double[] {0, 0.3, 0.7}) {
        Site site = PlausibleSites.site(forgetful.forget(facts, share));
        assertThat(consultant.screen(site, site.zones().get(0)).conflicts())
            .as("%s", site)
            .isEmpty();
      }
    }
  }

  private void neverRises(SupportOption option, String fact, List<String> fromGoodToBad) {
    neverRises(
        option, fromGoodToBad.stream().map(value -> Map.of(fact, value)).toList(), f -> true);
  }

  /** Standing of the option along changes that go from good to bad never rises. */
  private void neverRises(
      SupportOption option,
      List<Map<String, String>> changes,
      Predicate<Map<String, String>> where) {
    int compared = 0;
    for (Map<String, String> facts : sites) {
      if (!where.test(facts)) {
        continue;
      }
      List<Integer> values = new ArrayList<>();
      for (Map<String, String> change : changes) {
        Map<String, String> changed = new LinkedHashMap<>(facts);
        changed.putAll(change);
        changed.values().removeIf(String::isEmpty);
        values.add(value(rank(changed).of(option)));
      }
      for (int i = 1; i < values.size(); i++) {
        assertThat(values.get(i))
            .as("%s from %s to %s on %s", option.id(), changes.get(i - 1), changes.get(i), facts)
            .isLessThanOrEqualTo(values.get(i - 1));
        compared++;
      }
    }
    assertThat(compared).isGreaterThan(50);
  }

  private static int value(OptionAdvice advice) {
    return advice.standing() == Standing.RULED_OUT ? RULED_OUT : advice.score();
  }

  private Ranking rank(Map<String, String> facts) {
    return rank(PlausibleSites.site(facts));
  }

  private Ranking rank(Site site) {
    return consultant.rank(site, site.zones().get(0));
  }
}
