package underhold.sizing.pits;

import underhold.mechanics.concrete.PlainConcrete;
import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Verdict;

/** The unreinforced pier in bending and shear, as a cantilever from its base. */
final class PierConcreteSection {
  private PierConcreteSection() {}

  static void write(PitsCase site, SheetBuilder sheet, double push, double overturning) {
    double thickness = site.pierThickness();
    PlainConcrete plain = PlainConcrete.normalWeight(site.get(PitsSetting.PIER_STRENGTH));
    PlainSteps.Strengths strengths =
        PlainSteps.stresses(sheet, "pier", plain, site.amount(PitsSetting.PIER_STRENGTH));
    double counted =
        sheet
            .step("pier-depth", "Thickness that counts, cast against soil", "h = {t} - {lost}")
            .with("t", "thickness of the pier", Amount.length(thickness))
            .with(
                "lost",
                "not counted against soil",
                Amount.thickness(PlainConcrete.LOST_AGAINST_SOIL_METRES))
            .from(Sources.ACI_PLAIN)
            .gives(Amount.length(PlainConcrete.effectiveThickness(thickness)));
    double moment =
        sheet
            .step(
                "pier-moment",
                "Design moment of the unreinforced pier",
                "M = {phi} × {fr} × {h}^2 / 6")
            .with("phi", "strength reduction of plain concrete", Amount.ratio(PlainConcrete.PHI))
            .with("fr", "flexural tension", Amount.stress(strengths.flexure()))
            .with("h", "thickness that counts", Amount.length(counted))
            .from(Sources.ACI_PLAIN)
            .gives(
                Amount.momentPerLength(plain.designMoment(PlainConcrete.sectionModulus(counted))));
    double shear =
        sheet
            .step("pier-shear", "Design shear of the unreinforced pier", "V = {phi} × {v} × {h}")
            .with("phi", "strength reduction of plain concrete", Amount.ratio(PlainConcrete.PHI))
            .with("v", "nominal shear stress", Amount.stress(strengths.shear()))
            .with("h", "thickness that counts", Amount.length(counted))
            .from(Sources.ACI_PLAIN)
            .gives(Amount.lineLoad(plain.designShear(counted)));
    double factor = site.get(PitsSetting.LOAD_FACTOR);
    Phrase note =
        Phrase.of(
            "Demand is {F} times the working effect of a cantilever from the base. If it fails, reinforce the pier or brace it.",
            "F",
            site.amount(PitsSetting.LOAD_FACTOR));
    sheet.check(
        "pier-flexure",
        "Unreinforced pier in bending",
        Amount.momentPerLength(factor * overturning),
        Amount.momentPerLength(moment),
        Verdict.REFER,
        Sources.ACI_PLAIN,
        note);
    sheet.check(
        "pier-shear",
        "Unreinforced pier in shear",
        Amount.lineLoad(factor * push),
        Amount.lineLoad(shear),
        Verdict.REFER,
        Sources.ACI_PLAIN,
        note);
  }
}
