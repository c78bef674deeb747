package underhold.report;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import underhold.advice.BuiltInPack;
import underhold.advice.Limit;
import underhold.advice.PackDifference;
import underhold.advice.Rule;
import underhold.advice.RulePack;
import underhold.quantity.Quantity;

/** A rule pack in JSON: which it is, and where it is not the one built in, every difference. */
public final class RulePackJson {
  private RulePackJson() {}

  public static Map<String, Object> of(RulePack pack) {
    Map<String, Object> tree =
        Json.object(
            "name", pack.name(), "version", pack.version(), "fingerprint", pack.fingerprint());
    if (!BuiltInPack.is(pack)) {
      tree.put("folder", pack.origin().outside() ? pack.origin().folder() : null);
      tree.put("extendsBuiltIn", pack.origin().extending());
      tree.put("limitsOnTrial", pack.origin().trials());
      tree.put("differences", differences(PackDifference.of(pack)));
    }
    return tree;
  }

  /** All differences. */
  public static Map<String, Object> differences(PackDifference difference) {
    return Json.object(
        "builtInFingerprint", difference.baseFingerprint(),
        "none", difference.none(),
        "rulesAdded", difference.added().stream().map(RulePackJson::rule).toList(),
        "rulesRemoved", difference.removed().stream().map(RulePackJson::rule).toList(),
        "rulesChanged", difference.changed().stream().map(RulePackJson::change).toList(),
        "ruleOutsLost", difference.ruleOutsLost().stream().map(Rule::id).toList(),
        "limitsAdded", difference.limitsAdded().stream().map(RulePackJson::limit).toList(),
        "limitsRemoved", difference.limitsRemoved().stream().map(RulePackJson::limit).toList(),
        "limitsChanged", difference.limitsChanged().stream().map(RulePackJson::change).toList(),
        "weights", values(difference.weights()),
        "criteria", values(difference.criteria()),
        "sources", values(difference.sources()),
        "orderOfRulesChanged", difference.orderChanged(),
        "circlesOfDerivedFacts", difference.circles());
  }

  private static Map<String, Object> rule(Rule rule) {
    return Json.object(
        "id", rule.id(), "sentence", rule.sentence(), "effect", rule.effect().word());
  }

  private static Map<String, Object> change(PackDifference.RuleChange change) {
    Map<String, Object> was = Json.object();
    Map<String, Object> is = Json.object();
    Arrays.stream(PackDifference.Part.values())
        .filter(change.parts()::contains)
        .forEach(
            part -> {
              was.put(part.word(), PackDifferenceText.part(change.was(), part));
              is.put(part.word(), PackDifferenceText.part(change.is(), part));
            });
    return Json.object("id", change.is().id(), "was", was, "is", is);
  }

  /** A limit with all that is said of it. */
  public static Map<String, Object> limit(Limit limit) {
    return Json.object(
        "name", limit.name(),
        "label", limit.label(),
        "value", limit.value().text(),
        "measure", limit.value().measure().name(),
        "basis", limit.basis().word(),
        "source", limit.source(),
        "note", limit.note(),
        "plausible", limit.plausible().stream().map(Quantity::text).toList());
  }

  private static Map<String, Object> change(PackDifference.LimitChange change) {
    return Json.object(
        "name", change.is().name(),
        "was", limit(change.was()),
        "is", limit(change.is()),
        "outsidePlausible", change.outsidePlausible());
  }

  private static List<Map<String, Object>> values(List<PackDifference.ValueChange> changes) {
    return changes.stream()
        .map(c -> Json.object("name", c.name(), "was", c.was(), "is", c.is()))
        .toList();
  }
}
