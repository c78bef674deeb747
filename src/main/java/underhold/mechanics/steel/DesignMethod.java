package underhold.mechanics.steel;

/** How a nominal strength of AISC 360 becomes an available one. */
public enum DesignMethod {
  /** Allowable strength: nominal over Omega, against service loads. */
  ASD,
  /** Load and resistance factors: phi times nominal, against factored loads. */
  LRFD
}
