package underhold.mechanics.soil.edgewall;

import underhold.mechanics.soil.Require;
import underhold.mechanics.soil.SafetyFactor;

/**
 * Rock under the toe of the pits that could slide out on a joint dipping into the excavation.
 *
 * <p>Formula, per metre run, joint through the foot of a vertical face: W = g h^2/(2 tan d); along
 * the joint: drive (W + V) sin d + T cos d, hold c h/sin d + ((W + V) cos d - T sin d) tan f, no
 * less than 0. A force that would open the joint so takes its cohesion away, which is the careful
 * reading. With a horizontal bolt force B the force T - B takes the place of T; the factor F is
 * reached by B = [F (W + V) sin d - c h/sin d - (W + V) cos d tan f]/(F cos d + sin d tan f) + T.
 *
 * <p>Symbols: h height of the rock face below the toe [m]; d dip of the joint [degrees]; g unit
 * weight of rock; V vertical load and T horizontal force of the toe on the wedge [kN/m]; c, f
 * cohesion [kPa] and friction angle [degrees] of the joint. Assumptions: plane joint along the
 * face, dry and open behind, all of V and T on the wedge. Valid range: d from 1 to 89 degrees.
 * Accuracy: statics of one block; joints that cross each other are another case. Source: E. Hoek
 * and J. W. Bray, Rock Slope Engineering, plane failure; basis: from memory, verify.
 *
 * @param faceMetres h
 * @param dipDegrees d
 * @param unitWeightKilonewtonsPerCubicMetre g
 * @param verticalKilonewtonsPerMetre V
 * @param horizontalKilonewtonsPerMetre T
 * @param cohesionKilopascals c
 * @param frictionDegrees f
 */
public record JointWedge(
    double faceMetres,
    double dipDegrees,
    double unitWeightKilonewtonsPerCubicMetre,
    double verticalKilonewtonsPerMetre,
    double horizontalKilonewtonsPerMetre,
    double cohesionKilopascals,
    double frictionDegrees) {

  public JointWedge {
    Require.positive(faceMetres, "height of the rock face", "m");
    Require.between(dipDegrees, 1, 89, "dip of the joint", "degrees");
    Require.positive(unitWeightKilonewtonsPerCubicMetre, "unit weight of rock", "kN/m3");
    Require.notNegative(verticalKilonewtonsPerMetre, "vertical load", "kN/m");
    Require.notNegative(horizontalKilonewtonsPerMetre, "horizontal force", "kN/m");
    Require.notNegative(cohesionKilopascals, "cohesion of the joint", "kPa");
    Require.frictionAngle(frictionDegrees);
  }

  /** Weight of the wedge W [kN per metre]. */
  public double weight() {
    return unitWeightKilonewtonsPerCubicMetre * faceMetres * faceMetres / (2 * Math.tan(dip()));
  }

  /** Holding against driving force along the joint [kN per metre], without bolts. */
  public SafetyFactor sliding() {
    double down = weight() + verticalKilonewtonsPerMetre;
    double pressed = down * Math.cos(dip()) - horizontalKilonewtonsPerMetre * Math.sin(dip());
    return new SafetyFactor(
        Math.max(0, cohesive() + pressed * friction()),
        down * Math.sin(dip()) + horizontalKilonewtonsPerMetre * Math.cos(dip()));
  }

  /** Horizontal bolt force for a factor, at least 0 [kN per metre]. */
  public double boltForce(double requiredFactor) {
    Require.between(requiredFactor, 1, 10, "required factor", "");
    double down = weight() + verticalKilonewtonsPerMetre;
    double lacking =
        requiredFactor * down * Math.sin(dip()) - cohesive() - down * Math.cos(dip()) * friction();
    double perForce = requiredFactor * Math.cos(dip()) + Math.sin(dip()) * friction();
    return Math.max(0, lacking / perForce + horizontalKilonewtonsPerMetre);
  }

  private double cohesive() {
    return cohesionKilopascals * faceMetres / Math.sin(dip());
  }

  private double friction() {
    return Math.tan(Math.toRadians(frictionDegrees));
  }

  private double dip() {
    return Math.toRadians(dipDegrees);
  }
}
