package underhold.site;

import java.util.List;
import org.jspecify.annotations.Nullable;
import underhold.quantity.Quantity;

/** How deep a pit goes and how far ground water stands in its way; metres, downwards positive. */
final class PitDerivations {
  /**
   * How far below the base of a pit ground water has to be held; metres. From memory, verify:
   * German practice for underpinning (DIN 4123) asks for about half a metre.
   */
  static final double DRY_MARGIN_METRES = 0.5;

  static final List<Derivation> ALL =
      List.of(
          new Derivation(
              "pitDepth",
              List.of("excavationBelowFooting", "bearingDepth"),
              PitDerivations::pitDepth),
          new Derivation(
              "headAbovePitBase",
              List.of("foundingDepth", "pitDepth", "groundWaterDepth"),
              PitDerivations::headFromGroundWater),
          new Derivation(
              "headAbovePitBase",
              List.of("headAboveExcavation", "pitDepth", "excavationBelowFooting"),
              PitDerivations::headFromExcavation),
          new Derivation(
              "bearingBelowExcavation",
              List.of("bearingDepth", "excavationBelowFooting"),
              PitDerivations::bearingBelowExcavation),
          new Derivation("pitInRock", List.of("pitDepth", "rockDepth"), PitDerivations::pitInRock),
          new Derivation(
              "drawdownNeeded", List.of("headAbovePitBase"), PitDerivations::drawdownNeeded));

  private PitDerivations() {}

  /** The larger of the excavation below the footing and the depth to good bearing, at least 0. */
  private static @Nullable Derived pitDepth(Inputs in) {
    Quantity bearing = in.amount("bearingDepth");
    if (bearing == null) {
      return null;
    }
    if (!in.digs()) {
      return Inputs.same(bearing, in.show("bearingDepth") + "; there is no new excavation");
    }
    Quantity below = in.amount("excavationBelowFooting");
    if (below == null) {
      return null;
    }
    Quantity larger = below.si() > bearing.si() ? below : bearing;
    return Inputs.same(
        larger,
        "larger of " + in.show("excavationBelowFooting") + " and " + in.show("bearingDepth"));
  }

  /** Depth to good bearing less the excavation below the footing; no excavation counts as none. */
  private static @Nullable Derived bearingBelowExcavation(Inputs in) {
    Quantity bearing = in.amount("bearingDepth");
    if (bearing == null) {
      return null;
    }
    if (!in.digs()) {
      return Inputs.same(bearing, in.show("bearingDepth") + "; there is no new excavation");
    }
    Quantity below = in.amount("excavationBelowFooting");
    if (below == null) {
      return null;
    }
    return below.si() <= 0
        ? Inputs.same(
            bearing, in.show("bearingDepth") + "; the excavation does not go below the footing")
        : in.result(
            "bearingBelowExcavation",
            bearing.si() - below.si(),
            in.show("bearingDepth") + " - " + in.show("excavationBelowFooting"),
            bearing,
            below);
  }

  /** Depth of the pit less the depth to rock; above 0 where the pit has to go into rock. */
  private static @Nullable Derived pitInRock(Inputs in) {
    Quantity pit = in.amount("pitDepth");
    Quantity rock = in.amount("rockDepth");
    return pit == null || rock == null
        ? null
        : in.result(
            "pitInRock",
            pit.si() - rock.si(),
            in.show("pitDepth") + " - " + in.show("rockDepth"),
            pit,
            rock);
  }

  /** Head = D + pit depth - depth to ground water. */
  private static @Nullable Derived headFromGroundWater(Inputs in) {
    Quantity founding = in.amount("foundingDepth");
    Quantity pit = in.amount("pitDepth");
    Quantity water = in.amount("groundWaterDepth");
    if (founding == null || pit == null || water == null) {
      return null;
    }
    return in.result(
        "headAbovePitBase",
        founding.si() + pit.si() - water.si(),
        in.show("foundingDepth")
            + " + "
            + in.show("pitDepth")
            + " - "
            + in.show("groundWaterDepth"),
        founding,
        pit,
        water);
  }

  /** Head = head above the excavation base + pit depth - excavation below the footing. */
  private static @Nullable Derived headFromExcavation(Inputs in) {
    Quantity head = in.amount("headAboveExcavation");
    Quantity pit = in.amount("pitDepth");
    Quantity below = in.amount("excavationBelowFooting");
    if (!in.digs() || head == null || pit == null || below == null) {
      return null;
    }
    return in.result(
        "headAbovePitBase",
        head.si() + pit.si() - below.si(),
        in.show("headAboveExcavation")
            + " + "
            + in.show("pitDepth")
            + " - "
            + in.show("excavationBelowFooting"),
        head,
        pit,
        below);
  }

  /** Head above the pit base and the margin below it, at least 0. */
  private static @Nullable Derived drawdownNeeded(Inputs in) {
    Quantity head = in.amount("headAbovePitBase");
    if (head == null) {
      return null;
    }
    return in.result(
        "drawdownNeeded",
        Math.max(0, head.si() + DRY_MARGIN_METRES),
        in.show("headAbovePitBase")
            + " + "
            + DRY_MARGIN_METRES
            + " m below the pit base (from memory, verify), at least 0",
        head);
  }
}
