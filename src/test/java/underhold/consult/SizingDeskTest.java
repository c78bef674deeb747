package underhold.consult;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import underhold.advice.Standing;
import underhold.advice.SupportOption;
import underhold.quantity.UnitSystem;
import underhold.site.Site;
import underhold.site.Zone;
import underhold.sizing.Amount;
import underhold.sizing.Basis;
import underhold.sizing.Caution;
import underhold.sizing.Check;
import underhold.sizing.MissingInput;
import underhold.sizing.Origin;
import underhold.sizing.Sheet;
import underhold.sizing.SheetInput;
import underhold.sizing.SheetText;
import underhold.sizing.StepProof;
import underhold.sizing.Verdict;

class SizingDeskTest {
  private static final SizingDesk DESK = new SizingDesk();
  private static final Site WALL = SizingSites.ownPartyWall();

  static Sheet pits(Site site, Zone zone, String... settings) {
    Sized sized =
        DESK.size(site, SizingSites.advice(site, zone), SupportOption.PITS, List.of(settings));
    assertThat(sized).isInstanceOf(Sized.Done.class);
    return ((Sized.Done) sized).sheet();
  }

  private static Sheet pits(Site site, String... settings) {
    return pits(site, site.zones().get(0), settings);
  }

  /**
   * The site with one fact of its first zone stated otherwise; left out where the text is empty.
   */
  private static Site with(Site site, String fact, String typed) {
    Zone zone = site.zones().get(0);
    Map<String, underhold.site.StatedFact> facts = new LinkedHashMap<>(zone.facts());
    facts.remove(fact);
    if (!typed.isEmpty()) {
      Site typedOnly =
          PlausibleSites.site(
              Map.of("loadPattern", "continuous", "excavationPosition", "beside", fact, typed));
      facts.putAll(
          Map.of(
              fact, java.util.Objects.requireNonNull(typedOnly.zones().get(0).facts().get(fact))));
    }
    return new Site(
        site.name(),
        site.units(),
        site.facts(),
        site.ground(),
        List.of(new Zone(zone.name(), facts, zone.ground(), "")),
        site.sizing(),
        "");
  }

  private static double si(Sheet sheet, String input) {
    return sheet.input(input).flatMap(SheetInput::amount).map(Amount::si).orElseThrow();
  }

  private static List<String> missing(Sheet sheet) {
    return sheet.missing().stream().map(MissingInput::name).toList();
  }

  @Test
  @DisplayName(
      "Own case: Alder Row: pits go 3.4 - 1.0 + 0.3 = 2.7 m below the footing, water 1.0 + 2.7 - 7.5 = -3.8 m")
  void party_wall_gives_a_complete_sheet() {
    Sheet sheet = pits(WALL);
    assertThat(sheet.complete()).isTrue();
    StepProof.redo(sheet);
    assertThat(si(sheet, "pit-depth")).isCloseTo(2.7, within(1e-9));
    assertThat(si(sheet, "water-above-pit-base")).isCloseTo(-3.8, within(1e-9));
    assertThat(si(sheet, "face-undrained-strength")).isCloseTo(95, within(1e-9));
    assertThat(sheet.input("wall-line-load").orElseThrow())
        .satisfies(
            load -> {
              assertThat(load.origin()).isEqualTo(Origin.STATED);
              assertThat(load.source().citation()).contains("taken down");
            });
    assertThat(sheet.input("pit-depth").orElseThrow().origin()).isEqualTo(Origin.DERIVED);
    assertThat(sheet.input("face-friction-angle").orElseThrow().origin()).isEqualTo(Origin.ASSUMED);
    assertThat(sheet.cautions().get(0).advice().in(UnitSystem.SI)).contains("cohesive-fill");
  }

  @Test
  @DisplayName(
      "Own case: a party wall by hand: boards 3.10 MPa, bearing 185.8 of 164.8 kPa, thrust 64.1 kN/m, moment 73.0 kN m/m")
  void party_wall_by_hand() {
    Sheet sheet = pits(WALL);
    Map<String, Double> byHand =
        Map.of(
            "board-bending", 3097.0,
            "bearing-ultimate", 494.3,
            "base-gross", 185.8,
            "pier-ka", 0.4217,
            "pier-thrust", 64.07,
            "pier-overturning", 73.0,
            "toe-pressure", 8237.0);
    byHand.forEach(
        (step, value) ->
            assertThat(sheet.step(step).orElseThrow().result().si())
                .as(step)
                .isCloseTo(value, within(5e-4 * value))); // four figures
  }

  @Test
  void every_demo_site_gives_the_same_sheet_in_both_unit_systems() {
    assertThat(SizingSites.demos()).hasSizeGreaterThanOrEqualTo(8);
    for (Site site : SizingSites.demos()) {
      for (Zone zone : site.zones()) {
        Sheet si = pits(SizingSites.with(site, UnitSystem.SI, Map.of()), zone);
        Sheet us = pits(SizingSites.with(site, UnitSystem.US, Map.of()), zone);
        assertThat(us.checks()).as(site.name()).isEqualTo(si.checks());
        assertThat(us.steps()).as(site.name()).isEqualTo(si.steps());
        assertThat(us.verdict()).as(site.name()).isEqualTo(si.verdict());
        assertThat(missing(us)).as(site.name()).isEqualTo(missing(si));
        StepProof.redo(si);
      }
    }
  }

  @Test
  void first_visit_asks_by_the_names_of_the_site_file_and_shows_no_number_of_its_own() {
    Sheet sheet = pits(SizingSites.demo("first-visit-chapel-hill"));
    assertThat(missing(sheet))
        .containsExactlyInAnyOrder(
            "foundationKind",
            "lineLoad",
            "wallLength",
            "footingWidth",
            "foundingDepth",
            "groundWaterDepth",
            "worstSoil");
    assertThat(sheet.steps()).isEmpty();
    assertThat(sheet.checks()).isEmpty();
    assertThat(sheet.verdict()).isEqualTo(Verdict.REFER);
  }

  @Test
  void column_is_told_that_the_sheet_is_for_walls() {
    Sheet sheet = pits(SizingSites.demo("ferry-street-column"));
    assertThat(missing(sheet)).containsExactly("loadPattern", "foundationKind");
    assertThat(sheet.missing().get(0).why()).contains("under a wall").contains("nothing was sized");
    assertThat(sheet.steps()).isEmpty();
  }

  @Test
  void ruled_out_or_held_option_is_sized_under_a_prominent_caution_with_the_rule() {
    Site site = with(SizingSites.demo("ferry-street-column"), "pickUpPossible", "no");
    ZoneAdvice advice = SizingSites.advice(site, site.zones().get(0));
    assertThat(advice.ranking().of(SupportOption.PITS).standing()).isEqualTo(Standing.RULED_OUT);
    Caution first = pits(site).cautions().get(0);
    assertThat(first.hazard()).isEqualTo("ruled out here");
    assertThat(first.advice().in(UnitSystem.US)).contains("[PIT-").contains("do not build");
    Caution held = pits(SizingSites.demo("first-visit-chapel-hill")).cautions().get(0);
    assertThat(held.hazard()).isEqualTo("held here");
    assertThat(held.advice().in(UnitSystem.SI)).contains("[");
    assertThat(pits(WALL).cautions()).noneMatch(caution -> caution.hazard().endsWith("here"));
  }

  @Test
  void excavation_that_stays_above_the_footing_leaves_nothing_for_pits_to_reach() {
    Site shallow = with(with(WALL, "excavationDepth", "0.8 m"), "bearingDepth", "0 m");
    assertThat(missing(pits(shallow))).containsExactly("bearingDepth");
    assertThat(pits(shallow).missing().get(0).why()).contains("does not go below the footing");
  }

  @Test
  void piled_wall_is_not_sized() {
    Site piled = with(WALL, "foundationKind", "timber-piles");
    assertThat(missing(pits(piled))).containsExactly("foundationKind");
  }

  @Test
  void settings_of_the_file_hold_and_given_ones_override_them() {
    Site site =
        SizingSites.with(
            WALL, UnitSystem.SI, Map.of("toeEmbedment", "0.5 m", "bearingFactor", "2.5"));
    Sheet filed = pits(site);
    assertThat(si(filed, "pit-depth")).isCloseTo(2.9, within(1e-9));
    assertThat(si(filed, "bearing-factor")).isEqualTo(2.5);
    assertThat(filed.input("bearing-factor").orElseThrow().origin()).isEqualTo(Origin.SET_BY_USER);
    Sheet given = pits(site, "bearing-factor=2.8", "timber=mixed-oak");
    assertThat(si(given, "bearing-factor")).isEqualTo(2.8);
    assertThat(si(given, "toe-embedment")).isEqualTo(0.5);
    assertThat(given.input("timber").orElseThrow().words()).isEqualTo("mixed-oak");
  }

  @Test
  void bad_settings_are_named_with_value_range_and_nearest_name() {
    Site site = SizingSites.with(WALL, UnitSystem.SI, Map.of("widestPit", "9 m"));
    Sized sized =
        DESK.size(
            site,
            SizingSites.advice(site, site.zones().get(0)),
            SupportOption.PITS,
            List.of("bering-factor=3", "crews=many", "timber=bamboo", "shift"));
    assertThat(sized)
        .isInstanceOfSatisfying(
            Sized.BadSettings.class,
            bad -> {
              assertThat(bad.problems()).hasSize(5);
              assertThat(bad.problems().get(0))
                  .contains("in the site's settings", "widest-pit", "9 m", "0.6 m", "1.524 m");
              assertThat(bad.problems().get(1)).contains("did you mean \"bearing-factor\"?");
              assertThat(bad.problems().get(2)).contains("crews", "many", "1 to 50");
              assertThat(bad.problems().get(3)).contains("bamboo", "douglas-fir-larch");
              assertThat(bad.problems().get(4)).contains("shift", "NAME=VALUE");
            });
  }

  @Test
  void given_setting_replaces_a_bad_one_of_the_file_only_after_the_file_is_put_right() {
    Site site = SizingSites.with(WALL, UnitSystem.SI, Map.of("crews", "0"));
    assertThat(
            DESK.size(
                site,
                SizingSites.advice(site, site.zones().get(0)),
                SupportOption.PITS,
                List.of("crews=2")))
        .isInstanceOf(Sized.BadSettings.class);
  }

  @Test
  void check_never_passes_on_what_nobody_stated() {
    Sheet sheet = pits(WALL); // nobody timed a face, nor measured a friction angle
    for (String id : List.of("stand-up", "pier-flexure", "pier-shear")) {
      Check check = sheet.check(id).orElseThrow();
      assertThat(check.verdict()).as(id).isEqualTo(Verdict.REFER);
      assertThat(check.note().in(UnitSystem.SI)).as(id).contains("nobody stated");
    }
    Sheet timed = pits(with(WALL, "standUp", "hours"));
    assertThat(timed.check("stand-up").orElseThrow().verdict()).isEqualTo(Verdict.PASSES);
  }

  @Test
  void span_that_nobody_stated_is_the_careful_one_and_refers() {
    Sheet sheet = pits(with(WALL, "clearSpan", ""));
    assertThat(sheet.input("clear-span").orElseThrow())
        .satisfies(
            span -> {
              assertThat(span.origin()).isEqualTo(Origin.ASSUMED);
              assertThat(span.amount().orElseThrow().si()).isCloseTo(0.6, within(1e-9));
              assertThat(span.source().basis()).isEqualTo(Basis.JUDGEMENT);
            });
    assertThat(sheet.check("pit-width-workable").orElseThrow().verdict()).isEqualTo(Verdict.REFER);
  }

  @Test
  void referral_has_no_sheet_and_no_number() {
    Sized sized =
        DESK.size(
            WALL, SizingSites.advice(WALL, WALL.zones().get(0)), SupportOption.REFER, List.of());
    assertThat(sized)
        .isInstanceOfSatisfying(
            Sized.NotThere.class,
            none ->
                assertThat(none.message())
                    .containsIgnoringCase("nothing")
                    .doesNotContainPattern("\\d"));
    assertThat(DESK.settings(SupportOption.REFER)).isEmpty();
  }

  @ParameterizedTest
  @EnumSource(value = SupportOption.class, mode = EnumSource.Mode.EXCLUDE, names = "REFER")
  void every_option_has_a_sheet_for_every_demo_zone_whole_or_asking(SupportOption option) {
    int whole = 0;
    for (Site site : SizingSites.demos()) {
      for (Zone zone : site.zones()) {
        Sized sized = DESK.size(site, SizingSites.advice(site, zone), option, List.of());
        Sheet sheet = ((Sized.Done) sized).sheet();
        assertThat(sheet.methodId()).isEqualTo(option.id());
        assertThat(sheet.complete()).isEqualTo(!sheet.steps().isEmpty());
        StepProof.redo(sheet);
        if (sheet.complete()) {
          whole++;
          assertThat(sheet.checks()).isNotEmpty();
          assertThat(sheet.quantities()).isNotEmpty();
          assertThat(sheet.time()).isNotEmpty();
          assertThat(sheet.stages()).isNotEmpty();
          assertThat(sheet.cautions()).isNotEmpty();
          assertThat(sheet.notCovered()).isNotEmpty();
        }
      }
    }
    assertThat(whole).as("demo zones sized to the end").isPositive();
    assertThat(DESK.settings(option))
        .isNotEmpty()
        .allSatisfy(one -> assertThat(one.source().words()).isNotBlank());
  }

  @Test
  void edge_pits_stand_beside_piles_sized_with_the_sites_own_settings() {
    Site site = SizingSites.demo("orchard-line-box");
    Site careful =
        new Site(
            site.name(),
            site.units(),
            site.facts(),
            site.ground(),
            site.zones(),
            Map.of("drilled-piles", Map.of("capAllowance", "25 %")),
            "");
    assertThat(si(edge(careful), "primary-pile-load") * si(edge(careful), "primary-piles"))
        .isGreaterThan(si(edge(site), "primary-pile-load") * si(edge(site), "primary-piles"));
  }

  private static Sheet edge(Site site) {
    Zone zone = site.zones().get(0);
    Sized sized =
        DESK.size(site, SizingSites.advice(site, zone), SupportOption.EDGE_PITS, List.of());
    return ((Sized.Done) sized).sheet();
  }

  @Test
  void help_lists_every_setting_with_default_range_and_source() {
    List<SettingHelp> help = DESK.settings(SupportOption.PITS);
    assertThat(help).extracting(SettingHelp::name).contains("widest-pit", "timber");
    assertThat(help.get(0).fallback(UnitSystem.SI)).isEqualTo("1.2 m");
    assertThat(help.get(0).allowed(UnitSystem.US)).isEqualTo("1.969 ft to 5 ft");
    assertThat(help.get(help.size() - 1).fallback(UnitSystem.US)).isEqualTo("douglas-fir-larch");
    assertThat(help).allSatisfy(one -> assertThat(one.source().words()).isNotBlank());
  }

  @Test
  void zone_of_another_site_is_refused() {
    Site other = SizingSites.demo("ferry-street-column");
    ZoneAdvice advice = SizingSites.advice(other, other.zones().get(0));
    assertThatThrownBy(() -> DESK.size(WALL, advice, SupportOption.PITS, List.of()))
        .hasMessageContaining("column C4");
  }

  @Test
  void random_sites_never_break_the_sheet() {
    int complete = 0;
    for (Site site : SizingSites.random(300, 20260517L)) {
      Sheet sheet = pits(site);
      complete += sheet.complete() ? 1 : 0;
      assertThat(sheet.complete()).isEqualTo(!sheet.steps().isEmpty());
      StepProof.redo(sheet);
      for (UnitSystem system : UnitSystem.values()) {
        assertThat(SheetText.lines(sheet, system)).noneMatch(line -> line.contains("NaN"));
      }
    }
    assertThat(complete).as("sites sized to the end").isGreaterThan(40);
  }
}
