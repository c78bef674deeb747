package underhold.site;

import java.util.List;
import org.jspecify.annotations.Nullable;
import underhold.quantity.Quantity;

/**
 * Depths that follow from other depths, all in metres and all positive downwards. Exact but for the
 * rounding of {@link Inputs}. Nothing follows for a zone without a new excavation from a depth of
 * excavation stated for the rest of the site.
 */
final class DepthDerivations {
  static final List<Derivation> ALL =
      List.of(
          new Derivation(
              "excavationBelowFooting",
              List.of("excavationDepth", "foundingDepth"),
              DepthDerivations::excavationBelowFooting),
          new Derivation(
              "excavationDepth",
              List.of("foundingDepth", "excavationBelowFooting"),
              DepthDerivations::excavationDepth),
          new Derivation(
              "foundingDepth",
              List.of("excavationDepth", "excavationBelowFooting"),
              DepthDerivations::foundingDepth),
          new Derivation(
              "digsBelowFooting",
              List.of("excavationBelowFooting"),
              DepthDerivations::digsBelowFooting),
          new Derivation(
              "headAboveExcavation",
              List.of("excavationDepth", "groundWaterDepth"),
              DepthDerivations::headAboveExcavation),
          new Derivation(
              "toeBelowExcavation",
              List.of("pileToeDepth", "excavationDepth"),
              DepthDerivations::toeBelowExcavation));

  private DepthDerivations() {}

  /** d = H - D, H depth of the excavation, D founding depth. */
  private static @Nullable Derived excavationBelowFooting(Inputs in) {
    return difference(in, "excavationBelowFooting", "excavationDepth", "foundingDepth");
  }

  /** H = D + d. */
  private static @Nullable Derived excavationDepth(Inputs in) {
    Quantity founding = in.amount("foundingDepth");
    Quantity below = in.amount("excavationBelowFooting");
    if (!in.digs() || founding == null || below == null) {
      return null;
    }
    return in.result(
        "excavationDepth",
        founding.si() + below.si(),
        in.show("foundingDepth") + " + " + in.show("excavationBelowFooting"),
        founding,
        below);
  }

  /** D = H - d. */
  private static @Nullable Derived foundingDepth(Inputs in) {
    return difference(in, "foundingDepth", "excavationDepth", "excavationBelowFooting");
  }

  /** Yes where d is above 0. */
  private static @Nullable Derived digsBelowFooting(Inputs in) {
    if (!in.digs()) {
      return Inputs.word("no", "there is no new excavation at this zone");
    }
    Quantity below = in.amount("excavationBelowFooting");
    return below == null
        ? null
        : Inputs.word(below.si() > 0 ? "yes" : "no", in.show("excavationBelowFooting"));
  }

  /** Head = H - depth to ground water; negative where ground water is below the base. */
  private static @Nullable Derived headAboveExcavation(Inputs in) {
    return difference(in, "headAboveExcavation", "excavationDepth", "groundWaterDepth");
  }

  /** Depth of the pile toes below the excavation base; negative where they end above it. */
  private static @Nullable Derived toeBelowExcavation(Inputs in) {
    return difference(in, "toeBelowExcavation", "pileToeDepth", "excavationDepth");
  }

  private static @Nullable Derived difference(
      Inputs in, String target, String minuend, String subtrahend) {
    Quantity from = in.amount(minuend);
    Quantity less = in.amount(subtrahend);
    if (!in.digs() || from == null || less == null) {
      return null;
    }
    return in.result(
        target, from.si() - less.si(), in.show(minuend) + " - " + in.show(subtrahend), from, less);
  }
}
