package underhold.consult.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underhold.quantity.Quantity;
import underhold.site.FactView;
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

  /** Where no new base is built on the spot of the old one. */
  static final HoldPoint ELSEWHERE =
      new HoldPoint(
          Phrase.of(
              "It is designed what carries the structure for good and where: it is stated that no new base stands on the spot of the old one. The needles stay until that support carries"),
          UsualStages.ENGINEER);

  static final HoldPoint REMOVE_HOLD =
      new HoldPoint(
          Phrase.of("What replaces them holds; readings steady after each"), UsualStages.ENGINEER);

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

  /** What a sheet says before its first step of load: it holds for all of them. */
  static List<Phrase> forAllSteps(Stage stage) {
    int first = place(stage, 0);
    return first < 0 ? stage.work() : stage.work().subList(0, first);
  }

  /** What a sheet says after its last step of load, or the usual lock-off. */
  static List<Phrase> afterSteps(Stage stage) {
    int last = place(stage, steps(stage).size() - 1);
    List<Phrase> after = last < 0 ? List.of() : stage.work().subList(last + 1, stage.work().size());
    return after.isEmpty() ? List.of(LOCK_OFF) : after;
  }

  /** Where a step of load stands among the work of its stage; -1 where it stands apart from it. */
  private static int place(Stage stage, int step) {
    return stage.work().indexOf(steps(stage).get(step));
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

  /**
   * The wall of the excavation that the site states, and ground water above its bottom: both are
   * others' work, but no lift is dug before they are released.
   *
   * @param lowered whether the plan lowers the water for pits, which go deeper still
   */
  static Optional<Stage> excavation(FactView facts, boolean lowered) {
    Optional<String> wall = facts.word("excavationWall").filter(word -> !word.equals("none"));
    Optional<Quantity> head =
        lowered
            ? Optional.empty()
            : facts.amount("headAboveExcavation").filter(depth -> depth.si() > 0);
    List<Phrase> work = new ArrayList<>();
    List<HoldPoint> holds = new ArrayList<>();
    wall.ifPresent(
        word -> {
          work.add(
              Phrase.of(
                  "The wall of the excavation that the site states ("
                      + word
                      + ") is designed and built by others, not here: it goes in before any lift, and its props or ties go in level by level."));
          holds.add(
              new HoldPoint(
                  Phrase.of(
                      "The wall of the excavation is in to its full depth and released; each level of its props or ties carries before the lift below it is dug"),
                  UsualStages.ENGINEER));
        });
    head.ifPresent(
        depth -> {
          work.add(
              Phrase.of(
                  "The excavation goes {d} below ground water: "
                      + (mayLower(facts)
                          ? "water is lowered or cut off"
                          : "water is cut off inside a wall that is watertight, and not lowered outside it, for nobody stated that it may be lowered without harm")
                      + ", and the bottom is proved against uplift, heave and piping, by others; this plan proves neither.",
                  "d",
                  Amount.length(depth.si())));
          holds.add(
              new HoldPoint(
                  Phrase.of(
                      "Piezometers show the water below the bottom of each lift before it is dug, and the bottom is proved against uplift, heave and piping"),
                  "geotechnical engineer"));
        });
    String title =
        wall.isPresent()
            ? "Wall of the excavation" + (head.isPresent() ? " and ground water" : "")
            : "Ground water at the excavation";
    return work.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Stage(StageRole.BUILD, title + ", by others", work, holds)
                .with(new StageDetail.ByOthers()));
  }

  private static boolean mayLower(FactView facts) {
    return facts.word("drawdownAllowed").filter("yes"::equals).isPresent()
        && facts.word("drawdownHarm").filter("none"::equals).isPresent();
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
        List.of(REMOVE_HOLD));
  }
}
