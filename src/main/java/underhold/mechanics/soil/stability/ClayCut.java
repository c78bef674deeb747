package underhold.mechanics.soil.stability;

import underhold.mechanics.soil.Require;

/**
 * A cut in saturated clay, short term.
 *
 * @param depthMetres depth H
 * @param widthMetres shorter plan side B
 * @param lengthMetres longer plan side L
 * @param unitWeightKilonewtonsPerCubicMetre total unit weight g beside the cut
 * @param surchargeKilopascals uniform surcharge q beside the cut
 * @param undrainedStrengthKilopascals undrained shear strength c
 */
public record ClayCut(
    double depthMetres,
    double widthMetres,
    double lengthMetres,
    double unitWeightKilonewtonsPerCubicMetre,
    double surchargeKilopascals,
    double undrainedStrengthKilopascals) {
  public ClayCut {
    Require.positive(depthMetres, "depth of the cut", "m");
    Require.positive(widthMetres, "width of the cut", "m");
    Require.between(lengthMetres, widthMetres, Require.LARGEST, "length of the cut", "m");
    Require.positive(unitWeightKilonewtonsPerCubicMetre, "unit weight", "kN/m3");
    Require.notNegative(surchargeKilopascals, "surcharge", "kPa");
    Require.notNegative(undrainedStrengthKilopascals, "undrained strength", "kPa");
  }

  /** Depth over width, dimensionless. */
  public double depthToWidth() {
    return depthMetres / widthMetres;
  }
}
