package underhold.sizing.monitoring;

import static underhold.sizing.monitoring.MonitoringInputs.*;

import java.util.ArrayList;
import java.util.List;
import underhold.mechanics.movement.DinVibration;
import underhold.mechanics.movement.VibrationLimit;
import underhold.quantity.Measure;
import underhold.sizing.Amount;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;
import underhold.sizing.StepBuilder;

/** Limits of vibration at the foundation, side by side; the strictest governs. */
final class VibrationSection {
  /** A limit. */
  private record Candidate(String sign, String words, double value, Source source) {}

  private VibrationSection() {}

  static void write(MonitoringCase site, SheetBuilder sheet) {
    List<Candidate> candidates = new ArrayList<>(List.of(din(site)));
    VibrationLimit fta = fta(site);
    candidates.add(
        new Candidate("v2", fta.label(), fta.metresPerSecond(), Sources.of(fta.citation())));
    if (site.historic()) {
      VibrationLimit nyc = VibrationLimit.NYC_HISTORIC;
      candidates.add(
          new Candidate("v3", nyc.label(), nyc.metresPerSecond(), Sources.of(nyc.citation())));
    }
    for (Candidate one : candidates) {
      sheet
          .step(
              "vibration-" + one.sign(),
              "Peak particle velocity allowed: " + one.words(),
              "v = {" + one.sign() + "}")
          .with(one.sign(), one.words(), speed(one.value()))
          .from(one.source())
          .gives(speed(one.value()));
    }
    List<String> slots = candidates.stream().map(one -> "{" + one.sign() + "}").toList();
    Candidate least =
        candidates.stream()
            .min(java.util.Comparator.comparingDouble(Candidate::value))
            .orElseThrow();
    StepBuilder step =
        sheet
            .step(
                "vibration-limit",
                "Peak particle velocity that governs",
                "v = min(" + String.join(", ", slots) + ")")
            .from(least.source())
            .note(
                "Governs: "
                    + least.words()
                    + ". At the foundation, the largest of three directions.");
    candidates.forEach(one -> step.with(one.sign(), one.words(), speed(one.value())));
    step.gives(speed(least.value()));
  }

  private static Candidate din(MonitoringCase site) {
    DinVibration line = line(site);
    double hertz = site.get(MonitoringSettings.FREQUENCY);
    return new Candidate(
        "v1",
        "%s at the dominant frequency set, short-term".formatted(line.label()),
        line.foundationMetresPerSecond(hertz),
        Sources.of(DinVibration.CITATION));
  }

  private static DinVibration line(MonitoringCase site) {
    if (site.historic() || site.get(MATERIAL).equals("rubble")) {
      return DinVibration.SENSITIVE;
    }
    boolean engineered =
        site.get(MATERIAL).equals("reinforced-concrete") || site.get(MATERIAL).equals("steel");
    return engineered && !site.get(KIND).equals("building-wall")
        ? DinVibration.COMMERCIAL
        : DinVibration.DWELLING;
  }

  private static VibrationLimit fta(MonitoringCase site) {
    if (site.historic() || site.get(MATERIAL).equals("rubble")) {
      return VibrationLimit.FTA_FRAGILE;
    }
    return switch (site.get(MATERIAL)) {
      case "reinforced-concrete", "steel" -> VibrationLimit.FTA_REINFORCED;
      case "reinforced-masonry" -> VibrationLimit.FTA_ENGINEERED;
      default -> VibrationLimit.FTA_TIMBER_AND_MASONRY;
    };
  }

  private static Amount speed(double metresPerSecond) {
    return new Amount(metresPerSecond, Measure.SPEED, "mm/s", "in/s");
  }
}
