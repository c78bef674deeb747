package underhold.sizing.drilledpiles;

import underhold.mechanics.pile.axial.ClayBase;
import underhold.mechanics.pile.axial.RockSide;
import underhold.mechanics.pile.axial.SandBase;
import underhold.sizing.Amount;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;

/** Base resistance, where it is counted. */
final class BaseSection {
  private BaseSection() {}

  static void write(PileCase site, PileDesign design, SheetBuilder sheet) {
    if (!site.is(PileChoices.BASE, "counted")) {
      return;
    }
    Ground ground = new Ground(site);
    BondLayer layer = ground.at(design.toeMetres());
    Amount unit = Amount.pressure(design.unitBaseKilopascals());
    String title = "Unit base resistance in " + layer.name();
    switch (layer.kind()) {
      case CLAY ->
          sheet
              .step("unit-base", title, "qb = min({Nc} × {su}, {qm})")
              .with(
                  "Nc",
                  "Nc*, 6.5 to 9 by strength, less for short piles",
                  Amount.ratio(
                      ClayBase.factor(
                          Ground.countedStrength(layer),
                          ground.baseDepthRatio(design.toeMetres()))))
              .with("su", "undrained strength", Amount.pressure(Ground.countedStrength(layer)))
              .with("qm", "largest", Amount.pressure(ClayBase.LARGEST_KILOPASCALS))
              .from(Sources.CLAY_BASE)
              .gives(unit);
      case SAND ->
          sheet
              .step(
                  "unit-base",
                  title,
                  "qb = min(57.5 × min({N}, 50), 2900) × min({Dw} / {D}, 1)",
                  "qb = min(1201 × min({N}, 50), 60570) × min({Dw} / {D}, 1)")
              .with("N", "N60", Amount.count(layer.blowCount()))
              .with(
                  "Dw",
                  "diameter above which a base is reduced",
                  Amount.thickness(SandBase.WIDE_METRES))
              .with("D", "diameter", Amount.thickness(site.diameter()))
              .from(Sources.SAND_BASE)
              .gives(unit);
      case ROCK ->
          sheet
              .step("unit-base", title, "qb = 2.5 × {q}")
              .with(
                  "q",
                  "the weaker of rock and concrete",
                  Amount.stress(
                      RockSide.weakerKilopascals(
                          layer.rockStrength(), site.get(PileNumbers.CONCRETE))))
              .from(Sources.ROCK_BASE)
              .note(
                  "Massive or tightly jointed rock, sound for two diameters below, base cleaned and inspected.")
              .gives(unit);
      case NONE -> sheet.step("unit-base", title, "qb = 0").from(Source.judgement()).gives(unit);
    }
    sheet
        .step("base", "Base resistance of one pile, ultimate", "Qb = {qb} × 3.1416 × {D}^2 / 4")
        .with("qb", "unit base resistance", unit)
        .with(
            "D", "diameter of the base", Amount.thickness(ground.baseDiameter(design.toeMetres())))
        .gives(Amount.force(design.baseKilonewtons()));
  }
}
