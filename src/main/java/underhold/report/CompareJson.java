package underhold.report;

import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;
import underhold.advice.Criterion;
import underhold.advice.Hold;
import underhold.advice.OptionAdvice;
import underhold.consult.Bearing;
import underhold.consult.Consultation;
import underhold.consult.contrast.Argument;
import underhold.consult.contrast.Aside;
import underhold.consult.contrast.Contrast;
import underhold.consult.contrast.CriterionContrast;
import underhold.consult.contrast.HeldBy;
import underhold.consult.contrast.Outcome;
import underhold.consult.contrast.Side;
import underhold.quantity.UnitSystem;
import underhold.sizing.Check;

/** Contrasts of two options as a JSON tree. */
public final class CompareJson {
  private final Contrast contrast;
  private final ContrastWords words;
  private final UnitSystem units;

  private CompareJson(Contrast contrast, UnitSystem units) {
    this.contrast = contrast;
    this.words = new ContrastWords(contrast);
    this.units = units;
  }

  /** The contrasts of some zones of a site. */
  public static Map<String, Object> of(Consultation consultation, List<Contrast> contrasts) {
    Map<String, Object> root = AdviceJson.head(consultation);
    UnitSystem units = consultation.site().units();
    root.put("zones", contrasts.stream().map(one -> new CompareJson(one, units).zone()).toList());
    return root;
  }

  private Map<String, Object> zone() {
    return Json.object(
        "name", contrast.zone(),
        "options", List.of(side(contrast.first()), side(contrast.second())),
        "criteria", contrast.criteria().stream().map(this::criterion).toList(),
        "summary",
            Json.object(
                "inFavourOfFirst", where(Outcome::forFirst),
                "inFavourOfSecond", where(Outcome::forSecond),
                "ruleOutBoth", where(Outcome.RULES_OUT_BOTH::equals),
                "even", where(Outcome.EVEN::equals),
                "silent", where(Outcome.SILENT::equals),
                "ahead", contrast.ahead(),
                "tied", contrast.tied(),
                "conclusion", words.conclusion(contrast)));
  }

  private List<String> where(Predicate<Outcome> wanted) {
    return contrast.where(wanted).stream().map(Criterion::word).toList();
  }

  private static Map<String, Object> side(Side side) {
    OptionAdvice advice = side.advice();
    return Json.object(
        "id", advice.option().id(),
        "label", advice.option().label(),
        "standing", advice.standing().word(),
        "score", advice.score(),
        "tied", advice.tied(),
        "first", side.first().stream().map(finding -> FindingJson.of(finding, false)).toList());
  }

  private Map<String, Object> criterion(CriterionContrast one) {
    return Json.object(
        "criterion", one.criterion().word(),
        "meaning", one.meaning(),
        "outcome", one.outcome().word(),
        "verdict", words.verdict(one),
        "points", List.of(one.firstPoints(), one.secondPoints()),
        "arguments", one.arguments().stream().map(this::argument).toList(),
        "holds", one.holds().stream().map(this::held).toList(),
        "asides", one.asides().stream().map(this::aside).toList());
  }

  private Map<String, Object> argument(Argument argument) {
    boolean counted =
        Stream.of(argument.first(), argument.second()).anyMatch(Bearing.COUNTS::equals);
    Map<String, Object> tree = FindingJson.of(argument.finding(), counted);
    tree.put("bearing", List.of(argument.first().word(), argument.second().word()));
    tree.put("points", argument.points());
    return tree;
  }

  private Map<String, Object> held(HeldBy held) {
    Hold hold = held.hold();
    return Json.object(
        "options", words.options(held.first(), held.second()),
        "rule", hold.rule().id(),
        "explanation", hold.explanation(),
        "ask", hold.ask());
  }

  private Map<String, Object> aside(Aside aside) {
    return aside.fold(CompareJson::caution, this::check, this::time, CompareJson::cost);
  }

  private static Map<String, Object> caution(Aside.CautionOfOne one) {
    return Json.object(
        "kind", "caution of one",
        "option", one.option().id(),
        "finding", FindingJson.of(one.finding(), false));
  }

  private Map<String, Object> check(Aside.CheckOnSheet one) {
    Check check = one.check();
    return Json.object(
        "kind", "check on its sheet",
        "option", one.option().id(),
        "check", check.id(),
        "title", check.title(),
        "demand", check.demand().in(units),
        "capacity", check.capacity().in(units),
        "verdict", check.verdict().label());
  }

  private Map<String, Object> time(Aside.TimeOnSheet one) {
    return Json.object(
        "kind", "time on its sheet",
        "option", one.option().id(),
        "name", one.item().name(),
        "value", one.item().amount().in(units),
        "note", one.item().note().in(units));
  }

  private static Map<String, Object> cost(Aside.UsualCost one) {
    return Json.object(
        "kind",
        "usual cost",
        "cheaper",
        one.cheaper().id(),
        "dearer",
        one.dearer().id(),
        "basis",
        "judgement");
  }
}
