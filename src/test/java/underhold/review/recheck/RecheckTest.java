package underhold.review.recheck;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import underhold.advice.Basis;
import underhold.advice.BuiltInPack;
import underhold.advice.ChangedPacks;
import underhold.advice.Rule;
import underhold.advice.RuleEngine;
import underhold.advice.RulePack;
import underhold.advice.Strength;
import underhold.consult.Consultant;
import underhold.review.file.FileReading;
import underhold.review.recheck.PackChange.Kind;
import underhold.review.saved.PackDigest;
import underhold.review.saved.SavedAdvice;
import underhold.review.saved.SavedSamples;
import underhold.site.Site;
import underhold.site.SiteReader;
import underhold.site.SiteWriter;

/** Saved consultations run again. */
class RecheckTest {
  private static final String ALDER = "alder-row-party-wall";
  private static final String BRIDGES = "three-bridges-interchange";

  static List<String> demos() {
    return SavedSamples.names();
  }

  /** Saved by the engine that answers, run again by the other one. */
  @ParameterizedTest
  @MethodSource("demos")
  void the_same_program_gives_the_same(String name) {
    SavedAdvice saved = SavedSamples.saved(name);
    FileReading<SavedAdvice> read =
        SavedAdvice.FILES.read(SavedAdvice.FILES.text(saved), "x.advice.json");
    SavedAdvice again = read.content().orElseThrow();
    Site site = again.readSite("x").fold(valid -> valid.site(), invalid -> null);

    Consultant other = Consultant.toCheckBy(BuiltInPack.pack());
    Recheck recheck = Recheck.run(again, site, other, SavedSamples.MAKING);

    assertThat(other.engine()).isNotInstanceOf(SavedSamples.CONSULTANT.engine().getClass());
    assertThat(recheck.stand()).isEqualTo(Stand.IDENTICAL);
    assertThat(recheck.rules()).isEmpty();
    assertThat(recheck.sameSite()).isTrue();
    assertThat(recheck.sameProgram()).isTrue();
  }

  /** The pit of Alder Row is 2.4 m deep: at a limit of 2 m it is no easy one any more. */
  @Test
  void a_lower_limit_is_named_with_the_finding_that_goes() {
    Recheck recheck = againBy(ChangedPacks.limit("pit-depth-easy", "2 m"));

    assertThat(recheck.rules())
        .containsExactly(new PackChange(Kind.LIMIT_VALUE, "pit-depth-easy", "3 m", "2 m"));
    List<Difference> all = recheck.zones().get(0).differences();
    assertThat(all)
        .anySatisfy(
            one -> {
              assertThat(one.topic()).isEqualTo(Topic.FINDING);
              assertThat(one.subject()).isEqualTo("PIT-04a");
              assertThat(one.was()).contains("major", "pits of 2.4 m");
              assertThat(one.now()).isEmpty();
            })
        .anySatisfy(
            one -> {
              assertThat(one.topic()).isEqualTo(Topic.POINTS);
              assertThat(one.subject()).isEqualTo("pits");
            });
    assertThat(all).extracting(Difference::topic).isSorted();
    assertThat(recheck.stand()).isNotEqualTo(Stand.IDENTICAL);
  }

  /** Pits have +6: a major and a moderate for. Without points for a major a moderate is left. */
  @Test
  void another_weight_is_named_with_the_points() {
    Recheck recheck = againBy(ChangedPacks.points(Strength.MAJOR, 3));

    assertThat(recheck.rules()).containsExactly(new PackChange(Kind.STRENGTH, "major", "4", "3"));
    assertThat(recheck.zones().get(0).differences())
        .contains(Difference.of(Topic.POINTS, "pits", "+6 points", "+5 points"));
  }

  private static Recheck againBy(RuleEngine engine) {
    SavedAdvice saved = SavedSamples.saved(ALDER);
    Consultant other = new Consultant(engine);
    return Recheck.run(saved, SavedSamples.site(ALDER), other, SavedSamples.MAKING);
  }

  @Test
  void changes_of_a_rule_are_told_apart() {
    assertThat(
            changed(
                rule ->
                    copy(
                        rule,
                        "Other words.",
                        rule.basis(),
                        rule.because(),
                        rule.conditions().size())))
        .extracting(PackChange::kind)
        .containsExactly(Kind.RULE_SENTENCE);
    assertThat(
            changed(
                rule ->
                    copy(
                        rule,
                        rule.sentence(),
                        Basis.JUDGEMENT,
                        rule.because(),
                        rule.conditions().size())))
        .containsExactly(new PackChange(Kind.RULE_BASIS, "PIT-04a", "published", "judgement"));
    assertThat(
            changed(
                rule ->
                    copy(rule, rule.sentence(), rule.basis(), "Else.", rule.conditions().size())))
        .extracting(PackChange::kind)
        .containsExactly(Kind.RULE_REASON);
    assertThat(changed(rule -> copy(rule, rule.sentence(), rule.basis(), rule.because(), 1)))
        .extracting(PackChange::kind)
        .containsExactly(Kind.RULE_CONDITIONS);
    assertThat(packs(BuiltInPack.pack(), ChangedPacks.without("PIT-04a")))
        .extracting(PackChange::kind, PackChange::name)
        .containsExactly(org.assertj.core.groups.Tuple.tuple(Kind.RULE_REMOVED, "PIT-04a"));
    assertThat(packs(ChangedPacks.without("PIT-04a"), BuiltInPack.pack()))
        .extracting(PackChange::kind, PackChange::name)
        .containsExactly(org.assertj.core.groups.Tuple.tuple(Kind.RULE_ADDED, "PIT-04a"));
    assertThat(changed(rule -> rule)).extracting(PackChange::kind).containsExactly(Kind.FILES);
    assertThat(packs(BuiltInPack.pack(), BuiltInPack.pack())).isEmpty();
  }

  private static List<PackChange> changed(java.util.function.UnaryOperator<Rule> change) {
    return packs(BuiltInPack.pack(), ChangedPacks.rule("PIT-04a", change));
  }

  private static List<PackChange> packs(RulePack was, RulePack now) {
    return PackComparison.of(PackDigest.of(was), PackDigest.of(now));
  }

  private static Rule copy(
      Rule rule, String sentence, Basis basis, String because, int conditions) {
    return new Rule(
        rule.id(),
        sentence,
        rule.phase(),
        basis,
        rule.citations(),
        because,
        rule.cause(),
        rule.hold(),
        rule.conditions().subList(0, conditions),
        rule.action(),
        rule.file(),
        rule.line());
  }

  /** A saved text in which one thing was otherwise, against what is answered now. */
  private static Recheck ifSaved(String name, Function<String, String> change) {
    String text = SavedAdvice.FILES.text(SavedSamples.saved(name));
    String other = change.apply(text);
    assertThat(other).isNotEqualTo(text);
    FileReading<SavedAdvice> read = SavedAdvice.FILES.read(other, "x");
    assertThat(read.messages()).isEmpty();
    return Recheck.of(read.content().orElseThrow(), SavedSamples.saved(name));
  }

  @Test
  void a_verdict_that_got_worse_on_the_sheet_of_the_leader_must_be_looked_at() {
    Recheck recheck =
        ifSaved(
            ALDER,
            text -> {
              int sheet = text.indexOf("\"id\": \"pits\"");
              int refer = text.indexOf("\"verdict\": \"refer\"", text.indexOf("\"checks\"", sheet));
              return text.substring(0, refer)
                  + "\"verdict\": \"passes\""
                  + text.substring(refer + "\"verdict\": \"refer\"".length());
            });

    assertThat(recheck.was().intact()).isFalse();
    assertThat(recheck.stand()).isEqualTo(Stand.LOOK_AGAIN);
    assertThat(recheck.zones().get(0).differences())
        .singleElement()
        .satisfies(
            one -> {
              assertThat(one.topic()).isEqualTo(Topic.VERDICT);
              assertThat(one.was()).startsWith("passes");
              assertThat(one.now()).startsWith("refer");
              assertThat(one.worse()).isTrue();
            });
  }

  @Test
  void another_number_is_told_and_the_last_digits_are_not() {
    Recheck other = ifSaved(ALDER, text -> firstStep(text, value -> value * 1.001));
    assertThat(other.stand()).isEqualTo(Stand.STANDS);
    assertThat(other.zones().get(0).differences())
        .singleElement()
        .satisfies(
            one -> {
              assertThat(one.topic()).isEqualTo(Topic.NUMBER);
              assertThat(one.was()).isNotEqualTo(one.now());
            });

    Recheck same = ifSaved(ALDER, text -> firstStep(text, value -> value * (1 + 1e-13)));
    assertThat(same.stand()).isEqualTo(Stand.IDENTICAL);
  }

  private static String firstStep(String text, Function<Double, Double> change) {
    int steps = text.indexOf("\"steps\"", text.indexOf("\"id\": \"pits\""));
    int from = text.indexOf("\"value\": ", steps) + "\"value\": ".length();
    int to = text.indexOf(',', from);
    double value = change.apply(Double.parseDouble(text.substring(from, to)));
    return text.substring(0, from) + value + text.substring(to);
  }

  @Test
  void a_stage_that_takes_longer_is_told() {
    Recheck recheck =
        ifSaved(
            BRIDGES,
            text -> {
              int stage = text.indexOf("\"id\": \"survey\"");
              int from = text.indexOf("\"days\": ", stage) + "\"days\": ".length();
              return text.substring(0, from) + "77.0" + text.substring(text.indexOf(',', from));
            });

    assertThat(recheck.whole())
        .singleElement()
        .satisfies(
            one -> {
              assertThat(one.topic()).isEqualTo(Topic.STAGE);
              assertThat(one.subject()).isEqualTo("survey");
              assertThat(one.was()).contains("77 days");
            });
    assertThat(recheck.wholeStand()).isEqualTo(Stand.STANDS);
  }

  @Test
  void another_site_is_told_fact_by_fact() {
    SavedAdvice saved = SavedSamples.saved(ALDER);
    String text = SiteWriter.toText(SavedSamples.site(ALDER));
    Site deeper =
        SiteReader.read(
                text.replace("\"gapToExcavation\": \"0 m\"", "\"gapToExcavation\": \"5 m\""), "x")
            .fold(
                valid -> valid.site(),
                invalid -> {
                  throw new IllegalStateException(invalid.problems().toString());
                });
    assertThat(deeper).isNotEqualTo(SavedSamples.site(ALDER));

    Recheck recheck = Recheck.run(saved, deeper, SavedSamples.CONSULTANT, SavedSamples.MAKING);

    assertThat(recheck.sameSite()).isFalse();
    assertThat(recheck.zones().get(0).differences())
        .contains(Difference.of(Topic.FACT, "gapToExcavation", "0 m (stated)", "5 m (stated)"));
  }

  @Test
  void a_zone_that_is_no_more_and_one_that_is_new_are_named() {
    SavedAdvice alder = SavedSamples.saved(ALDER);
    SavedAdvice bridges = SavedSamples.saved(BRIDGES);

    Recheck recheck = Recheck.of(alder, bridges);

    assertThat(recheck.stand()).isEqualTo(Stand.FALLEN);
    Stream<ZoneRecheck> gone =
        recheck.zones().stream().filter(zone -> zone.now().equals("not there"));
    assertThat(gone).hasSize(alder.zones().size());
    assertThat(recheck.zones()).hasSize(alder.zones().size() + bridges.zones().size());
  }
}
