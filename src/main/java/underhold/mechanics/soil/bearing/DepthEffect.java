package underhold.mechanics.soil.bearing;

/**
 * Whether the strength of the soil above the base is credited through depth factors.
 *
 * <p>Beside an excavation that soil may be dug away or disturbed, so {@link #IGNORED} is the
 * careful choice (judgement). The overburden term is not touched by this choice: give the
 * overburden that will really remain.
 */
public enum DepthEffect {
  /** Depth factors of the author are used. */
  CREDITED,
  /** All depth factors are 1. */
  IGNORED
}
