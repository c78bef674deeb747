package underhold.consult;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import underhold.advice.Criterion;
import underhold.advice.Effect;
import underhold.advice.Finding;
import underhold.advice.OptionAdvice;
import underhold.advice.SupportOption;
import underhold.consult.contrast.Argument;
import underhold.consult.contrast.Aside;
import underhold.consult.contrast.Contrast;
import underhold.consult.contrast.CriterionContrast;
import underhold.consult.contrast.Outcome;
import underhold.site.Site;
import underhold.site.SiteReader;

/** Two options set against each other add up to what the ranking says of each. */
class ContrastTest {
  private static final Consultant CONSULTANT = Consultant.standard();
  private static final int SITES = 24;

  private static final Map<Outcome, Outcome> MIRROR =
      Map.of(
          Outcome.FAVOURS_FIRST, Outcome.FAVOURS_SECOND,
          Outcome.FAVOURS_SECOND, Outcome.FAVOURS_FIRST,
          Outcome.RULES_OUT_FIRST, Outcome.RULES_OUT_SECOND,
          Outcome.RULES_OUT_SECOND, Outcome.RULES_OUT_FIRST,
          Outcome.RULES_OUT_BOTH, Outcome.RULES_OUT_BOTH,
          Outcome.EVEN, Outcome.EVEN,
          Outcome.SILENT, Outcome.SILENT);

  /** Random sites, all known and half known, without the trials of the open questions. */
  private static final List<ZoneAdvice> ZONES = zones();

  private static List<ZoneAdvice> zones() {
    List<ZoneAdvice> zones = new ArrayList<>();
    PlausibleSites sites = new PlausibleSites(31);
    for (int i = 0; i < SITES; i++) {
      Map<String, String> facts = sites.next();
      Site site = PlausibleSites.site(i % 2 == 0 ? facts : sites.forget(facts, 0.3));
      zones.add(CONSULTANT.advise(site).zones().get(0));
    }
    return zones;
  }

  private static Stream<Contrast> contrasts(ZoneAdvice zone) {
    return Stream.of(SupportOption.values())
        .flatMap(
            one ->
                Stream.of(SupportOption.values())
                    .filter(other -> other != one)
                    .map(other -> Contrast.of(zone, CONSULTANT.pack(), one, other)));
  }

  @Test
  void the_points_under_the_criteria_add_up_to_the_score_of_each_option() {
    int scored = 0;
    for (ZoneAdvice zone : ZONES) {
      for (Contrast contrast : contrasts(zone).toList()) {
        int first = contrast.criteria().stream().mapToInt(CriterionContrast::firstPoints).sum();
        int second = contrast.criteria().stream().mapToInt(CriterionContrast::secondPoints).sum();
        assertThat(first).isEqualTo(contrast.first().advice().score());
        assertThat(second).isEqualTo(contrast.second().advice().score());
        scored += first != 0 || second != 0 ? 1 : 0;
      }
    }
    assertThat(scored).isGreaterThan(SITES);
  }

  @Test
  void every_finding_about_either_stands_once_and_no_other_does() {
    for (ZoneAdvice zone : ZONES) {
      for (Contrast contrast : contrasts(zone).toList()) {
        List<Finding> shown =
            contrast.criteria().stream()
                .flatMap(one -> one.arguments().stream())
                .map(Argument::finding)
                .toList();
        Set<Finding> known =
            Stream.of(contrast.first().advice(), contrast.second().advice())
                .map(OptionAdvice::findings)
                .flatMap(List::stream)
                .collect(Collectors.toSet());

        assertThat(shown).doesNotHaveDuplicates();
        assertThat(shown.stream().filter(finding -> !finding.assumed()))
            .containsExactlyInAnyOrderElementsOf(known);
        assertThat(shown.stream().filter(Finding::assumed))
            .allMatch(f -> f.effect().scores() || f.effect() == Effect.RULE_OUT)
            .allMatch(
                f ->
                    f.rule().concerns(contrast.first().option())
                        || f.rule().concerns(contrast.second().option()));
      }
    }
  }

  @Test
  void the_other_order_mirrors_every_outcome() {
    for (ZoneAdvice zone : ZONES) {
      for (Contrast contrast : contrasts(zone).toList()) {
        Contrast turned =
            Contrast.of(
                zone, CONSULTANT.pack(), contrast.second().option(), contrast.first().option());
        assertThat(turned.ahead()).isEqualTo(-contrast.ahead());
        assertThat(turned.tied()).isEqualTo(contrast.tied());
        for (int i = 0; i < contrast.criteria().size(); i++) {
          CriterionContrast one = contrast.criteria().get(i);
          CriterionContrast other = turned.criteria().get(i);
          assertThat(other.outcome()).isEqualTo(MIRROR.get(one.outcome()));
          assertThat(other.gap()).isEqualTo(one.gap());
          assertThat(other.asides()).containsExactlyInAnyOrderElementsOf(one.asides());
          assertThat(other.arguments().stream().map(Argument::finding))
              .containsExactlyInAnyOrderElementsOf(
                  one.arguments().stream().map(Argument::finding).toList());
        }
      }
    }
  }

  @Test
  void an_option_is_ruled_out_by_some_criterion_exactly_where_it_is_ruled_out() {
    int out = 0;
    for (ZoneAdvice zone : ZONES) {
      for (Contrast contrast : contrasts(zone).toList()) {
        boolean byCriterion =
            !contrast
                .where(o -> o == Outcome.RULES_OUT_FIRST || o == Outcome.RULES_OUT_BOTH)
                .isEmpty();
        assertThat(byCriterion).isEqualTo(contrast.first().ruledOut());
        assertThat(contrast.first().ruledOut() && contrast.tied()).isFalse();
        out += byCriterion ? 1 : 0;
      }
    }
    assertThat(out).isPositive();
  }

  @Test
  void a_caution_beside_safety_concerns_one_of_the_two_only() {
    int cautions = 0;
    for (ZoneAdvice zone : ZONES) {
      for (Contrast contrast : contrasts(zone).toList()) {
        for (Aside aside : criterion(contrast, Criterion.SAFETY).asides()) {
          Aside.CautionOfOne one = (Aside.CautionOfOne) aside;
          SupportOption other =
              one.option() == contrast.first().option()
                  ? contrast.second().option()
                  : contrast.first().option();
          assertThat(one.finding().rule().concerns(one.option())).isTrue();
          assertThat(one.finding().rule().concerns(other)).isFalse();
          cautions++;
        }
      }
    }
    assertThat(cautions).isPositive();
  }

  /**
   * By the rules' own words: the depth of the pits speaks for pits with major strength (4 points)
   * and is about the ground; the wall with the excavation beside speaks for them with moderate
   * strength (2), and needles under a long wall against needles with major strength (4): load.
   */
  @Test
  void the_party_wall_favours_pits_by_ground_and_load() {
    Contrast contrast = demo("alder-row-party-wall", SupportOption.PITS, SupportOption.NEEDLES);

    assertThat(contrast.where(Outcome::forFirst)).containsExactly(Criterion.GROUND, Criterion.LOAD);
    assertThat(contrast.where(Outcome::forSecond)).isEmpty();
    assertThat(criterion(contrast, Criterion.GROUND).gap()).isEqualTo(4);
    assertThat(criterion(contrast, Criterion.LOAD).firstPoints()).isEqualTo(2);
    assertThat(criterion(contrast, Criterion.LOAD).secondPoints()).isEqualTo(-4);
    assertThat(contrast.ahead()).isEqualTo(10);
    assertThat(criterion(contrast, Criterion.COST).asides())
        .containsExactly(new Aside.UsualCost(SupportOption.PITS, SupportOption.NEEDLES));
  }

  @Test
  void a_referral_has_no_usual_cost() {
    Contrast contrast = demo("alder-row-party-wall", SupportOption.PITS, SupportOption.REFER);

    assertThat(criterion(contrast, Criterion.COST).asides()).isEmpty();
  }

  @Test
  void sheets_speak_of_movement_and_time_where_both_hold_numbers() {
    Contrast both = demo("ferry-street-column", SupportOption.DRILLED_PILES, SupportOption.NEEDLES);
    Contrast one = demo("alder-row-party-wall", SupportOption.PITS, SupportOption.NEEDLES);

    assertThat(criterion(both, Criterion.MOVEMENT).asides())
        .hasSizeGreaterThanOrEqualTo(2)
        .allMatch(Aside.CheckOnSheet.class::isInstance);
    assertThat(criterion(both, Criterion.TIME).asides())
        .hasSizeGreaterThanOrEqualTo(2)
        .allMatch(Aside.TimeOnSheet.class::isInstance);
    assertThat(criterion(one, Criterion.MOVEMENT).asides()).isEmpty();
    assertThat(criterion(one, Criterion.TIME).asides()).isEmpty();
  }

  /** A sheet's total times are known by the beginning of their names: they must stay found. */
  @Test
  void of_the_times_of_a_sheet_only_those_of_the_whole_work_are_told() {
    Set<SupportOption> seen = EnumSet.noneOf(SupportOption.class);
    for (String demo :
        List.of("college-green-library", "ferry-street-column", "orchard-line-box")) {
      ZoneAdvice zone = advice(demo);
      for (Contrast contrast : contrasts(zone).toList()) {
        SupportOption option = contrast.first().option();
        long told =
            criterion(contrast, Criterion.TIME).asides().stream()
                .map(Aside.TimeOnSheet.class::cast)
                .filter(time -> time.option() == option)
                .count();
        if (told > 0) {
          int all = zone.sizing(option).orElseThrow().sheet().time().size();
          assertThat(told).as(option.id()).isLessThan(all).isLessThanOrEqualTo(2);
          seen.add(option);
        }
      }
    }
    assertThat(seen).isEqualTo(EnumSet.complementOf(EnumSet.of(SupportOption.REFER)));
  }

  private static CriterionContrast criterion(Contrast contrast, Criterion criterion) {
    return contrast.criteria().stream()
        .filter(one -> one.criterion() == criterion)
        .findFirst()
        .orElseThrow();
  }

  private static ZoneAdvice advice(String name) {
    Site site =
        SiteReader.read(Path.of("cases/demo/" + name + ".site.json"))
            .fold(
                valid -> valid.site(),
                invalid -> {
                  throw new IllegalStateException(invalid.problems().toString());
                });
    return CONSULTANT.advise(site).zones().get(0);
  }

  private static Contrast demo(String name, SupportOption one, SupportOption other) {
    return Contrast.of(advice(name), CONSULTANT.pack(), one, other);
  }
}
