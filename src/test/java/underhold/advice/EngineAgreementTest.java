package underhold.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.quantity.Quantity;
import underhold.site.Fact;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;
import underhold.site.FactValue;
import underhold.site.FactView;
import underhold.site.Origin;

/** The rule engine and the plain reading of the rules' conditions must agree, rule for rule. */
class EngineAgreementTest {
  private static final int VIEWS = 2000;

  private final RulePack pack = BuiltInPack.pack();
  private final RuleEngine engine = BuiltInPack.compiledEngine();
  private final RuleEngine plain = new PlainEngine(pack);
  private final Random random = new Random(42);

  @Test
  @DisplayName(
      "Drools fires exactly the rules whose conditions, read one by one, hold, and so does the plain reading: 2,000 random zones and pairs, every rule fired")
  void engine_and_plain_reading_agree() {
    Map<String, Integer> fired = new HashMap<>();
    for (int i = 0; i < 2 * VIEWS; i++) {
      boolean pair = i >= VIEWS;
      FactView view = view(pair ? FactDictionary.pairs() : FactDictionary.standard());
      for (Rule.Phase phase : Rule.Phase.values()) {
        if (pair != (phase == Rule.Phase.SCHEME)) {
          continue;
        }
        List<Rule> byEngine = engine.fire(view, phase);
        List<Rule> byReading =
            pack.all().stream()
                .filter(r -> r.phase() == phase && r.holds(view) == Truth.TRUE)
                .toList();
        assertThat(byEngine).isEqualTo(byReading);
        assertThat(plain.fire(view, phase)).isEqualTo(byReading);
        byEngine.forEach(rule -> fired.merge(rule.id(), 1, Integer::sum));
      }
    }
    assertThat(fired.size()).isGreaterThan(pack.all().size() * 9 / 10);
  }

  /** Any facts at all, possible or not; amounts often exactly at a limit. */
  private FactView view(FactDictionary dictionary) {
    double share = random.nextDouble();
    Map<String, Fact> facts = new HashMap<>();
    for (FactDefinition definition : dictionary.all()) {
      if (random.nextDouble() < share) {
        facts.put(definition.name(), new Fact(definition, Origin.STATED, value(definition), ""));
      }
    }
    return FactView.of(dictionary, facts);
  }

  private FactValue value(FactDefinition definition) {
    if (!definition.kind().isNumber()) {
      return new FactValue.Choice(
          definition.values().get(random.nextInt(definition.values().size())).value());
    }
    FactDefinition.Range range = definition.requireRange();
    List<Double> limits =
        pack.all().stream()
            .flatMap(rule -> rule.conditions().stream())
            .filter(c -> c.fact().equals(definition.name()) && c.operator().isNumeric())
            .map(c -> pack.limits().require(c.limitName()).si())
            .distinct()
            .toList();
    double si =
        limits.isEmpty()
            ? range.min()
            : limits.get(random.nextInt(limits.size()))
                * List.of(0.9, 1.0, 1.1).get(random.nextInt(3));
    if (si == 0 && random.nextBoolean()) {
      si = -si; // a nought with a sign is nought
    }
    return new FactValue.Amount(Quantity.of(si, range.measure(), range.siUnit()));
  }
}
