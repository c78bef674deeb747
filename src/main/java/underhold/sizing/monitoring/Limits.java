package underhold.sizing.monitoring;

import java.util.OptionalDouble;
import underhold.sizing.Source;
import underhold.sizing.Verdict;

/**
 * The limits that govern.
 *
 * <p>A limit binds where it was stated for the site or set by an authority; above an assumed or a
 * merely published one an engineer decides.
 *
 * @param movementMetres strictest limit of movement
 * @param movementSource its source
 * @param bindingMovement strictest that binds; empty where none does
 * @param distortion strictest limit of angular distortion; empty where none serves the structure
 * @param distortionSource its source
 * @param bindingDistortion strictest that binds; empty where none does
 */
record Limits(
    double movementMetres,
    Source movementSource,
    OptionalDouble bindingMovement,
    OptionalDouble distortion,
    Source distortionSource,
    OptionalDouble bindingDistortion) {

  /** Verdict of a movement above the strictest limit. */
  Verdict aboveMovement(double movement) {
    return above(movement, bindingMovement);
  }

  /** Verdict of a distortion above the strictest limit. */
  Verdict aboveDistortion(double ratio) {
    return above(ratio, bindingDistortion);
  }

  private static Verdict above(double demand, OptionalDouble binding) {
    return binding.isPresent() && demand > binding.getAsDouble() ? Verdict.FAILS : Verdict.REFER;
  }
}
