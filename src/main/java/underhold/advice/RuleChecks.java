package underhold.advice;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
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

  private static final Pattern ID = Pattern.compile("[A-Za-z0-9]{1,12}(-[A-Za-z0-9]{1,12}){0,3}");

  private final FactDictionary zones;
  private final Tables tables;
  private final Map<String, String> ids = new HashMap<>();
  private final Map<String, String> sentences = new HashMap<>();

  RuleChecks(FactDictionary dictionary, Tables tables) {
    this.zones = dictionary;
    this.tables = tables;
  }

  /**
   * What rules may name.
   *
   * @param limits the limits in order
   * @param untold a limit that is not in order, which has been told already
   * @param sources the sources
   * @param sourcesRead whether the table of sources could be read
   */
  record Tables(
      Limits limits, Predicate<String> untold, Map<String, Source> sources, boolean sourcesRead) {}

  /** The rule, if nothing is wrong with it. */
  Optional<Rule> rule(String file, RuleDraft draft, List<PackProblem> problems) {
    List<String> wrong = new ArrayList<>();
    Rule.Phase phase = phase(draft, wrong);
    FactDictionary dictionary = draft.pairs() ? FactDictionary.pairs() : zones;
    checkHeader(file, draft, wrong);
    draft.conditions().forEach(one -> checkCondition(one, dictionary, phase, wrong));
    checkPlaceholders(draft.header("because"), dictionary, wrong);
    List<Rule.Citation> citations = citations(draft.header("source"), wrong);
    checkClaim(draft, citations, wrong);
    Rule.Action action = RuleActions.read(draft, phase, dictionary, wrong);
    Rule.Hold hold = hold(draft, action, wrong);
    if (!wrong.isEmpty()) {
      wrong.forEach(message -> problems.add(new PackProblem(file, draft.line(), message)));
      return Optional.empty();
    }
    if (draft.conditions().stream().anyMatch(c -> c.limit() != null && unknown(c.limit()))) {
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
            draft.conditions().stream().map(c -> c.lookedUp(dictionary, tables.limits)).toList(),
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
        wrong.add(
            "there is no header @"
                + Texts.shorten(name)
                + "; there are "
                + String.join(", ", HEADERS.stream().sorted().toList()));
      }
    }
    if (!draft.sentence().endsWith(".") || draft.sentence().length() < 12) {
      wrong.add("a rule's name is a sentence and ends with a full stop");
    }
    if (Basis.find(draft.header("basis")).isEmpty()) {
      wrong.add("@basis is one of " + String.join(", ", Basis.words()));
    }
    if (!ID.matcher(draft.header("id")).matches() && !draft.header("id").isBlank()) {
      wrong.add(
          "an id is letters and digits in up to four groups with hyphens, such as PIT-26, not "
              + Texts.shorten(draft.header("id")));
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

  private boolean unknown(String limit) {
    return tables.limits.find(limit).isEmpty();
  }

  private void checkCondition(
      Condition condition, FactDictionary dictionary, Rule.Phase phase, List<String> wrong) {
    Optional<FactDefinition> found = dictionary.find(condition.fact());
    if (found.isEmpty()) {
      List<String> names = dictionary.all().stream().map(FactDefinition::name).toList();
      wrong.add(
          "there is no fact "
              + Texts.shorten(condition.fact())
              + PackFields.nearest(condition.fact(), names));
      return;
    }
    FactDefinition definition = found.get();
    if (!ProgramFacts.known(definition, phase)) {
      wrong.add(condition.fact() + " is not yet known in the phase " + phase.word());
    }
    boolean number = definition.kind().isNumber();
    if (condition.operator().isNumeric()) {
      String limit = condition.limitName();
      if (!number) {
        wrong.add(condition.fact() + " is a word and is compared with == or in");
      } else if (unknown(limit)) {
        if (!tables.untold.test(limit)) {
          wrong.add("there is no limit " + Texts.shorten(limit) + nearestLimit(limit));
        }
      } else if (tables.limits.require(limit).value().measure()
          != definition.requireRange().measure()) {
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

  private String nearestLimit(String limit) {
    return PackFields.nearest(limit, tables.limits.all().stream().map(Limit::name).toList());
  }

  /** Who says that others have published it names where, and has looked at it. */
  private void checkClaim(RuleDraft draft, List<Rule.Citation> citations, List<String> wrong) {
    Optional<Basis> basis = Basis.find(draft.header("basis"));
    boolean claims = basis.filter(Basis::claimsSource).isPresent();
    if (claims
        && tables.sourcesRead
        && citations.stream()
            .map(citation -> tables.sources.get(citation.key()))
            .allMatch(source -> source != null && source.fromMemory())) {
      wrong.add(
          "a rule on the basis "
              + basis.orElseThrow().word()
              + " cites a source that was read; else its basis is from memory, common practice or"
              + " judgement");
    }
  }

  private void checkPlaceholders(String because, FactDictionary dictionary, List<String> wrong) {
    Matcher matcher = PLACEHOLDER.matcher(because);
    while (matcher.find()) {
      String name = matcher.group(2);
      if (matcher.group(1) != null
          ? unknown(name) && !tables.untold.test(name)
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
      if (tables.sourcesRead && !tables.sources.containsKey(key)) {
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
