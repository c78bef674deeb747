package underhold.sizing.pits;

import static underhold.sizing.pits.PitsFact.*;

import underhold.sizing.Amount;
import underhold.sizing.SheetBuilder;

/** Quantities for all pits. */
final class BillSection {
  private BillSection() {}

  static void write(PitsCase site, SheetBuilder sheet, Layout layout, double boardThickness) {
    double length = layout.row().lengthMetres();
    double thickness = site.pierThickness();
    double depth = site.get(PIT_DEPTH);
    double gap = Math.min(site.get(PitsSetting.DRY_PACK_GAP), depth);
    int count = layout.count();
    double approachDepth = site.get(FOUNDING_DEPTH) + site.approachBelowFooting();
    double approachRound =
        2 * (site.get(PitsSetting.APPROACH_LENGTH) + site.get(PitsSetting.APPROACH_WIDTH));
    double boards =
        count * (2 * thickness * depth + approachRound * approachDepth) + length * depth;
    double soil = length * thickness * depth + count * OrderSection.approach(site);
    sheet.quantity(
        "concrete",
        Amount.volume(length * thickness * (depth - gap)),
        "net, up to the gap; order for overbreak");
    sheet.quantity(
        "dry pack",
        Amount.volume(length * thickness * gap),
        "rammed; stiff cement-sand, 1:1 to 1:3, damp as earth");
    sheet.quantity(
        "boards, area",
        Amount.area(boards),
        "sides and back of each pit and all round each approach pit; left in behind concrete");
    sheet.quantity(
        "boards, timber",
        Amount.volume(boards * boardThickness),
        "without waste, cleats and wedges");
    sheet.quantity("soil dug", Amount.volume(soil), "in place, approach pits included");
    sheet.quantity(
        "spoil to cart",
        Amount.volume(soil * site.get(PitsSetting.BULKING)),
        "loose, before approach pits are filled again");
    sheet.quantity(
        "approach pits",
        Amount.count(count),
        "one for each pit; neighbours may share after the first is done");
  }
}
