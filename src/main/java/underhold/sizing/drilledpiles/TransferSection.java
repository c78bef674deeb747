package underhold.sizing.drilledpiles;

import static underhold.sizing.drilledpiles.PileInputs.*;

import underhold.mechanics.pile.group.TransferBeam;
import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;
import underhold.sizing.Verdict;

/** The beam or cap that hands the load to the piles, and the jacking. */
final class TransferSection {
  /** Jacking steps, percent of the working load. */
  static final int[] STEPS = {25, 50, 75, 100};

  private static final String SECTION =
      "The section of the beam, its bearings and connections are designed on the needle sheet or by the engineer.";

  private TransferSection() {}

  static void write(PileCase site, PileDesign design, SheetBuilder sheet) {
    beam(site, design.layout(), sheet);
    if (!site.kind().equals(SLAB)) {
      sheet.check(
          "beam-span",
          "Span of the transfer beams",
          Amount.length(site.rowDistance()),
          site.amount(GroupNumbers.LONGEST_BEAM),
          Verdict.REFER,
          Source.practice(),
          Phrase.of(
              "Longer beams are too deep and too limber: set piles between, or drill from inside."));
    }
    sheet
        .step("jack-share", "Share of the stated load on one pile, for jacking", "Pj = {W} / {n}")
        .with("W", "stated load of the structure", Amount.force(site.structureLoad()))
        .with("n", "piles", Amount.count(design.layout().piles()))
        .note(
            "The mean, without allowances: jacked with the design load the structure would rise. A pile nearer the load takes more and one farther off less, by readings; all jacks together never lift more than the stated load.")
        .gives(Amount.force(jackShare(site, design)));
    for (int percent : STEPS) {
      sheet
          .step(
              "jack-" + percent,
              "Jack load of one pile, step " + percent + " %",
              "J" + percent + " = {Pj} × {k}")
          .with("Pj", "share of the stated load", Amount.force(jackShare(site, design)))
          .with("k", "part of it at this step", Amount.ratio(percent / 100.0))
          .from(Source.judgement())
          .note(
              Phrase.of(
                  "Hold until steady; stop at {lift} of upward movement.",
                  "lift",
                  site.amount(WorkNumbers.LIFT_LIMIT)))
          .gives(Amount.force(jackShare(site, design) * percent / 100));
    }
    sheet
        .step("lock-off", "Jack load of one pile at lock-off", "Jl = {Pj} × {k}")
        .with("Pj", "share of the stated load", Amount.force(jackShare(site, design)))
        .with("k", "share at lock-off", site.amount(WorkNumbers.LOCK_OFF))
        .from(Source.judgement())
        .note("100 to 110 % of the dead load; never more than the structure bears without rising.")
        .gives(Amount.force(lockOff(site, design)));
  }

  /** Mean share of the stated load, without the allowances of the design load, kN. */
  static double jackShare(PileCase site, PileDesign design) {
    return site.structureLoad() / design.layout().piles();
  }

  static double lockOff(PileCase site, PileDesign design) {
    return jackShare(site, design) * site.get(WorkNumbers.LOCK_OFF);
  }

  private static void beam(PileCase site, PileLayout layout, SheetBuilder sheet) {
    switch (site.kind()) {
      case COLUMN ->
          needle(
              sheet,
              site.totalLoad(),
              "load on all beams of the column together",
              site.rowDistance(),
              site.loadWidth(),
              "All beams under the column together; share them out by their stiffness. " + SECTION);
      case WALL -> {
        needle(
            sheet,
            site.lineLoad()
                * layout.spacingAlongMetres()
                * (1 + site.get(GroupNumbers.CAP_ALLOWANCE)),
            "load of one needle",
            site.rowDistance(),
            site.loadWidth(),
            "Each needle beam. " + SECTION);
        if (site.pattern().equals(WALL)) {
          span(site, layout, sheet);
        }
      }
      default ->
          sheet
              .step(
                  "slab-span",
                  "Widest clear distance that the slab or box must span",
                  "ls = max({sx}, {sy})")
              .with("sx", "spacing along", Amount.length(layout.spacingAlongMetres()))
              .with("sy", "spacing across", Amount.length(layout.spacingAcrossMetres()))
              .note(
                  "Bending and punching of the slab over the pile heads, also with one pile lost, are for the engineer of the structure.")
              .gives(
                  Amount.length(
                      Math.max(layout.spacingAlongMetres(), layout.spacingAcrossMetres())));
    }
  }

  private static void needle(
      SheetBuilder sheet, double load, String meaning, double span, double patch, String note) {
    TransferBeam.Centred forces = TransferBeam.centred(load, span, patch);
    sheet
        .step("beam-moment", "Moment of the transfer beam", "M = {P} × ({l} / 4 - {w} / 8)")
        .with("P", meaning, Amount.force(load))
        .with("l", "span between the rows of piles", Amount.length(span))
        .with("w", "width over which the load bears", Amount.length(patch))
        .note(note)
        .gives(Amount.moment(forces.momentKilonewtonMetres()));
    sheet
        .step("beam-shear", "Shear of the transfer beam", "V = {P} / 2")
        .with("P", meaning, Amount.force(load))
        .gives(Amount.force(forces.shearKilonewtons()));
  }

  private static void span(PileCase site, PileLayout layout, SheetBuilder sheet) {
    boolean gathered = site.is(CAPPING, "yes");
    Amount spacing = Amount.length(layout.spacingAlongMetres());
    if (gathered) {
      sheet
          .step(
              "capping-moment",
              "Moment of the capping beam between needles",
              "Mc = {q} × {s}^2 / 8")
          .with("q", "wall load", site.amount(LINE_LOAD))
          .with("s", "spacing of needles", spacing)
          .note("A capping beam gathers the wall over the needles. " + SECTION)
          .gives(
              Amount.moment(
                  site.get(LINE_LOAD)
                      * layout.spacingAlongMetres()
                      * layout.spacingAlongMetres()
                      / 8));
    }
    sheet.check(
        "wall-span",
        "Spacing of needles against what the wall can bridge",
        spacing,
        gathered
            ? Amount.length(Math.max(site.get(CLEAR_SPAN), layout.spacingAlongMetres()))
            : site.amount(CLEAR_SPAN),
        site.otherwise(CLEAR_SPAN),
        Source.judgement(),
        Phrase.of(
            gathered
                ? "Bridged by the capping beam, to be designed for the moment above."
                : "Without a capping beam the wall itself spans between needles; set needle-spacing, or cast a capping beam."));
  }
}
