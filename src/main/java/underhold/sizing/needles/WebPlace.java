package underhold.sizing.needles;

import underhold.mechanics.steel.ConcentratedForce;

/**
 * A place where a force enters or leaves the needle through its web.
 *
 * @param id short name
 * @param words in words
 * @param force factored force, kN
 * @param bearing length and place of its bearing
 */
record WebPlace(String id, String words, double force, ConcentratedForce bearing) {
  private static final double FAR_FROM_THE_END = 1e3;

  /** Whether it is a seat at an end of the needle. */
  boolean atFreeEnd() {
    return id.equals("jack") && bearing.fromEndMetres() < FAR_FROM_THE_END;
  }

  /** Under the load; a cantilever carries it near its tip. */
  static WebPlace load(NeedleCase site, NeedleBeam beam) {
    boolean tip = beam instanceof NeedleBeam.Tailed;
    double fromEnd = tip ? site.get(BeamSettings.END_DISTANCE) : FAR_FROM_THE_END;
    double length = site.get(BeamSettings.SEAT_BEARING);
    return new WebPlace(
        "load",
        "under the load",
        site.loadFactor() * beam.load(),
        new ConcentratedForce(tip ? Math.min(length, 2 * fromEnd) : length, fromEnd));
  }

  /** Over the most loaded jack or fulcrum. */
  static WebPlace jack(NeedleCase site, NeedleBeam beam, double ownWeight) {
    boolean inside = beam instanceof NeedleBeam.Tailed;
    double fromEnd = inside ? FAR_FROM_THE_END : site.get(BeamSettings.END_DISTANCE);
    double length = site.get(BeamSettings.JACK_BEARING);
    return new WebPlace(
        "jack",
        inside ? "over the fulcrum" : "over the jack",
        site.loadFactor() * beam.reaction(ownWeight),
        new ConcentratedForce(inside ? length : Math.min(length, 2 * fromEnd), fromEnd));
  }
}
