package underhold.mechanics.micropile;

/**
 * Buckling of a straight pile that weak soil braces like springs.
 *
 * <pre>
 * Pcr(l) = pi^2 EI / l^2 + Es l^2 / pi^2      least: 2 sqrt(Es EI) at l = pi (EI/Es)^(1/4)
 * Es,lim = (Fy A)^2 / (4 EI): in stiffer soil the pile yields before it buckles
 * </pre>
 *
 * <p>l half-wave length; Es reaction per length per movement. The safe side is soil stiffer than
 * Es,lim. Sources: L. Bjerrum, 1957; V. Mascardi, 1970 and 1982, as used in FHWA NHI-05-039. Basis:
 * from memory, verify; the minimum follows by setting the derivative to zero.
 *
 * @param bendingStiffness EI, kN m2
 * @param yieldLoad Fy A, kN
 */
public record BracedBuckling(double bendingStiffness, double yieldLoad) {
  public BracedBuckling {
    Require.positive("bending stiffness", bendingStiffness);
    Require.positive("yield load", yieldLoad);
  }

  /** A casing without bar and grout. */
  public static BracedBuckling of(CasingSection casing, double yieldKilopascals) {
    return new BracedBuckling(
        FreeLength.STEEL_MODULUS_KILOPASCALS * casing.secondMoment(),
        yieldKilopascals * casing.area());
  }

  /** Es,lim, kPa. */
  public double limitingStiffness() {
    return yieldLoad * yieldLoad / (4 * bendingStiffness);
  }

  /** Pcr for a half-wave, kN. */
  public double criticalLoad(double soilStiffnessKilopascals, double halfWaveMetres) {
    Require.notNegative("soil stiffness", soilStiffnessKilopascals);
    Require.positive("half-wave", halfWaveMetres);
    double scale = halfWaveMetres * halfWaveMetres / (Math.PI * Math.PI);
    return bendingStiffness / scale + soilStiffnessKilopascals * scale;
  }

  /** Least Pcr over all half-waves, kN. */
  public double leastCriticalLoad(double soilStiffnessKilopascals) {
    Require.notNegative("soil stiffness", soilStiffnessKilopascals);
    return 2 * Math.sqrt(soilStiffnessKilopascals * bendingStiffness);
  }

  /** Half-wave of the least Pcr, m. */
  public double halfWave(double soilStiffnessKilopascals) {
    Require.positive("soil stiffness", soilStiffnessKilopascals);
    return Math.PI * Math.pow(bendingStiffness / soilStiffnessKilopascals, 0.25);
  }
}
