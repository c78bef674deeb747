package underhold.advice;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import underhold.site.Fact;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;
import underhold.site.FactReader;
import underhold.site.FactView;
import underhold.site.Origin;

/**
 * A site on which a rule is tried.
 *
 * @param title the site, as an engineer would put it
 * @param facts what is known, as typed; whatever is left out nobody knows
 * @param fires whether the rule should fire
 * @param edge the limit at which one of the facts stands exactly, if any
 * @param unknown whether a fact that the rule needs is left out
 * @param disputed whether the rule is known to do otherwise, until that is settled
 */
record RuleCase(
    @JsonProperty(required = true) String title,
    @JsonProperty(required = true) Map<String, String> facts,
    @JsonProperty(required = true) boolean fires,
    Optional<String> edge,
    boolean unknown,
    boolean disputed) {
  RuleCase {
    facts = Map.copyOf(facts);
    if (title.isBlank()) {
      throw new IllegalArgumentException("a case has no title");
    }
  }

  /**
   * The facts as an adviser would state them.
   *
   * @throws IllegalArgumentException if a fact or its value is not in the dictionary
   */
  FactView view() {
    FactDictionary dictionary = dictionary();
    Map<String, Fact> known = new HashMap<>();
    facts.forEach((name, typed) -> known.put(name, stated(dictionary.require(name), typed)));
    return FactView.of(dictionary, known);
  }

  /** That of two zones together where one of the facts is in it; the names of the two differ. */
  private FactDictionary dictionary() {
    FactDictionary pairs = FactDictionary.pairs();
    return facts.keySet().stream().anyMatch(name -> pairs.find(name).isPresent())
        ? pairs
        : FactDictionary.standard();
  }

  private Fact stated(FactDefinition definition, String typed) {
    return FactReader.read(definition, typed)
        .fold(
            value -> new Fact(definition, Origin.STATED, value, ""),
            () -> {
              throw new IllegalArgumentException(
                  title + ": leave " + definition.name() + " out, it is unknown");
            },
            rejected -> {
              throw new IllegalArgumentException(title + ": " + rejected.explanation());
            });
  }

  /** The conditions of the rule that compare a fact with the limit. */
  static List<Condition> conditions(Rule rule, String limit) {
    return rule.conditions().stream()
        .filter(c -> c.operator().isNumeric() && c.limitName().equals(limit))
        .toList();
  }
}
