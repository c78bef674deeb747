package underhold.site;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import underhold.quantity.Quantity;

/**
 * One layer of the ground. Whatever was not stated is null.
 *
 * @param soil soil class, one of the values of the fact {@code soilAtFooting}
 * @param top depth of its top below ground surface (length)
 * @param unitWeight total unit weight
 * @param undrainedStrength undrained shear strength su of clay (pressure)
 * @param frictionAngle effective friction angle phi' (angle)
 * @param cohesion effective cohesion c' (pressure)
 * @param n60 standard penetration blow count N60 (count)
 * @param unconfinedStrength unconfined compressive strength qu (pressure)
 * @param rqd rock quality designation (ratio)
 * @param permeability (speed)
 * @param standUp one of the values of the fact {@code standUp}
 * @param note anything else the user wrote
 */
public record GroundLayer(
    String soil,
    Quantity top,
    @Nullable Quantity unitWeight,
    @Nullable Quantity undrainedStrength,
    @Nullable Quantity frictionAngle,
    @Nullable Quantity cohesion,
    @Nullable Quantity n60,
    @Nullable Quantity unconfinedStrength,
    @Nullable Quantity rqd,
    @Nullable Quantity permeability,
    @Nullable String standUp,
    String note) {

  /** Total unit weight, if stated. */
  public Optional<Quantity> maybeUnitWeight() {
    return Optional.ofNullable(unitWeight);
  }

  /** Undrained shear strength, if stated. */
  public Optional<Quantity> maybeUndrainedStrength() {
    return Optional.ofNullable(undrainedStrength);
  }

  /** Permeability, if stated. */
  public Optional<Quantity> maybePermeability() {
    return Optional.ofNullable(permeability);
  }

  /** Stand-up time, if stated. */
  public Optional<String> maybeStandUp() {
    return Optional.ofNullable(standUp);
  }
}
