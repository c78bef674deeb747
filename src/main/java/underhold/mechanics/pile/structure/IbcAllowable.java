package underhold.mechanics.pile.structure;

import underhold.mechanics.pile.PileSection;
import underhold.mechanics.soil.Require;

/**
 * Allowable axial load of a pile section by allowable stresses of the building code.
 *
 * <p>P = kc f'c Ac + ks Fy As, with ks Fy at most a limit. Symbols: f'c, Fy [kPa], Ac fill, As
 * steel [m2]. Assumptions: the ground holds the pile sideways (a bared pile is a column); seismic
 * detailing excluded. Source: International Building Code, Table 1810.3.2.6; basis: from memory,
 * verify against the edition in force (the limit for pipe was raised in later editions).
 */
public final class IbcAllowable {
  private IbcAllowable() {}

  /** Where the concrete or grout stands; its share kc of f'c. */
  public enum Concrete {
    /** In a pipe, a casing or rock. */
    IN_CASING_OR_ROCK(0.33),
    /** Against soil, no casing. */
    UNCASED(0.30),
    /** In a casing that confines it (1810.3.2.7). */
    CONFINED(0.40);

    private final double share;

    Concrete(double share) {
      this.share = share;
    }

    /** kc. */
    public double share() {
      return share;
    }
  }

  /** What steel it is; its share ks of Fy and the limit in kPa. */
  public enum Steel {
    /** Core in a concrete-filled pipe, at most 32 ksi. */
    CORE(0.50, 220_632),
    /** Pipe of a micropile, at most 32 ksi. */
    MICROPILE_PIPE(0.40, 220_632),
    /** Bars of a micropile, at most 30 ksi. */
    BARS(0.40, 206_843),
    /** Any other pipe, at most 16 ksi (older editions). */
    OTHER_PIPE(0.35, 110_316);

    private final double share;
    private final double limitKilopascals;

    Steel(double share, double limitKilopascals) {
      this.share = share;
      this.limitKilopascals = limitKilopascals;
    }

    /** Allowable stress, kPa. */
    public double stressKilopascals(double yieldKilopascals) {
      return Math.min(
          share * Require.positive(yieldKilopascals, "yield stress", "kPa"), limitKilopascals);
    }
  }

  /** Allowable stress of the concrete, kPa. */
  public static double concreteKilopascals(Concrete concrete, double strengthKilopascals) {
    return concrete.share() * Require.positive(strengthKilopascals, "f'c", "kPa");
  }

  /** Allowable load of casing and fill, kN. */
  public static double kilonewtons(
      PileSection section,
      Concrete concrete,
      double strengthKilopascals,
      Steel steel,
      double yieldKilopascals) {
    return concreteKilopascals(concrete, strengthKilopascals) * section.fillAreaSquareMetres()
        + steel.stressKilopascals(yieldKilopascals) * section.casingAreaSquareMetres();
  }
}
