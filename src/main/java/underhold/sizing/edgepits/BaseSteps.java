package underhold.sizing.edgepits;

import underhold.mechanics.soil.edgewall.PresumptiveSliding;
import underhold.sizing.Amount;
import underhold.sizing.SheetBuilder;

/** What holds the base against sliding, as a step. */
final class BaseSteps {
  private BaseSteps() {}

  /**
   * Writes the resistance and returns it, kN/m.
   *
   * @param down vertical force down on the base, kN/m
   * @param uplift water under it, kN/m
   * @param contact width in contact, m
   */
  static double resistance(
      EdgeCase site,
      SheetBuilder sheet,
      String id,
      String words,
      double down,
      double uplift,
      double contact) {
    double value = site.baseResistance(down - uplift, contact);
    if (site.cohesive()) {
      return sheet
          .step(
              id,
              "Sliding resistance of the base, " + words,
              "R = min({c} × {A}, 0.5 × max({N} - {U}, 0))")
          .with(
              "c",
              "presumptive cohesion of clay",
              Amount.pressure(cohesion(site.presumptive().orElseThrow())))
          .with("A", "width in contact", Amount.length(contact))
          .with("N", "vertical force", Amount.lineLoad(down))
          .with("U", "uplift", Amount.lineLoad(uplift))
          .from(Sources.IBC_1804)
          .note("The limit of half the load is from memory (1806.3.2), verify.")
          .gives(Amount.lineLoad(value));
    }
    double slope = site.geometry.onRock() ? site.get(EdgeSetting.ROCK_SLOPE) : 0;
    boolean presumptive = site.chosen(EdgeSetting.BASE_FRICTION, "presumptive");
    return sheet
        .step(
            id,
            "Sliding resistance of the base, " + words,
            "R = tan(max({d} - {i}, 0)) × max({N} - {U}, 0)")
        .with("d", "friction angle under the base", Amount.angle(site.baseFrictionDegrees()))
        .with("i", "slope of the base towards the excavation", Amount.angle(slope))
        .with("N", "vertical force", Amount.lineLoad(down))
        .with("U", "uplift", Amount.lineLoad(uplift))
        .from(presumptive ? Sources.IBC_1804 : Sources.AASHTO_FRICTION)
        .note(
            site.baseFrictionDegrees() > 0
                ? "Nothing is counted in front of the toe."
                : "The table gives nothing for this ground: no friction is counted.")
        .gives(Amount.lineLoad(value));
  }

  private static double cohesion(PresumptiveSliding clay) {
    return clay.row().cohesionKilopascals().orElse(0);
  }
}
