package underhold.report;

import underhold.advice.Limit;
import underhold.advice.RulePack;

/** The limits of a rule pack, one a line. */
public final class LimitsText {
  private static final int NAME = 26;

  private LimitsText() {}

  public static String of(RulePack pack, Look look) {
    TextPage page = new TextPage(look);
    page.para(
        0,
        "Limits of rule pack "
            + Program.rules(pack)
            + ". Try another value of one with --limit NAME=VALUE.");
    for (Limit limit : pack.limits().all()) {
      page.item(0, limit.name(), NAME, words(limit));
    }
    return page.text();
  }

  private static String words(Limit limit) {
    String plausible =
        limit.plausible().isEmpty()
            ? ""
            : "; plausible "
                + limit.plausible().get(0).text()
                + " to "
                + limit.plausible().get(1).text();
    return limit.value().text()
        + ": "
        + limit.label()
        + " ("
        + limit.basis().notice()
        + plausible
        + ")"
        + (limit.note().isEmpty() ? "" : ". " + limit.note());
  }
}
