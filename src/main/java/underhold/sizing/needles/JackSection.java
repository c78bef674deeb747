package underhold.sizing.needles;

import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Verdict;

/** Jacks, one at each seat. */
final class JackSection {
  /** 2,000 lbf, kN. */
  private static final double TON = 8.896443230521;

  private static final double[] RATINGS_TONS = {
    10, 20, 30, 50, 60, 100, 150, 200, 300, 400, 500
  };

  private JackSection() {}

  /** Writes the section; returns the rating, kN. */
  static double write(NeedleCase site, SheetBuilder sheet, double reaction) {
    double need =
        sheet
            .step("jack-demand", "Rating that a jack needs", "J = {m} × {Rn}")
            .with("m", "margin", site.amount(SupportSettings.JACK_MARGIN))
            .with("Rn", "working reaction at its seat", Amount.force(reaction))
            .from(Sources.JACK)
            .gives(Amount.force(site.get(SupportSettings.JACK_MARGIN) * reaction));
    double set = site.get(SupportSettings.JACK_RATING);
    double rating = set > 0 ? set : smallest(need);
    sheet.check(
        "jack-capacity",
        "Rating of the jacks",
        Amount.force(need),
        Amount.force(rating),
        Verdict.FAILS,
        Sources.JACK,
        Phrase.of(
            (set > 0 ? "Rating as set." : "The smallest usual rating that serves, else the largest.")
                + " The rating is marked on the jack and never exceeded; calibrate jack and gauge"
                + " together."));
    return rating;
  }

  private static double smallest(double need) {
    for (double tons : RATINGS_TONS) {
      if (tons * TON >= need) {
        return tons * TON;
      }
    }
    return RATINGS_TONS[RATINGS_TONS.length - 1] * TON;
  }
}
