package underhold.sizing.needles;

import underhold.mechanics.steel.RolledSection;
import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.StepBuilder;

/** Deflection of a needle under its load, and its limit. */
final class Deflection {
  static final String ID = "deflection";

  private Deflection() {}

  /** E I, kN m2. */
  static double stiffness(NeedleCase site, RolledSection section) {
    return site.steel().elasticModulusKilopascals() * section.strong().secondMoment();
  }

  /** Lesser of the share of the span and the absolute limit, m. */
  static double limit(NeedleCase site, NeedleBeam beam) {
    return Math.min(
        beam.span() / site.get(BeamSettings.DEFLECTION_RATIO),
        site.get(BeamSettings.DEFLECTION_LIMIT));
  }

  /** Writes it with its check; returns the deflection, m. */
  static double write(NeedleCase site, SheetBuilder sheet, RolledSection section, NeedleBeam beam) {
    StepBuilder step =
        beam instanceof NeedleBeam.Tailed tailed
            ? sheet
                .step(
                    "needle-deflection",
                    "Deflection of the tip by the load",
                    "d = {N} × {a}^2 × ({a} + {b}) / (3 × {E} × {A} × {r}^2)")
                .with("a", "overhang", Amount.length(tailed.overhang()))
                .with("b", "back span", Amount.length(tailed.back()))
            : seated(sheet, (NeedleBeam.Seated) beam);
    double stiffness = stiffness(site, section);
    double area = section.areaSquareMetres();
    double radius = Math.sqrt(section.strong().secondMoment() / area);
    double deflection =
        step.with("N", "load on the needle", Amount.force(beam.load()))
            .with("E", "modulus of steel", Amount.stress(site.steel().elasticModulusKilopascals()))
            .with("A", "area of the section", BeamSettings.steelArea(area))
            .with("r", "its strong radius; A r^2 is Ix of the table", Amount.thickness(radius))
            .note("The needle's own weight has bent it before the load comes.")
            .gives(Amount.thickness(beam.deflection(stiffness)));
    double limit =
        sheet
            .step("deflection-limit", "Deflection allowed", "dl = min({L} / {n}, {m})")
            .with("L", "span, or overhang of a cantilever", Amount.length(beam.span()))
            .with("n", "ratio", site.amount(BeamSettings.DEFLECTION_RATIO))
            .with("m", "absolute limit", site.amount(BeamSettings.DEFLECTION_LIMIT))
            .from(Sources.DEFLECTION)
            .gives(Amount.thickness(limit(site, beam)));
    sheet.check(
        "needle-deflection",
        "Deflection of the needle under its load",
        Amount.thickness(deflection),
        Amount.thickness(limit),
        underhold.sizing.Verdict.FAILS,
        Sources.DEFLECTION,
        Phrase.of(
            "Before any preload. Jacked in before the footing is cut, it does not lower the"
                + " structure: see the movement that remains."));
    return deflection;
  }

  private static StepBuilder seated(SheetBuilder sheet, NeedleBeam.Seated beam) {
    return sheet
        .step(
            "needle-deflection",
            "Largest deflection by the load",
            "d = {N} × {a} × {b} × ({a} + 2 × {b}) × sqrt(3 × {a} × ({a} + 2 × {b})) / (27 × {E} × {A} × {r}^2 × ({a} + {b}))")
        .with("a", "from the load to the farther seat", Amount.length(beam.far()))
        .with("b", "from the load to the nearer seat", Amount.length(beam.near()));
  }
}
