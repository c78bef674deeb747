package underhold.shell;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import underhold.site.FactDefinition;
import underhold.site.StatedFact;

/**
 * Facts as typed on a command line, FACT=VALUE each; all that is wrong is collected.
 *
 * @param facts what is to be stated, in the order typed
 * @param problems what is wrong with the words
 */
record Assignments(Map<FactDefinition, StatedFact> facts, List<String> problems) {
  /** Words without an equals sign belong to the value before them: {@code gap=0.6 m}. */
  static Assignments read(List<String> words) {
    List<String> problems = new ArrayList<>();
    Map<FactDefinition, StatedFact> facts = new LinkedHashMap<>();
    String joined = null;
    List<String> pairs = new ArrayList<>();
    for (String word : words) {
      if (word.endsWith(".json")) {
        problems.add("\"" + word + "\" is not FACT=VALUE; a site is named by --site FILE.");
      } else if (word.indexOf('=') > 0) {
        joined = word;
        pairs.add(word);
      } else if (joined == null) {
        problems.add("\"" + word + "\" is not FACT=VALUE, such as excavationDepth=5 m.");
      } else {
        joined = joined + " " + word;
        pairs.set(pairs.size() - 1, joined);
      }
    }
    pairs.forEach(pair -> state(pair, facts, problems));
    return new Assignments(facts, problems);
  }

  private static void state(
      String pair, Map<FactDefinition, StatedFact> facts, List<String> problems) {
    int equals = pair.indexOf('=');
    String typed = unquoted(pair.substring(equals + 1).strip());
    fact(pair.substring(0, equals).strip(), problems)
        .ifPresent(
            fact ->
                value(fact, typed, problems)
                    .ifPresent(
                        stated -> {
                          if (facts.put(fact, stated) != null) {
                            problems.add(fact.name() + " stands twice; one value is needed.");
                          }
                        }));
  }

  private static Optional<FactDefinition> fact(String name, List<String> problems) {
    FactDefinition fact;
    try {
      fact = Names.fact(name);
    } catch (Refusal refusal) {
      problems.add(String.join(" ", refusal.messages()));
      return Optional.empty();
    }
    if (fact.derived()) {
      List<String> sources = underhold.site.ZoneViews.sources(fact.name());
      problems.add(
          fact.name()
              + ": "
              + fact.label()
              + " is never stated, it follows from other facts"
              + (sources.isEmpty() ? "." : ": change " + String.join(", ", sources) + "."));
      return Optional.empty();
    }
    return Optional.of(fact);
  }

  private static Optional<StatedFact> value(
      FactDefinition fact, String typed, List<String> problems) {
    return AnswerReader.read(fact, typed)
        .fold(
            value -> Optional.of(new StatedFact(value, "")),
            () -> Optional.of(StatedFact.unknown("")),
            rejected -> {
              problems.add(fact.name() + ": " + rejected.explanation());
              return Optional.empty();
            });
  }

  /** Quotes round a value are the shell's manners, not the value's. */
  private static String unquoted(String value) {
    boolean quoted = value.length() > 1 && value.startsWith("\"") && value.endsWith("\"");
    return quoted ? value.substring(1, value.length() - 1) : value;
  }
}
