package underhold.mechanics.pile;

/** Atmospheric pressure, by which the formulas of side resistance are made dimensionless. */
public final class Atmosphere {
  /** pa [kPa]: the standard atmosphere, exact. Sources round it to 2.116 ksf or 14.7 psi. */
  public static final double KILOPASCALS = 101.325;

  private Atmosphere() {}
}
