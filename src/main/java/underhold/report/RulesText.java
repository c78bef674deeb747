package underhold.report;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import underhold.advice.Condition;
import underhold.advice.Limit;
import underhold.advice.Rule;
import underhold.advice.RulePack;
import underhold.advice.Strength;
import underhold.advice.SupportOption;
import underhold.quantity.UnitSystem;

/** The rule pack, as text and as JSON trees. */
public final class RulesText {
  private static final int MARGIN = 2;
  private static final int ID = 10;

  private RulesText() {}

  /** Rules one a line, under the files they stand in. */
  public static String list(List<Rule> rules, RulePack pack, Look look) {
    TextPage page = new TextPage(look);
    String file = "";
    for (Rule rule : rules) {
      if (!rule.file().equals(file)) {
        file = rule.file();
        page.heading(file);
      }
      page.item(MARGIN, rule.id(), ID, rule.sentence());
    }
    page.blank();
    page.para(
        0,
        Words.count(rules.size(), "rule", "rules") + " of rule pack " + Program.rules(pack) + ".");
    return page.text();
  }

  /** One rule with all its parts. */
  public static String one(Rule rule, RulePack pack, Look look) {
    TextPage page = new TextPage(look);
    page.heading(rule.id() + ": " + rule.sentence());
    row(page, "states", states(rule));
    row(page, "because", rule.because());
    for (Condition condition : rule.conditions()) {
      row(page, "if", condition.text());
      if (condition.operator().isNumeric()) {
        Limit limit = pack.limits().require(condition.limitName());
        row(page, "", limit(limit));
      }
    }
    row(page, "cause", rule.cause());
    row(page, "basis", rule.basis().notice());
    String source = pack.cite(rule.citations());
    row(page, "source", source.isEmpty() ? "none" : source);
    row(page, "holds", hold(rule));
    row(page, "stands in", rule.file() + ", line " + rule.line());
    return page.text();
  }

  private static void row(TextPage page, String mark, String words) {
    page.item(MARGIN, mark, 12, words);
  }

  private static String states(Rule rule) {
    Strength strength = rule.action().strength();
    return Words.verb(rule.effect())
        + Words.about(rule)
        + (strength == null ? "" : ", " + strength.word());
  }

  private static String hold(Rule rule) {
    return switch (rule.hold()) {
      case NEVER -> "never: while it is open the option does not wait";
      case PARTLY -> "while some of its conditions hold and the rest are open";
      case ALWAYS -> "while none of its conditions fails";
    };
  }

  private static String limit(Limit limit) {
    return limit.name()
        + " is "
        + limit.text(UnitSystem.SI)
        + ": "
        + limit.label()
        + " ("
        + limit.basis().notice()
        + ")"
        + (limit.note().isEmpty() ? "" : ". " + limit.note());
  }

  /** The rules that hold the text anywhere a reader would look for it, in any case. */
  public static List<Rule> find(RulePack pack, String text) {
    String wanted = text.toLowerCase(Locale.ROOT);
    return pack.all().stream().filter(rule -> searched(rule, pack).contains(wanted)).toList();
  }

  private static String searched(Rule rule, RulePack pack) {
    return String.join(
            "\n",
            rule.id(),
            rule.sentence(),
            rule.because(),
            rule.cause(),
            rule.file(),
            pack.cite(rule.citations()),
            String.join("\n", rule.conditions().stream().map(Condition::text).toList()))
        .toLowerCase(Locale.ROOT);
  }

  public static Map<String, Object> json(Rule rule, RulePack pack) {
    return Json.object(
        "id", rule.id(),
        "sentence", rule.sentence(),
        "effect", rule.effect().word(),
        "options", rule.action().options().stream().map(SupportOption::id).toList(),
        "states", states(rule),
        "because", rule.because(),
        "conditions", rule.conditions().stream().map(Condition::text).toList(),
        "cause", rule.cause(),
        "basis", rule.basis().word(),
        "source", pack.cite(rule.citations()),
        "hold", rule.hold().name().toLowerCase(Locale.ROOT),
        "file", rule.file(),
        "line", rule.line());
  }
}
