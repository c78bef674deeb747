package underhold.sizing.monitoring;

import static underhold.sizing.monitoring.MonitoringSettings.*;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import underhold.mechanics.movement.CombinedStrain;
import underhold.mechanics.movement.DeepBeam;
import underhold.mechanics.movement.DeepBeam.Bending;
import underhold.sizing.Amount;
import underhold.sizing.Setting;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;
import underhold.sizing.StepBuilder;

/**
 * Strains of the wall as a deep beam, in each way it is taken to bend.
 *
 * @param site the case
 * @param sheet where the steps go
 * @param height H, m
 * @param length L of the bent part, m
 * @param ratio deflection ratio
 * @param pull horizontal strain
 */
record BentWall(
    MonitoringCase site,
    SheetBuilder sheet,
    double height,
    double length,
    double ratio,
    double pull) {

  /** A strain with its name on the sheet. */
  private record Strain(Bending bending, String sign, String words, double value) {}

  /**
   * What was found.
   *
   * @param largest over the ways chosen
   * @param hogging where the wall hogs; the largest where only sagging was chosen
   */
  record Strains(double largest, double hogging) {}

  /** Writes the steps. */
  Strains write() {
    List<Strain> strains = new ArrayList<>();
    for (Bending bending : Bending.values()) {
      String word = bending.name().toLowerCase(Locale.ROOT);
      String chosen = site.get(BENDING);
      if (chosen.equals("worse") || chosen.equals(word)) {
        strains.addAll(bent(bending, word));
      }
    }
    List<String> slots = strains.stream().map(one -> "{" + one.sign() + "}").toList();
    StepBuilder step =
        sheet.step(
            "tensile-strain",
            "Largest tensile strain at the trial movement",
            "e = max(" + String.join(", ", slots) + ")");
    strains.forEach(one -> step.with(one.sign(), one.words(), percent(one.value())));
    double largest = strains.stream().mapToDouble(Strain::value).max().orElseThrow();
    double hogging =
        strains.stream()
            .filter(one -> one.bending() == Bending.HOGGING)
            .mapToDouble(Strain::value)
            .max()
            .orElse(largest);
    return new Strains(step.gives(percent(largest)), hogging);
  }

  private List<Strain> bent(Bending bending, String word) {
    Setting setting = site.framed() ? FRAME_RATIO : WALL_RATIO;
    DeepBeam beam = new DeepBeam(length, height, bending, site.get(setting));
    boolean hogging = bending == Bending.HOGGING;
    Source source = Sources.of(DeepBeam.CITATION);
    double fibre =
        sheet
            .step(
                word + "-bending-factor",
                "Deflection ratio for one of strain, outermost fibre, " + word,
                hogging
                    ? "fb = {Lb} / (12 × {H}) + {H} × {q} / (2 × {Lb})"
                    : "fb = {Lb} / (6 × {H}) + {H} × {q} / (4 × {Lb})")
            .with("Lb", "length of the bent part", Amount.length(length))
            .with("H", "height of the wall", Amount.length(height))
            .with("q", "E / G", site.amount(setting))
            .from(source)
            .note(
                hogging
                    ? "L / 12 t + 3 I E / (2 t L H G) with the neutral axis at the base: I = H^3 / 3, t = H."
                    : "L / 12 t + 3 I E / (2 t L H G) with the neutral axis at mid-height: I = H^3 / 12, t = H / 2.")
            .gives(Amount.ratio(beam.bendingFactor()));
    double diagonal =
        sheet
            .step(
                word + "-diagonal-factor",
                "Deflection ratio for one of diagonal strain, " + word,
                hogging
                    ? "fd = 1 + {Lb}^2 / (6 × {H}^2 × {q})"
                    : "fd = 1 + {Lb}^2 / (1.5 × {H}^2 × {q})")
            .with("Lb", "length of the bent part", Amount.length(length))
            .with("H", "height of the wall", Amount.length(height))
            .with("q", "E / G", site.amount(setting))
            .from(source)
            .note("1 + H L^2 G / (18 I E).")
            .gives(Amount.ratio(beam.diagonalFactor()));
    double bendingStrain =
        sheet
            .step(
                word + "-bending-strain",
                "Strain of the outermost fibre, " + word,
                "eb = {r} / {fb} + {eh}")
            .with("r", "deflection ratio", Amount.ratio(ratio))
            .with("fb", "factor of the fibre", Amount.ratio(fibre))
            .with("eh", "horizontal strain", percent(pull))
            .gives(percent(CombinedStrain.bending(beam.bendingStrain(ratio), pull)));
    double diagonalStrain =
        sheet
            .step(
                word + "-diagonal-strain",
                "Diagonal strain, " + word,
                "ed = 0.35 × {eh} + sqrt((0.65 × {eh})^2 + ({r} / {fd})^2)")
            .with("eh", "horizontal strain", percent(pull))
            .with("r", "deflection ratio", Amount.ratio(ratio))
            .with("fd", "factor of the diagonal", Amount.ratio(diagonal))
            .note("Principal strain with Poisson's ratio 0.3; the form of Burland 1995.")
            .gives(
                percent(
                    CombinedStrain.diagonal(
                        beam.diagonalStrain(ratio), pull, CombinedStrain.POISSON)));
    String sign = hogging ? "h" : "s";
    return List.of(
        new Strain(bending, "eb" + sign, "outermost fibre, " + word, bendingStrain),
        new Strain(bending, "ed" + sign, "diagonal, " + word, diagonalStrain));
  }
}
