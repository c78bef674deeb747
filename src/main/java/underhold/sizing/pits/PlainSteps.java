package underhold.sizing.pits;

import underhold.mechanics.concrete.PlainConcrete;
import underhold.sizing.Amount;
import underhold.sizing.SheetBuilder;

/** Steps of plain concrete that strip, pier and wall share. */
public final class PlainSteps {
  private PlainSteps() {}

  /**
   * Nominal stresses.
   *
   * @param flexure flexural tension, kPa
   * @param shear shear stress, kPa
   */
  public record Strengths(double flexure, double shear) {}

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
}
