package underhold.sizing.edgepits;

import underhold.mechanics.soil.edgewall.BackPressure;
import underhold.sizing.Amount;
import underhold.sizing.SheetBuilder;
import underhold.sizing.StepBuilder;

/** Force and moment of the pressure above a depth, as steps. */
final class PressureSteps {
  private final SheetBuilder sheet;
  private final BackPressure back;

  PressureSteps(SheetBuilder sheet, BackPressure back) {
    this.sheet = sheet;
    this.back = back;
  }

  /** Force above a depth, kN/m. */
  double force(String id, String place, double depth) {
    return with(
            sheet.step(
                "force-" + id,
                "Force on the wall above " + place,
                "F = {a} × {z} + {b} × {z}^2 / 2 + {c} × max({z} - {zw}, 0)^2 / 2"),
            depth)
        .gives(Amount.lineLoad(back.forceAbove(depth)));
  }

  /** Moment about a depth of the pressure above it, kN m/m. */
  double moment(String id, String place, double depth) {
    return with(
            sheet.step(
                "moment-" + id,
                "Moment, about the same level, of the pressure above " + place,
                "M = {a} × {z}^2 / 2 + {b} × {z}^3 / 6 + {c} × max({z} - {zw}, 0)^3 / 6"),
            depth)
        .gives(Amount.momentPerLength(back.momentAbove(depth)));
  }

  private StepBuilder with(StepBuilder step, double depth) {
    return step.with("a", "pressure at the top", Amount.pressure(back.atTopKilopascals()))
        .with("b", "rise per depth", Amount.unitWeight(back.perMetre()))
        .with(
            "c", "further rise per depth below water", Amount.unitWeight(back.perMetreBelowWater()))
        .with("z", "depth below the top of the wall", Amount.length(depth))
        .with("zw", "depth of the water", Amount.length(back.waterDepthMetres()));
  }
}
