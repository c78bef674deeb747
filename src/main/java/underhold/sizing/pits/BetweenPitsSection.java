package underhold.sizing.pits;

import static underhold.sizing.pits.PitsFact.*;

import underhold.mechanics.soil.bearing.VesicBearing;
import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Verdict;
import underhold.sizing.zone.SoilClass;

/** Bearing of the soil under the footing between open pits. */
final class BetweenPitsSection {
  private final PitsCase site;
  private final SheetBuilder sheet;

  private BetweenPitsSection(PitsCase site, SheetBuilder sheet) {
    this.site = site;
    this.sheet = sheet;
  }

  static void write(PitsCase site, SheetBuilder sheet) {
    new BetweenPitsSection(site, sheet).betweenOpenPits();
  }

  /** While pits are open the soil between them carries their share. */
  private void betweenOpenPits() {
    SoilClass soil = site.faceSoil.value();
    double raised = site.raisedFootingPressure();
    if (soil == SoilClass.ROCK) {
      return;
    }
    double overburden = site.get(FACE_UNIT_WEIGHT) * site.get(FOUNDING_DEPTH);
    double ultimate = soil.clay() ? clayBetween(overburden) : sandBetween(overburden);
    double factor = site.get(PitsSetting.TEMPORARY_BEARING_FACTOR);
    sheet.check(
        "between-pits",
        "Soil under the footing between open pits, ultimate over the temporary factor",
        Amount.pressure(raised),
        Amount.pressure(ultimate / factor),
        Verdict.REFER,
        PitsSetting.TEMPORARY_BEARING_FACTOR.setting().source(),
        Phrase.of(
            "Strength of the soil at the faces, factor {F}. Where the wall has stood for long the true strength may be higher: the engineer decides.",
            "F",
            site.amount(PitsSetting.TEMPORARY_BEARING_FACTOR)));
  }

  private double clayBetween(double overburden) {
    double factor = VesicBearing.factors(0).cohesion();
    return sheet
        .step(
            "between-ultimate",
            "Ultimate pressure of that soil, undrained",
            "qu = {su} × {Nc} + {g} × {Df}")
        .with("su", "undrained strength at the faces", site.amount(FACE_UNDRAINED_STRENGTH))
        .with("Nc", "bearing factor at angle 0", Amount.ratio(factor))
        .with("g", "unit weight", site.amount(FACE_UNIT_WEIGHT))
        .with("Df", "founding depth", site.amount(FOUNDING_DEPTH))
        .from(Sources.VESIC)
        .gives(Amount.pressure(site.get(FACE_UNDRAINED_STRENGTH) * factor + overburden));
  }

  private double sandBetween(double overburden) {
    double angle = site.get(FACE_FRICTION_ANGLE);
    double nq = VesicBearing.factors(angle).surcharge();
    double ng = VesicBearing.factors(angle).weight();
    return sheet
        .step(
            "between-ultimate",
            "Ultimate pressure of that soil, drained",
            "qu = {g} × {Df} × {Nq} + 0.5 × {g} × {B} × {Ng}")
        .with("g", "unit weight", site.amount(FACE_UNIT_WEIGHT))
        .with("Df", "founding depth", site.amount(FOUNDING_DEPTH))
        .with("Nq", "bearing factor at the friction angle of the faces", Amount.ratio(nq))
        .with("B", "footing width", site.amount(FOOTING_WIDTH))
        .with("Ng", "bearing factor at that angle", Amount.ratio(ng))
        .from(Sources.VESIC)
        .gives(
            Amount.pressure(
                overburden * nq + 0.5 * site.get(FACE_UNIT_WEIGHT) * site.get(FOOTING_WIDTH) * ng));
  }
}
