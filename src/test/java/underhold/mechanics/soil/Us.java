package underhold.mechanics.soil;

/** US customary units in SI, for examples printed in them. */
public final class Us {

  /** 1 foot in metres, exact. */
  public static final double FOOT = 0.3048;

  /** 1 pound-force per square foot in kPa. */
  public static final double PSF = 0.04788025898;

  /** 1 pound-force per cubic foot in kN/m3. */
  public static final double PCF = PSF / FOOT;

  /** 1 pound-force per foot in kN/m. */
  public static final double PLF = PSF * FOOT;

  private Us() {}
}
