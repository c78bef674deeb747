package underhold.mechanics.movement;

/**
 * Movement allowed to historic structures near construction in New York City: 0.25 in, vertical or
 * horizontal.
 *
 * <p>Source: Technical Policy and Procedure Notice 10/88, in an engineer's page (secondary).
 */
public final class HistoricMovement {
  /** Limit, m. */
  public static final double LIMIT_METRES = 0.25 * 0.0254;

  /** Where it stands. */
  public static final Citation CITATION = VibrationLimit.NYC_HISTORIC.citation();

  private HistoricMovement() {}
}
