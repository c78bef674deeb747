package underhold.consult.stage;

import java.util.ArrayList;
import java.util.List;
import underhold.quantity.Quantity;
import underhold.sizing.Amount;
import underhold.sizing.HoldPoint;
import underhold.sizing.Phrase;
import underhold.sizing.Stage;
import underhold.sizing.StageDetail;
import underhold.sizing.StageRole;

/** Stages that no sheet holds, in words of common practice. */
final class UsualWorks {
  private static final int[] PERCENT = {25, 50, 75, 100};

  static final HoldPoint STEP_HOLD =
      new HoldPoint(
          Phrase.of("Structure, supports and jacks read at this step: steady, within limits"),
          UsualStages.ENGINEER);

  static final Phrase LOCK_OFF =
      Phrase.of(
          "Lock off, drive and complete the packing, release the jacks on to it; read again after a day.");

  private UsualWorks() {}

  /** The steps of load of a sheet, or the usual quarters. */
  static List<Phrase> steps(Stage stage) {
    if (stage.detail() instanceof StageDetail.LoadSteps load) {
      return load.steps();
    }
    List<Phrase> steps = new ArrayList<>();
    for (int percent : PERCENT) {
      steps.add(Phrase.of("Jack to " + percent + " % of the load to be taken; hold and read."));
    }
    return steps;
  }

  /**
   * The pits of a round in step with the rounds before; the sheet's words where none is drawn up.
   */
  static List<Phrase> round(Stage stage) {
    return Rounds.round(stage)
        .map(
            round ->
                List.of(
                    Phrase.of(
                        (round.pits().size() == 1 ? "Dig pit " : "Dig pits ")
                            + String.join(", ", round.pits().stream().map(String::valueOf).toList())
                            + (round.pits().size() > round.crews()
                                ? "; no more than "
                                    + round.crews()
                                    + " of them are dug at one time, and each counts as open until it carries"
                                : "")
                            + ", each finished until it carries; no pit of the next round before all of them do.")))
        .orElseGet(stage::work);
  }

  static Stage water(Quantity depth) {
    return new Stage(
        StageRole.PREPARE,
        "Ground water lowered",
        List.of(
            Phrase.of(
                "Lower ground water by {d} for dry pits; prove it by piezometers, keep a standby pump.",
                "d",
                Amount.length(depth.si()))),
        List.of(
            new HoldPoint(
                Phrase.of(
                    "Water stands below every pit base and nothing near has settled beyond its limit"),
                "geotechnical engineer")));
  }

  static Stage lasting() {
    return new Stage(
        StageRole.LASTING,
        "Lasting works hold the sides",
        List.of(Phrase.of("Base slab, floors or walls are built against what the braces hold.")),
        List.of(
            new HoldPoint(
                Phrase.of("What replaces each brace has its strength at that level"),
                UsualStages.ENGINEER)));
  }

  static Stage remove(List<Support> supports) {
    return new Stage(
        StageRole.HAND_BACK,
        "Temporary works out",
        List.of(
            Phrase.of(
                "Take away in this order, the last set first, reading at each: "
                    + String.join(", ", supports.stream().map(Support::name).toList())
                    + ".")),
        List.of(
            new HoldPoint(
                Phrase.of("What replaces them holds; readings steady after each"),
                UsualStages.ENGINEER)));
  }
}
