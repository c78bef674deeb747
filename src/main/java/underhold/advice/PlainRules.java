package underhold.advice;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import underhold.site.Fact;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;
import underhold.site.FactValue;
import underhold.site.FactView;
import underhold.site.Origin;

/**
 * The rules of a pack read condition by condition, without findings and words: for sweeps over many
 * views. It fires what the {@link RuleEngine} fires and scores as {@link Ranking} does; which rules
 * fired is a set of places in the pack.
 */
public final class PlainRules {
  private static final Set<String> FAILURES = Set.of("fails", "needs-support");
  private static final String SIZING = "sizing";

  private final RulePack pack;
  private final Set<String> sizingFacts;
  private final Rule[] rules;
  private final Fact[] derived;
  private final Map<Rule.Phase, BitSet> phases;
  private final BitSet holders;
  private final BitSet comparing;
  private final Map<SupportOption, OptionRules> options;
  private final boolean sizingOnlyTakes;
  private final boolean sheetsSpeakApart;

  /** The rules of a pack, to be read on views of that dictionary. */
  public PlainRules(RulePack pack, FactDictionary dictionary) {
    this.pack = pack;
    this.sizingFacts =
        dictionary.all().stream()
            .filter(definition -> definition.group().equals(SIZING))
            .map(FactDefinition::name)
            .collect(Collectors.toSet());
    this.rules = pack.rules().toArray(Rule[]::new);
    this.derived = new Fact[rules.length];
    this.phases = new EnumMap<>(Rule.Phase.class);
    this.holders = new BitSet();
    this.comparing = new BitSet();
    this.options = new EnumMap<>(SupportOption.class);
    for (Rule.Phase phase : Rule.Phase.values()) {
      phases.put(phase, new BitSet());
    }
    for (int i = 0; i < rules.length; i++) {
      Rule rule = rules[i];
      phase(rule.phase()).set(i);
      holders.set(i, rule.hold() != Rule.Hold.NEVER);
      comparing.set(i, rule.conditions().stream().anyMatch(c -> c.operator().isNumeric()));
      if (rule.phase() == Rule.Phase.DERIVE) {
        derived[i] = fact(rule.action(), dictionary);
      }
    }
    for (SupportOption option : SupportOption.values()) {
      options.put(option, new OptionRules(option, pack.rules()));
    }
    this.sizingOnlyTakes =
        pack.rules().stream()
            .filter(rule -> rule.phase() == Rule.Phase.CONFIRM)
            .allMatch(PlainRules::onlyTakes);
    this.sheetsSpeakApart =
        sizingOnlyTakes
            && pack.rules().stream()
                .filter(rule -> rule.phase() == Rule.Phase.CONFIRM)
                .allMatch(this::speaksApart);
  }

  /** The same rules with other conditions. */
  private PlainRules(PlainRules other, Rule[] rules) {
    this.pack = other.pack;
    this.sizingFacts = other.sizingFacts;
    this.rules = rules;
    this.derived = other.derived;
    this.phases = other.phases;
    this.holders = other.holders;
    this.comparing = other.comparing;
    this.options = other.options;
    this.sizingOnlyTakes = other.sizingOnlyTakes;
    this.sheetsSpeakApart = other.sheetsSpeakApart;
  }

  public RulePack pack() {
    return pack;
  }

  /**
   * The same rules with other limits.
   *
   * @param limits values in the inside unit of their measure, by the name of the limit; the limits
   *     not named stay as they are
   */
  public PlainRules with(Map<String, Double> limits) {
    Rule[] changed = rules.clone();
    for (int i = comparing.nextSetBit(0); i >= 0; i = comparing.nextSetBit(i + 1)) {
      Rule rule = changed[i];
      if (compares(rule, limits.keySet())) {
        changed[i] = rule.with(rule.conditions().stream().map(c -> c.with(limits)).toList());
      }
    }
    return new PlainRules(this, changed);
  }

  private static boolean compares(Rule rule, Set<String> limits) {
    for (Condition condition : rule.conditions()) {
      if (condition.comparesWith(limits)) {
        return true;
      }
    }
    return false;
  }

  /**
   * Whether all that the rules read in the sheets is that something fails or wants support: then it
   * does not matter to them which of the other checks pass and which refer.
   */
  public boolean sizingSpeaksOfFailuresOnly() {
    return pack.rules().stream()
        .flatMap(rule -> rule.conditions().stream())
        .filter(condition -> sizingFacts.contains(condition.fact()))
        .allMatch(condition -> FAILURES.containsAll(condition.words()) && condition.isOfWords());
  }

  /** The rule at a place. */
  public Rule rule(int place) {
    return rules[place];
  }

  /**
   * Whether all that sizing can do to an option is to take points from it or to ask for something:
   * then an option that is not first before it is sized cannot become first by being sized.
   */
  public boolean sizingOnlyTakes() {
    return sizingOnlyTakes;
  }

  /**
   * Whether each rule that reads the sheets only takes, from one option, for one fact of theirs.
   */
  public boolean sheetsSpeakApart() {
    return sheetsSpeakApart;
  }

  private boolean speaksApart(Rule rule) {
    return rule.action().options().size() == 1
        && rule.facts().stream().filter(sizingFacts::contains).count() == 1;
  }

  private static boolean onlyTakes(Rule rule) {
    boolean mild =
        switch (rule.effect()) {
          case AGAINST, REQUIRE, CAUTION -> true;
          case DERIVE, RULE_OUT, FOR, REFER -> false;
        };
    return mild
        && rule.hold() == Rule.Hold.NEVER
        && rule.conditions().stream()
            .noneMatch(condition -> condition.operator() == Condition.Operator.UNKNOWN);
  }

  private static Fact fact(Rule.Action action, FactDictionary dictionary) {
    FactDefinition definition = dictionary.require(Objects.requireNonNull(action.fact()));
    String value = Objects.requireNonNull(action.value());
    return new Fact(definition, Origin.DERIVED, new FactValue.Choice(value), "");
  }

  /** The view with all that the rules derive from it. */
  public FactView complete(FactView known) {
    FactView view = known;
    while (true) { // ends: each round makes at least one more fact known
      Map<Integer, Fact> found = new LinkedHashMap<>();
      BitSet places = phase(Rule.Phase.DERIVE);
      for (int i = places.nextSetBit(0); i >= 0; i = places.nextSetBit(i + 1)) {
        Fact fact = derived[i];
        int index = fact.definition().index();
        if (view.fact(index).value() == null
            && !found.containsKey(index)
            && rules[i].holds(view) == Truth.TRUE) {
          found.put(index, fact);
        }
      }
      if (found.isEmpty()) {
        return view;
      }
      view = view.with(new ArrayList<>(found.values()));
    }
  }

  /** Adds the rules of a phase that fire on a view. */
  public void fire(FactView view, Rule.Phase phase, BitSet fired) {
    BitSet places = phase(phase);
    for (int i = places.nextSetBit(0); i >= 0; i = places.nextSetBit(i + 1)) {
      if (rules[i].holds(view) == Truth.TRUE) {
        fired.set(i);
      }
    }
  }

  /**
   * The points that an option keeps whatever its sheet says; where sizing does more than take
   * points this says nothing.
   */
  public double leastScore(SupportOption option, BitSet fired, Points points) {
    return of(option).least(fired, phase(Rule.Phase.CONFIRM), points);
  }

  /** Those of the rules that fired that do not read the sheets. */
  public BitSet withoutSizing(BitSet fired) {
    BitSet rest = (BitSet) fired.clone();
    rest.andNot(phase(Rule.Phase.CONFIRM));
    return rest;
  }

  /** The rules whose options wait because the rule is open. */
  public BitSet holding(FactView view) {
    BitSet holding = new BitSet(rules.length);
    for (int i = holders.nextSetBit(0); i >= 0; i = holders.nextSetBit(i + 1)) {
      Rule rule = rules[i];
      if (rule.holds(view) == Truth.OPEN
          && (rule.hold() == Rule.Hold.ALWAYS || partlyMet(rule, view))) {
        holding.set(i);
      }
    }
    return holding;
  }

  private static boolean partlyMet(Rule rule, FactView view) {
    return rule.conditions().stream().anyMatch(c -> c.holds(view) != Truth.OPEN);
  }

  /** The rules that rule an option out, speak for or against it, as far as they score. */
  public OptionRules of(SupportOption option) {
    return Objects.requireNonNull(options.get(option));
  }

  /** The rules, other than those that derive facts, that are not decided. */
  public List<Rule> open(FactView view) {
    List<Rule> open = new ArrayList<>();
    for (Rule rule : rules) {
      if (rule.phase() != Rule.Phase.DERIVE && rule.holds(view) == Truth.OPEN) {
        open.add(rule);
      }
    }
    return open;
  }

  private BitSet phase(Rule.Phase phase) {
    return Objects.requireNonNull(phases.get(phase));
  }
}
