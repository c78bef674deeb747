package underhold.quantity;

import java.util.Optional;

/** The family of units that a user reads in. */
public enum UnitSystem {
  /** The metric units in use on site: m, mm, kN, kPa. */
  SI,
  /** US customary units: ft, in, kip, ksf, pcf. */
  US;

  /**
   * The system a quantity was typed in, so that answers can come back in the user's own units. A
   * unit common to both systems (degrees, hours, a plain number) gives {@link #SI}; where such a
   * unit must not decide, use {@link #statedBy}.
   */
  public static UnitSystem of(Quantity quantity) {
    return statedBy(quantity).orElse(SI);
  }

  /** The system a quantity was typed in; empty when its unit belongs to both systems. */
  public static Optional<UnitSystem> statedBy(Quantity quantity) {
    return quantity.measure().requireUnit(quantity.unit()).system();
  }
}
