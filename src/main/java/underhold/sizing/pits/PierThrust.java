package underhold.sizing.pits;

import static underhold.sizing.pits.PitsFact.*;

import underhold.mechanics.soil.Water;
import underhold.sizing.Amount;
import underhold.sizing.SheetBuilder;

/** Horizontal force on a pier. */
final class PierThrust {
  private PierThrust() {}

  static double write(
      PitsCase site,
      SheetBuilder sheet,
      String prefix,
      double coefficient,
      double above,
      String name) {
    double height = site.get(RETAINED_HEIGHT);
    double head = head(site);
    double soil = coefficient * (site.get(FACE_UNIT_WEIGHT) * height * height / 2 + above * height);
    double water = Water.KILONEWTONS_PER_CUBIC_METRE * head * head / 2;
    return sheet
        .step(
            prefix + "-thrust",
            "Horizontal force on the pier",
            "P = {" + name + "} × ({g} × {H}^2 / 2 + {qs} × {H}) + {gw} × {hw}^2 / 2")
        .with(name, "pressure coefficient", Amount.ratio(coefficient))
        .with("g", "unit weight of the soil", site.amount(FACE_UNIT_WEIGHT))
        .with("H", "retained height", site.amount(RETAINED_HEIGHT))
        .with("qs", "surcharge at the top", Amount.pressure(above))
        .with("gw", "unit weight of water", Amount.unitWeight(Water.KILONEWTONS_PER_CUBIC_METRE))
        .with("hw", "water above the base in the long run", Amount.length(head))
        .from(Sources.UFC)
        .note("The soil keeps its full weight below water, on the safe side.")
        .gives(Amount.lineLoad(soil + water));
  }

  /** Water behind the pier in the long run, m above the base. */
  static double head(PitsCase site) {
    return Math.min(site.get(RETAINED_HEIGHT), Math.max(0, site.get(LASTING_WATER_ABOVE_PIT_BASE)));
  }
}
