package underhold.advice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;

/**
 * Checks what a rule says: header complete, id and sentence unique, facts, words, limits and
 * sources known, comparisons of the right kind, the action fit for its phase.
 */
final class RuleChecks {
  private static final Pattern PLACEHOLDER = Pattern.compile("\\{(limit:)?([^{}]*)\\}");
  private static final Set<String> HEADERS =
      Set.of("id", "basis", "source", "because", "cause", "hold");

  private final FactDictionary zones;
  private final Limits limits;
  private final Map<String, Source> sources;
  private final Map<String, String> ids = new HashMap<>();
  private final Map<String, String> sentences = new HashMap<>();

  RuleChecks(FactDictionary dictionary, Limits limits, Map<String, Source> sources) {
    this.zones = dictionary;
    this.limits = limits;
    this.sources = sources;
  }

  /** The rule, if nothing is wrong with it. */
  Optional<Rule> rule(String file, RuleDraft draft, List<PackProblem> problems) {
    List<String> wrong = new ArrayList<>();
    Rule.Phase phase = phase(draft, wrong);
    FactDictionary dictionary = draft.pairs() ? FactDictionary.pairs() : zones;
    checkHeader(file, draft, wrong);
    draft.conditions().forEach(condition -> checkCondition(condition, dictionary, wrong));
    checkPlaceholders(draft.header("because"), dictionary, wrong);
    List<Rule.Citation> citations = citations(draft.header("source"), wrong);
    Rule.Action action = RuleActions.read(draft, phase, dictionary, wrong);
    Rule.Hold hold = hold(draft, action, wrong);
    if (!wrong.isEmpty()) {
      wrong.forEach(message -> problems.add(new PackProblem(file, draft.line(), message)));
      return Optional.empty();
    }
    return Optional.of(
        new Rule(
            draft.header("id"),
            draft.sentence(),
            phase,
            Basis.find(draft.header("basis")).orElseThrow(),
            citations,
            draft.header("because"),
            draft.header("cause"),
            hold,
            draft.conditions().stream().map(c -> c.lookedUp(dictionary, limits)).toList(),
            action,
            file,
            draft.line()));
  }

  private static Rule.Phase phase(RuleDraft draft, List<String> wrong) {
    for (Rule.Phase phase : Rule.Phase.values()) {
      if (phase.name().toLowerCase(Locale.ROOT).equals(draft.phase())
          && draft.pairs() == (phase == Rule.Phase.SCHEME)) {
        return phase;
      }
    }
    wrong.add(
        (draft.pairs()
                ? "agenda-group of a rule on PairFacts is scheme, not "
                : "agenda-group is derive, screen, confirm or settle, not ")
            + Texts.shorten(draft.phase()));
    return draft.pairs() ? Rule.Phase.SCHEME : Rule.Phase.SCREEN;
  }

  private void checkHeader(String file, RuleDraft draft, List<String> wrong) {
    for (String name : List.of("id", "basis", "because", "cause")) {
      if (draft.header(name).isBlank()) {
        wrong.add("the header @" + name + " is missing or empty");
      }
    }
    if (!draft.header().containsKey("source")) {
      wrong.add("the header @source is missing (it may be empty)");
    }
    for (String name : draft.header().keySet()) {
      if (!HEADERS.contains(name)) {
        wrong.add("there is no header @" + Texts.shorten(name));
      }
    }
    if (!draft.sentence().endsWith(".") || draft.sentence().length() < 12) {
      wrong.add("a rule's name is a sentence and ends with a full stop");
    }
    if (Basis.find(draft.header("basis")).isEmpty()) {
      wrong.add(
          "@basis is one of "
              + String.join(", ", Arrays.stream(Basis.values()).map(Basis::word).toList()));
    }
    String place = file + ":" + draft.line();
    String id = ids.putIfAbsent(draft.header("id").toUpperCase(Locale.ROOT), place);
    if (id != null) {
      wrong.add("the id " + draft.header("id") + " stands already in " + id);
    }
    String sentence = sentences.putIfAbsent(draft.sentence().toLowerCase(Locale.ROOT), place);
    if (sentence != null) {
      wrong.add("the same sentence stands already in " + sentence);
    }
  }

  private void checkCondition(Condition condition, FactDictionary dictionary, List<String> wrong) {
    Optional<FactDefinition> found = dictionary.find(condition.fact());
    if (found.isEmpty()) {
      wrong.add("there is no fact " + Texts.shorten(condition.fact()));
      return;
    }
    FactDefinition definition = found.get();
    boolean number = definition.kind().isNumber();
    if (condition.operator().isNumeric()) {
      String limit = condition.limitName();
      if (!number) {
        wrong.add(condition.fact() + " is a word and is compared with == or in");
      } else if (limits.find(limit).isEmpty()) {
        wrong.add("there is no limit " + Texts.shorten(limit));
      } else if (limits.require(limit).value().measure() != definition.requireRange().measure()) {
        wrong.add("the limit " + limit + " measures another thing than " + condition.fact());
      }
    } else if (condition.operator() != Condition.Operator.UNKNOWN) {
      if (number) {
        wrong.add(
            condition.fact() + " is an amount and is compared with <, <=, > or >= and a limit");
        return;
      }
      for (String word : condition.words()) {
        if (definition.allowed(word).isEmpty()) {
          wrong.add(condition.fact() + " has no value " + Texts.shorten(word));
        }
      }
    }
  }

  private void checkPlaceholders(String because, FactDictionary dictionary, List<String> wrong) {
    Matcher matcher = PLACEHOLDER.matcher(because);
    while (matcher.find()) {
      String name = matcher.group(2);
      if (matcher.group(1) != null
          ? limits.find(name).isEmpty()
          : dictionary.find(name).isEmpty()) {
        wrong.add("@because names {" + Texts.shorten(name) + "}, which is neither fact nor limit");
      }
    }
  }

  private List<Rule.Citation> citations(String text, List<String> wrong) {
    List<Rule.Citation> citations = new ArrayList<>();
    for (String part : text.split(";", -1)) {
      String entry = part.strip();
      if (entry.isEmpty()) {
        continue;
      }
      int blank = entry.indexOf(' ');
      String key = blank < 0 ? entry : entry.substring(0, blank);
      if (!sources.containsKey(key)) {
        wrong.add("sources.json has no source " + Texts.shorten(key));
      }
      citations.add(new Rule.Citation(key, blank < 0 ? "" : entry.substring(blank + 1).strip()));
    }
    return citations;
  }

  private static Rule.Hold hold(RuleDraft draft, Rule.Action action, List<String> wrong) {
    String text = draft.header("hold");
    if (text.isEmpty()) {
      return Rule.Hold.NEVER;
    }
    if (action.effect() != Effect.RULE_OUT) {
      wrong.add("only a rule that rules out can @hold");
    }
    for (Rule.Hold hold : Rule.Hold.values()) {
      if (hold.name().toLowerCase(Locale.ROOT).equals(text)) {
        return hold;
      }
    }
    wrong.add("@hold is always or partly");
    return Rule.Hold.NEVER;
  }
}
