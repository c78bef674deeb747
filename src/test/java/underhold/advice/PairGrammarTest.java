package underhold.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import underhold.site.FactDictionary;
import underhold.site.FactView;

/** Rules between zones keep to the same narrow grammar, on facts and actions of their own. */
class PairGrammarTest {
  private static final String FILE = "scheme/order.drl";
  private static final String SOUND = BuiltInPack.text(FILE).orElseThrow();

  private final RulePackReader reader = new RulePackReader(FactDictionary.standard());

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '¦',
      textBlock =
          """
          a fact of one zone     ¦ oneStructure == "yes"                        ¦ loadPattern == "area"            ¦ no fact loadPattern
          a phase of one zone    ¦ agenda-group "scheme"                        ¦ agenda-group "screen"            ¦ PairFacts is scheme
          the other pattern      ¦ PairFacts(                                   ¦ ZoneFacts(                       ¦ PairFacts
          an unknown order       ¦ "first-carries-before-second-opens", "major" ¦ "first-things-first", "major"    ¦ requires an order
          an option for the pair ¦ findings.require("first-carries-before-second-opens", "major", ¦ findings.against("pits", "major", ¦ speaks of the "pair"
          a referral             ¦ findings.require("first-carries-before-second-opens", "major", ¦ findings.refer("major", ¦ does not refer
          code in the action     ¦ findings.require("first-carries              ¦ System.exit(1); findings.require("first-carries ¦ findings
          """)
  void whatever_else_stands_in_such_a_rule_is_refused(
      String what, String sound, String broken, String message) {
    assertThat(SOUND).contains(sound);
    String text =
        SOUND.replaceFirst(
            java.util.regex.Pattern.quote(sound), java.util.regex.Matcher.quoteReplacement(broken));
    Optional<RulePack> pack =
        reader.read(name -> name.equals(FILE) ? Optional.of(text) : BuiltInPack.text(name));

    assertThat(pack).as(what).isEmpty();
    assertThat(reader.problems()).anyMatch(problem -> problem.text().contains(message));
  }

  @Test
  void rules_of_one_zone_may_not_take_the_phase_of_two() {
    String text =
        BuiltInPack.text("pits/load.drl").orElseThrow().replaceFirst("\"screen\"", "\"scheme\"");
    assertThat(
            reader.read(
                name -> name.equals("pits/load.drl") ? Optional.of(text) : BuiltInPack.text(name)))
        .isEmpty();
  }

  @Test
  void the_engine_refuses_a_view_of_the_wrong_kind() {
    RuleEngine engine = BuiltInPack.compiledEngine();
    FactView zone = FactView.of(FactDictionary.standard(), Map.of());
    FactView pair = FactView.of(FactDictionary.pairs(), Map.of());
    assertThatThrownBy(() -> engine.fire(zone, Rule.Phase.SCHEME))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> engine.fire(pair, Rule.Phase.SCREEN))
        .isInstanceOf(IllegalArgumentException.class);
    assertThat(engine.fire(pair, Rule.Phase.SCHEME)).isEmpty();
  }

  @Test
  void the_two_kinds_of_rule_are_kept_apart() {
    RulePack pack = BuiltInPack.pack();
    assertThat(pack.pairRules()).isNotEmpty().allMatch(r -> r.phase() == Rule.Phase.SCHEME);
    assertThat(pack.rules()).noneMatch(rule -> rule.phase() == Rule.Phase.SCHEME);
    assertThat(pack.rule("sch-01")).isPresent();
  }
}
