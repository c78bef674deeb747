package underhold.mechanics.soil.edgewall;

import underhold.mechanics.soil.Require;

/**
 * A steel bar across the joint between a wall and the rock under it, in shear.
 *
 * <p>Formula: steel V = 0.6 fy A/1.67; dowel action V = 1.3 d^2 sqrt(fc fy)/2; the lower counts.
 * Symbols: d diameter [m], A = pi d^2/4, fy yield strength of the bar, fc the lower compressive
 * strength of concrete and rock [kPa], V [kN]. Assumptions: bar fully grouted on both sides, no gap
 * in the joint, no tension in the bar. Valid range: embedment of at least 8 d each side, cover of 4
 * d (from memory, verify). Accuracy: dowel tests scatter by a quarter. Source: steel: AISC 360
 * chapter J, allowable; dowel: B. H. Rasmussen, Betonstobte tvaerbelastede bolte, 1963; basis: both
 * from memory, verify; the factor 2 on dowel action is judgement.
 *
 * @param diameterMetres d
 * @param yieldKilopascals fy
 * @param weakerStrengthKilopascals fc
 */
public record ToeDowel(
    double diameterMetres, double yieldKilopascals, double weakerStrengthKilopascals) {

  /** Shear yield over tension yield, dimensionless; AISC 360, from memory. */
  public static final double SHEAR_SHARE = 0.6;

  /** Factor on steel in shear, dimensionless; AISC 360, from memory. */
  public static final double STEEL_FACTOR = 1.67;

  /** Coefficient of dowel action, dimensionless; Rasmussen 1963, from memory. */
  public static final double DOWEL_COEFFICIENT = 1.3;

  /** Factor on dowel action, dimensionless (judgement). */
  public static final double DOWEL_FACTOR = 2;

  public ToeDowel {
    Require.positive(diameterMetres, "diameter of the dowel", "m");
    Require.positive(yieldKilopascals, "yield strength", "kPa");
    Require.positive(weakerStrengthKilopascals, "strength of concrete or rock", "kPa");
  }

  /** Allowable shear of the bar itself [kN]. */
  public double bySteel() {
    double area = Math.PI * diameterMetres * diameterMetres / 4;
    return SHEAR_SHARE * yieldKilopascals * area / STEEL_FACTOR;
  }

  /** Allowable shear by dowel action [kN]. */
  public double byDowelAction() {
    return DOWEL_COEFFICIENT
        * diameterMetres
        * diameterMetres
        * Math.sqrt(weakerStrengthKilopascals * yieldKilopascals)
        / DOWEL_FACTOR;
  }

  /** Allowable shear [kN]. */
  public double allowable() {
    return Math.min(bySteel(), byDowelAction());
  }

  /** Fewest bars that carry a force [-]. */
  public int number(double kilonewtons) {
    Require.notNegative(kilonewtons, "force on the dowels", "kN");
    return (int) Math.min(Integer.MAX_VALUE, Math.ceil(kilonewtons / allowable() - 1e-9));
  }
}
