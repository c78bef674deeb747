package underhold.sizing.needles;

import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Verdict;

/** What holds the tail of a cantilevered needle down. */
final class TailSection {
  private TailSection() {}

  static void write(NeedleCase site, SheetBuilder sheet, NeedleBeam.Tailed beam) {
    double uplift =
        sheet
            .step("tail-uplift", "Uplift of the tail", "U = {N} × {a} / {b}")
            .with("N", "load on the needle", Amount.force(beam.load()))
            .with("a", "overhang", Amount.length(beam.overhang()))
            .with("b", "back span", Amount.length(beam.back()))
            .note("The needle's own weight is not counted against it.")
            .gives(Amount.force(beam.uplift()));
    double need =
        sheet
            .step("tail-demand", "Hold-down that each tail needs", "T = {F} × {U}")
            .with("F", "factor of safety", site.amount(SupportSettings.TAIL_FACTOR))
            .with("U", "uplift", Amount.force(uplift))
            .from(Sources.TAIL)
            .gives(Amount.force(site.get(SupportSettings.TAIL_FACTOR) * uplift));
    boolean stated = site.get(SupportSettings.TAIL_HOLD) > 0;
    sheet.check(
        "tail-uplift",
        "Hold-down of the tail",
        Amount.force(need),
        site.amount(SupportSettings.TAIL_HOLD),
        stated ? Verdict.FAILS : Verdict.REFER,
        Sources.TAIL,
        Phrase.of(
            stated
                ? "Capacity as set; an anchor is proof-tested before load comes on."
                : "Nobody stated what holds the tail down: provide this much and set"
                    + " tail-hold-down."));
  }
}
