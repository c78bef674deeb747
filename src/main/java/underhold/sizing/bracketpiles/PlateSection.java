package underhold.sizing.bracketpiles;

import java.util.stream.IntStream;
import underhold.mechanics.bracket.BracketPlates;
import underhold.mechanics.bracket.FilletWeld;
import underhold.mechanics.bracket.WeldGroup;
import underhold.mechanics.micropile.FreeLength;
import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.StepBuilder;
import underhold.sizing.Verdict;

/** Twin bracket plates and their welds to the sleeve round the pile. */
final class PlateSection {
  private static final double STEP_METRES = 0.05;
  private static final int LEAST_STEPS = 4;
  private static final int MOST_STEPS = 16;

  private final BracketCase site;
  private final PileTrial pile;
  private final double load;
  private final double moment;

  PlateSection(BracketCase site, PileTrial pile) {
    this.site = site;
    this.pile = pile;
    this.load = site.load();
    this.moment = pile.bracket().moment();
  }

  /** Two plates of the least depth, in steps of 50 mm from 0.2 m to 0.8 m, that passes. */
  double depth() {
    return IntStream.rangeClosed(LEAST_STEPS, MOST_STEPS)
        .mapToDouble(step -> step * STEP_METRES)
        .filter(this::passes)
        .findFirst()
        .orElse(MOST_STEPS * STEP_METRES);
  }

  private boolean passes(double depth) {
    BracketPlates plates = plates(depth);
    return moment <= plates.allowableMoment()
        && load <= plates.allowableShear()
        && leg(depth) <= site.get(BracketSetting.LARGEST_FILLET);
  }

  private BracketPlates plates(double depth) {
    return new BracketPlates(
        2,
        site.get(BracketSetting.PLATE_THICKNESS),
        depth,
        site.get(BracketSetting.PLATE_YIELD),
        pile.eccentricity());
  }

  private WeldGroup weld(double depth) {
    double apart = pile.gross().outsideDiameterMetres();
    return site.settings().boxWeld()
        ? WeldGroup.box(apart, depth)
        : WeldGroup.twoVerticals(depth, apart);
  }

  /** Leg to order, m. */
  private double leg(double depth) {
    double thinner = Math.min(pile.gross().wallMetres(), site.get(BracketSetting.PLATE_THICKNESS));
    return Math.max(
        FilletWeld.smallestLeg(thinner),
        FilletWeld.E70.orderedLegFor(weld(depth).outOfPlane(load, moment)));
  }

  void write(SheetBuilder sheet) {
    double depth = depth();
    plate(depth, sheet);
    weld(depth, sheet);
  }

  private void plate(double depth, SheetBuilder sheet) {
    BracketPlates plates = plates(depth);
    double scale = FreeLength.STEEL_MODULUS_KILOPASCALS / plates.yieldKilopascals();
    boolean plastic = plates.slenderness() <= 0.08 * scale;
    boolean elastic = plates.slenderness() > 1.9 * scale;
    sheet
        .step("plate-slenderness", "Slenderness of the plates' free edge", "sl = {e} × {d} / {t}^2")
        .with("e", "free edge, the eccentricity", Amount.thickness(plates.unbracedMetres()))
        .with("d", "depth of the plates", Amount.thickness(depth))
        .with("t", "thickness of one plate", site.amount(BracketSetting.PLATE_THICKNESS))
        .from(Sources.AISC_PLATE)
        .gives(Amount.ratio(plates.slenderness()));
    StepBuilder step =
        sheet.step(
            "plate-moment",
            "Allowable moment of the two plates",
            plastic
                ? "Ma = {Fy} × 2 × {t} × {d}^2 / (4 × 1.67)"
                : elastic
                    ? "Ma = 1.9 × {E} × 2 × {t} × {d}^2 / (6 × {sl} × 1.67)"
                    : "Ma = min({Fy} × 2 × {t} × {d}^2 / 4, (1.52 - 0.274 × {sl} × {Fy} / {E}) × {Fy} × 2 × {t} × {d}^2 / 6) / 1.67");
    step.with("Fy", "yield of plates", site.amount(BracketSetting.PLATE_YIELD))
        .with("t", "thickness of one plate", site.amount(BracketSetting.PLATE_THICKNESS))
        .with("d", "depth of the plates", Amount.thickness(depth))
        .with("sl", "slenderness of the free edge", Amount.ratio(plates.slenderness()))
        .with("E", "modulus of steel", Amount.stress(FreeLength.STEEL_MODULUS_KILOPASCALS))
        .from(Sources.AISC_PLATE)
        .note("A stiffener along the free edge is common practice all the same.")
        .gives(Amount.moment(plates.allowableMoment()));
    sheet.check(
        "bracket-plate",
        "Moment of the bracket against its two plates",
        Amount.moment(moment),
        Amount.moment(plates.allowableMoment()),
        Sources.AISC_PLATE,
        "The full moment P e is taken at the weld, on the safe side.");
    sheet
        .step(
            "plate-shear",
            "Allowable shear of the two plates",
            "Va = 0.6 × {Fy} × 2 × {t} × {d} / 1.5")
        .with("Fy", "yield of plates", site.amount(BracketSetting.PLATE_YIELD))
        .with("t", "thickness of one plate", site.amount(BracketSetting.PLATE_THICKNESS))
        .with("d", "depth of the plates", Amount.thickness(depth))
        .from(Sources.AISC_PLATE)
        .gives(Amount.force(plates.allowableShear()));
    sheet.check(
        "bracket-plate-shear",
        "Shear of the bracket against its two plates",
        Amount.force(load),
        Amount.force(plates.allowableShear()),
        Sources.AISC_PLATE,
        "");
  }

  private void weld(double depth, SheetBuilder sheet) {
    boolean box = site.settings().boxWeld();
    double force = weld(depth).outOfPlane(load, moment);
    StepBuilder step =
        sheet.step(
            "weld-force",
            "Greatest force per length of weld, elastic method",
            box
                ? "f = sqrt(({P} / (2 × ({b} + {d})))^2 + ({M} / ({b} × {d} + {d}^2 / 3))^2)"
                : "f = sqrt(({P} / (2 × {d}))^2 + ({M} / ({d}^2 / 3))^2)");
    step.with("P", "load of one bracket", Amount.force(load))
        .with("M", "moment of the eccentricity", Amount.moment(moment))
        .with("d", "length of each vertical weld", Amount.thickness(depth));
    if (box) {
      step.with("b", "width of the box", Amounts.outside(pile.gross()));
    }
    step.from(Sources.WELD_METHOD).gives(Amounts.weldForce(force));
    double largest = site.get(BracketSetting.LARGEST_FILLET);
    double leg = Math.min(leg(depth), Math.max(largest, FilletWeld.SIXTEENTH_METRES));
    double allowable =
        sheet
            .step(
                "weld-strength",
                "Allowable force per length of the fillet, E70",
                "fa = 0.6 × {F} × 0.707 × {a} / 2")
            .with(
                "F",
                "strength of the electrode",
                Amount.stress(FilletWeld.E70.electrodeKilopascals()))
            .with("a", "leg ordered", Amount.thickness(leg))
            .from(Sources.AISC_WELD)
            .gives(Amounts.weldForce(FilletWeld.E70.allowable(leg)));
    sheet.check(
        "bracket-weld",
        "Force per length of weld against the fillet",
        Amounts.weldForce(force),
        Amounts.weldForce(allowable),
        Verdict.FAILS,
        Sources.AISC_WELD,
        Phrase.of(
            "Leg {a} all along both plates, on a sleeve or saddle: the thin casing wall itself is not checked for local bending, so plates are not welded to a bare casing. Test that the casing steel can be welded.",
            "a",
            Amount.thickness(leg)));
  }
}
