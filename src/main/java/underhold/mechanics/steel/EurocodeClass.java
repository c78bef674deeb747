package underhold.mechanics.steel;

/**
 * Class of a rolled I section in bending, EN 1993-1-1 Table 5.2: outstand c/tf at most 9, 10, 14
 * epsilon for classes 1, 2, 3 with c = (b - tw - 2r)/2; web c/tw at most 72, 83, 124 epsilon with c
 * clear between the fillets.
 *
 * <p>From memory, verify.
 */
public final class EurocodeClass {
  private static final double[] FLANGE = {9, 10, 14};
  private static final double[] WEB = {72, 83, 124};

  private EurocodeClass() {}

  /** 1, 2, 3 or 4. */
  public static int inBending(RolledSection section, Steel steel) {
    RolledSection.Plates plates = section.plates();
    double outstand =
        (plates.flangeWidthMetres() - plates.webThicknessMetres() - 2 * plates.filletMetres()) / 2;
    double flange = outstand / plates.flangeThicknessMetres() / steel.epsilon();
    double web = plates.webSlenderness() / steel.epsilon();
    return Math.max(rank(flange, FLANGE), rank(web, WEB));
  }

  private static int rank(double slenderness, double[] limits) {
    for (int i = 0; i < limits.length; i++) {
      if (slenderness <= limits[i]) {
        return i + 1;
      }
    }
    return limits.length + 1;
  }
}
