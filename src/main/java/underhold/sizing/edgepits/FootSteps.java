package underhold.sizing.edgepits;

import java.util.List;
import underhold.mechanics.soil.edgewall.BackPressure;
import underhold.mechanics.soil.edgewall.ProppedWall;
import underhold.mechanics.soil.edgewall.StagedProps;
import underhold.sizing.Amount;
import underhold.sizing.SheetBuilder;

/** What the braces leave to the foot of the wall at the end of the excavation. */
final class FootSteps {
  private final EdgeCase site;
  private final SheetBuilder sheet;
  private final StagedProps props;
  private final PressureSteps steps;
  private final List<Double> levels;
  private final List<ProppedWall> stages;

  FootSteps(EdgeCase site, SheetBuilder sheet, StagedProps props, PressureSteps steps) {
    this.site = site;
    this.sheet = sheet;
    this.props = props;
    this.steps = steps;
    this.levels = props.levels();
    this.stages = props.stages();
  }

  /** The foot at the end, and what presses below the ground in front. */
  double write() {
    BackPressure back = props.pressure();
    double ground = site.geometry.ground();
    double all = steps.force("whole", "the base, design share", site.height());
    double front = steps.force("front", "the ground in front at the end", ground);
    double foot = front;
    if (!stages.isEmpty()) {
      ProppedWall last = stages.get(stages.size() - 1);
      foot = site.byMethod(hingeFoot(last, front), tributaryFoot(last, front));
    }
    double method =
        sheet
            .step(
                "foot",
                "Force of the wall on the ground in front at the end",
                stages.isEmpty()
                    ? "B = {F}"
                    : site.chosen(EdgeSetting.BRACE_METHOD, "larger")
                        ? "B = max({Bh}, {Bt})"
                        : "B = {B}")
            .with("F", "no braces: all of it", Amount.lineLoad(front))
            .with("B", "by the method chosen", Amount.lineLoad(foot))
            .with(
                "Bh", "by hinges", Amount.lineLoad(stages.isEmpty() ? 0 : last().byHinges().foot()))
            .with(
                "Bt",
                "by tributary lengths",
                Amount.lineLoad(stages.isEmpty() ? 0 : last().byTributaryLengths().foot()))
            .gives(Amount.lineLoad(foot));
    return sheet
        .step("toe-force", "Force left to the toe at the end", "T = {B} + {P} - {F}")
        .with("B", "on the ground in front", Amount.lineLoad(method))
        .with("P", "all the pressure down to the base", Amount.lineLoad(all))
        .with("F", "pressure above the ground in front", Amount.lineLoad(front))
        .note("Pressure below the ground in front goes to the toe in full.")
        .gives(Amount.lineLoad(method + back.forceBetween(ground, site.height())));
  }

  private ProppedWall last() {
    return stages.get(stages.size() - 1);
  }

  private double hingeFoot(ProppedWall last, double front) {
    int n = levels.size() - 1;
    BackPressure back = props.pressure();
    boolean one = n == 0;
    return sheet
        .step(
            "foot-hinge",
            "Force on the ground in front at the end, by hinges",
            one ? "B = max({F} - {R}, 0)" : "B = {F} - {Fl} - {R}")
        .with("F", "pressure above the ground in front", Amount.lineLoad(front))
        .with("Fl", "force above the lowest level", Amount.lineLoad(back.forceAbove(levels.get(n))))
        .with(
            "R",
            one ? "level 1 by hinges" : "what the lowest level takes of the length below",
            Amount.lineLoad(one ? last.byHinges().props().get(0) : last.upperEnd(n)))
        .from(Sources.CALTRANS_PROPS)
        .gives(Amount.lineLoad(last.byHinges().foot()));
  }

  private double tributaryFoot(ProppedWall last, double front) {
    double middle = (levels.get(levels.size() - 1) + last.groundDepthMetres()) / 2;
    return sheet
        .step(
            "foot-tributary",
            "Force on the ground in front at the end, by tributary lengths",
            "B = {F} - {Fm}")
        .with("F", "pressure above the ground in front", Amount.lineLoad(front))
        .with(
            "Fm",
            "force above the middle of the lowest length",
            Amount.lineLoad(props.pressure().forceAbove(middle)))
        .from(Sources.CALTRANS_PROPS)
        .gives(Amount.lineLoad(last.byTributaryLengths().foot()));
  }
}
