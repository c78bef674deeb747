package underhold.sizing.edgepits;

import java.util.OptionalDouble;
import underhold.sizing.Settings;

/**
 * How deep the wall of pits goes.
 *
 * @param rock where rock lies
 * @param wallHeight from the underside of the structure to the base of the wall, m
 * @param ground bottom of the cut in front of the wall below its top, m: the excavation, or the
 *     rock the wall stands on where that is higher
 * @param rockFace height of rock cut below the wall, m
 */
record EdgeGeometry(Rock rock, double wallHeight, double ground, double rockFace) {

  /** Where rock lies. */
  enum Rock {
    /** Not met. */
    NONE,
    /** Below the excavation, met by the toe. */
    BELOW_EXCAVATION,
    /** Between structure and bottom of the excavation. */
    ABOVE_EXCAVATION
  }

  /** Rock this little above the bottom of the excavation counts as at it, m. */
  private static final double AT_THE_BOTTOM = 0.001;

  static EdgeGeometry of(double excavation, OptionalDouble rockDepth, Settings settings) {
    double onSoil = excavation + settings.get(EdgeSetting.TOE_EMBEDMENT.setting());
    double rock = rockDepth.orElse(Double.MAX_VALUE);
    if (rock >= onSoil) {
      return new EdgeGeometry(Rock.NONE, onSoil, excavation, 0);
    }
    return rock >= excavation - AT_THE_BOTTOM
        ? new EdgeGeometry(Rock.BELOW_EXCAVATION, rock, Math.min(excavation, rock), 0)
        : new EdgeGeometry(Rock.ABOVE_EXCAVATION, rock, rock, excavation - rock);
  }

  /** Depth of the wall below the ground in front, m. */
  double embedment() {
    return wallHeight - ground;
  }

  /** Whether the wall stands on rock. */
  boolean onRock() {
    return rock != Rock.NONE;
  }
}
