package underhold.report;

import java.util.List;
import underhold.advice.Condition;
import underhold.advice.Limit;
import underhold.advice.PackDifference;
import underhold.advice.Rule;
import underhold.advice.RulePack;

/** Every difference of a rule pack from the one built in. */
public final class PackDifferenceText {
  private static final int MARGIN = 2;
  private static final int MARK = 12;

  private final TextPage page;
  private final RulePack pack;
  private final PackDifference difference;

  private PackDifferenceText(RulePack pack, Look look) {
    this.page = new TextPage(look);
    this.pack = pack;
    this.difference = PackDifference.of(pack);
  }

  public static String of(RulePack pack, Look look) {
    return new PackDifferenceText(pack, look).text();
  }

  private String text() {
    page.para(
        0,
        "Rule pack "
            + Program.rules(pack)
            + ", against the built-in rules, "
            + difference.baseFingerprint().substring(0, Program.fingerprint(pack).length())
            + ".");
    if (difference.none()) {
      page.para(
          0,
          difference.sameTexts()
              ? "There is no difference."
              : "They say the same; only notes, comments or spacing differ.");
      return page.text();
    }
    rules("Rules added", difference.added());
    rules("Rules removed", difference.removed());
    changedRules();
    limits();
    values("Weights", difference.weights());
    values("Criteria", difference.criteria());
    values("Sources", difference.sources());
    if (difference.orderChanged()) {
      page.heading("Order");
      page.para(MARGIN, "Rules that both have stand in another order.");
    }
    if (!difference.circles().isEmpty()) {
      page.heading("Circles of derived facts");
      difference.circles().forEach(circle -> page.para(MARGIN, circle));
    }
    return page.text();
  }

  private void rules(String heading, List<Rule> rules) {
    if (!rules.isEmpty()) {
      page.heading(heading);
      rules.forEach(
          rule -> page.item(MARGIN, rule.id(), MARK, rule.sentence() + " (" + states(rule) + ")"));
    }
  }

  private static String states(Rule rule) {
    return rule.action().strength() == null
        ? Words.verb(rule.effect()) + Words.about(rule)
        : Words.verb(rule.effect()) + Words.about(rule) + ", " + rule.action().strength().word();
  }

  private void changedRules() {
    if (difference.changed().isEmpty()) {
      return;
    }
    page.heading("Rules changed");
    for (PackDifference.RuleChange change : difference.changed()) {
      page.item(
          MARGIN,
          change.is().id(),
          MARK,
          change.is().sentence() + " Changed: " + parts(change) + ".");
      for (PackDifference.Part part : PackDifference.Part.values()) {
        if (change.parts().contains(part)) {
          page.item(MARGIN + MARK, "was", 5, part(change.was(), part));
          page.item(MARGIN + MARK, "is", 5, part(change.is(), part));
        }
      }
    }
  }

  static String parts(PackDifference.RuleChange change) {
    return String.join(
        ", ",
        java.util.Arrays.stream(PackDifference.Part.values())
            .filter(change.parts()::contains)
            .map(PackDifference.Part::word)
            .toList());
  }

  /** One part of a rule in one line. */
  static String part(Rule rule, PackDifference.Part part) {
    return switch (part) {
      case SENTENCE -> rule.sentence();
      case PHASE -> "phase " + rule.phase().name().toLowerCase(java.util.Locale.ROOT);
      case CONDITIONS ->
          "if " + String.join(" and ", rule.conditions().stream().map(Condition::text).toList());
      case ACTION ->
          rule.action().fact() == null
              ? states(rule) + (rule.action().value() == null ? "" : " " + rule.action().value())
              : "derive " + rule.action().fact() + " " + rule.action().value();
      case HEADER ->
          rule.because()
              + " [cause "
              + rule.cause()
              + ", "
              + rule.basis().notice()
              + ", hold "
              + rule.hold().name().toLowerCase(java.util.Locale.ROOT)
              + ", cites "
              + (rule.citations().isEmpty() ? "nothing" : cites(rule))
              + "]";
    };
  }

  private static String cites(Rule rule) {
    return String.join(
        "; ", rule.citations().stream().map(c -> (c.key() + " " + c.place()).strip()).toList());
  }

  private void limits() {
    if (difference.limits() == 0) {
      return;
    }
    page.heading("Limits");
    difference.limitsAdded().forEach(limit -> limit("new", limit));
    difference.limitsRemoved().forEach(limit -> limit("gone", limit));
    for (PackDifference.LimitChange change : difference.limitsChanged()) {
      page.item(
          MARGIN,
          "changed",
          MARK,
          PackLines.change(change)
              + " "
              + Words.sentence(change.is().label())
              + "."
              + (change.is().note().isEmpty() ? "" : " " + change.is().note()));
    }
  }

  private void limit(String mark, Limit limit) {
    page.item(
        MARGIN,
        mark,
        MARK,
        limit.name()
            + " "
            + limit.value().text()
            + " ("
            + limit.basis().notice()
            + "): "
            + limit.label());
  }

  private void values(String heading, List<PackDifference.ValueChange> changes) {
    if (!changes.isEmpty()) {
      page.heading(heading);
      changes.forEach(
          change ->
              page.item(
                  MARGIN,
                  change.name(),
                  2 * MARK,
                  shown(change.is()) + "; built-in " + shown(change.was())));
    }
  }

  private static String shown(String value) {
    return value.isEmpty() ? "not there" : value;
  }
}
