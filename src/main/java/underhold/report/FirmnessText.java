package underhold.report;

import java.util.List;
import java.util.Map;
import underhold.advice.RulePack;
import underhold.advice.SupportOption;
import underhold.consult.firmness.Firmness;

/** How firm the first place is in the zones of a site. */
public final class FirmnessText {
  private static final int MARGIN = 2;
  private static final int NAME = 34;
  private static final int HUNDRED = 100;
  private static final int LEAST_BAR = 10;
  private static final int MOST_VALUES = 8;

  private final TextPage page;

  private FirmnessText(Look look) {
    this.page = new TextPage(look);
  }

  /** The firmness zone by zone, by the name of the zone. */
  public static String of(String site, Map<String, Firmness> zones, RulePack pack, Look look) {
    FirmnessText text = new FirmnessText(look);
    zones.forEach((zone, firmness) -> text.zone(site + ": " + zone, firmness));
    Program.foot(text.page, pack);
    return text.page.text();
  }

  private void zone(String title, Firmness firmness) {
    page.heading(title);
    SupportOption leader = firmness.leader();
    page.para(
        0,
        (leader == null
                ? "No clear choice as it is"
                : Words.sentence(leader.label()) + " first as it is")
            + "; so in "
            + firmness.stayed()
            + " of "
            + firmness.draws()
            + " draws.");
    page.para(
        0,
        "A draw gives every open fact a value at random, good or bad alike: a measure of what is not"
            + " known, not a probability.");
    page.heading("First place, of 100 draws");
    for (SupportOption option : firmness.byFirsts()) {
      bar(option.label(), firmness.perHundred(firmness.first(option)));
    }
    bar("no clear choice", firmness.perHundred(firmness.none()));
    page.heading("The answer stays, of 100 draws");
    bar("open facts alone drawn", firmness.perHundred(firmness.facts()));
    if (firmness.weights() == firmness.draws() && firmness.limits() == firmness.draws()) {
      page.para(MARGIN, "Weights alone, and limits alone, never move it.");
    } else {
      bar("weights alone drawn", firmness.perHundred(firmness.weights()));
      bar("limits alone drawn", firmness.perHundred(firmness.limits()));
    }
    drivers(firmness);
    page.heading("What was drawn");
    page.para(MARGIN, drawn(firmness));
  }

  private void bar(String name, int count) {
    String number = String.valueOf(count);
    int room = Math.max(LEAST_BAR, page.look().width() - MARGIN - NAME - 5);
    int length = (int) Math.round(room * count / (double) HUNDRED);
    page.item(MARGIN, name, NAME, number + " ".repeat(4 - number.length()) + "#".repeat(length));
  }

  private void drivers(Firmness firmness) {
    page.heading("What drives the doubt");
    if (firmness.drivers().isEmpty()) {
      page.para(
          MARGIN,
          firmness.stayed() == firmness.draws()
              ? "There is none."
              : "No open fact by itself; several together, or with the weights and limits.");
    }
    for (Firmness.Driver driver : firmness.drivers()) {
      page.item(
          MARGIN,
          "-",
          2,
          Words.sentence(driver.fact().label())
              + " ("
              + driver.fact().name()
              + ") goes with "
              + Math.round(HUNDRED * driver.explains())
              + " of 100 parts of it. The answer stays, of the draws: "
              + Words.list(
                  driver.values().stream().limit(MOST_VALUES).map(FirmnessText::value).toList())
              + ". Find out: "
              + driver.fact().findOut());
    }
  }

  private static String value(Firmness.Value value) {
    return value.value() + " " + value.stayed() + " of " + value.draws();
  }

  /** What was drawn and how, and how good a share is. */
  public static String drawn(Firmness firmness) {
    List<String> parts =
        List.of(
            Words.count(firmness.factsDrawn(), "open fact", "open facts")
                + " (judgement: nothing is known of them): words with the same chance each, amounts over"
                + " the lower half of what the dictionary accepts and small ones more often; what"
                + " cannot be together is left out",
            Words.count(firmness.limitsDrawn(), "limit", "limits")
                + " of the rules, anywhere in their plausible ranges",
            "weights of which only the order is kept: decisive at least major, major at least"
                + " moderate, moderate at least minor");
    return firmness.draws()
        + " draws, seed "
        + firmness.seed()
        + ": "
        + String.join("; ", parts)
        + ". With so many draws a share is good to about "
        + Math.round(HUNDRED / Math.sqrt(firmness.draws()))
        + " in 100 either way. The form is that of stochastic multicriteria acceptability analysis"
        + " (Lahdelma and Salminen 2001; from memory, verify).";
  }
}
