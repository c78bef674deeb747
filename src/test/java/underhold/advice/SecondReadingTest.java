package underhold.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.quantity.UnitSystem;
import underhold.site.Fact;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;
import underhold.site.FactValue;
import underhold.site.FactView;
import underhold.site.Origin;

/**
 * Three that must agree: the rules compiled by Drools, the rules read plainly, and a second reader
 * of the rule texts that shares nothing with either.
 */
class SecondReadingTest {
  /** {@code -Dreadings=100000} reads so many zones, a fifth as many pairs. */
  private static final int ZONES = Integer.getInteger("readings", 30_000);

  private static final int PAIRS = ZONES / 5;

  private static final List<Rule.Phase> OF_ONE_ZONE =
      List.of(Rule.Phase.DERIVE, Rule.Phase.SCREEN, Rule.Phase.CONFIRM, Rule.Phase.SETTLE);

  /** The words of findings are compared for one zone in this many, who fired for every one. */
  private static final int IN_WORDS = 100;

  private final RulePack pack = BuiltInPack.pack();
  private final CompiledEngine compiled = (CompiledEngine) BuiltInPack.compiledEngine();
  private final RuleEngine plain = new PlainEngine(pack);
  private final Wording wording = new Wording(pack, UnitSystem.SI);
  private final SecondReading second =
      new SecondReading(name -> BuiltInPack.text(name).orElseThrow());
  private final Map<String, SecondRule> byId = new HashMap<>();
  private final Map<String, int[]> fired = new HashMap<>();
  private final Map<String, int[]> asked = new HashMap<>();
  private int findings;
  private int inWords;

  SecondReadingTest() {
    second.all().forEach(rule -> byId.put(rule.id(), rule));
  }

  @Test
  @DisplayName("both readers find the same rules, stating the same, and the same limits")
  void the_texts_are_read_alike() {
    assertThat(byId.keySet())
        .containsExactlyInAnyOrderElementsOf(pack.all().stream().map(Rule::id).toList());
    assertThat(pack.all())
        .allSatisfy(
            rule -> {
              SecondRule other = byId.get(rule.id());
              assertThat(other.states()).isEqualTo(states(rule));
              assertThat(other.facts()).containsExactlyElementsOf(rule.facts());
              assertThat(other.tests()).hasSameSizeAs(rule.conditions());
            });
    assertThat(pack.limits().all())
        .allSatisfy(
            limit ->
                assertThat(second.limits().get(limit.name()))
                    .as(limit.name())
                    .isEqualTo(limit.si()));
  }

  /** Verb and arguments, put together again from what the program read. */
  private static String states(Rule rule) {
    Rule.Action action = rule.action();
    boolean pair = rule.phase() == Rule.Phase.SCHEME;
    List<String> arguments = new ArrayList<>();
    switch (rule.effect()) {
      case DERIVE -> arguments.addAll(List.of(action.fact(), action.value()));
      case REFER -> {}
      case REQUIRE -> arguments.add(pair ? action.value() : options(action));
      default -> arguments.add(pair ? "pair" : options(action));
    }
    if (action.strength() != null) {
      arguments.add(action.strength().name().toLowerCase(Locale.ROOT));
    }
    return rule.effect().verb() + " " + String.join(" | ", arguments);
  }

  private static String options(Rule.Action action) {
    return action.options().isEmpty()
        ? "any"
        : String.join(", ", action.options().stream().map(SupportOption::id).toList());
  }

  @Test
  @DisplayName(
      "30,000 random zones and 6,000 random pairs, or as many as asked for: Drools, the plain reading and the second reader fire the same rules in the same order, on the same facts")
  void all_three_agree() {
    RandomViews zones = new RandomViews(pack, FactDictionary.standard(), 1862);
    for (int i = 0; i < ZONES; i++) {
      screening(zones, i % IN_WORDS == 0);
    }
    RandomViews pairs = new RandomViews(pack, FactDictionary.pairs(), 1863);
    for (int i = 0; i < PAIRS; i++) {
      FactView view = pairs.next();
      List<Rule> byDrools = compiled.fire(view, Rule.Phase.SCHEME);
      Map<String, Object> facts = raw(view);
      List<String> ids = second.fire(facts, "scheme");
      compare(view, facts, Rule.Phase.SCHEME, byDrools, ids, i % IN_WORDS == 0);
    }
    List<String> never =
        pack.all().stream().map(Rule::id).filter(id -> !fired.containsKey(id)).toList();
    List<String> always =
        pack.all().stream()
            .filter(rule -> times(fired, rule.id()) == times(asked, word(rule.phase())))
            .map(Rule::id)
            .toList();
    System.out.printf(
        "second reading: %d zones, %d pairs, %d s of CPU, %d findings of %d rules, %d compared in"
            + " words; seldom fired: %s%n",
        ZONES,
        PAIRS,
        ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() / 1_000_000_000,
        findings,
        fired.size(),
        inWords,
        fired.entrySet().stream()
            .sorted(Comparator.comparingInt(entry -> entry.getValue()[0]))
            .limit(3)
            .map(entry -> entry.getKey() + " " + entry.getValue()[0] + " times")
            .toList());
    assertThat(never).as("rules never fired").isEmpty();
    assertThat(always).as("rules that always fired").isEmpty();
  }

  /**
   * One zone through all phases, as a screening takes them. Drools is asked about all phases once
   * nothing more is added, for no earlier phase reads what later ones add.
   */
  private void screening(RandomViews zones, boolean inWords) {
    FactView view = zones.next();
    Map<String, Object> facts = raw(view);
    List<String> derivations;
    while (true) {
      derivations = second.fire(facts, "derive");
      Map<String, Fact> derived = new LinkedHashMap<>();
      for (String id : derivations) {
        List<String> says = byId.get(id).arguments();
        if (!facts.containsKey(says.get(0))) {
          derived.putIfAbsent(says.get(0), fact(says.get(0), says.get(1)));
        }
      }
      if (derived.isEmpty()) {
        break;
      }
      List<Rule> byDrools = compiled.fire(view, Rule.Phase.DERIVE);
      compare(view, facts, Rule.Phase.DERIVE, byDrools, derivations, inWords);
      view = view.with(List.copyOf(derived.values()));
      derived.forEach((name, fact) -> facts.put(name, fact.text()));
    }
    List<String> screened = second.fire(facts, "screen");
    for (Fact sized : zones.sized()) {
      view = view.with(sized);
      facts.put(sized.name(), sized.text());
    }
    List<String> confirmed = second.fire(facts, "confirm");
    List<String> ids = new ArrayList<>(screened);
    ids.addAll(confirmed);
    Fact left = fact("ordinaryOptionsLeft", optionsLeft(ids) ? "yes" : "no");
    view = view.with(left);
    facts.put(left.name(), left.text());
    List<List<Rule>> byDrools = compiled.fire(view, OF_ONE_ZONE);
    List<List<String>> bySecond =
        List.of(derivations, screened, confirmed, second.fire(facts, "settle"));
    for (int i = 0; i < OF_ONE_ZONE.size(); i++) {
      compare(view, facts, OF_ONE_ZONE.get(i), byDrools.get(i), bySecond.get(i), inWords);
    }
  }

  private boolean optionsLeft(List<String> ids) {
    List<String> out = new ArrayList<>();
    ids.stream()
        .map(byId::get)
        .filter(rule -> rule.verb().equals("ruleOut"))
        .forEach(rule -> out.addAll(List.of(rule.arguments().get(0).split(", *"))));
    return !out.containsAll(
        List.of("pits", "needles", "drilled-piles", "bracket-piles", "edge-pits", "monitor"));
  }

  private static Fact fact(String name, String word) {
    FactDefinition definition = FactDictionary.standard().require(name);
    return new Fact(definition, Origin.DERIVED, new FactValue.Choice(word), "");
  }

  /** Compares all three, and counts. */
  private void compare(
      FactView view,
      Map<String, Object> facts,
      Rule.Phase phase,
      List<Rule> byDrools,
      List<String> ids,
      boolean words) {
    String group = word(phase);
    if (!ids(byDrools).equals(ids) || !plain.fire(view, phase).equals(byDrools)) {
      assertThat(ids(byDrools)).as("Drools and second, %s on %s", group, facts).isEqualTo(ids);
      assertThat(ids(plain.fire(view, phase))).as("plain, %s on %s", group, facts).isEqualTo(ids);
    }
    asked.computeIfAbsent(group, key -> new int[1])[0]++;
    ids.forEach(id -> fired.computeIfAbsent(id, key -> new int[1])[0]++);
    findings += ids.size();
    if (words) {
      byDrools.forEach(rule -> sameWords(wording.finding(rule, view), facts));
    }
  }

  private void sameWords(Finding finding, Map<String, Object> facts) {
    SecondRule other = byId.get(finding.rule().id());
    assertThat(states(finding.rule())).isEqualTo(other.states());
    assertThat(finding.facts()).extracting(Matched::name).containsExactlyElementsOf(other.facts());
    for (Matched fact : finding.facts()) {
      Object value = facts.get(fact.name());
      String text =
          value == null ? "unknown" : value instanceof Double d ? d + " inside" : value + "";
      if (!(value instanceof Double) || fact.value().endsWith(" inside")) {
        assertThat(fact.value()).isEqualTo(text);
      }
    }
    inWords++;
  }

  private static String word(Rule.Phase phase) {
    return phase.name().toLowerCase(Locale.ROOT);
  }

  private static int times(Map<String, int[]> counts, String name) {
    return counts.getOrDefault(name, new int[1])[0];
  }

  private static List<String> ids(List<Rule> rules) {
    return rules.stream().map(Rule::id).toList();
  }

  /** The facts as bare words and numbers; what is unknown is missing. */
  private static Map<String, Object> raw(FactView view) {
    Map<String, Object> facts = new HashMap<>();
    for (Fact fact : view.all()) {
      if (fact.value() instanceof FactValue.Amount amount) {
        facts.put(fact.name(), amount.quantity().si());
      } else if (fact.value() != null) {
        facts.put(fact.name(), fact.value().text());
      }
    }
    return facts;
  }

  @Test
  @DisplayName("150 zones: the whole screening, with near misses and holds, is the same by both")
  void the_whole_screening_is_the_same() {
    RandomViews zones = new RandomViews(pack, FactDictionary.standard(), 1864);
    Screener one = new Screener(compiled);
    Screener other = new Screener(plain);
    int missed = 0;
    for (int i = 0; i < 150; i++) {
      FactView view = zones.next();
      List<Fact> sized = zones.sized();
      Confirmation sheets = (known, left) -> sized;
      Screening byDrools = one.screen(view, wording, sheets);
      Screening byReading = other.screen(view, wording, sheets);
      assertThat(byReading.view().all()).isEqualTo(byDrools.view().all());
      assertThat(byReading.derivations()).isEqualTo(byDrools.derivations());
      assertThat(byReading.findings()).isEqualTo(byDrools.findings());
      assertThat(byReading.assumed()).isEqualTo(byDrools.assumed());
      assertThat(byReading.holds()).isEqualTo(byDrools.holds());
      assertThat(byReading.nearMisses()).isEqualTo(byDrools.nearMisses());
      assertThat(byReading.conflicts()).isEqualTo(byDrools.conflicts());
      missed += sameNearMisses(byDrools);
    }
    assertThat(missed).isGreaterThan(1_500);
  }

  private int sameNearMisses(Screening screening) {
    Map<String, Object> facts = raw(screening.view());
    Map<String, String> expected = new HashMap<>();
    for (SecondRule rule : second.all()) {
      SecondRule.Test failed = second.rules("scheme").contains(rule) ? null : rule.nearMiss(facts);
      if (failed != null) {
        expected.put(rule.id(), failed.fact() + " " + failed.operator());
      }
    }
    Map<String, String> told = new HashMap<>();
    screening
        .nearMisses()
        .forEach(
            miss ->
                told.put(
                    miss.rule().id(),
                    miss.failed().fact()
                        + " "
                        + miss.failed().operator().symbol().replace(" null", "")));
    assertThat(told).isEqualTo(expected);
    return told.size();
  }
}
