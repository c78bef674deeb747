package underhold.mechanics.steel;

/** US customary units in SI, for examples printed in them. */
public final class UsSteel {
  /** 1 inch in metres. */
  public static final double INCH = 0.0254;

  /** 1 foot in metres. */
  public static final double FOOT = 0.3048;

  /** 1 kip in kN. */
  public static final double KIP = 4.4482216152605;

  /** 1 kip-foot in kN m. */
  public static final double KIP_FOOT = KIP * FOOT;

  /** 1 kip per foot in kN/m. */
  public static final double KLF = KIP / FOOT;

  /** 1 ksi in kPa. */
  public static final double KSI = 6894.757293168361;

  private UsSteel() {}

  /** A section of the US tables. */
  public static RolledSection shape(String name) {
    return SectionTable.find(name).orElseThrow();
  }
}
