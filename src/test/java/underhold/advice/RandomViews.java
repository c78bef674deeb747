package underhold.advice;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;
import underhold.consult.RandomZones;
import underhold.quantity.Quantity;
import underhold.site.Fact;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;
import underhold.site.FactValue;
import underhold.site.FactView;
import underhold.site.Origin;
import underhold.site.Site;
import underhold.site.ZoneViews;

/**
 * Random facts: of believable sites with some forgotten and some turned, of any kind at all, and
 * aimed at one rule so that its conditions hold or but one of them. Amounts lie at the edges of
 * limits: on them, and one step of a double below and above.
 */
final class RandomViews {
  private static final int SITES = 500;

  private final FactDictionary dictionary;
  private final List<Rule> rules;
  private final Random random;
  private final List<List<Fact>> values = new ArrayList<>();
  private final Map<Condition, List<Fact>> fitting = new IdentityHashMap<>();
  private final List<Map<String, Fact>> believable = new ArrayList<>();

  RandomViews(RulePack pack, FactDictionary dictionary, long seed) {
    this.dictionary = dictionary;
    this.random = new Random(seed);
    boolean pairs = dictionary == FactDictionary.pairs();
    this.rules = pairs ? pack.pairRules() : pack.rules();
    for (FactDefinition definition : dictionary.all()) {
      values.add(values(definition, pack));
    }
    if (!pairs) {
      RandomZones sites = new RandomZones(seed);
      for (int i = 0; i < SITES; i++) {
        Site site = sites.site(1, 0);
        Map<String, Fact> facts = new HashMap<>();
        ZoneViews.known(site, site.zones().get(0), dictionary)
            .present()
            .forEach(fact -> facts.put(fact.name(), fact));
        believable.add(facts);
      }
    }
  }

  /** The next facts; what the program makes between the phases is not among them. */
  FactView next() {
    double kind = random.nextDouble();
    Map<String, Fact> facts =
        kind < 0.4 && !believable.isEmpty()
            ? turned(believable.get(random.nextInt(believable.size())))
            : wild();
    if (kind > 0.6) {
      aim(facts, rules.get(random.nextInt(rules.size())));
    }
    return FactView.of(dictionary, facts);
  }

  /** Some of the facts that the sheets would make. */
  List<Fact> sized() {
    List<Fact> sized = new ArrayList<>();
    for (FactDefinition definition : dictionary.all()) {
      if (definition.group().equals("sizing") && random.nextInt(3) > 0) {
        sized.add(any(definition));
      }
    }
    return sized;
  }

  private Map<String, Fact> turned(Map<String, Fact> whole) {
    Map<String, Fact> facts = new HashMap<>(whole);
    double forgotten = random.nextDouble() * 0.6;
    facts.values().removeIf(fact -> random.nextDouble() < forgotten);
    for (int i = random.nextInt(4); i > 0; i--) {
      put(facts, dictionary.all().get(random.nextInt(dictionary.size())));
    }
    return facts;
  }

  private Map<String, Fact> wild() {
    double share = random.nextDouble();
    Map<String, Fact> facts = new HashMap<>();
    for (FactDefinition definition : dictionary.all()) {
      if (random.nextDouble() < share) {
        put(facts, definition);
      }
    }
    return facts;
  }

  private void put(Map<String, Fact> facts, FactDefinition definition) {
    if (!ProgramFacts.makes(definition)) {
      facts.put(definition.name(), any(definition));
    }
  }

  private Fact any(FactDefinition definition) {
    List<Fact> all = values.get(definition.index());
    return all.get(random.nextInt(all.size()));
  }

  /** Lets every condition of a rule hold that can be made to by one fact, but sometimes one. */
  private void aim(Map<String, Fact> facts, Rule rule) {
    int spared = random.nextInt(2 * rule.conditions().size());
    for (int i = 0; i < rule.conditions().size(); i++) {
      Condition condition = rule.conditions().get(i);
      FactDefinition definition = dictionary.require(condition.fact());
      if (i == spared || ProgramFacts.makes(definition)) {
        continue;
      }
      if (condition.operator() == Condition.Operator.UNKNOWN) {
        facts.remove(condition.fact());
        continue;
      }
      List<Fact> fitting = fitting(condition, definition);
      facts.put(condition.fact(), fitting.get(random.nextInt(fitting.size())));
    }
  }

  private List<Fact> fitting(Condition condition, FactDefinition definition) {
    return fitting.computeIfAbsent(
        condition,
        key -> values.get(definition.index()).stream().filter(fact -> fits(key, fact)).toList());
  }

  private static boolean fits(Condition condition, Fact fact) {
    return fact.value() instanceof FactValue.Amount amount
        ? switch (condition.operator()) {
          case BELOW -> amount.quantity().si() < condition.threshold();
          case AT_MOST -> amount.quantity().si() <= condition.threshold();
          case ABOVE -> amount.quantity().si() > condition.threshold();
          default -> amount.quantity().si() >= condition.threshold();
        }
        : condition.words().contains(fact.text());
  }

  private static List<Fact> values(FactDefinition definition, RulePack pack) {
    if (!definition.kind().isNumber()) {
      return definition.values().stream()
          .map(word -> fact(definition, new FactValue.Choice(word.value())))
          .toList();
    }
    FactDefinition.Range range = definition.requireRange();
    TreeSet<Double> numbers = new TreeSet<>(List.of(range.min(), range.max()));
    numbers.add((range.min() + range.max()) / 2);
    for (Rule rule : pack.all()) {
      for (Condition condition : rule.conditions()) {
        if (condition.fact().equals(definition.name()) && condition.operator().isNumeric()) {
          double limit = pack.limits().require(condition.limitName()).si();
          numbers.addAll(
              List.of(limit, Math.nextUp(limit), Math.nextDown(limit), limit * 0.9, limit * 1.1));
        }
      }
    }
    return numbers.stream()
        .map(
            si ->
                fact(
                    definition,
                    new FactValue.Amount(
                        new Quantity(si, range.measure(), range.siUnit(), si + " inside"))))
        .toList();
  }

  private static Fact fact(FactDefinition definition, FactValue value) {
    return new Fact(definition, Origin.STATED, value, "");
  }
}
