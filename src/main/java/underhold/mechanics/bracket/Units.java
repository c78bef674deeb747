package underhold.mechanics.bracket;

/** Units in which US codes are printed, exact by definition of inch and pound. */
final class Units {
  /** 1 in in m. */
  static final double INCH = 0.0254;

  /** 1 psi in kPa. */
  static final double PSI = 6.894757293168361;

  /** 1 ksi in kPa. */
  static final double KSI = 1000 * PSI;

  /** 1 lbf in kN. */
  static final double POUND = 4.4482216152605e-3;

  private Units() {}
}
