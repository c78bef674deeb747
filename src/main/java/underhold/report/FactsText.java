package underhold.report;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import underhold.advice.Rule;
import underhold.advice.RulePack;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;
import underhold.site.FactKind;
import underhold.site.Unknown;

/** The dictionary of facts, as text and as JSON trees. */
public final class FactsText {
  private static final int MARGIN = 2;
  private static final int NAME = 25;

  private FactsText() {}

  /** All facts, one a line under the headings of the dictionary. */
  public static String list(FactDictionary dictionary, Look look) {
    TextPage page = new TextPage(look);
    List<String> groups = dictionary.all().stream().map(FactDefinition::group).distinct().toList();
    for (String group : groups) {
      page.heading(Words.sentence(group));
      dictionary.all().stream()
          .filter(fact -> fact.group().equals(group))
          .forEach(f -> page.item(MARGIN, f.name(), NAME, f.label() + ": " + takes(f)));
    }
    page.blank();
    page.para(0, "facts NAME says what a fact is for, what it takes and which rules read it.");
    return page.text();
  }

  /** One fact, with the rules that read it. */
  public static String one(FactDefinition fact, RulePack pack, Look look) {
    TextPage page = new TextPage(look);
    page.heading(fact.name() + ": " + fact.label());
    page.para(0, fact.question());
    page.item(MARGIN, "takes", 12, takes(fact));
    if (fact.kind() == FactKind.CHOICE) {
      fact.values().forEach(v -> page.item(MARGIN + 12, v.value(), 24, v.means()));
    }
    page.item(MARGIN, "why", 12, fact.why());
    if (!fact.findOut().isEmpty()) {
      page.item(MARGIN, "find out", 12, fact.findOut());
    }
    page.item(MARGIN, "stated", 12, stated(fact));
    page.item(MARGIN, "unknown", 12, unknown(fact));
    if (!fact.options().isEmpty()) {
      page.item(MARGIN, "options", 12, Words.list(fact.options()));
    }
    page.heading("Rules that read it");
    List<Rule> rules = rules(fact, pack);
    rules.forEach(rule -> page.item(MARGIN, rule.id(), 10, rule.sentence()));
    if (rules.isEmpty()) {
      page.para(MARGIN, "none");
    }
    return page.text();
  }

  public static Map<String, Object> json(FactDefinition fact, Optional<RulePack> pack) {
    Map<String, Object> node =
        Json.object(
            "name", fact.name(),
            "label", fact.label(),
            "scope", fact.scope().name().toLowerCase(java.util.Locale.ROOT),
            "group", fact.group(),
            "kind", fact.kind().name().toLowerCase(java.util.Locale.ROOT),
            "question", fact.question(),
            "why", fact.why(),
            "takes", takes(fact),
            "values", fact.values().stream().map(FactDefinition.Allowed::value).toList(),
            "findOut", fact.findOut(),
            "required", fact.required(),
            "derived", fact.derived(),
            "unknown", unknown(fact),
            "options", fact.options());
    pack.ifPresent(p -> node.put("rules", rules(fact, p).stream().map(Rule::id).toList()));
    return node;
  }

  /** What may be typed. */
  public static String takes(FactDefinition fact) {
    return switch (fact.kind()) {
      case YES_NO -> "yes or no";
      case CHOICE -> "one of " + fact.values().size() + " words";
      case SLOPE ->
          "a slope such as 1 in 500, from "
              + fact.requireRange().minText()
              + " to "
              + fact.requireRange().maxText();
      case QUANTITY -> amount(fact.requireRange());
    };
  }

  private static String amount(FactDefinition.Range range) {
    String between = ", from " + range.minText() + " to " + range.maxText();
    if (range.siUnit().isEmpty()) {
      return "a number" + between;
    }
    String units =
        range.siUnit().equals(range.usUnit())
            ? range.siUnit()
            : range.siUnit() + " or " + range.usUnit();
    return range.measure().phrase() + " with its unit (" + units + ")" + between;
  }

  private static String stated(FactDefinition fact) {
    if (fact.derived()) {
      return "never; it follows from other facts";
    }
    return fact.scope() == FactDefinition.Scope.SITE
        ? "once for the site; a zone may say otherwise"
        : "zone by zone; the site's word holds where a zone is silent";
  }

  private static String unknown(FactDefinition fact) {
    Unknown unknown = fact.unknown();
    if (unknown == null) {
      return "where the facts behind it are unknown";
    }
    String does =
        switch (unknown.treatment()) {
          case ASK -> "it is asked for.";
          case ASSUME -> unknown.value() + " is assumed meanwhile; that warns and never counts.";
          case NOTE -> "it stays open.";
        };
    return does + " " + unknown.because();
  }

  private static List<Rule> rules(FactDefinition fact, RulePack pack) {
    return pack.rules().stream().filter(rule -> rule.facts().contains(fact.name())).toList();
  }
}
