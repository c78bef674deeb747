package underhold.sizing.bracketpiles;

import underhold.mechanics.bracket.SeatBearing;
import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;
import underhold.sizing.Verdict;

/** Seat plate and shims under the edge. */
final class SeatSection {
  private static final double ROUND_METRES = 0.05;
  private static final double LEAST_LENGTH_METRES = 0.2;

  private SeatSection() {}

  /** Allowable bearing of the edge, kPa; no help of wider concrete around. */
  static double allowable(BracketCase site) {
    return site.concreteSeat()
        ? SeatBearing.allowable(site.get(BracketSetting.CONCRETE_STRENGTH), 1)
        : site.get(BracketSetting.MASONRY_BEARING);
  }

  /** Greatest pressure with shims tight at the inner end, per length of seat, kN/m. */
  private static double perLength(BracketCase site) {
    return new SeatBearing(site.get(BracketSetting.SEAT_DEPTH), 1)
        .greatest(site.load(), shift(site))
        .orElse(4 * site.load() / site.get(BracketSetting.SEAT_DEPTH));
  }

  /** The resultant stays well inside the seat. */
  private static double shift(BracketCase site) {
    return Math.min(
        site.get(BracketSetting.SHIM_SHIFT), 0.45 * site.get(BracketSetting.SEAT_DEPTH));
  }

  /** Length of seat along the edge, m. */
  static double length(BracketCase site) {
    double wanted = perLength(site) / allowable(site);
    double rounded = Math.ceil(wanted / ROUND_METRES - 1e-9) * ROUND_METRES;
    double most = site.get(BracketSetting.LONGEST_SEAT);
    double room = site.onColumn() ? most : Math.min(most, site.spacing());
    return Math.min(Math.max(rounded, Math.min(LEAST_LENGTH_METRES, room)), room);
  }

  static void write(BracketCase site, PileTrial pile, SheetBuilder sheet) {
    double depth = site.get(BracketSetting.SEAT_DEPTH);
    double shift = shift(site);
    double length = length(site);
    boolean whole = shift <= depth / 6;
    double pressure =
        sheet
            .step(
                "seat-pressure",
                "Greatest pressure on the seat, shims tight at the inner end",
                whole
                    ? "q = {P} / ({B} × {L}) × (1 + 6 × {es} / {B})"
                    : "q = 2 × {P} / (3 × {L} × ({B} / 2 - {es}))")
            .with("P", "load of one bracket", Amount.force(site.load()))
            .with("B", "depth of the seat", site.amount(BracketSetting.SEAT_DEPTH))
            .with("L", "length of the seat along the edge", Amount.thickness(length))
            .with("es", "shift of the resultant", Amount.thickness(shift))
            .gives(Amount.stress(perLength(site) / length));
    if (site.concreteSeat()) {
      sheet
          .step("seat-allowable", "Allowable bearing of the concrete", "qa = 0.85 × {fc} / 2.31")
          .with("fc", "strength of the concrete", site.amount(BracketSetting.CONCRETE_STRENGTH))
          .from(Sources.ACI_BEARING)
          .note("No help of wider concrete around the seat.")
          .gives(Amount.stress(allowable(site)));
    }
    boolean passes = pressure <= allowable(site) * (1 + 1e-9);
    sheet.verdict(
        "seat-bearing",
        "Pressure of the seat against what the edge bears",
        Amount.stress(pressure),
        Amount.stress(allowable(site)),
        !passes ? Verdict.FAILS : site.rubbleFooting() ? Verdict.REFER : Verdict.PASSES,
        site.concreteSeat() ? Sources.ACI_BEARING : Source.judgement(),
        Phrase.of(
            site.rubbleFooting()
                ? "A rubble or weak brick edge takes no bracket before it is gathered by a cast beam or needles: the engineer of record decides."
                : "Open the edge up at each seat. A seat longer than the bracket's plates needs a stiff spreader."));
    double apart = pile.gross().outsideDiameterMetres();
    double overhang = Math.max(apart, length - apart) / 2;
    sheet
        .step(
            "seat-plate",
            "Thickness of the seat plate or spreader",
            "t = {n} × sqrt(2 × {q} × 1.67 / {Fy})")
        .with(
            "n",
            "overhang past the bracket's plates, or half of the distance between them",
            Amount.thickness(overhang))
        .with("q", "greatest pressure", Amount.stress(pressure))
        .with("Fy", "yield of the plate", site.amount(BracketSetting.PLATE_YIELD))
        .from(Sources.AISC_BASE)
        .note("Shims: paired steel wedges or plates, at most four, full width, tacked; no wood.")
        .gives(
            Amount.thickness(
                SeatBearing.plateThickness(
                    pressure, overhang, site.get(BracketSetting.PLATE_YIELD))));
  }
}
