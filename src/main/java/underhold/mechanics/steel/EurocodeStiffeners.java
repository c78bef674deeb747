package underhold.mechanics.steel;

/**
 * A pair of stiffeners at a force, EN 1993-1-5 9.4: plates with 15 epsilon tw of web on each side
 * that exists (one side at the end of the beam), as a column of 0.75 hw on curve c.
 *
 * <p>From memory, verify. Bearing of the plates is their clipped area times fy.
 *
 * @param plates the plates
 */
public record EurocodeStiffeners(BearingStiffeners plates) {
  private static final double STRIP = 15;

  /** Area of plates and web strip, m2. */
  public double columnArea(boolean inside) {
    double web = plates.section().plates().webThicknessMetres();
    return 2 * plates.widthMetres() * plates.thicknessMetres() + strip(inside) * web;
  }

  /** Radius of gyration about the web, m. */
  public double columnRadius(boolean inside) {
    double web = plates.section().plates().webThicknessMetres();
    double across = 2 * plates.widthMetres() + web;
    double inertia =
        plates.thicknessMetres() * Math.pow(across, 3) / 12
            + strip(inside) * Math.pow(web, 3) / 12
            - plates.thicknessMetres() * Math.pow(web, 3) / 12;
    return Math.sqrt(Math.max(inertia, 0) / columnArea(inside));
  }

  /** Column resistance, kN. */
  public double column(boolean inside) {
    return new EurocodeColumn(
            columnArea(inside),
            columnRadius(inside),
            0.75 * plates.section().plates().webBetweenFlangesMetres(),
            plates.steel(),
            EurocodeColumn.Curve.C)
        .resistance();
  }

  /** Bearing resistance, kN. */
  public double bearing() {
    return 2
        * (plates.widthMetres() - plates.clipMetres())
        * plates.thicknessMetres()
        * plates.steel().yieldKilopascals();
  }

  private double strip(boolean inside) {
    double side = STRIP * plates.steel().epsilon() * plates.section().plates().webThicknessMetres();
    return (inside ? 2 : 1) * side + plates.thicknessMetres();
  }
}
