package underhold.advice;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.JsonNode;

/** Reads the table of criteria of a rule pack, and checks that no cause is left without one. */
final class CriteriaTable {
  static final String FILE = "criteria.json";

  private final List<PackProblem> problems;

  CriteriaTable(List<PackProblem> problems) {
    this.problems = problems;
  }

  Criteria read(JsonNode table) {
    Map<Criterion, String> meanings = new EnumMap<>(Criterion.class);
    Map<String, Criterion> byCause = new LinkedHashMap<>();
    for (JsonNode node : table.path("criteria")) {
      String name = node.path("name").asString("");
      Criterion.find(name)
          .ifPresentOrElse(
              criterion -> criterion(criterion, node, meanings, byCause),
              () -> problem("there is no criterion \"" + Texts.shorten(name) + "\"; " + all()));
    }
    for (Criterion criterion : Criterion.values()) {
      if (!meanings.containsKey(criterion)) {
        problem("the criterion " + criterion.word() + " is missing; " + all());
      }
    }
    return new Criteria(meanings, byCause);
  }

  private void criterion(
      Criterion criterion,
      JsonNode node,
      Map<Criterion, String> meanings,
      Map<String, Criterion> byCause) {
    String meaning = node.path("meaning").asString("");
    if (meaning.isBlank()) {
      problem("the criterion " + criterion.word() + " has no meaning");
    }
    if (meanings.put(criterion, meaning) != null) {
      problem("the criterion " + criterion.word() + " stands twice");
    }
    for (JsonNode entry : node.path("causes")) {
      String cause = entry.asString("");
      Criterion other = byCause.putIfAbsent(cause, criterion);
      if (cause.isBlank()) {
        problem("the criterion " + criterion.word() + " lists a cause without a name");
      } else if (other != null) {
        problem(
            "the cause \""
                + Texts.shorten(cause)
                + "\" stands twice, under "
                + other.word()
                + " and under "
                + criterion.word()
                + "; a cause belongs to one criterion");
      }
    }
  }

  /**
   * A rule that speaks of options must say what of; one that derives a fact, or speaks of a pair of
   * zones, need not.
   */
  void check(List<Rule> rules, Criteria criteria) {
    for (Rule rule : rules) {
      boolean ofOptions = rule.effect() != Effect.DERIVE && rule.phase() != Rule.Phase.SCHEME;
      if (ofOptions && criteria.find(rule.cause()).isEmpty()) {
        problems.add(
            new PackProblem(
                rule.file(),
                rule.line(),
                "no criterion of "
                    + FILE
                    + " lists the cause \""
                    + Texts.shorten(rule.cause())
                    + "\" of "
                    + rule.id()
                    + "; add it to one"));
      }
    }
  }

  private static String all() {
    return "there are " + String.join(", ", Criterion.words());
  }

  private void problem(String message) {
    problems.add(new PackProblem(FILE, 0, message));
  }
}
