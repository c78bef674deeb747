package underhold.sizing.needles;

import static underhold.sizing.needles.NeedleInput.MOVEMENT_LIMIT;

import underhold.sizing.Amount;
import underhold.sizing.Check;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;
import underhold.sizing.Verdict;

/** The movement that preloading leaves to the structure. */
final class MovementSection {
  /** Slope that brittle walls bear between this support and the next, 1 in 500. */
  private static final double SLOPE = 500;

  private MovementSection() {}

  static void write(
      NeedleCase site, SheetBuilder sheet, NeedleBeam beam, double deflection, double settlement) {
    boolean crib = site.is(SupportSettings.SEAT, "crib");
    double lever = beam instanceof NeedleBeam.Tailed tailed ? tailed.length() / tailed.back() : 1;
    double taken = deflection + lever * settlement;
    double unloaded =
        sheet
            .step(
                "load-not-jacked",
                "Share of the load that was not jacked in",
                "x = max(1 - {p} / {u}, 0)")
            .with("p", "share of the stated load jacked in", site.amount(SupportSettings.PRELOAD))
            .with("u", "factor on the stated load", site.amount(BeamSettings.UNCERTAINTY))
            .from(Sources.PRELOAD)
            .gives(
                Amount.ratio(
                    Math.max(
                        0,
                        1
                            - site.get(SupportSettings.PRELOAD)
                                / site.get(BeamSettings.UNCERTAINTY))));
    double creep = crib ? site.get(SupportSettings.CRIB_CREEP) : 0;
    double movement =
        sheet
            .step(
                "residual-movement",
                "Movement that remains to the structure",
                "m = {x} × ({d} + {k} × {S}) + {k} × {c}")
            .with("x", "share not jacked in", Amount.ratio(unloaded))
            .with("d", "deflection of the needle", Amount.thickness(deflection))
            .with(
                "k",
                "how a seat's settlement shows at the load: (a + b) / b of a cantilever, else 1",
                Amount.ratio(lever))
            .with("S", "settlement of the seats", Amount.thickness(settlement))
            .with("c", "squash and creep of timber cribs; 0 without them", Amount.thickness(creep))
            .note(
                Phrase.of(
                    "Without any preload it would be {all}. It is a slope of 1 in 500 or less only"
                        + " where the next support stands {far} or more away.",
                    "all",
                    Amount.thickness(taken + lever * creep),
                    "far",
                    Amount.length(SLOPE * (unloaded * taken + lever * creep))))
            .gives(Amount.thickness(unloaded * taken + lever * creep));
    boolean piles = site.is(SupportSettings.SEAT, "pile");
    boolean passes = !piles && Check.covers(movement, site.get(MOVEMENT_LIMIT));
    sheet.verdict(
        "differential-movement",
        "Movement against the supports that stay",
        Amount.thickness(movement),
        site.amount(MOVEMENT_LIMIT),
        passes ? Verdict.PASSES : Verdict.REFER,
        Source.judgement(),
        Phrase.of(
            "While the needles carry. The new support below will settle in its turn: that is not"
                + " in it."
                + (piles ? " Nor is the settlement of the piles under the seats." : "")));
  }
}
