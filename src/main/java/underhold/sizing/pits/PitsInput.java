package underhold.sizing.pits;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import underhold.mechanics.timber.SheetingSoil;
import underhold.sizing.Given;
import underhold.sizing.zone.SoilClass;

/**
 * What is known of the site. Everything may be left out: what the sizing cannot do without is asked
 * for, the rest is derived or assumed, and the sheet says which.
 *
 * @param amounts numbers in inside units, each with its origin
 * @param material what spans the pit
 * @param condition its state
 * @param faceSoil soil at the faces of the pits
 * @param baseSoil soil below the pit base
 * @param facesRun whether any layer at the faces runs with water; by the face soil where not said
 * @param standUp how long a face stands
 * @param oshaType OSHA soil type
 * @param bracePossible whether the finished piers can be braced or tied
 * @param lateralStabilityVerified whether the wall's lateral stability was verified
 */
public record PitsInput(
    Map<PitsFact, Given<Double>> amounts,
    Optional<Given<WallMaterial>> material,
    Optional<Given<WallCondition>> condition,
    Optional<Given<SoilClass>> faceSoil,
    Optional<Given<SoilClass>> baseSoil,
    Optional<Given<Boolean>> facesRun,
    Optional<Given<StandUp>> standUp,
    Optional<Given<SheetingSoil>> oshaType,
    Optional<Given<Boolean>> bracePossible,
    Optional<Given<Boolean>> lateralStabilityVerified) {

  public PitsInput {
    Map<PitsFact, Given<Double>> copy = new EnumMap<>(PitsFact.class);
    amounts.forEach(
        (fact, given) -> {
          if (!fact.accepts(given.value())) {
            throw new IllegalArgumentException(fact.refusal(given.value()));
          }
          copy.put(fact, given);
        });
    amounts = Collections.unmodifiableMap(copy);
  }

  /** Nothing known yet. */
  public static PitsInputBuilder builder() {
    return new PitsInputBuilder();
  }

  /** The same, to be changed. */
  PitsInputBuilder toBuilder() {
    PitsInputBuilder copy = builder();
    amounts.forEach(copy::amount);
    material.ifPresent(copy::material);
    condition.ifPresent(copy::condition);
    faceSoil.ifPresent(copy::faceSoil);
    baseSoil.ifPresent(copy::baseSoil);
    facesRun.ifPresent(copy::facesRun);
    standUp.ifPresent(copy::standUp);
    oshaType.ifPresent(copy::oshaType);
    bracePossible.ifPresent(copy::bracePossible);
    lateralStabilityVerified.ifPresent(copy::lateralStabilityVerified);
    return copy;
  }

  /** The number of that fact, if known. */
  public Optional<Given<Double>> amount(PitsFact fact) {
    return Optional.ofNullable(amounts.get(fact));
  }
}
