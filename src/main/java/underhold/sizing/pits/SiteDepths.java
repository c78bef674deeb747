package underhold.sizing.pits;

import java.util.Optional;
import underhold.sizing.Basis;
import underhold.sizing.Given;
import underhold.sizing.Origin;
import underhold.sizing.Source;
import underhold.sizing.zone.SiteFacts;

/**
 * How deep the pits of a zone go and how ground water stands to them.
 *
 * <p>Pits go to the larger of the excavation plus the toe embedment and the depth to good bearing,
 * below the underside of the footing. Ground water is counted from that base, not from the base of
 * the excavation.
 */
final class SiteDepths {
  private final SiteFacts facts;
  private final double toe;
  private final boolean digs;

  SiteDepths(SiteFacts facts, double toeEmbedment) {
    this.facts = facts;
    this.toe = toeEmbedment;
    this.digs =
        facts
            .word("excavationPosition")
            .filter(position -> position.value().equals("no-excavation"))
            .isEmpty();
  }

  /** Whether a new excavation is dug at the zone. */
  boolean digs() {
    return digs;
  }

  /** The excavation below the footing, at least 0. */
  Optional<Given<Double>> excavation() {
    return digs
        ? facts
            .number("excavationBelowFooting")
            .map(below -> SiteFacts.as(below, Math.max(0, below.value())))
        : Optional.of(derived(0, "there is no new excavation"));
  }

  /** The pits below the footing; empty where unknown or where nothing asks for pits. */
  Optional<Given<Double>> pits() {
    return excavation()
        .flatMap(
            below -> {
              double bearing = facts.number("bearingDepth").map(Given::value).orElse(0.0);
              double depth = Math.max(below.value() > 0 ? below.value() + toe : 0, bearing);
              return depth > 0
                  ? Optional.of(
                      derived(
                          depth,
                          "the larger of the excavation below the footing plus the toe embedment, and the depth to good bearing where it is known"))
                  : Optional.empty();
            });
  }

  /** Ground water above the pit base, if it is known. */
  Optional<Given<Double>> water() {
    Optional<Given<Double>> pits = pits();
    return pits.isEmpty() ? Optional.empty() : water(pits.get().value());
  }

  private Optional<Given<Double>> water(double pits) {
    Optional<Given<Double>> stated =
        facts.number("headAbovePitBase").filter(head -> head.origin() == Origin.STATED);
    Optional<Given<Double>> founding = facts.number("foundingDepth");
    Optional<Given<Double>> table = facts.number("groundWaterDepth");
    double counted = facts.number("pitDepth").map(Given::value).orElse(pits - toe);
    double deeper = Math.max(0, pits - counted);
    if (stated.isPresent()) {
      return Optional.of(
          deeper > 0
              ? derived(
                  stated.get().value() + deeper,
                  "the water stated above the base of the deepest pit, and how much deeper the pits here go")
              : stated.get());
    }
    if (founding.isPresent() && table.isPresent()) {
      return Optional.of(
          derived(
              founding.get().value() + pits - table.get().value(),
              "founding depth plus pit depth less the depth to ground water"));
    }
    Optional<Given<Double>> below = facts.number("excavationBelowFooting");
    return below.isPresent() && digs
        ? facts
            .number("headAboveExcavation")
            .map(
                head ->
                    derived(
                        head.value() + pits - below.get().value(),
                        "water above the base of the excavation, and how much deeper the pits go"))
        : Optional.empty();
  }

  private static Given<Double> derived(double value, String how) {
    return new Given<>(value, Origin.DERIVED, new Source(how, Basis.STATICS));
  }
}
