package underhold.mechanics.soil.stability;

import java.util.List;
import java.util.Optional;
import underhold.mechanics.soil.Outcome;
import underhold.mechanics.soil.Require;
import underhold.mechanics.soil.SafetyFactor;
import underhold.mechanics.soil.bearing.ContactPressure;

/**
 * An underpinning pier taken alone as a gravity retaining wall, with and without the building's
 * vertical load.
 *
 * <p>Formula, per metre run, moments about the toe (the edge on the excavation side): N = W + V -
 * U; sliding (mu N + ca B + Pp)/P; overturning (W B/2 + V xv + Pp yp)/(sum P y + U xu); x = (sum of
 * resisting - sum of overturning)/N; e = |B/2 - x|; base pressure by {@link ContactPressure}.
 *
 * <p>Symbols: W pier weight, V building load, U uplift, P lateral forces, Pp passive resistance
 * [kN/m]; B thickness [m]; mu base friction coefficient; ca base adhesion [kPa]; y heights above
 * the base, x distances from the toe [m]. Assumptions: rigid prism, no anchor or raker, no help
 * from neighbours or from the floor. In a case where N is not above 0 or the resultant leaves the
 * base there is no bearing pressure and the case fails.
 *
 * <p>Why both cases: where the load path cannot be confirmed by eye every pit-pier must be braced
 * for all horizontal load, unless the pier alone as a retaining wall, both with and without the
 * building's load, has satisfactory bearing and a factor of 1.5 in overturning and sliding;
 * unreinforced masonry whose stability cannot be verified has no such exemption. Source: New York
 * City Building Code 2022, 1817.5.4.1.1 (and 1817.3.3); basis: cited, secondary full text.
 * Accuracy: exact statics for the given forces.
 */
public final class PierAsRetainingWall {

  /**
   * Required factor in sliding and overturning, dimensionless; New York City Building Code 2022,
   * 1817.5.4.1.1.
   */
  public static final double REQUIRED_FACTOR = 1.5;

  private PierAsRetainingWall() {}

  /**
   * A horizontal force towards the excavation.
   *
   * @param name what it is, for the reader
   * @param kilonewtonsPerMetre size
   * @param heightAboveBaseMetres height of its line of action
   */
  public record LateralForce(
      String name, double kilonewtonsPerMetre, double heightAboveBaseMetres) {
    public LateralForce {
      Require.notNegative(kilonewtonsPerMetre, name, "kN/m");
      Require.notNegative(heightAboveBaseMetres, name + ", height above the base", "m");
    }
  }

  /**
   * A vertical force, down for the building and up for water.
   *
   * @param kilonewtonsPerMetre size
   * @param fromToeMetres distance of its line of action from the toe
   */
  public record VerticalForce(double kilonewtonsPerMetre, double fromToeMetres) {
    public VerticalForce {
      Require.notNegative(kilonewtonsPerMetre, "vertical force", "kN/m");
      Require.notNegative(fromToeMetres, "distance from the toe", "m");
    }

    /** No force. */
    public static final VerticalForce NONE = new VerticalForce(0, 0);
  }

  /**
   * The resistance at the base and in front of the pier.
   *
   * @param frictionCoefficient mu, concrete on the ground
   * @param adhesionKilopascals adhesion on the part of the base in contact; 0 unless proven
   * @param passive passive resistance in front; zero unless the soil there is sure to stay
   */
  public record Holding(
      double frictionCoefficient, double adhesionKilopascals, LateralForce passive) {
    public Holding {
      Require.between(frictionCoefficient, 0, 1, "base friction coefficient", "");
      Require.notNegative(adhesionKilopascals, "base adhesion", "kPa");
    }

    /** Friction alone. */
    public static Holding friction(double coefficient) {
      return new Holding(coefficient, 0, new LateralForce("passive resistance", 0, 0));
    }
  }

  /**
   * The pier and all that acts on it.
   *
   * @param heightMetres height of the pier
   * @param thicknessMetres thickness B in the direction of the lateral forces
   * @param unitWeightKilonewtonsPerCubicMetre unit weight of the pier
   * @param buildingLoad vertical load of the building on the pier
   * @param uplift water pressure under the base
   * @param lateral lateral forces of soil, surcharge and water
   * @param holding resistance at the base and in front
   */
  public record Pier(
      double heightMetres,
      double thicknessMetres,
      double unitWeightKilonewtonsPerCubicMetre,
      VerticalForce buildingLoad,
      VerticalForce uplift,
      List<LateralForce> lateral,
      Holding holding) {
    public Pier {
      Require.positive(heightMetres, "pier height", "m");
      Require.positive(thicknessMetres, "pier thickness", "m");
      Require.positive(unitWeightKilonewtonsPerCubicMetre, "unit weight of the pier", "kN/m3");
      Require.between(
          buildingLoad.fromToeMetres(), 0, thicknessMetres, "building load, from the toe", "m");
      Require.between(uplift.fromToeMetres(), 0, thicknessMetres, "uplift, from the toe", "m");
      lateral = List.copyOf(lateral);
    }

    /** Weight of the pier [kN/m]. */
    public double weightKilonewtonsPerMetre() {
      return heightMetres * thicknessMetres * unitWeightKilonewtonsPerCubicMetre;
    }
  }

  /**
   * One case: with or without the building.
   *
   * @param normalKilonewtonsPerMetre normal force N on the base, negative when the pier floats
   * @param sliding resistance against lateral force [kN/m]
   * @param overturning resisting against overturning moment about the toe [kN m/m]
   * @param resultantFromToeMetres distance x of the resultant from the toe, empty without a
   *     downward force; negative beyond the toe
   * @param contact base pressure, out of range when the pier overturns or floats
   */
  public record Case(
      double normalKilonewtonsPerMetre,
      SafetyFactor sliding,
      SafetyFactor overturning,
      Optional<Double> resultantFromToeMetres,
      Outcome<ContactPressure> contact) {

    /** Whether both factors and the base pressure are satisfactory. */
    public boolean isSatisfactory(double requiredFactor, double allowableKilopascals) {
      return sliding.isAtLeast(requiredFactor)
          && overturning.isAtLeast(requiredFactor)
          && contact.fold(
              pressure -> pressure.largestKilopascals() <= allowableKilopascals, reason -> false);
    }
  }

  /**
   * Both cases.
   *
   * @param withBuilding with the building's vertical load
   * @param withoutBuilding without it
   */
  public record Cases(Case withBuilding, Case withoutBuilding) {

    /**
     * Whether the pier stands alone in both cases with a factor of 1.5, so that the brace may be
     * left out as far as these numbers go; the bar on unreinforced masonry is a separate question.
     */
    public boolean standsUnbraced(double allowableKilopascals) {
      return withBuilding.isSatisfactory(REQUIRED_FACTOR, allowableKilopascals)
          && withoutBuilding.isSatisfactory(REQUIRED_FACTOR, allowableKilopascals);
    }
  }

  /** Checks a pier in both cases. */
  public static Cases check(Pier pier) {
    return new Cases(check(pier, pier.buildingLoad()), check(pier, VerticalForce.NONE));
  }

  private static Case check(Pier pier, VerticalForce building) {
    double thickness = pier.thicknessMetres();
    double weight = pier.weightKilonewtonsPerMetre();
    LateralForce passive = pier.holding().passive();
    VerticalForce uplift = pier.uplift();
    double normal = weight + building.kilonewtonsPerMetre() - uplift.kilonewtonsPerMetre();
    double resisting =
        weight * thickness / 2
            + building.kilonewtonsPerMetre() * building.fromToeMetres()
            + passive.kilonewtonsPerMetre() * passive.heightAboveBaseMetres();
    double push = 0;
    double overturning = uplift.kilonewtonsPerMetre() * uplift.fromToeMetres();
    for (LateralForce force : pier.lateral()) {
      push += force.kilonewtonsPerMetre();
      overturning += force.kilonewtonsPerMetre() * force.heightAboveBaseMetres();
    }
    Optional<Double> fromToe =
        normal >= Require.SMALLEST
            ? Optional.of((resisting - overturning) / normal)
            : Optional.empty();
    Outcome<ContactPressure> contact =
        fromToe
            .map(x -> contact(normal, thickness, x))
            .orElse(Outcome.outOfRange("no downward force: the base is not in contact"));
    double contactWidth = contact.fold(pressure -> pressure.contactWidthMetres(), reason -> 0.0);
    double holding =
        pier.holding().frictionCoefficient() * Math.max(0, normal)
            + pier.holding().adhesionKilopascals() * contactWidth
            + passive.kilonewtonsPerMetre();
    return new Case(
        normal,
        new SafetyFactor(holding, push),
        new SafetyFactor(resisting, overturning),
        fromToe,
        contact);
  }

  private static Outcome<ContactPressure> contact(double normal, double thickness, double x) {
    if (x <= 0 || x >= thickness) {
      return Outcome.outOfRange(
          x <= 0
              ? "the resultant lies beyond the toe: the pier overturns"
              : "the resultant lies beyond the heel: the pier leans into the ground");
    }
    return ContactPressure.of(normal, thickness, thickness / 2 - x);
  }
}
