package underhold.consult;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import underhold.advice.Finding;
import underhold.advice.Hold;
import underhold.advice.OptionAdvice;
import underhold.advice.SupportOption;
import underhold.consult.change.ChangedFact;
import underhold.consult.change.CheckChange;
import underhold.consult.change.FindingChange;
import underhold.consult.change.FindingChange.Kind;
import underhold.consult.change.OptionChange;
import underhold.consult.change.SheetChange;
import underhold.consult.change.Trial;
import underhold.consult.change.WhatIf;
import underhold.consult.change.ZoneChange;
import underhold.quantity.UnitSystem;
import underhold.report.AdviceJson;
import underhold.report.Json;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;
import underhold.site.FactReader;
import underhold.site.GroundProfile;
import underhold.site.Site;
import underhold.site.StatedFact;
import underhold.site.Zone;
import underhold.sizing.Check;
import underhold.sizing.Verdict;

/** What a changed fact does: where it is stated, and every difference it makes. */
class WhatIfTest {
  private static final FactDictionary DICTIONARY = FactDictionary.standard();
  private static final Consultant CONSULTANT = Consultant.standard();
  private static final WhatIf WHAT_IF = new WhatIf(CONSULTANT);
  private static final int TRIALS = 30;

  private static final Map<Kind, Kind> MIRROR =
      Map.of(
          Kind.GAINED, Kind.LOST,
          Kind.LOST, Kind.GAINED,
          Kind.COUNTS_NOW, Kind.COUNTS_NO_LONGER,
          Kind.COUNTS_NO_LONGER, Kind.COUNTS_NOW,
          Kind.PERHAPS_NOW, Kind.PERHAPS_NO_LONGER,
          Kind.PERHAPS_NO_LONGER, Kind.PERHAPS_NOW);

  /** A random plausible site, another with one of its facts changed, and the change. */
  private record Case(Site before, Site after, Trial trial) {}

  /** Each changes one fact to what another random site has there, if nothing contradicts it. */
  private static List<Case> cases() {
    List<Case> cases = new ArrayList<>();
    PlausibleSites sites = new PlausibleSites(77);
    Random random = new Random(77);
    while (cases.size() < TRIALS) {
      Map<String, String> facts = new LinkedHashMap<>(sites.next());
      Map<String, String> other = sites.next();
      if (random.nextBoolean()) {
        facts = new LinkedHashMap<>(sites.forget(facts, 0.3));
      }
      List<String> names = new ArrayList<>(other.keySet());
      String name = names.get(random.nextInt(names.size()));
      if (other.get(name).equals(facts.get(name))) {
        continue;
      }
      Map<String, String> changed = new LinkedHashMap<>(facts);
      changed.put(name, other.get(name));
      Site before = PlausibleSites.site(facts);
      Trial trial = Trial.of(before, OptionalInt.empty(), Map.of(fact(name), value(name, other)));
      if (trial.contradictions(DICTIONARY, "x").isEmpty()) {
        cases.add(new Case(before, PlausibleSites.site(changed), trial));
      }
    }
    return cases;
  }

  private static FactDefinition fact(String name) {
    return DICTIONARY.require(name);
  }

  private static StatedFact value(String name, Map<String, String> typed) {
    return stated(name, String.valueOf(typed.get(name)));
  }

  private static StatedFact stated(String name, String typed) {
    return FactReader.read(fact(name), typed)
        .fold(
            value -> new StatedFact(value, ""),
            () -> StatedFact.unknown(""),
            rejected -> {
              throw new IllegalArgumentException(name + ": " + rejected.explanation());
            });
  }

  private static ZoneChange change(Trial trial) {
    return WHAT_IF.of(trial, OptionalInt.empty()).zones().get(0);
  }

  @Test
  void after_is_the_answer_to_the_changed_site_and_gained_with_kept_is_all_of_it() {
    int gained = 0;
    for (Case one : cases()) {
      ZoneChange zone = change(one.trial());

      assertThat(json(one.trial().after(), zone.after()))
          .isEqualTo(json(one.after(), CONSULTANT.advise(one.after(), one.after().zones().get(0))));
      for (OptionChange option : zone.options()) {
        OptionAdvice before = zone.before().ranking().of(option.option());
        OptionAdvice after = zone.after().ranking().of(option.option());
        Set<String> kept = ids(before.findings());
        kept.removeAll(of(option, Kind.LOST));
        kept.addAll(of(option, Kind.GAINED));
        assertThat(kept).isEqualTo(ids(after.findings()));
        assertThat(ids(before.findings())).noneMatch(of(option, Kind.GAINED)::contains);
        assertThat(ids(after.findings())).noneMatch(of(option, Kind.LOST)::contains);
        Set<String> held = holds(before.holds());
        held.removeAll(holds(option.holdsLost()));
        held.addAll(holds(option.holdsGained()));
        assertThat(held).isEqualTo(holds(after.holds()));
        gained += of(option, Kind.GAINED).size();
      }
      Set<String> conditions = ids(zone.before().conditions());
      conditions.removeAll(ids(zone.conditionsLost()));
      conditions.addAll(ids(zone.conditionsGained()));
      assertThat(conditions).isEqualTo(ids(zone.after().conditions()));
      Set<String> cautions = ids(zone.before().cautions());
      cautions.removeAll(ids(zone.cautionsLost()));
      cautions.addAll(ids(zone.cautionsGained()));
      assertThat(cautions).isEqualTo(ids(zone.after().cautions()));
    }
    assertThat(gained).isPositive();
  }

  @Test
  void a_score_moves_only_where_some_finding_is_told() {
    int moved = 0;
    for (Case one : cases()) {
      for (OptionChange option : change(one.trial()).options()) {
        if (option.before().score() != option.after().score()) {
          assertThat(option.findings()).as(option.option().id()).isNotEmpty();
          moved++;
        }
      }
    }
    assertThat(moved).isPositive();
  }

  @Test
  void the_change_back_mirrors_what_was_gained_and_lost() {
    int changes = 0;
    for (Case one : cases()) {
      ChangedFact changed = one.trial().changed().get(0);
      StatedFact old = changed.before().orElse(StatedFact.unknown(""));
      ZoneChange there = change(one.trial());
      ZoneChange back =
          change(Trial.of(one.trial().after(), OptionalInt.empty(), Map.of(changed.fact(), old)));

      assertThat(back.nothing()).isEqualTo(there.nothing());
      assertThat(ids(back.conditionsGained())).isEqualTo(ids(there.conditionsLost()));
      assertThat(ids(back.conditionsLost())).isEqualTo(ids(there.conditionsGained()));
      assertThat(ids(back.cautionsGained())).isEqualTo(ids(there.cautionsLost()));
      assertThat(back.facts()).hasSameSizeAs(there.facts());
      for (OptionChange option : there.options()) {
        OptionChange turned = of(back, option.option());
        assertThat(turned.before()).isEqualTo(option.after());
        assertThat(turned.after()).isEqualTo(option.before());
        assertThat(holds(turned.holdsGained())).isEqualTo(holds(option.holdsLost()));
        assertThat(turned.sheet().stateBefore()).isEqualTo(option.sheet().stateAfter());
        assertThat(checks(turned.sheet())).isEqualTo(checks(option.sheet()));
        for (Kind kind : Kind.values()) {
          assertThat(of(turned, kind)).isEqualTo(of(option, MIRROR.get(kind)));
        }
      }
      changes += there.nothing() ? 0 : 1;
    }
    assertThat(changes).isGreaterThan(TRIALS / 4);
  }

  @Test
  void nothing_changes_where_the_same_is_stated_again() {
    Site site = SizingSites.demo("alder-row-party-wall");
    Trial trial = trial(site, "excavationDepth", "3400 mm");

    assertThat(trial.changed()).allMatch(ChangedFact::already);
    assertThat(WHAT_IF.of(trial, OptionalInt.empty()).nothing()).isTrue();
  }

  /** 3.4 m down against a footing at 1.0 m is 2.4 m of pit; 6 m down is 5 m: two lifts of 3 m. */
  @Test
  void a_deeper_excavation_costs_the_easy_pits_their_major_reason_for_a_moderate_one() {
    Site site = SizingSites.demo("alder-row-party-wall");
    ZoneChange zone = change(trial(site, "excavationDepth", "6 m"));
    OptionChange pits = of(zone, SupportOption.PITS);

    assertThat(of(pits, Kind.LOST)).containsExactly("PIT-04a");
    assertThat(of(pits, Kind.GAINED)).containsExactly("PIT-05a");
    assertThat(pits.after().score()).isEqualTo(pits.before().score() - 4 + 2);
    assertThat(zone.facts())
        .anySatisfy(
            fact -> {
              assertThat(fact.after().name()).isEqualTo("excavationBelowFooting");
              assertThat(fact.before().text()).isEqualTo("2.4 m");
              assertThat(fact.after().text()).isEqualTo("5 m");
            });
    CheckChange sheeting = pits.sheet().checks().get(0);
    assertThat(sheeting.before().map(Check::verdict)).contains(Verdict.PASSES);
    assertThat(sheeting.after().map(Check::verdict)).contains(Verdict.REFER);
  }

  @Test
  void a_fact_is_changed_wherever_it_is_stated_so_that_no_zone_keeps_its_own_word() {
    Site site = threeZones();
    Trial trial = trial(site, "groundWaterDepth", "2 m");

    assertThat(trial.changed())
        .extracting(
            one -> one.zone().orElse("site") + " " + one.textBefore() + " " + one.textAfter())
        .containsExactly("site 7 m 2 m", "B 9 m 2 m");
    assertThat(effective(trial.after(), "groundWaterDepth")).containsExactly("2 m", "2 m", "2 m");
    assertThat(trial.left()).isEmpty();
  }

  @Test
  void a_fact_that_only_some_zones_state_is_left_where_it_is_not_stated() {
    Trial trial = trial(threeZones(), "gapToExcavation", "3 m");

    assertThat(trial.changed()).extracting(ChangedFact::zone).containsExactly(Optional.of("A"));
    assertThat(trial.left()).containsEntry(fact("gapToExcavation"), List.of("B", "C"));
    assertThat(effective(trial.after(), "gapToExcavation")).containsExactly("3 m", "-", "-");
  }

  @Test
  void a_fact_that_nobody_states_is_stated_for_the_whole_site() {
    Trial trial = trial(threeZones(), "clearSpan", "2 m");

    assertThat(trial.changed()).extracting(ChangedFact::zone).containsExactly(Optional.empty());
    assertThat(effective(trial.after(), "clearSpan")).containsExactly("2 m", "2 m", "2 m");
    assertThat(trial.changed().get(0).textBefore()).isEqualTo("not stated");
  }

  @Test
  void with_a_zone_only_that_zone_is_changed_and_looked_at() {
    Trial trial =
        Trial.of(
            threeZones(),
            OptionalInt.of(2),
            Map.of(fact("groundWaterDepth"), stated("groundWaterDepth", "unknown")));

    assertThat(effective(trial.after(), "groundWaterDepth")).containsExactly("7 m", "9 m", "-");
    assertThat(trial.changed().get(0).textBefore()).isEqualTo("7 m");
    assertThat(WHAT_IF.of(trial, OptionalInt.of(2)).zones())
        .extracting(ZoneChange::name)
        .containsExactly("C");
  }

  @Test
  void facts_that_contradict_each_other_are_named_together_and_may_be_changed_together() {
    Site site = SizingSites.demo("alder-row-party-wall");
    Trial alone = trial(site, "excavationBelowFooting", "3 m");

    assertThat(alone.contradictions(DICTIONARY, "f"))
        .singleElement()
        .satisfies(
            one ->
                assertThat(one.together())
                    .containsExactlyInAnyOrder("excavationDepth", "foundingDepth"));
    Map<FactDefinition, StatedFact> both = new LinkedHashMap<>();
    both.put(fact("excavationBelowFooting"), stated("excavationBelowFooting", "3 m"));
    both.put(fact("excavationDepth"), stated("excavationDepth", "4 m"));
    assertThat(Trial.of(site, OptionalInt.empty(), both).contradictions(DICTIONARY, "f")).isEmpty();
  }

  @Test
  void a_fact_that_every_zone_needs_cannot_be_taken_away() {
    Site site = SizingSites.demo("alder-row-party-wall");

    assertThat(trial(site, "loadPattern", "unknown").contradictions(DICTIONARY, "f"))
        .singleElement()
        .satisfies(one -> assertThat(one.text()).contains("party wall", "loadPattern"));
  }

  private static Trial trial(Site site, String name, String typed) {
    return Trial.of(site, OptionalInt.empty(), Map.of(fact(name), stated(name, typed)));
  }

  private static Site threeZones() {
    Map<String, String> common =
        Map.of("loadPattern", "continuous", "excavationPosition", "beside");
    return new Site(
        "three",
        UnitSystem.SI,
        facts(Map.of("groundWaterDepth", "7 m")),
        GroundProfile.NONE,
        List.of(
            zone("A", common, Map.of("gapToExcavation", "1 m")),
            zone("B", common, Map.of("groundWaterDepth", "9 m")),
            zone("C", common, Map.of())),
        Map.of(),
        "");
  }

  private static Zone zone(String name, Map<String, String> common, Map<String, String> own) {
    Map<String, String> all = new LinkedHashMap<>(common);
    all.putAll(own);
    return new Zone(name, facts(all), GroundProfile.NONE, "");
  }

  private static Map<String, StatedFact> facts(Map<String, String> typed) {
    Map<String, StatedFact> facts = new LinkedHashMap<>();
    typed.forEach((name, text) -> facts.put(name, stated(name, text)));
    return facts;
  }

  /** What holds in each zone; a dash where nothing is known. */
  private static List<String> effective(Site site, String name) {
    return site.zones().stream()
        .map(
            zone -> {
              StatedFact own = zone.facts().getOrDefault(name, site.facts().get(name));
              return own == null || own.value() == null ? "-" : own.value().text();
            })
        .toList();
  }

  private static OptionChange of(ZoneChange zone, SupportOption option) {
    return zone.options().stream().filter(one -> one.option() == option).findFirst().orElseThrow();
  }

  private static Set<String> of(OptionChange option, Kind kind) {
    return option.findings().stream()
        .filter(change -> change.kind() == kind)
        .map(FindingChange::finding)
        .map(finding -> finding.rule().id())
        .collect(Collectors.toSet());
  }

  private static Set<String> ids(List<Finding> findings) {
    return findings.stream().map(finding -> finding.rule().id()).collect(Collectors.toSet());
  }

  private static Set<String> holds(List<Hold> holds) {
    return holds.stream().map(hold -> hold.rule().id()).collect(Collectors.toSet());
  }

  private static Set<String> checks(SheetChange sheet) {
    return sheet.checks().stream().map(one -> one.check().id()).collect(Collectors.toSet());
  }

  private static String json(Site site, ZoneAdvice zone) {
    return Json.text(AdviceJson.of(new Consultation(site, CONSULTANT.pack(), List.of(zone))));
  }
}
