package underhold.mechanics.soil;

/** Properties of water used by several calculators. */
public final class Water {

  /** Unit weight of fresh water, 9.81 kN/m3 (1000 kg/m3 times 9.81 m/s2). */
  public static final double KILONEWTONS_PER_CUBIC_METRE = 9.81;

  private Water() {}
}
