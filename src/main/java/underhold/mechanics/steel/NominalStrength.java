package underhold.mechanics.steel;

/**
 * A nominal strength with its two factors (AISC 360-16, B3.1 and B3.2: phi Rn or Rn / Omega).
 *
 * @param nominal Rn, kN or kN m
 * @param phi resistance factor, LRFD
 * @param omega safety factor, ASD
 */
public record NominalStrength(double nominal, double phi, double omega) {
  public NominalStrength {
    Require.notNegative("nominal strength", nominal);
    Require.positive("phi", phi);
    Require.positive("Omega", omega);
  }

  /** The available strength by that method. */
  public double available(DesignMethod method) {
    return method == DesignMethod.ASD ? nominal / omega : phi * nominal;
  }

  /** The factor of that method: Omega (a divisor) or phi (a multiplier). */
  public double factor(DesignMethod method) {
    return method == DesignMethod.ASD ? omega : phi;
  }

  /** Whichever has the lower nominal strength; this one where they are equal. */
  public NominalStrength or(NominalStrength other) {
    return other.nominal < nominal ? other : this;
  }
}
