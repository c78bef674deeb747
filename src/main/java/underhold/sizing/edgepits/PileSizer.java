package underhold.sizing.edgepits;

import underhold.site.FactView;
import underhold.site.GroundProfile;
import underhold.sizing.Guesses;
import underhold.sizing.Settings;
import underhold.sizing.drilledpiles.DrilledPiles;

/** Sizes the drilled piles beside which edge pits stand. */
@FunctionalInterface
public interface PileSizer {
  /** The piles of a zone; they must look at nothing but the facts and the ground. */
  DrilledPiles.Sized sized(FactView facts, GroundProfile ground, Guesses guesses);

  /** Piles with those settings. */
  static PileSizer with(Settings settings) {
    return (facts, ground, guesses) -> DrilledPiles.sized(facts, ground, settings, guesses);
  }
}
