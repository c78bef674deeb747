package underhold.advice;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import underhold.quantity.QuantityPrinter;
import underhold.quantity.UnitSystem;
import underhold.site.Fact;
import underhold.site.FactDefinition;
import underhold.site.FactValue;
import underhold.site.FactView;

/**
 * Puts rules, conditions and facts into words, with the site's own numbers in the user's units.
 * Several threads may ask at once.
 */
public final class Wording {
  private final RulePack pack;
  private final UnitSystem units;
  private final Map<String, RuleWords> said = new ConcurrentHashMap<>();

  public Wording(RulePack pack, UnitSystem units) {
    this.pack = pack;
    this.units = units;
  }

  public UnitSystem units() {
    return units;
  }

  /** The reason of a rule, filled in. */
  public String reason(Rule rule, FactView view) {
    return Texts.sentence(words(rule, view).reason(view));
  }

  /**
   * What is said of a rule whatever the facts are: made once, for rules are asked again and again.
   */
  @SuppressWarnings("ReferenceEquality") // a rule changed for a trial keeps its id
  private RuleWords words(Rule rule, FactView view) {
    RuleWords known = said.get(rule.id());
    if (known != null && known.rule() == rule) {
      return known;
    }
    RuleWords made = RuleWords.of(rule, pack, units, view.dictionary());
    said.put(rule.id(), made);
    return made;
  }

  /** The value of a fact as prose: words without hyphens, amounts as typed. */
  public static String value(Fact fact) {
    return fact.value() instanceof FactValue.Choice choice
        ? Texts.prose(choice.text())
        : fact.text();
  }

  /** A finding on known facts: the rule's words plus the facts and limits it matched. */
  public Finding finding(Rule rule, FactView view) {
    return finding(rule, view, false);
  }

  /** A finding: the rule's words plus the facts and limits it matched. */
  Finding finding(Rule rule, FactView view, boolean assumed) {
    return Finding.of(words(rule, view), view, assumed);
  }

  /** What a condition asks for, as prose: {@code pit depth at most 3 m}. */
  public String wanted(Condition condition, FactView view) {
    FactDefinition definition = view.dictionary().require(condition.fact());
    return definition.label() + " is " + wanted(condition, limit(condition), units);
  }

  /** The words or the limit that a condition asks for. */
  static String wanted(Condition condition, Optional<Limit> limit, UnitSystem units) {
    return switch (condition.operator()) {
      case UNKNOWN -> "unknown";
      case IS, IN -> either(condition.words());
      case BELOW -> "below " + limit.orElseThrow().text(units);
      case AT_MOST -> "at most " + limit.orElseThrow().text(units);
      case ABOVE -> "above " + limit.orElseThrow().text(units);
      case AT_LEAST -> "at least " + limit.orElseThrow().text(units);
    };
  }

  /** What would make a condition fail, as prose: {@code pit depth were above 3 m}. */
  public String otherwise(Condition condition, FactView view) {
    FactDefinition definition = view.dictionary().require(condition.fact());
    return definition.label()
        + " were "
        + switch (condition.operator()) {
          case UNKNOWN -> "known";
          case IS, IN ->
              either(
                  definition.values().stream()
                      .map(FactDefinition.Allowed::value)
                      .filter(value -> !condition.words().contains(value))
                      .toList());
          case BELOW -> "at least " + limitText(condition);
          case AT_MOST -> "above " + limitText(condition);
          case ABOVE -> "no more than " + limitText(condition);
          case AT_LEAST -> "below " + limitText(condition);
        };
  }

  /** A rule all whose conditions but this one hold. */
  NearMiss miss(Rule rule, Condition condition, FactView view) {
    return new NearMiss(
        rule,
        condition,
        condition.holds(view),
        view.fact(condition.index()),
        limit(condition),
        units);
  }

  /** The limit that a condition compares with; empty where it compares with words. */
  private Optional<Limit> limit(Condition condition) {
    return condition.operator().isNumeric()
        ? Optional.of(pack.limits().require(condition.limitName()))
        : Optional.empty();
  }

  /** An amount of a fact as a person reads it. */
  static String amount(double si, FactDefinition definition, UnitSystem units) {
    FactDefinition.Range range = definition.requireRange();
    return range.fine()
        ? QuantityPrinter.printFine(si, range.measure(), units)
        : QuantityPrinter.print(si, range.measure(), units);
  }

  private String limitText(Condition condition) {
    return limit(condition).orElseThrow().text(units);
  }

  private static String either(List<String> words) {
    List<String> prose = words.stream().map(Texts::prose).toList();
    if (prose.isEmpty()) {
      return "anything else";
    }
    int last = prose.size() - 1;
    return last == 0
        ? prose.get(0)
        : String.join(", ", prose.subList(0, last)) + " or " + prose.get(last);
  }
}
