package underhold.sizing.edgepits;

import java.util.ArrayList;
import java.util.List;
import underhold.mechanics.soil.edgewall.BackPressure;
import underhold.mechanics.soil.edgewall.ProppedWall;
import underhold.mechanics.soil.edgewall.StagedProps;
import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;
import underhold.sizing.Verdict;

/** Braces or ties: levels, forces stage by stage, and what is left to the toe. */
final class PropSection {
  private final EdgeCase site;
  private final SheetBuilder sheet;
  private final StagedProps props;
  private final PressureSteps steps;
  private final List<Double> levels;
  private final List<ProppedWall> stages;

  private PropSection(EdgeCase site, SheetBuilder sheet) {
    this.site = site;
    this.sheet = sheet;
    BackPressure back =
        LoadSection.atShare(
            site,
            sheet,
            "design",
            "with the larger share for which props and wall are sized",
            site.designShare());
    this.props = site.props();
    this.steps = new PressureSteps(sheet, back);
    this.levels = props.levels();
    this.stages = props.stages();
  }

  /**
   * What the props carry and what they leave.
   *
   * @param props the levels and their stages
   * @param forces force at each level, kN/m
   * @param toe force left to the toe at the end, kN/m
   * @param steps force and moment steps of the design pressure
   */
  record Held(StagedProps props, List<Double> forces, double toe, PressureSteps steps) {
    Held {
      forces = List.copyOf(forces);
    }

    double all() {
      return forces.stream().mapToDouble(one -> one).sum();
    }
  }

  static Held write(EdgeCase site, SheetBuilder sheet) {
    return new PropSection(site, sheet).write();
  }

  private Held write() {
    List<Double> design = new ArrayList<>();
    for (int i = 0; i < levels.size(); i++) {
      supports(i);
      double hinge = hinge(i);
      double tributary = tributary(i);
      design.add(design(i, hinge, tributary));
    }
    double toe = new FootSteps(site, sheet, props, steps).write();
    if (!levels.isEmpty()) {
      braces(design);
    }
    return new Held(props, design, toe, steps);
  }

  private String level(int i) {
    return "level " + (i + 1);
  }

  private void supports(int i) {
    double ground = stages.get(i).groundDepthMetres();
    sheet
        .step(
            "ground-" + (i + 1),
            "Ground in front when the braces down to " + level(i) + " hold",
            i + 1 < levels.size() ? "d = {l} + {o}" : "d = {e}")
        .with(
            i + 1 < levels.size() ? "l" : "e",
            i + 1 < levels.size() ? "next level" : "bottom of the cut in front",
            Amount.length(i + 1 < levels.size() ? levels.get(i + 1) : ground))
        .with("o", "ground dug below a level before it is set", site.amount(EdgeSetting.OVERDIG))
        .from(Source.judgement())
        .gives(Amount.length(ground));
    steps.force("level-" + (i + 1), level(i), levels.get(i));
    steps.moment("level-" + (i + 1), level(i), levels.get(i));
    steps.force("ground-" + (i + 1), "the ground in front then", ground);
    steps.moment("ground-" + (i + 1), "the ground in front then", ground);
  }

  /** The force by hinges in the stage in which this level is the lowest: its greatest. */
  private double hinge(int i) {
    ProppedWall stage = stages.get(i);
    BackPressure back = props.pressure();
    double ground = stage.groundDepthMetres();
    double force = stage.byHinges().props().get(i);
    if (i == 0) {
      return sheet
          .step(
              "hinge-1",
              "Force at level 1 by hinges, per length of wall",
              "R = min({M} / ({d} - {l}), {F})")
          .with("M", "moment about the ground in front", moment(back.momentAbove(ground)))
          .with("d", "ground in front", Amount.length(ground))
          .with("l", "level 1", Amount.length(levels.get(0)))
          .with("F", "force above the ground in front", Amount.lineLoad(back.forceAbove(ground)))
          .from(Sources.CALTRANS_PROPS)
          .note("The toe never pulls: where it would, the braces take all.")
          .gives(Amount.lineLoad(force));
    }
    double lower =
        sheet
            .step(
                "hinge-below-" + (i + 1),
                "What the length below brings to " + level(i) + " as a simple beam",
                "L = ({Md} - {Ml} - {Fl} × ({d} - {l})) / ({d} - {l})")
            .with("Md", "moment about the ground in front", moment(back.momentAbove(ground)))
            .with("Ml", "moment about the level", moment(back.momentAbove(levels.get(i))))
            .with("Fl", "force above the level", Amount.lineLoad(back.forceAbove(levels.get(i))))
            .with("d", "ground in front", Amount.length(ground))
            .with("l", level(i), Amount.length(levels.get(i)))
            .from(Sources.CALTRANS_PROPS)
            .gives(Amount.lineLoad(stage.upperEnd(i)));
    double above = above(i, stage);
    return sheet
        .step(
            "hinge-" + (i + 1),
            "Force at " + level(i) + " by hinges, per length of wall",
            "R = {Fl} - {Fu} - {A} + {L}")
        .with("Fl", "force above the level", Amount.lineLoad(back.forceAbove(levels.get(i))))
        .with(
            "Fu",
            i == 1 ? "none: level 1 carries from the top" : "force above the level over it",
            Amount.lineLoad(i == 1 ? 0 : back.forceAbove(levels.get(i - 1))))
        .with("A", "what the level over it takes of the length between", Amount.lineLoad(above))
        .with("L", "from the length below", Amount.lineLoad(lower))
        .from(Sources.CALTRANS_PROPS)
        .gives(Amount.lineLoad(force));
  }

  /** What the level above takes of the length between, with a hinge at this level. */
  private double above(int i, ProppedWall stage) {
    BackPressure back = props.pressure();
    double here = levels.get(i);
    double over = levels.get(i - 1);
    if (i == 1) {
      return sheet
          .step(
              "hinge-above-2",
              "What level 1 carries with a hinge at level 2",
              "A = min({M} / ({l2} - {l1}), {F})")
          .with("M", "moment about level 2", moment(back.momentAbove(here)))
          .with("l2", "level 2", Amount.length(here))
          .with("l1", "level 1", Amount.length(over))
          .with("F", "force above level 2", Amount.lineLoad(back.forceAbove(here)))
          .from(Sources.CALTRANS_PROPS)
          .gives(Amount.lineLoad(stage.byHinges().props().get(0)));
    }
    return sheet
        .step(
            "hinge-above-" + (i + 1),
            "What " + level(i - 1) + " takes of the length between",
            "A = ({Ml} - {Mu} - {Fu} × ({l} - {u})) / ({l} - {u})")
        .with("Ml", "moment about the level", moment(back.momentAbove(here)))
        .with("Mu", "moment about the level over it", moment(back.momentAbove(over)))
        .with("Fu", "force above the level over it", Amount.lineLoad(back.forceAbove(over)))
        .with("l", level(i), Amount.length(here))
        .with("u", level(i - 1), Amount.length(over))
        .from(Sources.CALTRANS_PROPS)
        .gives(Amount.lineLoad(stage.upperEnd(i - 1)));
  }

  private double tributary(int i) {
    ProppedWall stage = stages.get(i);
    double ground = stage.groundDepthMetres();
    double below = (levels.get(i) + ground) / 2;
    double above = i == 0 ? 0 : (levels.get(i - 1) + levels.get(i)) / 2;
    double lower =
        steps.force("middle-below-" + (i + 1), "the middle of the length below " + level(i), below);
    double upper =
        i == 0
            ? 0
            : steps.force(
                "middle-above-" + (i + 1), "the middle of the length above " + level(i), above);
    return sheet
        .step(
            "tributary-" + (i + 1),
            "Force at " + level(i) + " by tributary lengths, per length of wall",
            "R = {F2} - {F1}")
        .with("F2", "force above the middle of the length below", Amount.lineLoad(lower))
        .with(
            "F1",
            i == 0 ? "none: from the top" : "force above the middle of the length above",
            Amount.lineLoad(upper))
        .from(Sources.CALTRANS_PROPS)
        .gives(Amount.lineLoad(stage.byTributaryLengths().props().get(i)));
  }

  private double design(int i, double hinge, double tributary) {
    String method = site.settings.get(EdgeSetting.BRACE_METHOD);
    String formula =
        switch (method) {
          case "hinge" -> "R = {Rh}";
          case "tributary" -> "R = {Rt}";
          default -> "R = max({Rh}, {Rt})";
        };
    return sheet
        .step(
            "brace-line-" + (i + 1), "Brace or tie force at " + level(i) + ", per length", formula)
        .with("Rh", "by hinges", Amount.lineLoad(hinge))
        .with("Rt", "by tributary lengths", Amount.lineLoad(tributary))
        .note("The greatest of all stages of the excavation.")
        .gives(Amount.lineLoad(site.byMethod(hinge, tributary)));
  }

  private void braces(List<Double> design) {
    double worst = 0;
    double slope = site.braceSlope();
    for (int i = 0; i < design.size(); i++) {
      double force = design.get(i) * site.get(EdgeSetting.BRACE_ALONG);
      worst =
          Math.max(
              worst,
              sheet
                  .step(
                      "brace-" + (i + 1),
                      "Force in one brace or tie at " + level(i),
                      "N = {R} × {s} / cos({a})")
                  .with("R", "force per length", Amount.lineLoad(design.get(i)))
                  .with("s", "spacing along the wall", site.amount(EdgeSetting.BRACE_ALONG))
                  .with("a", "slope below the horizontal", Amount.angle(slope))
                  .gives(Amount.force(force / Math.cos(Math.toRadians(slope)))));
    }
    double allowable = site.get(EdgeSetting.BRACE_ALLOWABLE);
    sheet.check(
        "brace-capacity",
        "Greatest force in a brace or tie",
        Amount.force(worst),
        Amount.force(allowable),
        allowable > 0 ? site.otherwise(EdgeInputs.FACE_FRICTION) : Verdict.REFER,
        allowable > 0 ? EdgeSetting.BRACE_ALLOWABLE.setting().source() : Source.statics(),
        Phrase.of(
            allowable > 0
                ? "Against the allowable force set for it."
                : "No brace or tie is designed here: design it, its waler and what it pushes or pulls on for this force, and for the loss of one."));
  }

  private static Amount moment(double value) {
    return Amount.momentPerLength(value);
  }
}
