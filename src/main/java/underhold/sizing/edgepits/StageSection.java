package underhold.sizing.edgepits;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import underhold.mechanics.soil.edgewall.ProppedWall;
import underhold.sizing.Amount;
import underhold.sizing.HoldPoint;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Stage;
import underhold.sizing.StageDetail;
import underhold.sizing.StageRole;
import underhold.sizing.drilledpiles.PrimaryPiles;
import underhold.sizing.pits.OpenPits;
import underhold.sizing.pits.PitsSetting;
import underhold.sizing.pits.order.DiggingPlan;

/** Order of work: piles first, then alternate pits, then the cut with its braces. */
final class StageSection {
  private static final String ENGINEER = "engineer of record";
  private static final String COMPETENT = "competent person";
  private static final String GEOTECHNICAL = "geotechnical engineer";

  private StageSection() {}

  /**
   * What is built.
   *
   * @param dug the open pits
   * @param held braces or ties
   * @param dowels dowels in a pit
   */
  record Work(OpenPits dug, PropSection.Held held, int dowels) {}

  static void write(EdgeCase site, SheetBuilder sheet, PrimaryPiles piles, Work work) {
    before(sheet);
    piles(sheet, piles);
    onePit(site, sheet, work.dug(), work.dowels());
    int number = 1;
    for (List<Integer> round : work.dug().plan().rounds()) {
      round(sheet, number++, round, work.dug().plan());
    }
    closure(sheet);
    cut(site, sheet, work.held());
    last(site, sheet);
  }

  private static void before(SheetBuilder sheet) {
    sheet.stage(
        new Stage(
            StageRole.PREPARE,
            "Before the work",
            List.of(
                Phrase.of(
                    "Survey the structure and its neighbours; level points, tilt, crack and joint gauges; readings until they are steady."),
                Phrase.of(
                    "Probe every pit and pile place for soil, water and rock; dig a trial pit clear of the structure."),
                Phrase.of(
                    "Lower or cut off ground water where needed and prove it by piezometers.")),
            List.of(
                new HoldPoint(
                    Phrase.of(
                        "Ground, water, rock head and loads are as taken here; limits of movement and who stops the work are agreed"),
                    ENGINEER))));
  }

  private static void piles(SheetBuilder sheet, PrimaryPiles piles) {
    sheet.stage(
        new Stage(
            StageRole.CARRY,
            "Drilled piles take the load",
            List.of(
                Phrase.of(
                    "Build the {n} piles, caps and seats by their own sheet and in its order; none of them stands in the line of the pits or leans on soil that the wall will hold.",
                    "n",
                    Amount.count(piles.piles())),
                Phrase.of(
                    "Jack each pile in steps to its lock-off load, {P} working load on the pile loaded most; hold, measure, pack and lock; go back over the neighbours.",
                    "P",
                    Amount.force(piles.pileKilonewtons()))),
            List.of(
                new HoldPoint(
                    Phrase.of(
                        "Piles loaded and locked off, loads and readings recorded, released in writing before any edge pit is dug"),
                    ENGINEER))));
  }

  private static void onePit(EdgeCase site, SheetBuilder sheet, OpenPits dug, int dowels) {
    List<Phrase> work = new ArrayList<>();
    work.add(
        Phrase.of(
            "Sink the pit from its approach in lifts of one board, {lift}, boards of {t} on all sides, packed behind at once, to {H} below the structure.",
            Map.of(
                "lift", site.amount(PitsSetting.BOARD_HEIGHT),
                "t", Amount.thickness(dug.boardMetres()),
                "H", Amount.length(site.height()))));
    work.add(
        dowels > 0
            ? Phrase.of(
                "Clean the rock, step it level or cut a key; drill and grout {n} dowels.",
                "n",
                Amount.count(dowels))
            : Phrase.of("Clean the base by hand, no softened soil left."));
    work.add(
        Phrase.of(
            "Cast key or dowels on the joint to the next pit, seats for walers and ties, and the wall to {gap} below the structure.",
            "gap",
            site.amount(EdgeSetting.CLOSING_GAP)));
    work.add(
        Phrase.of(
            "Close the gap so that no soil comes through and the wall does not hang on the piles: a soft strip, or packing only where the engineer designs the two as one."));
    sheet.stage(
        new Stage(
            StageRole.PIT_RULES,
            "Each edge pit",
            work,
            List.of(
                new HoldPoint(
                    Phrase.of("Sheeting, ladder, air and faces at the start of each shift"),
                    COMPETENT),
                new HoldPoint(
                    Phrase.of("Soil or rock at the base is what the sheet takes"), GEOTECHNICAL),
                new HoldPoint(
                    Phrase.of("Concrete has its strength before a neighbour is opened"),
                    ENGINEER))));
  }

  private static void round(SheetBuilder sheet, int number, List<Integer> round, DiggingPlan plan) {
    List<Phrase> work =
        round.stream()
            .sorted()
            .map(
                pit ->
                    Phrase.of(
                        "Pit {n}: begins after {first} working days, done after {done}.",
                        Map.of(
                            "n", Amount.count(pit + 1),
                            "first", Amount.count(tenths(plan.startDays().get(pit))),
                            "done", Amount.count(tenths(plan.doneDay(pit))))))
            .toList();
    sheet.stage(
        new Stage(
                StageRole.PITS,
                "Pits, round " + number + " of " + plan.roundCount(),
                work,
                List.of(
                    new HoldPoint(
                        Phrase.of(
                            "No two adjacent pits open; neighbours have their strength; readings and pile loads within limits"),
                        ENGINEER)))
            .with(plan.round(round)));
  }

  private static void closure(SheetBuilder sheet) {
    sheet.stage(
        new Stage(
            StageRole.CLOSE,
            "Closing the wall",
            List.of(
                Phrase.of(
                    "Cast the last pit at each end against the side wall of the excavation, dowelled or grouted to it over the whole height and made as tight as that wall."),
                Phrase.of(
                    "Grout behind the boards where soil was lost; read piezometers on both sides.")),
            List.of(
                new HoldPoint(
                    Phrase.of(
                        "The wall is one piece from side wall to side wall, joints tight, all concrete has its strength"),
                    ENGINEER))));
  }

  private static void cut(EdgeCase site, SheetBuilder sheet, PropSection.Held held) {
    List<ProppedWall> stages = held.props().stages();
    for (int i = 0; i < stages.size(); i++) {
      double level = held.props().levels().get(i);
      sheet.stage(
          new Stage(
                  StageRole.DIG,
                  "Level " + (i + 1) + " of braces or ties",
                  List.of(
                      Phrase.of(
                          "Dig in front no deeper than {d} below the structure.",
                          "d",
                          Amount.length(level + site.get(EdgeSetting.OVERDIG))),
                      Phrase.of(
                          "Set walers and braces or ties at {l}, wedge or stress them, for {R} per length of wall.",
                          "l",
                          Amount.length(level),
                          "R",
                          Amount.lineLoad(held.forces().get(i)))),
                  List.of(
                      new HoldPoint(
                          Phrase.of(
                              "This level holds, by measured force or lift-off, before the cut goes on; exposed lengths of piles are braced as their sheet asks"),
                          ENGINEER)))
              .with(new StageDetail.Brace()));
    }
  }

  private static void last(EdgeCase site, SheetBuilder sheet) {
    List<Phrase> work = new ArrayList<>();
    work.add(
        Phrase.of(
            "Dig to the bottom, {e} below the structure.",
            "e",
            site.inputs.amount(EdgeInputs.EXCAVATION)));
    if (site.geometry.rockFace() > 0) {
      work.add(
          Phrase.of(
              "Below the toe leave a ledge of {w}; line-drill and split the rock, no blasting; map, dress and pin each lift before the next.",
              "w",
              site.amount(EdgeSetting.LEDGE)));
    }
    work.add(
        Phrase.of(
            site.chosen(EdgeSetting.TOE_SUPPORT, "slab")
                ? "Cast the base slab against the toe in short lengths as the bottom is reached; it is the lowest strut."
                : "Cast the base slab against the toe soon; no trench along the toe before it."));
    work.add(
        Phrase.of(
            "Take braces out only when slab and permanent works hold the wall at their level."));
    sheet.stage(
        new Stage(
            StageRole.DIG,
            "Bottom of the excavation",
            work,
            List.of(
                new HoldPoint(
                    Phrase.of("Readings of wall, piles, structure and water within limits"),
                    ENGINEER))));
  }

  private static double tenths(double days) {
    return Math.ceil(days * 10 - 1e-6) / 10;
  }
}
