package underhold.mechanics.steel;

/**
 * Buckling of a web squeezed from both flanges, AISC 360-16 J10.5: Rn = 24 tw^3 sqrt(E Fyw) / h, Qf
 * = 1, halved where the forces act less than d/2 from the end; phi 0.90, Omega 1.67.
 *
 * <p>Applies where the load sits straight over a jack or crib. From memory, verify.
 */
public final class WebCompressionBuckling {
  private WebCompressionBuckling() {}

  /** Rn, kN. */
  public static NominalStrength of(RolledSection section, Steel steel, double fromEndMetres) {
    Require.notNegative("distance from the end", fromEndMetres);
    RolledSection.Plates plates = section.plates();
    double full =
        24
            * Math.pow(plates.webThicknessMetres(), 3)
            * Math.sqrt(steel.elasticModulusKilopascals() * steel.yieldKilopascals())
            / plates.clearWebMetres();
    double nominal = fromEndMetres < plates.depthMetres() / 2 ? full / 2 : full;
    return new NominalStrength(nominal, 0.90, 1.67);
  }
}
