package underhold.sizing.edgepits;

import java.util.List;
import underhold.mechanics.concrete.PlainConcrete;
import underhold.mechanics.soil.edgewall.BackPressure;
import underhold.mechanics.soil.edgewall.ProppedWall;
import underhold.mechanics.soil.edgewall.ProppedWall.SpanMoment;
import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;
import underhold.sizing.Verdict;
import underhold.sizing.pits.PitsSetting;
import underhold.sizing.pits.PlainSteps;

/** The unreinforced wall in bending and shear between levels, and the joints between pits. */
final class WallSection {
  /** Share of the thickness that a shear key takes (judgement). */
  private static final double KEY_SHARE = 1.0 / 3;

  private final EdgeCase site;
  private final SheetBuilder sheet;
  private final PropSection.Held held;
  private final BackPressure back;

  private WallSection(EdgeCase site, SheetBuilder sheet, PropSection.Held held) {
    this.site = site;
    this.sheet = sheet;
    this.held = held;
    this.back = held.props().pressure();
  }

  static void write(EdgeCase site, SheetBuilder sheet, PropSection.Held held) {
    new WallSection(site, sheet, held).write();
  }

  private void write() {
    double free = firstCutMoment();
    double moment = Math.max(free, worstSpan());
    double shear = shear();
    strength(moment, shear);
  }

  /**
   * Cantilever before the first brace, its moment down to where the soil in front has taken the
   * shear.
   */
  private double firstCutMoment() {
    double cut = held.props().firstCutMetres();
    double lateral = site.lateralBearing();
    double force = back.forceAbove(cut);
    double depth =
        sheet
            .step(
                "first-cut-no-shear",
                "Depth below the first cut at which the shear is zero",
                "x = min(sqrt(2 × {F} / {S}), {D})")
            .with("F", "force above the first cut", Amount.lineLoad(force))
            .with("S", "lateral bearing per depth of the soil in front", Amount.unitWeight(lateral))
            .with("D", "wall below the first cut", Amount.length(site.height() - cut))
            .from(Sources.IBC_1804)
            .gives(Amount.length(Math.min(Math.sqrt(2 * force / lateral), site.height() - cut)));
    return sheet
        .step(
            "first-cut-moment",
            "Moment of the wall free at its top",
            "M = {M} + {F} × {x} - {S} × {x}^3 / 6")
        .with("M", "moment about the first cut", Amount.momentPerLength(back.momentAbove(cut)))
        .with("F", "force above the first cut", Amount.lineLoad(force))
        .with("x", "depth of no shear below the cut", Amount.length(depth))
        .with("S", "lateral bearing per depth", Amount.unitWeight(lateral))
        .gives(
            Amount.momentPerLength(
                back.momentAbove(cut) + force * depth - lateral * Math.pow(depth, 3) / 6));
  }

  private double worstSpan() {
    List<ProppedWall> stages = held.props().stages();
    ProppedWall worst = null;
    int below = 0;
    double greatest = -1;
    for (ProppedWall stage : stages) {
      for (int i = 0; i < stage.propDepthsMetres().size(); i++) {
        double moment = stage.below(i).kilonewtonMetresPerMetre();
        if (moment > greatest) {
          greatest = moment;
          worst = stage;
          below = i;
        }
      }
    }
    return worst == null ? 0 : Math.max(span(worst, below), over(worst));
  }

  private double over(ProppedWall stage) {
    return sheet
        .step(
            "moment-over-first",
            "Moment of the wall that stands above level 1",
            "M = {a} × {l}^2 / 2 + {b} × {l}^3 / 6 + {c} × max({l} - {zw}, 0)^3 / 6")
        .with("a", "pressure at the top", Amount.pressure(back.atTopKilopascals()))
        .with("b", "rise per depth", Amount.unitWeight(back.perMetre()))
        .with("c", "further rise below water", Amount.unitWeight(back.perMetreBelowWater()))
        .with("zw", "depth of the water", Amount.length(back.waterDepthMetres()))
        .with("l", "level 1", Amount.length(stage.propDepthsMetres().get(0)))
        .gives(Amount.momentPerLength(stage.momentOverFirst()));
  }

  private double span(ProppedWall stage, int i) {
    List<Double> levels = stage.propDepthsMetres();
    double upper = levels.get(i);
    double lower = i + 1 < levels.size() ? levels.get(i + 1) : stage.groundDepthMetres();
    double end =
        sheet
            .step(
                "span-end",
                "Upper reaction of the worst length as a simple beam",
                "L = ({M2} - {M1} - {F1} × ({l2} - {l1})) / ({l2} - {l1})")
            .with(
                "M2", "moment about its lower end", Amount.momentPerLength(back.momentAbove(lower)))
            .with(
                "M1", "moment about its upper end", Amount.momentPerLength(back.momentAbove(upper)))
            .with("F1", "force above its upper end", Amount.lineLoad(back.forceAbove(upper)))
            .with("l2", "its lower end", Amount.length(lower))
            .with("l1", "its upper end", Amount.length(upper))
            .note("No relief by fixity or by the wall above is counted.")
            .gives(Amount.lineLoad(stage.upperEnd(i)));
    SpanMoment worst = stage.below(i);
    double depth = worst.depthMetres();
    double wet = Math.min(depth, back.waterDepthMetres());
    boolean below = depth > back.waterDepthMetres();
    double c = below ? back.perMetreBelowWater() : 0;
    double force = back.forceAbove(upper) + end;
    sheet
        .step(
            "span-no-shear",
            "Depth below the top at which the shear of that length is zero",
            "z = 2 × ({F} - {c} × {zw}^2 / 2) / ({a} - {c} × {zw} + sqrt(({a} - {c} × {zw})^2 + 2 × ({b} + {c}) × ({F} - {c} × {zw}^2 / 2)))")
        .with("F", "force above its upper end plus the reaction", Amount.lineLoad(force))
        .with("a", "pressure at the top", Amount.pressure(back.atTopKilopascals()))
        .with("b", "rise per depth", Amount.unitWeight(back.perMetre()))
        .with(
            "c",
            below ? "further rise below water" : "nothing further: above the water",
            Amount.unitWeight(c))
        .with("zw", "depth of the water, no deeper than this place", Amount.length(wet))
        .gives(Amount.length(depth));
    return sheet
        .step(
            "span-moment",
            "Greatest moment of the wall between levels",
            "M = {L} × ({z} - {l}) - ({Mz} - {Ml} - {Fl} × ({z} - {l}))")
        .with("L", "upper reaction", Amount.lineLoad(end))
        .with("z", "depth of no shear", Amount.length(depth))
        .with("l", "upper end", Amount.length(upper))
        .with("Mz", "moment about that depth", Amount.momentPerLength(back.momentAbove(depth)))
        .with("Ml", "moment about the upper end", Amount.momentPerLength(back.momentAbove(upper)))
        .with("Fl", "force above the upper end", Amount.lineLoad(back.forceAbove(upper)))
        .gives(Amount.momentPerLength(worst.kilonewtonMetresPerMetre()));
  }

  private double shear() {
    double greatest = back.forceAbove(held.props().firstCutMetres());
    for (ProppedWall stage : held.props().stages()) {
      greatest = Math.max(greatest, stage.greatestShear());
    }
    return greatest;
  }

  private void strength(double moment, double shear) {
    double factor = site.get(PitsSetting.LOAD_FACTOR);
    Phrase note =
        Phrase.of(
            "Demand is {F} times the greatest working effect of any stage, the wall spanning upright between levels. If it does not pass: levels closer, a thicker wall, or reinforcement.",
            "F",
            site.amount(PitsSetting.LOAD_FACTOR));
    PlainSteps.Strengths stress =
        PlainSteps.wall(
            sheet,
            new PlainSteps.Wall(
                "wall",
                "wall",
                "Plain concrete wall",
                site.amount(EdgeSetting.WALL_THICKNESS),
                site.amount(PitsSetting.PIER_STRENGTH)),
            new PlainSteps.Effects(moment, shear, factor, note));
    key(stress.shear(), factor);
  }

  /** Half of one pit's thrust goes over a joint to the pit beside it, which has the brace. */
  private void key(double stress, double factor) {
    double pressure = back.atDepthKilopascals(site.height());
    double demand =
        sheet
            .step(
                "joint-force",
                "Shear over a joint between pits, per height, at the base",
                "Vj = {p} × {b} / 2")
            .with("p", "pressure at the base", Amount.pressure(pressure))
            .with("b", "width of a pit", site.amount(EdgeSetting.PIT_WIDTH))
            .note("As if a pit had no brace of its own and leant on its neighbours.")
            .gives(Amount.lineLoad(pressure * site.get(EdgeSetting.PIT_WIDTH) / 2));
    sheet.check(
        "joint-key",
        "Shear key of a third of the thickness between pits",
        Amount.lineLoad(factor * demand),
        Amount.lineLoad(PlainConcrete.PHI * stress * site.thickness() * KEY_SHARE),
        Verdict.REFER,
        Source.judgement(),
        Phrase.of(
            "Keys or dowels make the pits one wall; the strength is that of plain concrete in shear."));
  }
}
