package underhold.sizing.needles;

import underhold.mechanics.steel.BearingStiffeners;
import underhold.mechanics.steel.DesignMethod;
import underhold.mechanics.steel.NominalStrength;
import underhold.mechanics.steel.WebLocalYielding;
import underhold.sizing.Amount;
import underhold.sizing.SheetBuilder;

/** Writes a pair of stiffeners by AISC 360. */
final class StiffenerSteps {
  private StiffenerSteps() {}

  static void write(SheetBuilder sheet, NeedleCase site, WebPlace place, BearingStiffeners pair) {
    boolean inside = WebLocalYielding.inside(pair.section(), place.bearing());
    double web = pair.section().plates().webThicknessMetres();
    boolean asd = site.designMethod() == DesignMethod.ASD;
    double area =
        sheet
            .step(
                place.id() + "-stiffener-area",
                "Stiffeners " + place.words() + ": area with the strip of web that helps",
                "As = 2 × {b} × {t} + " + (inside ? "25" : "12") + " × {tw}^2")
            .with("b", "width of one plate", Amount.thickness(pair.widthMetres()))
            .with("t", "its thickness", Amount.thickness(pair.thicknessMetres()))
            .with("tw", "web", Amount.thickness(web))
            .from(Sources.AISC_STIFFENER)
            .gives(BeamSettings.steelArea(pair.columnArea(inside)));
    NominalStrength column = pair.column(inside);
    sheet
        .step(
            place.id() + "-stiffener-column",
            "Stiffeners " + place.words() + " as a column, available",
            asd ? "Rc = {Fcr} × {As} / {F}" : "Rc = {F} × {Fcr} × {As}")
        .with(
            "Fcr",
            "critical stress by E3, length 0.75 h, radius about the web",
            Amount.stress(column.nominal() / area))
        .with("As", "area", BeamSettings.steelArea(area))
        .with("F", asd ? "Omega" : "phi", Amount.ratio(column.factor(site.designMethod())))
        .from(Sources.AISC_STIFFENER)
        .gives(Amount.force(column.available(site.designMethod())));
    NominalStrength bearing = pair.bearing();
    sheet
        .step(
            place.id() + "-stiffener-bearing",
            "Stiffeners " + place.words() + " in bearing, available",
            asd
                ? "Rc = 1.8 × {Fy} × 2 × ({b} - {c}) × {t} / {F}"
                : "Rc = {F} × 1.8 × {Fy} × 2 × ({b} - {c}) × {t}")
        .with("Fy", "yield strength", site.amount(BeamSettings.YIELD))
        .with("b", "width of one plate", Amount.thickness(pair.widthMetres()))
        .with("c", "clip at the fillet", Amount.thickness(pair.clipMetres()))
        .with("t", "its thickness", Amount.thickness(pair.thicknessMetres()))
        .with("F", asd ? "Omega" : "phi", Amount.ratio(bearing.factor(site.designMethod())))
        .from(Sources.AISC_STIFFENER)
        .note(
            pair.bigEnough()
                ? "Width and thickness reach the least sizes. The welds are not covered here."
                : "The plates do not reach the least sizes (width, tf/2, b/16).")
        .gives(Amount.force(bearing.available(site.designMethod())));
  }
}
