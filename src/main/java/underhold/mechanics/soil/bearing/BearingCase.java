package underhold.mechanics.soil.bearing;

/**
 * One bearing question: which footing, on what ground, under which load.
 *
 * @param footing plan and depth
 * @param ground strength, overburden and unit weight
 * @param load resultant at the base
 * @param depthEffect whether depth factors are credited
 */
public record BearingCase(
    Footing footing, BearingGround ground, FootingLoad load, DepthEffect depthEffect) {

  /** A case with a central vertical load. */
  public static BearingCase centred(
      Footing footing, BearingGround ground, DepthEffect depthEffect) {
    return new BearingCase(footing, ground, FootingLoad.centred(), depthEffect);
  }
}
