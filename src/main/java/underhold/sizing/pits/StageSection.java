package underhold.sizing.pits;

import static underhold.sizing.pits.PitsFact.*;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import underhold.sizing.Amount;
import underhold.sizing.Check;
import underhold.sizing.HoldPoint;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Stage;
import underhold.sizing.StageRole;
import underhold.sizing.Unsettled;
import underhold.sizing.pits.order.DiggingPlan;

/** Order of work with its hold points. */
final class StageSection {
  private static final String ENGINEER = "engineer of record";
  private static final String COMPETENT = "competent person";
  private static final String GEOTECHNICAL = "geotechnical engineer";

  private StageSection() {}

  static void write(
      PitsCase site,
      SheetBuilder sheet,
      Layout layout,
      DiggingPlan plan,
      double board,
      boolean braced) {
    sheet.stage(
        new Stage(
            StageRole.PREPARE,
            "Before digging",
            List.of(
                Phrase.of(
                    "Survey the building, note its cracks, set level points and crack gauges; take readings until they are steady."),
                Phrase.of(
                    "Expose the footing at each typical place; confirm its width, depth and state."),
                Phrase.of(
                    "Locate services; keep ground water out of the pits and prove it, lowering it only where the site allows that."),
                Phrase.of("Dig a trial pit away from the wall; note how long its faces stand.")),
            List.of(
                new HoldPoint(
                    Phrase.of(
                        "Footing, soil, water and standing time are as assumed; limits and who stops the work are agreed"),
                    ENGINEER))));
    freeEnds(sheet, layout);
    sheet.stage(onePit(site, sheet, board));
    int number = 1;
    for (List<Integer> round : plan.rounds()) {
      sheet.stage(round(number++, round, plan));
    }
    List<Phrase> last = new ArrayList<>();
    last.add(
        Phrase.of("Fill the approach pits on the side that stays; read all points once more."));
    if (braced) {
      last.add(
          Phrase.of(
              "Set braces or ties on every pier as the excavation goes down, before the soil in front of it is taken below their level. Level, force and what replaces them are the engineer's design; they stay until the lasting works hold the piers."));
    }
    last.add(Phrase.of("Excavate in front of the finished piers in lifts, with readings at each."));
    List<HoldPoint> holds = new ArrayList<>();
    holds.add(
        new HoldPoint(
            Phrase.of(
                "All piers carry, concrete and dry pack have their strength, no movement above the limit"),
            ENGINEER));
    if (braced) {
      holds.add(
          new HoldPoint(
              Phrase.of(
                  "The braces or ties of a level are designed, set and hold on every pier before soil below that level is taken"),
              ENGINEER));
    }
    sheet.stage(new Stage(StageRole.DIG, "Excavation in front", last, holds));
  }

  /** Over an end pit the wall is a cantilever: where it cannot be, its end is held first. */
  private static void freeEnds(SheetBuilder sheet, Layout layout) {
    List<Check> unsettled = sheet.unsettled("free-end");
    if (unsettled.isEmpty()) {
      return;
    }
    sheet.stage(
        new Stage(
            StageRole.BUILD,
            "Free ends of the wall shored",
            List.of(
                Phrase.of(
                    "Shore, prop or tie the wall at each free end, by the engineer's design, before an end pit (pit {first}, pit {last}) is opened: over it the wall is a cantilever, and what it can do there does not pass on this sheet: "
                        + Unsettled.words(unsettled)
                        + ".",
                    "first",
                    Amount.count(1),
                    "last",
                    Amount.count(layout.count()))),
            List.of(
                new HoldPoint(
                    Phrase.of(
                        "The free ends are shored as designed and the shores carry, or the engineer has shown that a return wall carries them: no end pit is opened before"),
                    ENGINEER))));
  }

  private static Stage onePit(PitsCase site, SheetBuilder sheet, double board) {
    List<Phrase> work = new ArrayList<>(steps(site, board));
    Unsettled.warning(
            "The boards named here are",
            sheet.unsettled("board-", "approach-", "sheeting-", "stand-up"))
        .ifPresent(warning -> work.add(0, warning));
    return new Stage(
        StageRole.PIT_RULES,
        "Each pit",
        work,
        List.of(
            new HoldPoint(
                Phrase.of(
                    "Sheeting, ladder, air and the state of the faces, at the start of each shift and after rain"),
                COMPETENT),
            new HoldPoint(
                Phrase.of("Soil at the base is what the bearing value asks for"), GEOTECHNICAL),
            new HoldPoint(
                Phrase.of("Dry pack fills the gap over the whole footing"), "special inspector"),
            new HoldPoint(
                Phrase.of(
                    "Strength of concrete and dry pack before a neighbour is opened; readings within limits"),
                ENGINEER)));
  }

  private static List<Phrase> steps(PitsCase site, double board) {
    return List.of(
        Phrase.of(
            "Sink the approach pit beside the wall, {la} by {wa}, to {Da} below the footing, boarded ring by ring with {t} boards, one board of {lift} at a time.",
            Map.of(
                "la", site.amount(PitsSetting.APPROACH_LENGTH),
                "wa", site.amount(PitsSetting.APPROACH_WIDTH),
                "Da", Amount.length(site.approachBelowFooting()),
                "t", Amount.thickness(board),
                "lift", site.amount(PitsSetting.BOARD_HEIGHT))),
        Phrase.of(
            "Go under the footing from it, boarding both sides and the back as the soil comes out, wedged and packed behind at once."),
        Phrase.of(
            "Sink the pit to {D} below the footing; clean the base by hand, no softened soil left.",
            "D",
            site.amount(PIT_DEPTH)),
        Phrase.of(
            "Clean the underside of the footing. Place concrete without a break to {gap} below it; key it to the piers beside.",
            "gap",
            site.amount(PitsSetting.DRY_PACK_GAP)),
        Phrase.of(
            "After {wait} ram the gap full with stiff cement-sand mortar, damp as earth, in layers from the back, until contact is complete.",
            "wait",
            site.amount(PitsSetting.DRY_PACK_WAIT)),
        Phrase.of(
            "Open no neighbour before {wait} more and before cubes or cylinders show the strength asked for.",
            "wait",
            site.amount(PitsSetting.NEIGHBOUR_WAIT)));
  }

  private static Stage round(int number, List<Integer> round, DiggingPlan plan) {
    List<Phrase> work =
        round.stream()
            .sorted()
            .map(
                pit ->
                    Phrase.of(
                        "Pit {n}: begins after {first} working days, carries after {done}.",
                        Map.of(
                            "n", Amount.count(pit + 1),
                            "first", Amount.count(tenths(plan.startDays().get(pit))),
                            "done", Amount.count(tenths(plan.doneDay(pit))))))
            .toList();
    return new Stage(
            StageRole.PITS,
            "Round " + number + " of " + plan.roundCount(),
            work,
            List.of(
                new HoldPoint(
                    Phrase.of(
                        plan.inStep()
                            ? "Every pit of this round carries and readings are within limits"
                            : "A pit of the next round begins only beside piers that carry, within the open share, by the dates given"),
                    ENGINEER)))
        .with(plan.round(round));
  }

  private static double tenths(double days) {
    return Math.ceil(days * 10 - 1e-6) / 10;
  }
}
