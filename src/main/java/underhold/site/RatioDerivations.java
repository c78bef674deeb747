package underhold.site;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import underhold.quantity.Quantity;

/** Ratios and products of stated amounts. */
final class RatioDerivations {
  /** An excavation that goes less than this below the footing has no ratio to its gap; metres. */
  private static final double LEAST_DEPTH_METRES = 0.001;

  /** Positions for which the gap means something. */
  private static final Set<String> PROTECTED = Set.of("listed", "landmark");

  private static final Set<String> AT_A_GAP = Set.of("beside", "inside-walls");

  /**
   * Movement of a historic structure at which work stops, m: 1/4 in by New York City, Technical
   * Policy and Procedure Notice 10/88 (secondary, engineer's page).
   */
  private static final double HISTORIC_METRES = 0.25 * 0.0254;

  static final List<Derivation> ALL =
      List.of(
          new Derivation(
              "influenceRatio",
              List.of("gapToExcavation", "excavationBelowFooting"),
              RatioDerivations::influenceRatio),
          new Derivation(
              "gapOverDepth",
              List.of("gapToExcavation", "excavationDepth"),
              RatioDerivations::gapOverDepth),
          new Derivation(
              "forecastRatio",
              List.of("predictedMovement", "movementLimit", "heritage"),
              RatioDerivations::forecastRatio),
          new Derivation(
              "stabilityNumber",
              List.of(
                  "soilUnitWeight",
                  "excavationDepth",
                  "excavationBelowFooting",
                  "undrainedStrength"),
              RatioDerivations::stabilityNumber),
          new Derivation(
              "bracketLoad", List.of("lineLoad", "clearSpan"), RatioDerivations::bracketLoad));

  private RatioDerivations() {}

  /** Gap over excavation below the footing, for an excavation beside or inside the walls. */
  private static @Nullable Derived influenceRatio(Inputs in) {
    Quantity gap = in.amount("gapToExcavation");
    Quantity below = in.amount("excavationBelowFooting");
    if (gap == null
        || below == null
        || below.si() < LEAST_DEPTH_METRES
        || !AT_A_GAP.contains(in.word("excavationPosition"))) {
      return null;
    }
    return quotient(in, "influenceRatio", "gapToExcavation", "excavationBelowFooting");
  }

  /** Gap over depth of the excavation below ground, for one beside or inside the walls. */
  private static @Nullable Derived gapOverDepth(Inputs in) {
    Quantity depth = in.amount("excavationDepth");
    if (depth == null
        || depth.si() < LEAST_DEPTH_METRES
        || !AT_A_GAP.contains(in.word("excavationPosition"))) {
      return null;
    }
    return quotient(in, "gapOverDepth", "gapToExcavation", "excavationDepth");
  }

  /** Predicted movement over movement limit; a protected structure has a limit of its own. */
  private static @Nullable Derived forecastRatio(Inputs in) {
    Quantity predicted = in.amount("predictedMovement");
    Quantity limit = in.amount("movementLimit");
    boolean stricter =
        limit != null && limit.si() > HISTORIC_METRES && PROTECTED.contains(in.word("heritage"));
    if (!stricter || predicted == null) {
      return quotient(in, "forecastRatio", "predictedMovement", "movementLimit");
    }
    return in.result(
        "forecastRatio",
        predicted.si() / HISTORIC_METRES,
        in.show("predictedMovement")
            + " / 6.35 mm (1/4 in, which governs a historic structure), less than "
            + in.show("movementLimit"));
  }

  /**
   * N = γ·H/su, γ unit weight in kN/m3, H depth of the excavation below ground in m, su undrained
   * strength in kPa. Where only the depth below the footing is known N is worked out with that; it
   * is then a lower bound and the text says so. The load of the footing itself is left out.
   */
  private static @Nullable Derived stabilityNumber(Inputs in) {
    if (!in.digs()) {
      return null;
    }
    boolean whole = in.amount("excavationDepth") != null;
    String depthName = whole ? "excavationDepth" : "excavationBelowFooting";
    Quantity depth = in.amount(depthName);
    Quantity weight = in.amount("soilUnitWeight");
    Quantity strength = in.amount("undrainedStrength");
    if (depth == null || depth.si() <= 0 || weight == null || strength == null) {
      return null;
    }
    return in.result(
        "stabilityNumber",
        weight.si() * depth.si() / strength.si(),
        in.show("soilUnitWeight")
            + " × "
            + in.show(depthName)
            + " / "
            + in.show("undrainedStrength")
            + (whole ? "" : "; a lower bound, because the full depth is not known"));
  }

  /** Line load times the length the edge can bridge. */
  private static @Nullable Derived bracketLoad(Inputs in) {
    Quantity load = in.amount("lineLoad");
    Quantity span = in.amount("clearSpan");
    if (load == null || span == null) {
      return null;
    }
    return in.result(
        "bracketLoad",
        load.si() * span.si(),
        in.show("lineLoad") + " × " + in.show("clearSpan"),
        load,
        span);
  }

  private static @Nullable Derived quotient(
      Inputs in, String target, String numerator, String denominator) {
    Quantity top = in.amount(numerator);
    Quantity bottom = in.amount(denominator);
    if (top == null || bottom == null || bottom.si() <= 0) {
      return null;
    }
    return in.result(
        target, top.si() / bottom.si(), in.show(numerator) + " / " + in.show(denominator));
  }
}
