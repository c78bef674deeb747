package underhold.advice;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import underhold.site.Fact;
import underhold.site.FactDefinition;
import underhold.site.FactValue;
import underhold.site.FactView;
import underhold.site.Origin;
import underhold.site.ZoneViews;

/**
 * Runs a rule pack on the facts of a zone, twice: on what is known, which scores; and with the
 * worse values assumed, which only warns and asks.
 */
public final class Screener {
  private final RuleEngine engine;
  private final RulePack pack;
  private final FactRoots roots;
  private final RuleIndex index;
  private final List<Rule> holders;

  public Screener(RuleEngine engine) {
    this.engine = engine;
    this.pack = engine.pack();
    this.roots = new FactRoots(pack);
    this.index = new RuleIndex(pack.rules());
    this.holders = pack.rules().stream().filter(rule -> rule.hold() != Rule.Hold.NEVER).toList();
  }

  public RulePack pack() {
    return pack;
  }

  /** All that the rules say of a zone, without any sizing. */
  public Screening screen(FactView facts, Wording wording) {
    return screen(facts, wording, Confirmation.NONE);
  }

  /** All that the rules say of a zone, the options left being sized in between. */
  public Screening screen(FactView facts, Wording wording, Confirmation confirmation) {
    Derived known = derive(facts, Origin.DERIVED, wording);
    Fired fired = fire(known.view, confirmation);
    return new Screening(
        fired.view,
        known.findings,
        fired.rules.stream().map(rule -> wording.finding(rule, fired.view, false)).toList(),
        assumed(fired.view, fired.rules, wording),
        holds(fired.view, fired.rules, wording),
        nearMisses(fired.view, wording),
        known.conflicts);
  }

  /** Only what counts in a ranking: for trials of many sites. */
  public Screening score(FactView facts, Wording wording, Confirmation confirmation) {
    Derived known = derive(facts, Origin.DERIVED, wording);
    Fired fired = fire(known.view, confirmation);
    return new Screening(
        fired.view,
        List.of(),
        fired.rules.stream().map(Screener::bare).toList(),
        List.of(),
        holds(fired.view, fired.rules, wording),
        List.of(),
        known.conflicts);
  }

  /** A view completed by what was sized and settled, and the rules that fired on it. */
  private record Fired(FactView view, List<Rule> rules) {}

  private Fired fire(FactView known, Confirmation confirmation) {
    List<Rule> fired = new ArrayList<>(engine.fire(known, Rule.Phase.SCREEN));
    Set<SupportOption> left = EnumSet.allOf(SupportOption.class);
    left.removeAll(ruledOut(fired));
    List<Fact> sized = confirmation.facts(known, left);
    FactView confirmed = known.with(sized);
    if (!sized.isEmpty()) {
      fired.addAll(engine.fire(confirmed, Rule.Phase.CONFIRM));
    }
    FactView settled = settle(confirmed, fired);
    fired.addAll(engine.fire(settled, Rule.Phase.SETTLE));
    return new Fired(settled, fired);
  }

  private static Finding bare(Rule rule) {
    return Finding.wordless(rule);
  }

  private List<Finding> assumed(FactView known, List<Rule> fired, Wording wording) {
    Derived cautious = derive(ZoneViews.cautious(known), Origin.ASSUMED, wording);
    Set<String> firedAlready = new HashSet<>();
    fired.forEach(rule -> firedAlready.add(rule.id()));
    List<Finding> assumed = new ArrayList<>();
    for (Rule rule : engine.fire(cautious.view, Rule.Phase.SCREEN)) {
      if (!firedAlready.contains(rule.id())) {
        assumed.add(wording.finding(rule, cautious.view, true));
      }
    }
    return assumed;
  }

  /** A view completed by the rules that derive facts, and the findings of those rules. */
  private record Derived(FactView view, List<Finding> findings, List<String> conflicts) {}

  private Derived derive(FactView start, Origin origin, Wording wording) {
    FactView view = start;
    List<Finding> findings = new ArrayList<>();
    List<String> conflicts = new ArrayList<>();
    Set<String> told = new HashSet<>();
    boolean changed = true;
    while (changed) { // ends: each round makes at least one more fact known
      Map<String, Fact> found = new LinkedHashMap<>();
      for (Rule rule : engine.fire(view, Rule.Phase.DERIVE)) {
        String name = required(rule.action().fact(), rule);
        String value = required(rule.action().value(), rule);
        Fact before = view.fact(name);
        Fact earlier = before.value() == null ? found.get(name) : before;
        boolean gives = earlier == null || earlier.text().equals(value);
        if (earlier == null) {
          String how = wording.reason(rule, view) + " [" + rule.id() + "]";
          found.put(name, new Fact(before.definition(), origin, new FactValue.Choice(value), how));
        } else if (before.origin() != Origin.STATED && !gives) {
          conflicts.add(name + " is " + earlier.text() + ", but " + rule.id() + " says " + value);
        }
        if (gives && before.origin() != Origin.STATED && told.add(rule.id())) {
          findings.add(wording.finding(rule, view, origin == Origin.ASSUMED));
        }
      }
      changed = !found.isEmpty();
      view = view.with(List.copyOf(found.values()));
    }
    return new Derived(view, findings, conflicts);
  }

  private static String required(@Nullable String text, Rule rule) {
    if (text == null) {
      throw new IllegalStateException(rule.id() + " derives nothing");
    }
    return text;
  }

  /** Adds whether any ordinary option is left. */
  private FactView settle(FactView view, List<Rule> fired) {
    Set<SupportOption> out = ruledOut(fired);
    boolean left = pack.weights().costOrder().stream().anyMatch(option -> !out.contains(option));
    FactDefinition definition = view.dictionary().require("ordinaryOptionsLeft");
    String how =
        left ? "At least one option is not ruled out." : "Every other option is ruled out.";
    return view.with(
        new Fact(definition, Origin.DERIVED, new FactValue.Choice(left ? "yes" : "no"), how));
  }

  private static Set<SupportOption> ruledOut(List<Rule> fired) {
    Set<SupportOption> out = new HashSet<>();
    fired.stream()
        .filter(rule -> rule.effect() == Effect.RULE_OUT)
        .forEach(rule -> out.addAll(rule.action().options()));
    return out;
  }

  private Map<SupportOption, List<Hold>> holds(FactView view, List<Rule> fired, Wording wording) {
    Set<SupportOption> out = ruledOut(fired);
    Map<SupportOption, List<Hold>> holds = new EnumMap<>(SupportOption.class);
    for (Rule rule : holders) {
      if (rule.holds(view) != Truth.OPEN) {
        continue;
      }
      List<Condition> open =
          rule.conditions().stream().filter(c -> c.holds(view) == Truth.OPEN).toList();
      if (rule.hold() == Rule.Hold.PARTLY && open.size() == rule.conditions().size()) {
        continue;
      }
      List<String> names = open.stream().map(Condition::fact).toList();
      List<String> labels = open.stream().map(c -> wording.wanted(c, view)).toList();
      Hold hold =
          new Hold(
              rule,
              names,
              roots.ask(names, view),
              "Open: it would be ruled out if " + String.join(" and ", labels) + ".");
      for (SupportOption option : rule.action().options()) {
        if (!out.contains(option)) {
          holds.computeIfAbsent(option, key -> new ArrayList<>()).add(hold);
        }
      }
    }
    return holds;
  }

  /** The condition that alone does not hold; null where all hold, or more than one does not. */
  private static @Nullable Condition missedBy(Rule rule, FactView view) {
    Condition missed = null;
    for (Condition condition : rule.conditions()) {
      if (condition.holds(view) != Truth.TRUE) {
        if (missed != null) {
          return null;
        }
        missed = condition;
      }
    }
    return missed;
  }

  private List<NearMiss> nearMisses(FactView view, Wording wording) {
    List<NearMiss> misses = new ArrayList<>();
    BitSet near = index.missedByOneFact(view);
    for (int i = near.nextSetBit(0); i >= 0; i = near.nextSetBit(i + 1)) {
      Rule rule = pack.rules().get(i);
      Condition condition = missedBy(rule, view);
      if (condition != null && (rule.conditions().size() > 1 || condition.operator().isNumeric())) {
        misses.add(wording.miss(rule, condition, view));
      }
    }
    return misses;
  }
}
