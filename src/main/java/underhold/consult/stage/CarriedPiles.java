package underhold.consult.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import underhold.sizing.HoldPoint;
import underhold.sizing.Phrase;
import underhold.sizing.Stage;
import underhold.sizing.StageRole;

/** Piles that another method stands on, in the order of their own sheet. */
final class CarriedPiles {
  private CarriedPiles() {}

  /**
   * The stages of the piles from drilling to release.
   *
   * @param carry the stage of the method that stands on them: its hold points stand at the end,
   *     what is built is said once, by the stages that build it
   * @param piles the stages of their sheet, or the usual ones
   */
  static List<Stage> of(Stage carry, List<Stage> piles) {
    List<Stage> stages = new ArrayList<>();
    for (Stage stage : piles) {
      switch (stage.role()) {
        case DRILL, BUILD, LOCK -> stages.add(stage);
        case LOAD -> stages.add(titled(stage, carry.title()));
        default -> {}
      }
    }
    int last = stages.size() - 1;
    if (last >= 0) {
      stages.set(last, held(stages.get(last), carry.holdPoints()));
    }
    return stages;
  }

  /**
   * What goes before the work of both: borings, trial pile and tests of the piles after what the
   * method itself asks for.
   */
  static Stage prepared(Stage prepare, List<Stage> piles) {
    List<Phrase> work = new ArrayList<>(prepare.work());
    List<HoldPoint> holds = new ArrayList<>(prepare.holdPoints());
    for (Stage stage : piles) {
      if (stage.role() == StageRole.PREPARE) {
        stage.work().stream().skip(1).filter(one -> !work.contains(one)).forEach(work::add);
        stage.holdPoints().stream().filter(one -> !holds.contains(one)).forEach(holds::add);
      }
    }
    return new Stage(prepare.role(), prepare.title(), work, holds).with(prepare.detail());
  }

  private static Stage titled(Stage stage, String title) {
    return new Stage(stage.role(), title, stage.work(), stage.holdPoints()).with(stage.detail());
  }

  private static Stage held(Stage stage, List<HoldPoint> more) {
    return new Stage(
            stage.role(),
            stage.title(),
            stage.work(),
            Stream.concat(stage.holdPoints().stream(), more.stream()).distinct().toList())
        .with(stage.detail());
  }
}
