package underhold.report;

import java.util.List;
import java.util.Map;
import underhold.advice.Rule;
import underhold.advice.SupportOption;
import underhold.consult.scheme.Combination;
import underhold.consult.scheme.OrderWanted;
import underhold.consult.scheme.PairFinding;
import underhold.consult.scheme.PairQuestion;
import underhold.consult.scheme.Scheme;
import underhold.consult.scheme.SchemeOutcome;
import underhold.consult.scheme.ZoneChoice;

/** A scheme as a tree for JSON. */
public final class SchemeJson {
  private SchemeJson() {}

  /** The scheme, or why there is none. */
  public static Map<String, Object> of(SchemeOutcome outcome) {
    if (outcome instanceof SchemeOutcome.NotMade none) {
      return Json.object("made", false, "reason", none.reason());
    }
    return of(((SchemeOutcome.Made) outcome).scheme());
  }

  /** The scheme. */
  static Map<String, Object> of(Scheme scheme) {
    return Json.object(
        "made",
        true,
        "primary",
        scheme.primary().orElse(""),
        "zones",
        scheme.best().zones().stream().map(zone -> zone(scheme, zone)).toList(),
        "combination",
        combination(scheme.best()),
        "others",
        scheme.others().stream().map(other -> other(scheme, other)).toList(),
        "heldAbove",
        scheme.heldAbove().map(held -> other(scheme, held)).orElse(null),
        "questions",
        scheme.questions().stream().map(SchemeJson::question).toList());
  }

  private static Map<String, Object> zone(Scheme scheme, ZoneChoice zone) {
    return Json.object(
        "zone", zone.name(),
        "method", method(zone),
        "part", scheme.part(zone.name()).words(),
        "primary", scheme.isPrimary(zone.name()),
        "score", zone.points(),
        "undecided", zone.undecided());
  }

  private static String method(ZoneChoice zone) {
    return zone.method().map(SupportOption::id).orElse("");
  }

  private static Map<String, Object> other(Scheme scheme, Combination other) {
    Map<String, Object> node = combination(other);
    node.put(
        "methods",
        other.zones().stream()
            .map(zone -> Json.object("zone", zone.name(), "method", method(zone)))
            .toList());
    Scheme.Trade trade = scheme.trade(other);
    node.put("lost", trade.lost().stream().map(PairFinding::id).distinct().toList());
    node.put("gained", trade.gained().stream().map(PairFinding::id).distinct().toList());
    return node;
  }

  private static Map<String, Object> combination(Combination combination) {
    return Json.object(
        "score",
        combination.points(),
        "scoreBetweenZones",
        combination.pairPoints(),
        "held",
        combination.held(),
        "findings",
        combination.findings().stream().map(SchemeJson::finding).toList(),
        "orders",
        combination.orders().stream().map(SchemeJson::order).toList(),
        "ordersNotKept",
        combination.dropped().stream().map(SchemeJson::order).toList());
  }

  private static Map<String, Object> finding(PairFinding finding) {
    Map<String, Object> node = FindingJson.of(finding.finding(), true);
    node.put("because", finding.reason());
    node.put("first", finding.first());
    node.put("second", finding.second());
    return node;
  }

  static Map<String, Object> order(OrderWanted order) {
    return Json.object(
        "first", order.first(),
        "second", order.second(),
        "order", order.order().word(),
        "sentence", order.sentence(),
        "rule", order.ruleId(),
        "assumed", order.assumed());
  }

  private static Map<String, Object> question(PairQuestion question) {
    return Json.object(
        "zones", List.of(question.one(), question.other()),
        "fact", question.fact().name(),
        "question", question.fact().question(),
        "rules", question.rules().stream().map(Rule::id).toList(),
        "holds", question.holds());
  }
}
