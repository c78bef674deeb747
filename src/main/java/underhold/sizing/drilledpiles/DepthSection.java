package underhold.sizing.drilledpiles;

import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;
import underhold.sizing.Verdict;

/** Whether the ground is known as deep as the piles need it. */
final class DepthSection {
  private DepthSection() {}

  static void write(PileCase site, PileDesign design, SheetBuilder sheet) {
    double needed =
        sheet
            .step("ground-needed", "Depth to which the ground must be known", "zn = {zt} + {b}")
            .with("zt", "toe below ground", Amount.length(design.toeMetres()))
            .with("b", "ground below the toe", site.amount(PileNumbers.BELOW_TOE))
            .from(Source.judgement())
            .gives(Amount.length(design.toeMetres() + site.get(PileNumbers.BELOW_TOE)));
    BondLayer last = site.layers().get(site.layers().size() - 1);
    double told = site.get(PileNumbers.BORING_DEPTH);
    double known = told > 0 ? told : last.topMetres() + site.get(PileNumbers.PROVED_BELOW);
    sheet.check(
        "pile-length",
        "Depth needed against the depth to which the ground is known",
        Amount.length(needed),
        Amount.length(known),
        Verdict.REFER,
        Source.judgement(),
        Phrase.of(
            told > 0
                ? "By the depth of borings as set."
                : "The last layer, "
                    + last.name()
                    + ", is taken to reach on, and as proved for {m} only; set boring-depth where borings go deeper, or bore deeper.",
            "m",
            site.amount(PileNumbers.PROVED_BELOW)));
  }
}
