package underhold.sizing.edgepits;

import static underhold.sizing.edgepits.EdgeInputs.*;

import underhold.mechanics.soil.Water;
import underhold.mechanics.soil.edgewall.BackPressure;
import underhold.sizing.Amount;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;
import underhold.sizing.StepBuilder;

/** Size of the wall, the structure's share, and the pressure behind. */
final class LoadSection {
  private final EdgeCase site;
  private final SheetBuilder sheet;

  private LoadSection(EdgeCase site, SheetBuilder sheet) {
    this.site = site;
    this.sheet = sheet;
  }

  static void write(EdgeCase site, SheetBuilder sheet) {
    LoadSection section = new LoadSection(site, sheet);
    section.size();
    section.structure();
    section.share();
    section.pressure();
  }

  private void size() {
    boolean rock = site.inputs.has(ROCK_DEPTH);
    var step =
        sheet
            .step(
                "wall-height",
                "Height of the wall of pits",
                rock ? "H = min({e} + {D}, {r})" : "H = {e} + {D}")
            .with("e", "excavation below the structure", site.amount(EXCAVATION))
            .with("D", "embedment of the toe in soil", site.amount(EdgeSetting.TOE_EMBEDMENT));
    if (rock) {
      step.with("r", "rock below the structure", site.amount(ROCK_DEPTH));
    }
    step.from(Source.practice())
        .note(
            switch (site.geometry.rock()) {
              case NONE -> "The wall stands on soil below the bottom of the excavation.";
              case BELOW_EXCAVATION ->
                  "Rock lies just below the bottom of the excavation: the wall goes down to it.";
              case ABOVE_EXCAVATION ->
                  "The wall stops on rock above the bottom of the excavation, on a ledge; the rock below it is cut, dressed and held by itself.";
            })
        .gives(Amount.length(site.height()));
    if (site.geometry.rock() == EdgeGeometry.Rock.ABOVE_EXCAVATION) {
      sheet
          .step("rock-face", "Rock cut below the wall", "h = {e} - {r}")
          .with("e", "excavation below the structure", site.amount(EXCAVATION))
          .with("r", "rock below the structure", site.amount(ROCK_DEPTH))
          .gives(Amount.length(site.geometry.rockFace()));
    }
  }

  private void structure() {
    if (site.inputs.has(LINE_LOAD)) {
      sheet
          .step("structure-pressure", "The structure's pressure on the soil", "p = {w} / {B}")
          .with("w", "working line load", site.amount(LINE_LOAD))
          .with("B", "width of the footing", site.amount(FOOTING_WIDTH))
          .gives(Amount.pressure(site.structurePressure()));
    }
    StepBuilder onWall =
        sheet
            .step(
                "structure-on-wall",
                "Load of the structure over the wall of pits, were it to stand on it",
                site.along() ? "V = {p} × min({t}, {B})" : "V = {p} × {t}")
            .with("p", "the structure's pressure", Amount.pressure(site.structurePressure()))
            .with("t", "thickness of the wall", site.amount(EdgeSetting.WALL_THICKNESS));
    if (site.along()) {
      onWall.with("B", "width of the structure's footing", site.amount(FOOTING_WIDTH));
    }
    onWall
        .note(
            site.structureBehind() > 0
                ? "The structure also stands on the soil behind the wall."
                : "The whole footing is over the wall: none of it presses on the soil behind.")
        .gives(Amount.lineLoad(site.structureOnWall()));
  }

  private void share() {
    sheet
        .step(
            "share-after",
            "Share of the structure's load on the soil once the piles are locked off",
            "s = max({set}, {left})")
        .with("set", "share set", site.amount(EdgeSetting.SHARE_AFTER))
        .with(
            "left",
            "share that the piles leave by their own sheet",
            Amount.ratio(site.leftByPiles()))
        .gives(Amount.ratio(site.shareAfter()));
    sheet
        .step(
            "share-design",
            "Share for which props, toe and wall are sized",
            "s = max({partial}, {after})")
        .with("partial", "while the piles take the load", site.amount(EdgeSetting.SHARE_PARTIAL))
        .with("after", "once they are locked off", Amount.ratio(site.shareAfter()))
        .from(Source.judgement())
        .note("Load may come back to the soil while the edge is open.")
        .gives(Amount.ratio(site.designShare()));
  }

  private void pressure() {
    boolean rest = site.chosen(EdgeSetting.EARTH_PRESSURE, "at-rest");
    sheet
        .step(
            "earth-coefficient",
            rest ? "Earth pressure coefficient, at rest" : "Earth pressure coefficient, active",
            rest ? "K = 1 - sin({f})" : "K = tan(45 - {f} / 2)^2")
        .with("f", "friction angle behind the wall", site.amount(FACE_FRICTION))
        .from(rest ? Sources.IBC_1610 : Sources.UFC)
        .note(
            rest
                ? "A wall braced under a structure may not move. Cohesion is not counted."
                : "Only where the wall may move; cohesion is not counted.")
        .gives(Amount.ratio(site.coefficient()));
    double water = Water.KILONEWTONS_PER_CUBIC_METRE;
    sheet
        .step(
            "vertical-at-top",
            "Vertical stress behind the top of the wall without the structure",
            "q0 = max({g} × {Df} × {k} + {qs}, {gw} × {w0})")
        .with("g", "unit weight of the soil", site.amount(FACE_WEIGHT))
        .with("Df", "underside of the structure below ground", site.amount(FOUNDING_DEPTH))
        .with("k", "share of that soil counted", site.amount(EdgeSetting.OVERBURDEN_SHARE))
        .with("qs", "surcharge", site.amount(EdgeSetting.SITE_SURCHARGE))
        .with("gw", "unit weight of water", Amount.unitWeight(water))
        .with("w0", "water above the top of the wall", Amount.length(site.waterAboveTop()))
        .gives(Amount.pressure(site.verticalAtTop()));
    BackPressure back = site.wall().pressure();
    sheet
        .step("pressure-rise", "Rise of pressure per depth", "b = {K} × {g}")
        .with("K", "coefficient", Amount.ratio(site.coefficient()))
        .with("g", "unit weight of the soil", site.amount(FACE_WEIGHT))
        .gives(Amount.unitWeight(back.perMetre()));
    sheet
        .step("pressure-water", "Further rise per depth below water", "c = (1 - {K}) × {gw}")
        .with("K", "coefficient", Amount.ratio(site.coefficient()))
        .with("gw", "unit weight of water", Amount.unitWeight(water))
        .note(
            site.drained()
                ? "The ground behind is taken as drained or cut off: no water stands above the base. Prove it by piezometers before the cut."
                : "Water presses in full; the coefficient acts on what is left of the soil's weight.")
        .gives(Amount.unitWeight(back.perMetreBelowWater()));
    if (!site.drained()) {
      sheet
          .step(
              "water-below-top",
              "Depth of the water below the top of the wall",
              "zw = min(max({gw} - {Df}, 0), {H})")
          .with("gw", "ground water below ground", site.amount(WATER_DEPTH))
          .with("Df", "underside of the structure below ground", site.amount(FOUNDING_DEPTH))
          .with("H", "height of the wall", Amount.length(site.height()))
          .gives(Amount.length(site.waterBelowTop()));
    }
  }

  /** Pressure at the top of the wall while a share of the structure's load stands on the soil. */
  static BackPressure atShare(
      EdgeCase site, SheetBuilder sheet, String id, String words, double share) {
    BackPressure back = site.wall().pressureAt(share);
    sheet
        .step(
            "pressure-top-" + id,
            "Pressure at the top of the wall, " + words,
            "a = {K} × ({q0} + {s} × {p}) + {c} × {w0}")
        .with("K", "coefficient", Amount.ratio(site.coefficient()))
        .with("q0", "vertical stress without the structure", Amount.pressure(site.verticalAtTop()))
        .with("s", "share of the structure's load on the soil", Amount.ratio(share))
        .with("p", "the structure's pressure behind", Amount.pressure(site.structureBehind()))
        .with("c", "rise per depth below water", Amount.unitWeight(back.perMetreBelowWater()))
        .with("w0", "water above the top of the wall", Amount.length(site.waterAboveTop()))
        .gives(Amount.pressure(back.atTopKilopascals()));
    return back;
  }
}
