package underhold.review.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.advice.BuiltInPack;
import underhold.advice.Effect;
import underhold.advice.Rule;
import underhold.advice.Truth;
import underhold.site.FactView;
import underhold.site.Site;
import underhold.site.SiteReader;
import underhold.site.SiteWriter;
import underhold.site.ZoneViews;

/** The audit of the pack inside the program, and what it proves held to sites. */
class BuiltInPackAuditTest {
  private static final int SITES = 800;
  private static final int LEAST_EXPECTATIONS = 30;
  private static final AuditNotes NOTES = AuditNotes.builtIn();
  private static final RulesAudit AUDIT =
      RulesAudit.of(BuiltInPack.pack(), List.of(), NOTES, new Effort(200, Effort.USUAL_SEED));
  private static final Bench BENCH = Bench.of(BuiltInPack.pack(), List.of(), NOTES, Effort.USUAL);

  private static final List<FactView> VIEWS = views();

  @Test
  void no_defect_is_open_and_no_acceptance_idle() {
    assertThat(NOTES.problems()).isEmpty();
    assertThat(AUDIT.unaccepted()).extracting(Defect::text).isEmpty();
    assertThat(AUDIT.idle()).isEmpty();
  }

  @Test
  @DisplayName("Engineers wrote down at least thirty expectations, each with a reason")
  void there_are_expectations_with_reasons() {
    assertThat(NOTES.tendencies()).hasSizeGreaterThanOrEqualTo(LEAST_EXPECTATIONS);
    assertThat(NOTES.tendencies())
        .allSatisfy(
            tendency -> {
              assertThat(tendency.because()).isNotBlank();
              assertThat(tendency.basis()).isEqualTo("judgement");
              assertThat(tendency.options()).isNotEmpty();
            });
  }

  @Test
  @DisplayName("Sites that show a defect are sites that the reader accepts")
  void witnesses_can_be_read() {
    List<Site> witnesses = AUDIT.defects().stream().flatMap(d -> d.witness().stream()).toList();
    assertThat(witnesses).isNotEmpty();
    for (Site witness : witnesses) {
      boolean read =
          SiteReader.read(SiteWriter.toText(witness), "w.site.json")
              .fold(valid -> true, invalid -> false);
      assertThat(read).as(SiteWriter.toText(witness)).isTrue();
    }
  }

  @Test
  @DisplayName("On 800 random sites nothing lies where the reasoning says that no zone can be")
  void no_site_lies_in_what_is_excluded() {
    for (FactView view : VIEWS) {
      for (Box box : BENCH.reasoning().excluded()) {
        assertThat(box.has(view)).as(box.text()).isFalse();
      }
    }
  }

  @Test
  @DisplayName("On 800 random sites what is said to follow from a rule does wherever it fires")
  void what_follows_from_a_rule_follows() {
    Set<String> fired = new HashSet<>();
    for (FactView view : VIEWS) {
      for (Rule rule : BENCH.pack().rules()) {
        if (rule.phase() == Rule.Phase.SCREEN && rule.holds(view) == Truth.TRUE) {
          fired.add(rule.id());
          assertThat(BENCH.reasoning().closed(rule).has(view))
              .as(rule.id() + ": " + BENCH.reasoning().closed(rule).text())
              .isTrue();
        }
      }
    }
    assertThat(fired).hasSizeGreaterThan(100);
  }

  @Test
  @DisplayName("On 800 random sites an implied rule fires wherever the other does")
  void implied_rules_fire() {
    List<Rule> rules =
        BENCH.pack().rules().stream()
            .filter(rule -> rule.effect().scores() || rule.effect() == Effect.RULE_OUT)
            .filter(rule -> rule.phase() == Rule.Phase.SCREEN)
            .toList();
    Set<String> seen = new TreeSet<>();
    List<Rule[]> claims = new ArrayList<>();
    for (Rule one : rules) {
      for (Rule other : rules) {
        if (one != other && BENCH.reasoning().implies(one, other)) {
          claims.add(new Rule[] {one, other});
        }
      }
    }
    for (FactView view : VIEWS) {
      for (Rule[] claim : claims) {
        if (claim[0].holds(view) == Truth.TRUE) {
          seen.add(claim[0].id());
          assertThat(claim[1].holds(view))
              .as(claim[0].id() + " and " + claim[1].id())
              .isEqualTo(Truth.TRUE);
        }
      }
    }
    assertThat(claims).hasSizeGreaterThan(5);
    assertThat(seen).isNotEmpty();
  }

  private static List<FactView> views() {
    RandomSites sites = BENCH.randomSites(3);
    List<FactView> views = new ArrayList<>();
    for (int i = 0; i < SITES; i++) {
      Site site = sites.next();
      views.add(
          BENCH.rules().complete(ZoneViews.known(site, site.zones().get(0), BENCH.dictionary())));
    }
    return views;
  }
}
