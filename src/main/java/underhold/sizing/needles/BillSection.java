package underhold.sizing.needles;

import java.util.List;
import underhold.mechanics.steel.BearingStiffeners;
import underhold.mechanics.steel.RolledSection;
import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;

/** Quantities and time. */
final class BillSection {
  private static final double GRAVITY = 9.80665e-3;

  private BillSection() {}

  static void write(
      NeedleCase site,
      SheetBuilder sheet,
      LoadSection.Load load,
      NeedleBeam beam,
      RolledSection section,
      Pad pad,
      int timbers,
      double jack) {
    int needles = load.needles();
    double length = beam.length() + 2 * site.get(BeamSettings.END_DISTANCE);
    double own = section.weightKilonewtonsPerMetre();
    int seats = site.cantilever() ? needles : 2 * needles;
    sheet.quantity("needles", Amount.count(needles), section.name());
    sheet.quantity("length of one needle", Amount.length(length), "end distances included");
    sheet.quantity(
        "weight of one needle", Amount.force(own * length), "what has to be brought in and lifted");
    sheet.quantity(
        "steel of the needles, weight",
        Amount.force(needles * own * length),
        "without collars, seats and packs");
    stiffeners(site, sheet, section, needles);
    if (!site.is(SupportSettings.SEAT, "pile")) {
      sheet.quantity(
          "pads",
          Amount.count(seats),
          pad.joined() ? "joined in one mat on each side" : "one at each seat, square");
      sheet.quantity(
          "area of pads",
          Amount.area(seats * pad.area()),
          "timber mats, steel grillages or concrete");
    }
    if (timbers > 0) {
      double layers =
          Math.ceil(
              site.get(SupportSettings.CRIB_HEIGHT) / site.get(SupportSettings.CRIB_TIMBER) - 1e-9);
      sheet.quantity(
          "crib timbers",
          Amount.count(seats * timbers * layers),
          "all cribs, without wedges and spares");
    }
    sheet.quantity("jacks", Amount.count(seats), "with lock nut or screw, gauges and spares");
    sheet.quantity("rating of a jack", Amount.force(jack), "with its margin");
    time(site, sheet, needles);
  }

  private static void stiffeners(
      NeedleCase site, SheetBuilder sheet, RolledSection section, int needles) {
    if (site.is(BeamSettings.STIFFENERS, "none")) {
      return;
    }
    List<Double> sold = site.plateThicknesses();
    double least =
        BearingStiffeners.leastThicknessMetres(section, BearingStiffeners.fullWidthMetres(section));
    double thickness =
        sold.stream().filter(one -> one >= least).findFirst().orElse(sold.get(sold.size() - 1));
    int pairs = site.cantilever() ? 2 : 3;
    double weight =
        BearingStiffeners.fullWidth(section, site.steel(), thickness).massKilograms() * GRAVITY;
    sheet.quantity(
        "stiffener plates, weight",
        Amount.force(needles * pairs * weight),
        "pairs under the load and over each seat, at the least thickness of the code");
  }

  private static void time(NeedleCase site, SheetBuilder sheet, int needles) {
    double set = needles * site.get(SupportSettings.NEEDLE_DAYS);
    double transfer = site.get(SupportSettings.PRELOAD_DAYS);
    double back = site.get(SupportSettings.RETURN_DAYS);
    sheet.time(
        "working days to set needles and seats",
        Amount.count(set),
        Phrase.of("judgement; by days-per-needle"));
    sheet.time(
        "working days of load transfer",
        Amount.count(transfer),
        Phrase.of("judgement; by days-of-transfer"));
    sheet.time(
        "working days to return the load",
        Amount.count(back),
        Phrase.of("judgement; by days-of-return"));
    sheet.time(
        "working days of needle work",
        Amount.count(set + transfer + back),
        Phrase.of("digging, the new support and its curing come between and are not in it"));
  }
}
