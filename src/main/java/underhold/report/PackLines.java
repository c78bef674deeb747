package underhold.report;

import java.util.ArrayList;
import java.util.List;
import underhold.advice.BuiltInPack;
import underhold.advice.Limit;
import underhold.advice.PackDifference;
import underhold.advice.Rule;
import underhold.advice.RulePack;

/** What stands above every answer that does not rest on the rules built in. */
public final class PackLines {
  /** Limits told by name in the short form. */
  private static final int FEW = 3;

  private PackLines() {}

  /** The lines as sentences; none where the pack is the one built in. */
  public static List<String> of(RulePack pack) {
    if (BuiltInPack.is(pack)) {
      return List.of();
    }
    PackDifference difference = PackDifference.of(pack);
    List<String> lines = new ArrayList<>();
    lines.add(
        "Rules: "
            + where(pack)
            + ", fingerprint "
            + Program.fingerprint(pack)
            + ", "
            + verdict(difference)
            + ".");
    few(difference, lines);
    List<String> readers = difference.ruleOutsMoved(pack);
    if (!readers.isEmpty()) {
      lines.add(
          "Rules that rule an option out read a limit with another value: "
              + String.join(", ", readers)
              + ".");
    }
    List<Rule> lost = difference.ruleOutsLost();
    if (!lost.isEmpty()) {
      lines.add(
          "Rules that rule an option out are gone or weaker: "
              + String.join(", ", lost.stream().map(Rule::id).toList())
              + ".");
    }
    if (!difference.circles().isEmpty()) {
      lines.add("Derived facts go in a circle: " + String.join("; ", difference.circles()) + ".");
    }
    return lines;
  }

  /** The lines as a page; empty where the pack is the one built in. */
  public static String text(RulePack pack, Look look) {
    TextPage page = new TextPage(look);
    of(pack).forEach(line -> page.tinted(Tint.OPEN, 0, line));
    return page.text();
  }

  static String where(RulePack pack) {
    String name = pack.name() + " " + pack.version();
    String base = pack.origin().outside() ? pack.origin().folder() : "built-in";
    String trials = pack.origin().trials().isEmpty() ? "" : ", with limits on trial";
    return base + " (" + name + ")" + trials;
  }

  private static String verdict(PackDifference difference) {
    if (difference.sameTexts()) {
      return "the same as the built-in";
    }
    if (difference.none()) {
      return "says the same as the built-in; only notes, comments or spacing differ";
    }
    List<String> parts = new ArrayList<>();
    part(parts, difference.limits(), "limit", "limits");
    part(parts, difference.rules(), "rule", "rules");
    part(parts, difference.weights().size(), "weight", "weights");
    part(parts, difference.criteria().size(), "criterion", "criteria");
    part(parts, difference.sources().size(), "source", "sources");
    if (difference.orderChanged()) {
      parts.add("the order of its rules");
    }
    return "differs from the built-in: "
        + String.join(", ", parts)
        + "; see rules differences with the same options";
  }

  private static void part(List<String> parts, int number, String one, String several) {
    if (number > 0) {
      parts.add(Words.count(number, one, several));
    }
  }

  private static void few(PackDifference difference, List<String> lines) {
    List<PackDifference.LimitChange> changes =
        difference.limitsChanged().stream().filter(PackDifference.LimitChange::ofValue).toList();
    if (changes.size() <= FEW) {
      changes.forEach(change -> lines.add(change(change)));
    }
  }

  /** {@code Limit pit-depth-easy: 4 m, built-in 3 m (judgement); outside its plausible range …}. */
  static String change(PackDifference.LimitChange change) {
    Limit is = change.is();
    Limit was = change.was();
    return "Limit "
        + is.name()
        + ": "
        + is.value().text()
        + " ("
        + is.basis().notice()
        + "), built-in "
        + was.value().text()
        + " ("
        + was.basis().notice()
        + ")"
        + (change.outsidePlausible()
            ? "; outside the plausible range, "
                + was.plausible().get(0).text()
                + " to "
                + was.plausible().get(1).text()
            : "")
        + ".";
  }
}
