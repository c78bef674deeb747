package underhold.mechanics.micropile;

/** Units in which US tables are printed, exact by definition of inch and pound. */
final class Units {
  /** 1 in in m. */
  static final double INCH = 0.0254;

  /** 1 ft in m. */
  static final double FOOT = 0.3048;

  /** 1 psi in kPa. */
  static final double PSI = 6.894757293168361;

  /** 1 ksi in kPa. */
  static final double KSI = 1000 * PSI;

  /** 1 kip in kN. */
  static final double KIP = 4.4482216152605;

  private Units() {}
}
