package underhold.sizing.needles;

import static underhold.sizing.needles.NeedleInput.*;

import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Verdict;
import underhold.sizing.zone.SoilClass;

/** Span of the needles: stated, or from the excavation, the influence line and the pads. */
final class SpanSection {
  private final NeedleCase site;
  private final SheetBuilder sheet;

  private SpanSection(NeedleCase site, SheetBuilder sheet) {
    this.site = site;
    this.sheet = sheet;
  }

  /** Writes the section and returns the needle. */
  static NeedleBeam write(
      NeedleCase site, SheetBuilder sheet, LoadSection.Load load, double padMetres) {
    return new SpanSection(site, sheet).write(load, padMetres);
  }

  private NeedleBeam write(LoadSection.Load load, double pad) {
    boolean outsideLine = site.has(HOLE_WIDTH) && site.has(HOLE_DEPTH);
    double clear = outsideLine ? clear(pad) : 0;
    double span = site.has(SEAT_SPAN) ? site.get(SEAT_SPAN) : clear;
    if (outsideLine && site.has(SEAT_SPAN)) {
      sheet.check(
          "seat-setback",
          "Seats outside the influence line of the excavation",
          Amount.length(clear),
          Amount.length(span),
          Verdict.REFER,
          Sources.SETBACK,
          Phrase.of(
              "Seats inside the line must stand on shoring designed for their load, or on piles"
                  + " or piers to below the excavation."));
    }
    return site.cantilever() ? tailed(load.perNeedle(), span) : seated(load.perNeedle(), span);
  }

  private NeedleBeam seated(double load, double span) {
    double near =
        sheet
            .step("near-distance", "From the load to the nearer seat", "b = {p} × {L}")
            .with("p", "place of the load", site.amount(BeamSettings.POSITION))
            .with("L", "span", Amount.length(span))
            .gives(Amount.length(site.get(BeamSettings.POSITION) * span));
    double far =
        sheet
            .step("far-distance", "From the load to the farther seat", "a = {L} - {b}")
            .with("L", "span", Amount.length(span))
            .with("b", "from the load to the nearer seat", Amount.length(near))
            .gives(Amount.length(span - near));
    return new NeedleBeam.Seated(load, near, far);
  }

  private NeedleBeam tailed(double load, double span) {
    double overhang =
        sheet
            .step("overhang", "Overhang, from the fulcrum to the load", "a = {L} / 2")
            .with("L", "span that seats on both sides would have", Amount.length(span))
            .note("The load is taken to come down midway across the excavation.")
            .gives(Amount.length(span / 2));
    double back =
        sheet
            .step("back-span", "Back span, from the fulcrum to the tail", "b = {r} × {a}")
            .with("r", "ratio", site.amount(BeamSettings.BACK_SPAN))
            .with("a", "overhang", Amount.length(overhang))
            .gives(Amount.length(site.get(BeamSettings.BACK_SPAN) * overhang));
    return new NeedleBeam.Tailed(load, overhang, back);
  }

  /** Span of seats that stand outside the line on both sides. */
  private double clear(double pad) {
    double slope = slope();
    double depth = Math.max(0, site.get(HOLE_DEPTH) - site.get(SEAT_DEPTH));
    double setback =
        sheet
            .step(
                "setback",
                "Setback of a pad from the excavation by its influence line",
                "c = {k} × max({D} - {s}, 0)")
            .with("k", "horizontal to vertical", Amount.ratio(slope))
            .with("D", "depth of the excavation", site.amount(HOLE_DEPTH))
            .with("s", "depth of the seats", site.amount(SEAT_DEPTH))
            .from(Sources.SETBACK)
            .note(
                Phrase.of(
                    "1 to 1, as in sand, gives {one}; 2 to 1, as in soft clay or silt, gives {two}.",
                    "one",
                    Amount.length(depth),
                    "two",
                    Amount.length(2 * depth)))
            .gives(Amount.length(slope * depth));
    return sheet
        .step(
            "clear-of-excavation",
            "Span of seats that stand clear of the excavation",
            "Lc = {W} + 2 × ({c} + {B} / 2)")
        .with("W", "width of the excavation", site.amount(HOLE_WIDTH))
        .with("c", "setback", Amount.length(setback))
        .with("B", "width of a pad", Amount.length(pad))
        .note("A wall that holds the excavation adds its thickness on each side.")
        .gives(Amount.length(Math.max(0.5, site.get(HOLE_WIDTH) + 2 * setback + pad)));
  }

  /** 1 in sand, gravel, hard soil and rock; 2 in anything else. */
  private double slope() {
    return switch (site.get(SupportSettings.SETBACK)) {
      case "1-to-1" -> 1;
      case "2-to-1" -> 2;
      default -> flat(site.seatSoil()) || site.softWedge() ? 2 : 1;
    };
  }

  /** Whether a soil wants the line at 2 horizontal to 1 vertical. */
  static boolean flat(SoilClass soil) {
    return switch (soil) {
      case ROCK, HARD, DENSE_GRAVEL, DENSE_SAND, LOOSE_SAND, STIFF_CLAY -> false;
      case SILT, SOFT_CLAY, FILL, PEAT -> true;
    };
  }
}
