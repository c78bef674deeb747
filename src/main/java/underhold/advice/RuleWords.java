package underhold.advice;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import underhold.quantity.UnitSystem;
import underhold.site.FactDictionary;
import underhold.site.FactView;

/**
 * What can be said of a rule before any facts are known: its reason with the places where facts
 * stand, its sources, and the limits it compares with.
 *
 * @param rule the rule
 * @param parts the reason in pieces: texts, each followed by a fact, the last one by none
 * @param facts the facts that stand between the pieces, by their places in the dictionary
 * @param read the facts its conditions read, each once, by their places in the dictionary
 * @param source its sources in words; empty where it rests on none
 * @param limits the limits its conditions compare with, in the reader's units
 */
record RuleWords(
    Rule rule,
    List<String> parts,
    List<Integer> facts,
    List<Integer> read,
    String source,
    List<MatchedLimit> limits) {
  private static final Pattern PLACEHOLDER = Pattern.compile("\\{(limit:)?([^{}]*)\\}");

  RuleWords {
    parts = List.copyOf(parts);
    facts = List.copyOf(facts);
    read = List.copyOf(read);
    limits = List.copyOf(limits);
  }

  static RuleWords of(Rule rule, RulePack pack, UnitSystem units, FactDictionary dictionary) {
    List<String> parts = new ArrayList<>();
    List<Integer> facts = new ArrayList<>();
    StringBuilder text = new StringBuilder();
    Matcher matcher = PLACEHOLDER.matcher(rule.because());
    int from = 0;
    while (matcher.find()) {
      text.append(rule.because(), from, matcher.start());
      from = matcher.end();
      String name = matcher.group(2);
      if (matcher.group(1) != null) {
        text.append(pack.limits().require(name).text(units));
      } else {
        parts.add(text.toString());
        text.setLength(0);
        facts.add(dictionary.require(name).index());
      }
    }
    parts.add(text.append(rule.because().substring(from)).toString());
    Set<Integer> read = new LinkedHashSet<>();
    List<MatchedLimit> limits = new ArrayList<>();
    for (Condition condition : rule.conditions()) {
      read.add(dictionary.require(condition.fact()).index());
      if (condition.operator().isNumeric()) {
        Limit limit = pack.limits().require(condition.limitName());
        limits.add(new MatchedLimit(limit.name(), limit.label(), limit.text(units), limit.basis()));
      }
    }
    return new RuleWords(
        rule, parts, facts, List.copyOf(read), pack.cite(rule.citations()), limits);
  }

  /** The reason with the facts of a view filled in. */
  String reason(FactView view) {
    if (facts.isEmpty()) {
      return parts.get(0);
    }
    StringBuilder text = new StringBuilder(parts.get(0));
    for (int i = 0; i < facts.size(); i++) {
      text.append(Wording.value(view.fact((int) facts.get(i)))).append(parts.get(i + 1));
    }
    return text.toString();
  }
}
