package underhold.mechanics.micropile;

/**
 * A flush threaded casing joint, in which half of the wall is cut away.
 *
 * <pre>
 * Sj = (pi/64) [(OD - t)^4 - ID^4] / [(OD - t)/2]
 * Mj = Sj (1 - fa/Fa) (1 - fa/F'e) Fb
 * </pre>
 *
 * <p>The axial stress is that of the full casing. Source: FHWA NHI-05-039, eq. 5-26 and 5-27.
 * Basis: from memory, verify.
 *
 * @param casing the casing that is threaded
 */
public record ThreadedJoint(CasingSection casing) {

  /** Outside diameter left at the thread, OD - t, m. */
  public double outsideDiameter() {
    return casing.outsideDiameterMetres() - casing.wallMetres();
  }

  /** Area left, m2. */
  public double area() {
    return Circle.area(outsideDiameter()) - casing.boreArea();
  }

  /** I left, m4. */
  public double secondMoment() {
    return Circle.secondMoment(outsideDiameter()) - Circle.secondMoment(casing.insideDiameter());
  }

  /** Sj, m3. */
  public double sectionModulus() {
    return 2 * secondMoment() / outsideDiameter();
  }

  /**
   * Mj beside an axial load, kN m.
   *
   * @param stress allowable stresses of this casing
   */
  public double allowableMoment(CombinedStress stress, double loadKilonewtons) {
    return stress.allowableMoment(loadKilonewtons, sectionModulus());
  }
}
