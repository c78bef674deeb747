package underhold.sizing.pits;

import underhold.mechanics.concrete.PlainConcrete;
import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Verdict;

/** Steps and checks of plain concrete that strip, pier and wall share. */
public final class PlainSteps {
  private PlainSteps() {}

  /**
   * Nominal stresses.
   *
   * @param flexure flexural tension, kPa
   * @param shear shear stress, kPa
   */
  public record Strengths(double flexure, double shear) {}

  /**
   * A plain wall cast against soil.
   *
   * @param prefix begins the ids of its steps and checks
   * @param name in the titles of the steps
   * @param title begins the titles of the checks
   * @param thickness as built, in its own unit of length
   * @param strength specified compressive strength of the concrete
   */
  public record Wall(String prefix, String name, String title, Amount thickness, Amount strength) {}

  /** Writes both steps, their ids begun by the prefix. */
  public static Strengths stresses(
      SheetBuilder sheet, String prefix, PlainConcrete concrete, Amount strength) {
    double flexure =
        sheet
            .step(
                prefix + "-flexural-tension",
                "Flexural tension at nominal strength",
                "fr = 0.4152 × sqrt({fc})",
                "fr = 5 × sqrt({fc})")
            .with("fc", "concrete strength", strength)
            .from(Sources.ACI_PLAIN)
            .note("f'c in MPa or in psi. The metric edition rounds 0.4152 to 0.42.")
            .gives(Amount.stress(concrete.flexuralTension()));
    double shear =
        sheet
            .step(
                prefix + "-shear-stress",
                "Nominal shear stress",
                "v = 0.1107 × sqrt({fc})",
                "v = (4 / 3) × sqrt({fc})")
            .with("fc", "concrete strength", strength)
            .from(Sources.ACI_PLAIN)
            .note("f'c in MPa or in psi. The metric edition rounds 0.1107 to 0.11.")
            .gives(Amount.stress(concrete.shearStress()));
    return new Strengths(flexure, shear);
  }

  /**
   * Writes what a plain wall cast against soil resists, per length, and checks it.
   *
   * @param sheet to write on
   * @param wall the wall
   * @param effects working moment and shear with their factor
   * @return its nominal stresses
   */
  public static Strengths wall(SheetBuilder sheet, Wall wall, Effects effects) {
    PlainConcrete plain = PlainConcrete.normalWeight(wall.strength().si());
    Strengths strengths = stresses(sheet, wall.prefix(), plain, wall.strength());
    double counted =
        sheet
            .step(
                wall.prefix() + "-depth",
                "Thickness that counts, cast against soil",
                "h = {t} - {lost}")
            .with("t", "thickness of the " + wall.name(), wall.thickness())
            .with(
                "lost",
                "not counted against soil",
                Amount.thickness(PlainConcrete.LOST_AGAINST_SOIL_METRES))
            .from(Sources.ACI_PLAIN)
            .gives(Amount.length(PlainConcrete.effectiveThickness(wall.thickness().si())));
    double moment =
        sheet
            .step(
                wall.prefix() + "-moment",
                "Design moment of the unreinforced " + wall.name(),
                "M = {phi} × {fr} × {h}^2 / 6")
            .with("phi", "strength reduction of plain concrete", Amount.ratio(PlainConcrete.PHI))
            .with("fr", "flexural tension", Amount.stress(strengths.flexure()))
            .with("h", "thickness that counts", Amount.length(counted))
            .from(Sources.ACI_PLAIN)
            .gives(
                Amount.momentPerLength(plain.designMoment(PlainConcrete.sectionModulus(counted))));
    double shear =
        sheet
            .step(
                wall.prefix() + "-shear",
                "Design shear of the unreinforced " + wall.name(),
                "V = {phi} × {v} × {h}")
            .with("phi", "strength reduction of plain concrete", Amount.ratio(PlainConcrete.PHI))
            .with("v", "nominal shear stress", Amount.stress(strengths.shear()))
            .with("h", "thickness that counts", Amount.length(counted))
            .from(Sources.ACI_PLAIN)
            .gives(Amount.lineLoad(plain.designShear(counted)));
    check(sheet, wall, effects, moment, shear);
    return strengths;
  }

  private static void check(
      SheetBuilder sheet, Wall wall, Effects effects, double moment, double shear) {
    sheet.check(
        wall.prefix() + "-flexure",
        wall.title() + " in bending",
        Amount.momentPerLength(effects.factor() * effects.moment()),
        Amount.momentPerLength(moment),
        Verdict.REFER,
        Sources.ACI_PLAIN,
        effects.note());
    sheet.check(
        wall.prefix() + "-shear",
        wall.title() + " in shear",
        Amount.lineLoad(effects.factor() * effects.shear()),
        Amount.lineLoad(shear),
        Verdict.REFER,
        Sources.ACI_PLAIN,
        effects.note());
  }

  /**
   * Working effects per length of wall.
   *
   * @param moment kNm/m
   * @param shear kN/m
   * @param factor load factor that makes them a demand
   * @param note what they are, beside the checks
   */
  public record Effects(double moment, double shear, double factor, Phrase note) {}
}
