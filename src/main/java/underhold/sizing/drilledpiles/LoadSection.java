package underhold.sizing.drilledpiles;

import static underhold.sizing.drilledpiles.PileInputs.*;

import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;
import underhold.sizing.Verdict;

/** Levels, loads and the layout. */
final class LoadSection {
  private LoadSection() {}

  static void write(PileCase site, PileDesign design, SheetBuilder sheet) {
    sheet
        .step("dug-level", "Dug level below ground", "zd = {zf} + max({h}, 0)")
        .with("zf", "underside of the foundation", site.amount(FOUNDING))
        .with("h", "excavation below it", site.amount(DUG))
        .note(
            Phrase.of(
                "Side resistance counts from {from} below ground; above it the pile stands free.",
                "from",
                Amount.length(site.countedFrom())))
        .gives(Amount.length(site.dugLevel()));
    total(site, sheet);
    pile(site, design.layout(), sheet);
    sheet.check(
        "rig-access",
        "Places where a rig must stand against those where it can",
        Amount.count(site.access().sidesNeeded()),
        Amount.count(site.access().sidesReached()),
        guessed(site) ? Verdict.REFER : Verdict.FAILS,
        Source.judgement(),
        Phrase.of(
            "Drilled from "
                + site.access().words()
                + " with a "
                + (site.access().large() ? "large" : "small")
                + " rig."));
  }

  /** Whether what bars a rig is only assumed or not told. */
  private static boolean guessed(PileCase site) {
    boolean aboveNotTold =
        site.kind().equals(SLAB)
            && site.access().from().equals("outside")
            && site.inputs().find(FROM_ABOVE).isEmpty();
    boolean sidesNotTold = site.access().rows() && site.inputs().find(BOTH_SIDES).isEmpty();
    boolean needsInside = !site.access().rows() && !site.access().from().equals("outside");
    boolean outsideNotTold =
        !site.access().from().equals("inside") && site.otherwiseWord(OUTSIDE) == Verdict.REFER;
    return outsideNotTold
        || aboveNotTold
        || sidesNotTold
        || (needsInside && site.otherwiseWord(INSIDE) == Verdict.REFER);
  }

  private static void total(PileCase site, SheetBuilder sheet) {
    Amount share = site.amount(GroupNumbers.CAP_ALLOWANCE);
    Amount load = Amount.force(site.totalLoad());
    String title = "Working load on all piles, with caps and beams";
    String meaning = "weight of caps, beams and bared piles, share of the load";
    switch (site.pattern()) {
      case COLUMN ->
          sheet
              .step("total-load", title, "P = {W} × (1 + {c})")
              .with("W", "column load", site.amount(COLUMN_LOAD))
              .with("c", meaning, share)
              .gives(load);
      case WALL ->
          sheet
              .step("total-load", title, "P = {q} × {L} × (1 + {c})")
              .with("q", "wall load", site.amount(LINE_LOAD))
              .with("L", "length of wall", site.amount(WALL_LENGTH))
              .with("c", meaning, share)
              .gives(load);
      default ->
          sheet
              .step("total-load", title, "P = {p} × {L} × {B} × (1 + {c})")
              .with("p", "load of the slab or box", site.amount(AREA_LOAD))
              .with("L", "length undermined", site.amount(LENGTH))
              .with("B", "reach under the structure", site.amount(WIDTH))
              .with("c", meaning, share)
              .gives(load);
    }
  }

  private static void pile(PileCase site, PileLayout layout, SheetBuilder sheet) {
    if (site.access().rows()) {
      sheet
          .step("line-load", "Load on the beams across, per length", "q = {p} × {B}")
          .with("p", "load of the slab or box", site.amount(AREA_LOAD))
          .with("B", "reach under the structure", site.amount(WIDTH))
          .note("Two rows of piles beside the structure, beams across between them.")
          .gives(Amount.lineLoad(site.lineLoad()));
    }
    Amount load = Amount.force(layout.pileKilonewtons());
    String title = "Working load of the pile loaded most";
    String caps = "weight of caps, beams and bared piles, share of the load";
    switch (site.kind()) {
      case COLUMN -> {
        double x = (layout.columns() - 1) / 2.0 * layout.spacingAlongMetres();
        double y = layout.spacingAcrossMetres() / 2;
        double squaresX = layout.cap().piles().stream().mapToDouble(one -> one.x() * one.x()).sum();
        double squaresY = layout.cap().piles().stream().mapToDouble(one -> one.y() * one.y()).sum();
        sheet
            .step(
                "pile-load",
                title,
                "P1 = {P} / {n} + {P} × {e} × {x} / {Iy} + {P} × {e} × {y} / {Ix}")
            .with("P", "load on all piles", Amount.force(site.totalLoad()))
            .with("n", "piles", Amount.count(layout.piles()))
            .with("e", "load off the centre, each way", site.amount(GroupNumbers.ECCENTRICITY))
            .with("x", "corner pile from the centre, along", Amount.length(x))
            .with("y", "corner pile from the centre, across", Amount.length(y))
            .with("Iy", "sum of squares of distances along", Amount.area(squaresX))
            .with("Ix", "sum of squares of distances across", Amount.area(squaresY))
            .note("Rigid cap, equal piles, no soil under the cap.")
            .gives(load);
      }
      case WALL ->
          sheet
              .step("pile-load", title, "P1 = {q} × {s} × (1 + {c}) × (0.5 + {e} / {R})")
              .with("q", "load per length", Amount.lineLoad(site.lineLoad()))
              .with("s", "spacing of needle beams", Amount.length(layout.spacingAlongMetres()))
              .with("c", caps, site.amount(GroupNumbers.CAP_ALLOWANCE))
              .with("e", "load off the centre", site.amount(GroupNumbers.ECCENTRICITY))
              .with("R", "distance between the two rows", Amount.length(site.rowDistance()))
              .note("One needle beam on two piles at each place, the end ones at the ends.")
              .gives(load);
      default ->
          sheet
              .step("pile-load", title, "P1 = {p} × {sx} × {sy} × (1 + {c}) × {u}")
              .with("p", "load of the slab or box", site.amount(AREA_LOAD))
              .with("sx", "spacing along", Amount.length(layout.spacingAlongMetres()))
              .with("sy", "spacing across", Amount.length(layout.spacingAcrossMetres()))
              .with("c", caps, site.amount(GroupNumbers.CAP_ALLOWANCE))
              .with("u", "factor for uneven load", site.amount(GroupNumbers.UNEVEN))
              .gives(load);
    }
  }
}
