package underhold.advice;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import underhold.site.PlainText;

/** Reads the table of criteria of a rule pack, and checks that no cause is left without one. */
final class CriteriaTable {
  static final String FILE = "criteria.json";

  private final List<PackProblem> problems;
  private final PackFields fields;
  private final Map<Criterion, String> meanings = new EnumMap<>(Criterion.class);
  private final Map<String, Criterion> byCause = new LinkedHashMap<>();
  private final Set<Criterion> seen = EnumSet.noneOf(Criterion.class);
  private final Set<String> listed = new HashSet<>();

  CriteriaTable(List<PackProblem> problems, @Nullable RulePack base) {
    this.problems = problems;
    this.fields = new PackFields(FILE, problems);
    if (base != null) {
      meanings.putAll(base.criteria().meanings());
      byCause.putAll(base.criteria().byCause());
    }
  }

  /**
   * The criteria; over those of the pack built in, if there are such, causes are added or moved.
   */
  Criteria read(PackNode table) {
    fields.only(table, "the table of criteria", List.of("note", "basis", "criteria"));
    for (PackNode node : fields.objects(table, "criteria")) {
      fields.only(node, "a criterion", List.of("name", "meaning", "causes"));
      String name = fields.text(node, "name").orElse("");
      Criterion.find(name)
          .ifPresentOrElse(
              criterion -> criterion(criterion, node),
              () ->
                  fields.problem(
                      node.line(),
                      "there is no criterion " + PlainText.quoted(name) + "; " + all()));
    }
    for (Criterion criterion : Criterion.values()) {
      if (!meanings.containsKey(criterion)) {
        fields.problem(table.line(), "the criterion " + criterion.word() + " is missing; " + all());
      }
    }
    return new Criteria(meanings, byCause);
  }

  private void criterion(Criterion criterion, PackNode node) {
    String meaning = fields.text(node, "meaning").orElse(meanings.getOrDefault(criterion, ""));
    if (meaning.isBlank()) {
      fields.problem(node.line(), "the criterion " + criterion.word() + " has no meaning");
    }
    meanings.put(criterion, meaning);
    if (!seen.add(criterion)) {
      fields.problem(node.line(), "the criterion " + criterion.word() + " stands twice");
    }
    for (PackNode entry : fields.texts(node, "causes")) {
      cause(criterion, entry);
    }
  }

  private void cause(Criterion criterion, PackNode entry) {
    String cause = entry.text();
    if (cause.isBlank()) {
      fields.problem(
          entry.line(), "the criterion " + criterion.word() + " lists a cause without a name");
    } else if (!listed.add(cause)) {
      fields.problem(
          entry.line(),
          "the cause "
              + PlainText.quoted(cause)
              + " stands twice, under "
              + byCause.getOrDefault(cause, criterion).word()
              + " and under "
              + criterion.word()
              + "; a cause belongs to one criterion");
    } else {
      byCause.put(cause, criterion);
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
}
