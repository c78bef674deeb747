package underhold.sizing.needles;

import static underhold.sizing.needles.NeedleInput.COLUMN_LOAD;
import static underhold.sizing.needles.NeedleInput.LINE_LOAD;

import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.StepBuilder;
import underhold.sizing.Verdict;

/** Jacks, one at each seat. */
final class JackSection {
  /** 2,000 lbf, kN. */
  private static final double TON = 8.896443230521;

  private static final double[] RATINGS_TONS = {10, 20, 30, 50, 60, 100, 150, 200, 300, 400, 500};

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
            (set > 0
                    ? "Rating as set."
                    : "The smallest usual rating that serves, else the largest.")
                + " The rating is marked on the jack and never exceeded; calibrate jack and gauge"
                + " together."));
    return rating;
  }

  /**
   * Jack force at the seat nearer to the load, or at the fulcrum, that puts the preload on: by the
   * stated load shared evenly, so that all jacks together do not lift more than it.
   */
  static double preload(
      NeedleCase site, SheetBuilder sheet, LoadSection.Load load, NeedleBeam beam) {
    double stated = site.row() ? site.get(LINE_LOAD) * load.spacing() : site.get(COLUMN_LOAD) / 2;
    double share = site.get(SupportSettings.PRELOAD);
    StepBuilder step =
        sheet
            .step(
                "jack-preload",
                beam instanceof NeedleBeam.Tailed
                    ? "Full preload of the jack at the fulcrum"
                    : "Full preload of the jack at the nearer seat",
                beam instanceof NeedleBeam.Tailed
                    ? "Jp = {p} × {Q} × ({a} + {b}) / {b}"
                    : "Jp = {p} × {Q} × {a} / ({a} + {b})")
            .with("p", "share that is jacked in", site.amount(SupportSettings.PRELOAD))
            .with(
                "Q",
                site.row()
                    ? "stated load of the wall on one needle"
                    : "stated load of the column, half on each needle",
                Amount.force(stated))
            .from(Sources.PRELOAD)
            .note(
                "By the stated load shared evenly: jacked by the design share of each needle, the"
                    + " jacks would lift the structure.");
    if (beam instanceof NeedleBeam.Tailed tailed) {
      return step.with("a", "overhang", Amount.length(tailed.overhang()))
          .with("b", "back span", Amount.length(tailed.back()))
          .gives(
              Amount.force(share * stated * (tailed.overhang() + tailed.back()) / tailed.back()));
    }
    NeedleBeam.Seated seated = (NeedleBeam.Seated) beam;
    return step.with("a", "from the load to the farther seat", Amount.length(seated.far()))
        .with("b", "from the load to the nearer seat", Amount.length(seated.near()))
        .gives(Amount.force(share * stated * seated.far() / seated.span()));
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
