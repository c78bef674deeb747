package underhold.sizing.pits;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import underhold.mechanics.timber.SheetingSoil;
import underhold.sizing.Given;
import underhold.sizing.zone.SoilClass;

/** Fills a {@link PitsInput} fact by fact. */
public final class PitsInputBuilder {
  private final Map<PitsFact, Given<Double>> amounts = new EnumMap<>(PitsFact.class);
  private Optional<Given<WallMaterial>> material = Optional.empty();
  private Optional<Given<WallCondition>> condition = Optional.empty();
  private Optional<Given<SoilClass>> faceSoil = Optional.empty();
  private Optional<Given<SoilClass>> baseSoil = Optional.empty();
  private Optional<Given<Boolean>> facesRun = Optional.empty();
  private Optional<Given<StandUp>> standUp = Optional.empty();
  private Optional<Given<SheetingSoil>> oshaType = Optional.empty();
  private Optional<Given<Boolean>> bracePossible = Optional.empty();
  private Optional<Given<Boolean>> lateralStabilityVerified = Optional.empty();

  PitsInputBuilder() {}

  /** A stated number in inside units. */
  public PitsInputBuilder amount(PitsFact fact, double si) {
    return amount(fact, Given.stated(si));
  }

  /** A number with its origin. */
  public PitsInputBuilder amount(PitsFact fact, Given<Double> given) {
    amounts.put(fact, given);
    return this;
  }

  /** What spans the pit. */
  public PitsInputBuilder material(Given<WallMaterial> given) {
    material = Optional.of(given);
    return this;
  }

  /** State of the wall. */
  public PitsInputBuilder condition(Given<WallCondition> given) {
    condition = Optional.of(given);
    return this;
  }

  /** Soil at the faces. */
  public PitsInputBuilder faceSoil(Given<SoilClass> given) {
    faceSoil = Optional.of(given);
    return this;
  }

  /** Soil below the base. */
  public PitsInputBuilder baseSoil(Given<SoilClass> given) {
    baseSoil = Optional.of(given);
    return this;
  }

  /** Whether any layer at the faces runs with water. */
  public PitsInputBuilder facesRun(Given<Boolean> given) {
    facesRun = Optional.of(given);
    return this;
  }

  /** How long a face stands. */
  public PitsInputBuilder standUp(Given<StandUp> given) {
    standUp = Optional.of(given);
    return this;
  }

  /** OSHA soil type. */
  public PitsInputBuilder oshaType(Given<SheetingSoil> given) {
    oshaType = Optional.of(given);
    return this;
  }

  /** Whether finished piers can be braced or tied. */
  public PitsInputBuilder bracePossible(Given<Boolean> given) {
    bracePossible = Optional.of(given);
    return this;
  }

  /** Whether the wall's lateral stability was verified. */
  public PitsInputBuilder lateralStabilityVerified(Given<Boolean> given) {
    lateralStabilityVerified = Optional.of(given);
    return this;
  }

  /** The input. */
  public PitsInput build() {
    return new PitsInput(
        amounts,
        material,
        condition,
        faceSoil,
        baseSoil,
        facesRun,
        standUp,
        oshaType,
        bracePossible,
        lateralStabilityVerified);
  }
}
