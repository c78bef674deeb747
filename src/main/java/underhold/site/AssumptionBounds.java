package underhold.site;

import java.util.Optional;
import underhold.quantity.Quantity;

/**
 * Keeps an assumption from contradicting what is known. A pit goes at least as deep as the
 * excavation, so ground water stands at least as high above its base; and the worst soil is at
 * least as bad as the soil at the footing. Without this an assumption could be better than the
 * truth already follows from.
 */
final class AssumptionBounds {
  private AssumptionBounds() {}

  static FactValue bounded(String name, FactValue assumed, FactView known) {
    return switch (name) {
      case "headAbovePitBase" -> atLeast(assumed, known.amount("headAboveExcavation"));
      case "headAboveExcavation" -> atMost(assumed, known.amount("headAbovePitBase"));
      case "worstSoil" -> worseOf(assumed, known.word("soilAtFooting"));
      case "soilAtFooting" -> betterOf(assumed, known.word("worstSoil"));
      default -> assumed;
    };
  }

  private static FactValue atLeast(FactValue assumed, Optional<Quantity> bound) {
    return bound.isPresent() && bound.get().si() > si(assumed)
        ? new FactValue.Amount(bound.get())
        : assumed;
  }

  private static FactValue atMost(FactValue assumed, Optional<Quantity> bound) {
    return bound.isPresent() && bound.get().si() < si(assumed)
        ? new FactValue.Amount(bound.get())
        : assumed;
  }

  private static FactValue worseOf(FactValue assumed, Optional<String> soil) {
    return soil.isPresent() && SoilRank.worstFirst().compare(soil.get(), assumed.text()) < 0
        ? new FactValue.Choice(soil.get())
        : assumed;
  }

  private static FactValue betterOf(FactValue assumed, Optional<String> soil) {
    return soil.isPresent() && SoilRank.worstFirst().compare(soil.get(), assumed.text()) > 0
        ? new FactValue.Choice(soil.get())
        : assumed;
  }

  private static double si(FactValue value) {
    return ((FactValue.Amount) value).quantity().si();
  }
}
