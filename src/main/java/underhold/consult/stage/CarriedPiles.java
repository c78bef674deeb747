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
   * @param carry what the method that stands on them asks of them: where they may stand is told
   *     where they are drilled, its hold points stand at the end
   * @param piles the stages of their sheet, or the usual ones
   */
  static List<Stage> of(Stage carry, List<Stage> piles) {
    List<Stage> stages = new ArrayList<>();
    for (Stage stage : piles) {
      switch (stage.role()) {
        case DRILL -> stages.add(retold(stage, stage.title(), told(carry, stages, stage)));
        case BUILD, LOCK -> stages.add(stage);
        case LOAD -> stages.add(retold(stage, carry.title(), stage.work()));
        default -> {}
      }
    }
    int last = stages.size() - 1;
    if (last >= 0) {
      stages.set(last, held(stages.get(last), carry.holdPoints()));
    }
    return stages;
  }

  private static List<Phrase> told(Stage carry, List<Stage> before, Stage stage) {
    boolean first = before.stream().noneMatch(one -> one.role() == StageRole.DRILL);
    return first
        ? Stream.concat(carry.work().stream().limit(1), stage.work().stream()).toList()
        : stage.work();
  }

  private static Stage retold(Stage stage, String title, List<Phrase> work) {
    return new Stage(stage.role(), title, work, stage.holdPoints()).with(stage.detail());
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
