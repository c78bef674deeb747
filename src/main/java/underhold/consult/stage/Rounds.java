package underhold.consult.stage;

import java.util.List;
import java.util.Optional;
import underhold.sizing.Stage;
import underhold.sizing.StageDetail;
import underhold.sizing.StageRole;

/** The rounds of pits among the stages of a sheet. */
record Rounds(List<Stage> stages) {
  Rounds {
    stages = stages.stream().filter(stage -> stage.role() == StageRole.PITS).toList();
  }

  boolean isFirst(Stage stage) {
    return stages.indexOf(stage) == 0;
  }

  boolean isLast(Stage stage) {
    return stages.lastIndexOf(stage) == stages.size() - 1;
  }

  /** What a round counts, where its sheet has drawn it up. */
  static Optional<StageDetail.PitRound> round(Stage stage) {
    return stage.detail() instanceof StageDetail.PitRound round
        ? Optional.of(round)
        : Optional.empty();
  }
}
