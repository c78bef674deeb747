package underhold.mechanics.soil.bearing;

import java.util.ArrayList;
import java.util.List;

/**
 * Ultimate bearing pressure with every number that led to it, so that it can be redone by hand.
 *
 * @param factors Nc, Nq, N-gamma
 * @param shape shape factors
 * @param depth depth factors
 * @param inclination load inclination factors (with base inclination where the method has it)
 * @param effectiveBase base after the eccentricity correction
 * @param cohesionTermKilopascals first term
 * @param overburdenTermKilopascals second term
 * @param weightTermKilopascals third term
 * @param remarks assumptions that the reader must know
 */
public record BearingCapacity(
    BearingFactors factors,
    CorrectionFactors shape,
    CorrectionFactors depth,
    CorrectionFactors inclination,
    EffectiveBase effectiveBase,
    double cohesionTermKilopascals,
    double overburdenTermKilopascals,
    double weightTermKilopascals,
    List<String> remarks) {

  /**
   * Some authors leave one of the two out; multiplying both, as the 1961 paper of Brinch Hansen
   * does, gives more.
   */
  private static final String BOTH_COMBINED =
      "shape and inclination factors are multiplied; some authors do not combine them (from memory, verify)";

  public BearingCapacity {
    remarks = List.copyOf(remarks);
  }

  /** Gross ultimate pressure on the effective base, the sum of the three terms. */
  public double ultimateKilopascals() {
    return cohesionTermKilopascals + overburdenTermKilopascals + weightTermKilopascals;
  }

  /** Ultimate vertical load on the effective base; per metre of run for a strip. */
  public double ultimateLoadKilonewtons() {
    return ultimateKilopascals() * effectiveBase.areaSquareMetres();
  }

  /**
   * q = c Nc Yc + s Nq Yq + 0.5 g B' Ng Yg with Y the product of the corrections (UFC 3-220-20,
   * chapter 5, equations 5-15 and 5-17; cited, secondary digest).
   */
  static BearingCapacity sum(
      BearingCase question,
      EffectiveBase base,
      BearingFactors factors,
      CorrectionFactors shape,
      CorrectionFactors depth,
      CorrectionFactors inclination,
      List<String> remarks) {
    BearingGround ground = question.ground();
    List<String> notes = new ArrayList<>(remarks);
    if (question.load().horizontalKilonewtons() > 0 && base.widthToLength() > 0) {
      notes.add(BOTH_COMBINED);
    }
    CorrectionFactors all = shape.times(depth).times(inclination);
    return new BearingCapacity(
        factors,
        shape,
        depth,
        inclination,
        base,
        ground.cohesionKilopascals() * factors.cohesion() * all.cohesion(),
        ground.overburdenKilopascals() * factors.surcharge() * all.surcharge(),
        0.5
            * ground.unitWeightBelowKilonewtonsPerCubicMetre()
            * base.widthMetres()
            * factors.weight()
            * all.weight(),
        notes);
  }
}
