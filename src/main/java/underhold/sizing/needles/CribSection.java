package underhold.sizing.needles;

import underhold.mechanics.timber.CribTimber;
import underhold.mechanics.timber.NdsFactors;
import underhold.mechanics.timber.TimberCrib;
import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;

/** Timber cribs between needle and pad. */
final class CribSection {
  private static final int MOST_TIMBERS = 8;

  private CribSection() {}

  /** Writes the section; returns the timbers in a layer. */
  static int write(NeedleCase site, SheetBuilder sheet, double reaction) {
    CribTimber timber = CribTimber.named(site.get(SupportSettings.CRIB_SPECIES)).orElseThrow();
    boolean wet = site.is(SupportSettings.CRIB_MOISTURE, "wet");
    double stress =
        sheet
            .step("crib-stress", "Allowable stress across the grain", "f = {F} × {cm} × {cd}")
            .with(
                "F", "Fc-perp of " + timber.name(), Amount.stress(timber.acrossGrainKilopascals()))
            .with("cm", "wet service", Amount.ratio(wet ? NdsFactors.WET_ACROSS_GRAIN : 1))
            .with("cd", "small deformation", Amount.ratio(TimberCrib.SMALL_DEFORMATION))
            .from(Sources.CRIB_STRESS)
            .note("Load duration never raises it.")
            .gives(
                Amount.stress(
                    TimberCrib.allowableStress(timber.acrossGrainKilopascals(), wet, true)));
    double width = site.get(SupportSettings.CRIB_TIMBER);
    int timbers = 2;
    while (timbers < MOST_TIMBERS && crib(site, width, timbers).capacity(stress) < reaction) {
      timbers++;
    }
    TimberCrib crib = crib(site, width, timbers);
    double capacity =
        sheet
            .step("crib-capacity", "Capacity of a crib", "C = {n}^2 × {w}^2 × {f}")
            .with("n", "timbers in a layer", Amount.count(timbers))
            .with("w", "width of a timber", site.amount(SupportSettings.CRIB_TIMBER))
            .with("f", "allowable stress", Amount.stress(stress))
            .gives(Amount.force(crib.capacity(stress)));
    sheet.check(
        "crib-capacity",
        "Timber crib under a seat",
        Amount.force(reaction),
        Amount.force(capacity),
        Sources.CRIB_STRESS,
        "Steel or concrete blocks are better where movement matters: a loaded crib squashes.");
    sheet.check(
        "crib-height",
        "Height of the crib",
        site.amount(SupportSettings.CRIB_HEIGHT),
        Amount.length(crib.tallestMetres()),
        underhold.sizing.Verdict.FAILS,
        Sources.CRIB_HEIGHT,
        Phrase.of(
            "Layer ends reach about one timber width past the crossing; the crib is {w} wide.",
            "w",
            Amount.length(crib.planWidthMetres())));
    return timbers;
  }

  /** Timbers side by side with gaps as wide as they are. */
  private static TimberCrib crib(NeedleCase site, double width, int timbers) {
    return new TimberCrib(
        width, timbers, site.get(SupportSettings.CRIB_HEIGHT), (2 * timbers - 1) * width);
  }
}
