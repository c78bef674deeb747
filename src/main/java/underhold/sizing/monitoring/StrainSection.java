package underhold.sizing.monitoring;

import static underhold.sizing.monitoring.MonitoringInputs.*;
import static underhold.sizing.monitoring.MonitoringSettings.*;

import java.util.Locale;
import underhold.mechanics.movement.DamageCategory;
import underhold.mechanics.movement.PointStrain;
import underhold.mechanics.movement.PointStrainDamage;
import underhold.sizing.Amount;
import underhold.sizing.Check;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;
import underhold.sizing.Verdict;

/**
 * Strain of the wall as a deep beam and the damage that goes with it. Strain is in proportion to
 * the movement, so it is reckoned at a trial movement and scaled.
 */
final class StrainSection {
  private static final double TRIAL_METRES = 0.010;

  private final MonitoringCase site;
  private final SheetBuilder sheet;
  private final double movement;
  private final double fade;

  private StrainSection(MonitoringCase site, SheetBuilder sheet, double movement, double fade) {
    this.site = site;
    this.sheet = sheet;
    this.movement = movement;
    this.fade = fade;
  }

  static void write(MonitoringCase site, SheetBuilder sheet, Limits limits, FadeSection.Fade fade) {
    if (!site.building()) {
      sheet.notCovered(
          "Strain and damage category: they are for walls and frames of buildings; for this structure its owner's engineer sets them.");
      return;
    }
    double movement = site.predicted() ? site.get(PREDICTED) : limits.movementMetres();
    new StrainSection(site, sheet, movement, fade.metres()).write();
  }

  private void write() {
    double height =
        sheet
            .step("wall-height", "Height of the wall", "H = {n} × {h}")
            .with("n", "storeys", site.amount(STOREYS))
            .with("h", "height of a storey", site.amount(STOREY))
            .gives(Amount.length(site.get(STOREYS) * site.get(STOREY)));
    double length =
        sheet
            .step("bent-length", "Length of the bent part", "Lb = 2 × {x}")
            .with("x", "length over which the movement fades", Amount.length(fade))
            .gives(Amount.length(2 * fade));
    double ratio =
        sheet
            .step("deflection-ratio", "Deflection ratio at a trial movement", "r = {S} / 2 / {Lb}")
            .with("S", "trial movement", Amount.thickness(TRIAL_METRES))
            .with("Lb", "length of the bent part", Amount.length(length))
            .note(
                "Strain is in proportion to movement, so any trial serves. A straight fade over half the bent part leaves its middle half the movement off the line through its ends.")
            .gives(Amount.ratio(TRIAL_METRES / 2 / length));
    double pull =
        sheet
            .step(
                "horizontal-strain",
                "Horizontal strain at the trial movement, where it fades",
                "eh = {kh} × {S} / {x}")
            .with("kh", "movement sideways over settlement", site.amount(SIDEWAYS))
            .with("S", "trial movement", Amount.thickness(TRIAL_METRES))
            .with("x", "length over which the movement fades", Amount.length(fade))
            .note("Taken along the wall; what stays beyond is not strained and gives no mean.")
            .gives(percent(site.get(SIDEWAYS) * TRIAL_METRES / fade));
    BentWall.Strains strains = new BentWall(site, sheet, height, length, ratio, pull).write();
    double strain = strains.largest();
    categories(strain);
    double demand = demand(strain);
    point();
    check(demand, strains.hogging() * movement / TRIAL_METRES);
  }

  /** The movement that each category would need. */
  private void categories(double strain) {
    for (DamageCategory category : DamageCategory.values()) {
      if (category.bounded()) {
        sheet
            .step(
                "movement-category-" + category.number(),
                "Movement at the upper end of category %d, %s"
                    .formatted(category.number(), category.label()),
                "s = {S} × {el} / {e}")
            .with("S", "trial movement", Amount.thickness(TRIAL_METRES))
            .with("el", "limiting strain of the category", percent(category.mostStrain()))
            .with("e", "strain at the trial movement", percent(strain))
            .from(Sources.of(DamageCategory.CITATION))
            .note(
                Phrase.of(
                    "Cracks up to {w}"
                        + (category == DamageCategory.MODERATE ? ", or several above {v}." : "."),
                    "w",
                    Amount.thickness(category.widestCrackMetres()),
                    "v",
                    Amount.thickness(DamageCategory.SEVERAL_CRACKS_METRES)))
            .gives(Amount.thickness(TRIAL_METRES * category.mostStrain() / strain));
      }
    }
  }

  private double demand(double strain) {
    boolean predicted = site.predicted();
    String words = predicted ? "predicted movement" : "movement limit";
    return sheet
        .step(
            predicted ? "predicted-strain" : "limit-strain",
            "Tensile strain at the " + words,
            "e = {et} × {s} / {S}")
        .with("et", "strain at the trial movement", percent(strain))
        .with("s", words, Amount.thickness(movement))
        .with("S", "trial movement", Amount.thickness(TRIAL_METRES))
        .gives(percent(strain * movement / TRIAL_METRES));
  }

  /** The same by strain at a point, for comparison. */
  private void point() {
    double lateral = site.get(SIDEWAYS) * movement / fade;
    double distortion = movement / fade;
    PointStrain strain = new PointStrain(lateral, distortion);
    String damage =
        PointStrainDamage.of(strain.principal()).name().toLowerCase(Locale.ROOT).replace('_', ' ');
    sheet
        .step(
            "point-strain",
            "For comparison: largest strain in the bay that moves",
            "ep = {kh} × {b} / 2 + sqrt(({kh} × {b})^2 + {b}^2) / 2")
        .with("kh", "movement sideways over settlement", site.amount(SIDEWAYS))
        .with("b", "angular distortion", Amount.ratio(distortion))
        .from(Sources.of(PointStrainDamage.CITATION))
        .note("Damage by its bounds: " + damage + ". It does not govern here.")
        .gives(percent(strain.principal()));
  }

  /** A wall that fades away hogs; that it would break if it sagged is for an engineer. */
  private void check(double demand, double hogging) {
    DamageCategory accepted = accepted();
    String title =
        "Tensile strain against the upper end of damage category %d, %s"
            .formatted(accepted.number(), accepted.label());
    Source source = Sources.of(DamageCategory.CITATION);
    DamageCategory found = DamageCategory.ofStrain(demand);
    if (!site.predicted()) {
      sheet.verdict(
          "damage-category",
          title,
          percent(demand),
          percent(accepted.mostStrain()),
          Verdict.REFER,
          source,
          Phrase.of(FadeSection.UNPREDICTED));
      return;
    }
    sheet.check(
        "damage-category",
        title,
        percent(demand),
        percent(accepted.mostStrain()),
        Check.covers(hogging, accepted.mostStrain())
            ? Verdict.REFER
            : site.failsOn(LENGTH, STOREYS),
        source,
        Phrase.of(
            "The strain is of category %d, %s%s. A movement that fades with distance hogs the wall; sagging, the other case, is for a trough in its middle. An uncracked, elastic wall is assumed: cracks that are there already open first."
                .formatted(
                    found.number(), found.label(), found.bounded() ? "" : " or very severe")));
  }

  private DamageCategory accepted() {
    return DamageCategory.valueOf(site.get(CATEGORY).toUpperCase(Locale.ROOT).replace('-', '_'));
  }
}
