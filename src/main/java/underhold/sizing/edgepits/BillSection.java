package underhold.sizing.edgepits;

import static underhold.sizing.edgepits.EdgeInputs.*;

import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.drilledpiles.PrimaryPiles;
import underhold.sizing.pits.OpenPits;
import underhold.sizing.pits.PitsSetting;

/** Quantities of the wall of pits. */
final class BillSection {
  private BillSection() {}

  static void write(
      EdgeCase site, SheetBuilder sheet, OpenPits dug, PropSection.Held held, int dowels) {
    int pits = dug.plan().row().count();
    double length = dug.plan().row().lengthMetres();
    double gap = Math.min(site.get(EdgeSetting.CLOSING_GAP), site.height());
    double soil = length * site.thickness() * site.height() + pits * dug.approachVolume();
    sheet.quantity("pits", Amount.count(pits), "along the edge, side by side");
    sheet.quantity(
        "concrete",
        Amount.volume(length * site.thickness() * (site.height() - gap)),
        "net, up to the gap below the structure; order for overbreak");
    sheet.quantity(
        "closing strip",
        Amount.volume(length * site.thickness() * gap),
        "between the wall and the structure: soft where the piles must not carry the wall, packed only where designed so");
    sheet.quantity(
        "joints between pits, keyed or dowelled",
        Amount.length((pits - 1) * site.height()),
        "upright, and two more where the wall meets the side walls of the excavation");
    sheet.quantity(
        "boards, area",
        Amount.area(dug.boardArea()),
        "pits and approach pits; left in behind concrete");
    sheet.quantity(
        "boards, timber", Amount.volume(dug.boardArea() * dug.boardMetres()), "without waste");
    sheet.quantity("soil dug", Amount.volume(soil), "in place, approach pits included");
    sheet.quantity(
        "spoil to cart",
        Amount.volume(soil * site.get(PitsSetting.BULKING)),
        "loose, the excavation itself not included");
    int along = (int) Math.max(1, Math.ceil(length / site.get(EdgeSetting.BRACE_ALONG) - 1e-6));
    sheet.quantity(
        "braces or ties",
        Amount.count((double) along * held.forces().size()),
        "all levels; walers along each level besides");
    if (dowels > 0) {
      sheet.quantity("toe dowels", Amount.count((double) dowels * pits), "grouted half into rock");
      sheet.quantity(
          "toe dowels, length",
          Amount.length(dowels * pits * site.get(EdgeSetting.DOWEL_LENGTH)),
          "all bars together");
    }
  }

  /** The piles stand on a sheet of their own; here so that nobody reads the scheme without them. */
  static void piles(SheetBuilder sheet, PrimaryPiles piles) {
    sheet.quantity(
        "drilled piles",
        Amount.count(piles.piles()),
        "they carry the structure; drilling, casing and concrete on their own sheet");
    sheet.time(
        "drilled piles, drilling",
        Amount.hours(piles.drillingHours()),
        Phrase.of("before any pit; by the sheet of the piles, where shifts and closures stand"));
  }
}
