package underhold.sizing.edgepits;

import static underhold.sizing.edgepits.EdgeInputs.*;

import underhold.mechanics.soil.SafetyFactor;
import underhold.mechanics.soil.Water;
import underhold.mechanics.soil.edgewall.BackPressure;
import underhold.mechanics.soil.pressure.StripSurcharge;
import underhold.mechanics.soil.stability.BjerrumEideBaseHeave;
import underhold.mechanics.soil.stability.ClayCut;
import underhold.mechanics.soil.stability.Piping;
import underhold.mechanics.soil.stability.SkemptonBearingFactor;
import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;
import underhold.sizing.Verdict;
import underhold.sizing.pits.PitsSetting;

/** Base of the excavation, faces of the pits, and what the simple pressures leave out. */
final class GroundSection {
  private final EdgeCase site;
  private final SheetBuilder sheet;

  private GroundSection(EdgeCase site, SheetBuilder sheet) {
    this.site = site;
    this.sheet = sheet;
  }

  static void write(EdgeCase site, SheetBuilder sheet) {
    GroundSection section = new GroundSection(site, sheet);
    section.undrained();
    section.strip();
    section.heave();
    section.piping();
    section.standUp();
    section.water();
    section.drained();
  }

  /** Soft clay may press more in the short term than its long-term coefficient says. */
  private void undrained() {
    if (!site.face.clay() || !site.inputs.has(FACE_STRENGTH)) {
      return;
    }
    BackPressure back = site.props().pressure();
    double vertical = back.surchargeKilopascals() + get(FACE_WEIGHT) * site.height();
    double strength = get(FACE_STRENGTH);
    double pressure =
        sheet
            .step(
                "undrained-pressure",
                "Short-term pressure of clay at the base of the wall",
                "pu = max({q} + {g} × {H} - 2 × {su}, 0)")
            .with(
                "q",
                "vertical stress at the top, larger share",
                Amount.pressure(back.surchargeKilopascals()))
            .with("g", "unit weight", site.amount(FACE_WEIGHT))
            .with("H", "height of the wall", Amount.length(site.height()))
            .with("su", "undrained strength", site.amount(FACE_STRENGTH))
            .from(Sources.UFC)
            .gives(Amount.pressure(Math.max(vertical - 2 * strength, 0)));
    sheet.check(
        "undrained-pressure",
        "Short-term pressure of clay against the pressure used, at the base",
        Amount.pressure(pressure),
        Amount.pressure(back.atDepthKilopascals(site.height())),
        Verdict.REFER,
        Sources.UFC,
        Phrase.of("If it does not pass, soft clay governs: the braces must be designed for it."));
  }

  /** The elastic pressure of the structure beside a wall that does not yield. */
  private void strip() {
    double share = site.designShare();
    double load = share * site.structureBehind();
    if (load <= 0 || !site.inputs.has(FOOTING_WIDTH)) {
      return;
    }
    double width = get(FOOTING_WIDTH);
    double height = site.height();
    double thrust = new StripSurcharge(load, 0, width).thrust(height).forceKilonewtonsPerMetre();
    double elastic =
        sheet
            .step(
                "strip-thrust",
                "Thrust of the structure's strip beside a wall that does not yield",
                "P = 2 × {s} × {p} × {H} × {A} / 180")
            .with("s", "larger share", Amount.ratio(share))
            .with("p", "the structure's pressure", Amount.pressure(site.structureBehind()))
            .with("H", "height of the wall", Amount.length(height))
            .with(
                "A",
                "angle whose tangent is the width of the footing over the height, degrees",
                Amount.angle(Math.toDegrees(Math.atan2(width, height))))
            .from(Sources.CALTRANS_STRIP)
            .note("Elastic, doubled; the strip begins at the wall.")
            .gives(Amount.lineLoad(thrust));
    sheet.check(
        "strip-surcharge",
        "Elastic thrust of the structure's share against the thrust used for it",
        Amount.lineLoad(elastic),
        Amount.lineLoad(site.coefficient() * load * height),
        Verdict.REFER,
        Sources.CALTRANS_STRIP,
        Phrase.of(
            "Used is the coefficient times the pressure over the whole height. The elastic solution presses more, mostly near the top: if it does not pass, raise "
                + EdgeSetting.SHARE_PARTIAL.setting().name()
                + " until it does, or show by measured jack loads how little still stands on the soil."));
  }

  private void heave() {
    if (site.geometry.rock() == EdgeGeometry.Rock.ABOVE_EXCAVATION
        || (!site.base.clay() && !site.face.clay())) {
      return;
    }
    double strength =
        site.inputs.has(BASE_STRENGTH)
            ? get(BASE_STRENGTH)
            : site.inputs.has(FACE_STRENGTH) ? get(FACE_STRENGTH) : 0;
    if (strength <= 0) {
      return;
    }
    double depth = get(FOUNDING_DEPTH) + get(EXCAVATION);
    double width =
        Math.min(site.get(EdgeSetting.EXCAVATION_WIDTH), site.get(EdgeSetting.EXCAVATION_LENGTH));
    double length =
        Math.max(site.get(EdgeSetting.EXCAVATION_WIDTH), site.get(EdgeSetting.EXCAVATION_LENGTH));
    double surcharge =
        site.get(EdgeSetting.SITE_SURCHARGE) + site.designShare() * site.structureBehind();
    ClayCut cut = new ClayCut(depth, width, length, get(FACE_WEIGHT), surcharge, strength);
    double factor =
        sheet
            .step(
                "heave-nc",
                "Bearing factor of the base",
                "Nc = 5 × (1 + 0.2 × {B} / {L}) × (1 + 0.2 × min({H} / {B}, 2.5))")
            .with("B", "shorter side of the excavation", Amount.length(width))
            .with("L", "longer side", Amount.length(length))
            .with("H", "depth from ground", Amount.length(depth))
            .from(Sources.BASE_HEAVE)
            .gives(Amount.ratio(SkemptonBearingFactor.of(cut)));
    SafetyFactor heave = BjerrumEideBaseHeave.factor(cut);
    double demand =
        sheet
            .step("heave-demand", "Load at the level of the base", "Q = {g} × {H} + {q}")
            .with("g", "unit weight", site.amount(FACE_WEIGHT))
            .with("H", "depth from ground", Amount.length(depth))
            .with("q", "surcharge and the structure's larger share", Amount.pressure(surcharge))
            .from(Sources.BASE_HEAVE)
            .gives(Amount.pressure(heave.demand()));
    double resistance =
        sheet
            .step("heave-resistance", "Resistance of the base", "R = {su} × {Nc}")
            .with("su", "undrained strength", Amount.pressure(strength))
            .with("Nc", "bearing factor", Amount.ratio(factor))
            .from(Sources.BASE_HEAVE)
            .note(
                "Terzaghi's form takes the side adhesion off the load and so always gives more; it is not used.")
            .gives(Amount.pressure(heave.resistance()));
    sheet.check(
        "base-heave",
        "Base heave, load times the factor",
        Amount.pressure(site.get(PitsSetting.HEAVE_FACTOR) * demand),
        Amount.pressure(resistance),
        site.otherwise(BASE_STRENGTH, FACE_STRENGTH, FACE_WEIGHT),
        Sources.CALTRANS_HEAVE,
        Phrase.of(
            "Braces near the bottom do not stop heave; the exposed piles lose their side resistance where the base moves."));
  }

  private void piping() {
    double head = site.drained() ? 0 : headOverExcavation();
    if (head <= 0 || !site.base.runs() || site.geometry.onRock()) {
      return;
    }
    double water = Water.KILONEWTONS_PER_CUBIC_METRE;
    double critical =
        sheet
            .step("piping-critical", "Critical gradient", "ic = max({g} - {gw}, 0) / {gw}")
            .with("g", "unit weight below the toe", site.amount(BASE_WEIGHT))
            .with("gw", "unit weight of water", Amount.unitWeight(water))
            .from(Sources.PIPING)
            .gives(Amount.ratio(Piping.criticalGradient(Math.max(0, get(BASE_WEIGHT) - water))));
    double path = head + 2 * site.geometry.embedment();
    double gradient =
        sheet
            .step("piping-gradient", "Mean gradient round the toe", "i = {h} / ({h} + 2 × {D})")
            .with("h", "water behind above the bottom of the excavation", Amount.length(head))
            .with("D", "embedment of the toe", Amount.length(site.geometry.embedment()))
            .from(Source.judgement())
            .note("Path from the water table down the back of the wall, under it and up.")
            .gives(Amount.ratio(Piping.exitGradient(head, path)));
    sheet.check(
        "piping",
        "Piping at the bottom of the excavation, gradient times the factor",
        Amount.ratio(site.get(PitsSetting.PIPING_FACTOR) * gradient),
        Amount.ratio(critical),
        site.otherwise(WATER_DEPTH),
        Sources.PIPING,
        Phrase.of(
            "The gradient beside the toe is above the mean. If it does not pass: lower the water outside, cut it off, or embed the toe deeper."));
  }

  private double headOverExcavation() {
    return get(FOUNDING_DEPTH) + get(EXCAVATION) - get(WATER_DEPTH);
  }

  private void standUp() {
    double lift = site.get(PitsSetting.BOARD_HEIGHT);
    boolean none = site.says(STAND_UP, "none");
    boolean stands = site.says(STAND_UP, "hours") || site.says(STAND_UP, "days");
    sheet.verdict(
        "stand-up",
        "The face of a pit stands while one board is set",
        Amount.thickness(lift),
        Amount.thickness(none ? 0 : lift),
        none && site.known(STAND_UP) ? Verdict.FAILS : stands ? Verdict.PASSES : Verdict.REFER,
        Source.practice(),
        Phrase.of(
            none
                ? "Ground that runs at once cannot be boarded: treat it first or choose another edge."
                : "One board at a time, packed behind at once; a trial pit proves it."));
  }

  private void water() {
    double above = get(FOUNDING_DEPTH) + site.height() - get(WATER_DEPTH);
    boolean runs = site.says(FACES_RUN, "yes") || site.base.runs();
    sheet.verdict(
        "water",
        "Ground water in the pits while they are dug",
        Amount.length(Math.max(0, above)),
        Amount.length(0),
        above <= 0
            ? Verdict.PASSES
            : runs && site.says(DRAWDOWN, "no") && site.known(DRAWDOWN)
                ? site.otherwise(WATER_DEPTH)
                : Verdict.REFER,
        Source.judgement(),
        Phrase.of(
            above <= 0
                ? "Water stands below the base of the wall."
                : runs
                    ? "In soil that runs, water over the base carries the soil into the pit: lower it outside first and prove it, or grout. What lowering does to neighbours is checked before."
                    : "A sump may do in clay or rock; the engineer decides."));
  }

  /** Ground that is taken as drained is a promise of the site, not a fact of it. */
  private void drained() {
    double above = get(FOUNDING_DEPTH) + site.height() - get(WATER_DEPTH);
    if (!site.drained() || above <= 0) {
      return;
    }
    sheet.verdict(
        "drained-ground",
        "Water behind the wall that is taken as drained or cut off",
        Amount.length(above),
        Amount.length(0),
        Verdict.REFER,
        Source.judgement(),
        Phrase.of(
            site.says(DRAWDOWN, "yes")
                ? "The site says that water can be lowered without harm: piezometers prove it before the cut, and pumps or drains keep on."
                : "Nobody has said that water can be lowered here without harm: show that it is cut off, or take it as standing."));
  }

  private double get(underhold.sizing.zone.NumberInput input) {
    return site.get(input);
  }
}
