package underhold.review.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.advice.SupportOption;

/**
 * Packs broken in one place: the audit finds that place, and nothing that it did not find before.
 */
class BrokenPacksTest {
  private static final Effort EFFORT = new Effort(150, 1);
  private static final AuditNotes NOTES =
      new AuditNotes(
          List.of(),
          List.of(
              new Tendency(
                  "EXP-1",
                  "A worse structure never raises pits.",
                  "structureCondition",
                  List.of("good", "fair", "poor"),
                  Map.of(),
                  List.of(SupportOption.PITS),
                  Tendency.Watched.BOTH,
                  "It bears less.",
                  "judgement")),
          List.of());
  private static final Set<String> SOUND = found(SmallPack.sound());

  private static Set<String> found(SmallPack pack) {
    Set<String> found = new TreeSet<>();
    RulesAudit.of(pack.pack(), List.of(), NOTES, EFFORT)
        .defects()
        .forEach(defect -> found.add(defect.section() + " " + String.join(" ", defect.about())));
    return found;
  }

  /** What is found in a pack beyond what is found in the sound one. */
  private static List<String> news(SmallPack pack) {
    List<String> news = new ArrayList<>(found(pack));
    news.removeAll(SOUND);
    return news;
  }

  @Test
  @DisplayName("The sound pack has nothing but what it does not use of the dictionary")
  void the_sound_pack_is_sound() {
    assertThat(SOUND).allMatch(defect -> defect.startsWith("unused "));
  }

  @Test
  void a_dead_rule() {
    assertThat(
            news(
                SmallPack.sound()
                    .rule(
                        "X-1",
                        "position",
                        "screen",
                        "excavationPosition == \"no-excavation\", undermined == \"yes\"",
                        "against(\"pits\", \"minor\"")))
        .containsExactly("unreachable X-1");
  }

  @Test
  void a_rule_that_no_range_meets() {
    assertThat(
            news(
                SmallPack.sound()
                    .rule(
                        "X-1",
                        "rock",
                        "screen",
                        "pitDepth > limit(\"deep\"), pitDepth < limit(\"easy\")",
                        "against(\"needles\", \"minor\"")))
        .containsExactly("unreachable X-1");
  }

  @Test
  void an_identical_pair() {
    assertThat(
            news(
                SmallPack.sound()
                    .rule(
                        "X-1",
                        "load pattern",
                        "screen",
                        "loadPattern == \"concentrated\"",
                        "speakFor(\"needles\", \"major\"")))
        .containsExactly("shadowed A-2 X-1");
  }

  @Test
  void a_shadowed_rule() {
    assertThat(
            news(
                SmallPack.sound()
                    .rule(
                        "X-1",
                        "load pattern",
                        "screen",
                        "loadPattern == \"continuous\", structureMaterial == \"timber\"",
                        "speakFor(\"pits\", \"minor\"")))
        .containsExactly("shadowed A-1 X-1");
  }

  @Test
  @DisplayName("A narrower rule that is stronger refines, and is no defect")
  void a_refinement() {
    assertThat(
            news(
                SmallPack.sound()
                    .rule(
                        "X-1",
                        "load pattern",
                        "screen",
                        "loadPattern == \"continuous\", structureMaterial == \"timber\"",
                        "speakFor(\"pits\", \"decisive\"")))
        .isEmpty();
  }

  @Test
  void a_contradiction_in_one_cause() {
    assertThat(
            news(
                SmallPack.sound()
                    .rule(
                        "X-1",
                        "load pattern",
                        "screen",
                        "loadPattern == \"continuous\", programme == \"tight\"",
                        "against(\"pits\", \"moderate\"")))
        .containsExactly("opposites A-1 X-1");
  }

  @Test
  void a_for_that_is_always_ruled_out() {
    assertThat(
            news(
                SmallPack.sound()
                    .rule(
                        "X-1",
                        "movement",
                        "screen",
                        "excavationPosition == \"wholly-under\"",
                        "speakFor(\"monitor\", \"minor\"")))
        .containsExactly("opposites O-1 X-1");
  }

  @Test
  void two_values_of_one_derived_fact() {
    assertThat(
            news(
                SmallPack.sound()
                    .rule(
                        "D-2",
                        "derivation",
                        "derive",
                        "excavationPosition in (\"beside\", \"inside-walls\", \"no-excavation\","
                            + " \"partly-under\")",
                        "derive(\"undermined\", \"no\"")))
        .containsExactly("opposites D-1 D-2");
  }

  @Test
  void one_observation_counted_twice() {
    assertThat(
            news(
                SmallPack.sound()
                    .rule(
                        "X-1",
                        "structure",
                        "screen",
                        "loadPattern == \"continuous\"",
                        "speakFor(\"pits\", \"minor\"")))
        .containsExactly("double A-1 X-1");
  }

  @Test
  void a_gap_at_a_limit() {
    assertThat(
            news(
                SmallPack.sound()
                    .rule(
                        "T-1",
                        "depth",
                        "screen",
                        "pitDepth > limit(\"easy\"), pitDepth < limit(\"deep\")",
                        "against(\"pits\", \"moderate\"")))
        .containsExactly("thresholds T-1 T-2");
  }

  @Test
  void a_gap_between_limits() {
    assertThat(
            news(
                SmallPack.sound()
                    .rule(
                        "T-1",
                        "depth",
                        "screen",
                        "pitDepth <= limit(\"easy\")",
                        "against(\"pits\", \"moderate\"")))
        .containsExactly("thresholds T-1 T-2");
  }

  @Test
  void an_amount_claimed_twice() {
    assertThat(
            news(
                SmallPack.sound()
                    .rule(
                        "T-2",
                        "depth",
                        "screen",
                        "pitDepth >= limit(\"deep\")",
                        "against(\"pits\", \"major\"")))
        .containsExactly("thresholds T-1 T-2");
  }

  @Test
  void a_derived_fact_that_stays_unknown() {
    assertThat(
            news(
                SmallPack.sound()
                    .rule(
                        "D-2",
                        "derivation",
                        "derive",
                        "excavationPosition in (\"beside\", \"inside-walls\")",
                        "derive(\"undermined\", \"no\"")))
        .containsExactly("thresholds undermined");
  }

  @Test
  void a_circle_of_derived_facts() {
    assertThat(
            news(
                SmallPack.sound()
                    .rule(
                        "X-1",
                        "derivation",
                        "derive",
                        "runningLayer == null, openLayer == \"yes\"",
                        "derive(\"runningLayer\", \"yes\"")
                    .rule(
                        "X-2",
                        "derivation",
                        "derive",
                        "openLayer == null, runningLayer == \"yes\"",
                        "derive(\"openLayer\", \"yes\"")))
        .containsExactly("circles X-1 X-2");
  }

  @Test
  void a_fact_that_nothing_reads() {
    assertThat(news(SmallPack.sound().without("C-1")))
        .containsExactlyInAnyOrder("unused wetSeason", "unused time");
  }

  @Test
  void a_limit_that_nothing_names() {
    assertThat(
            news(
                SmallPack.sound()
                    .rule(
                        "T-1",
                        "depth",
                        "screen",
                        "pitDepth <= limit(\"deep\")",
                        "against(\"pits\", \"moderate\"")))
        .containsExactly("unused easy");
  }

  @Test
  void an_option_that_never_leads() {
    assertThat(news(SmallPack.sound().without("A-4"))).containsExactly("leaders bracket-piles");
  }

  @Test
  void nothing_left_and_no_referral() {
    SmallPack pack = SmallPack.sound().without("A-7");
    pack.rule(
        "X-1",
        "purpose",
        "screen",
        "purpose == \"remedial\"",
        "ruleOut(\"pits, needles, drilled-piles, bracket-piles, edge-pits, monitor\"");
    assertThat(news(pack)).contains("leaders refer");
  }

  @Test
  void something_gains_by_getting_worse() {
    assertThat(
            news(
                SmallPack.sound()
                    .rule(
                        "X-1",
                        "structure",
                        "screen",
                        "structureCondition == \"poor\", loadPattern == \"area\"",
                        "speakFor(\"pits\", \"minor\"")))
        .containsExactly("expectations EXP-1");
  }
}
