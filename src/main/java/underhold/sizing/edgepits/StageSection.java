package underhold.sizing.edgepits;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import underhold.mechanics.soil.edgewall.ProppedWall;
import underhold.sizing.Amount;
import underhold.sizing.HoldPoint;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Stage;
import underhold.sizing.StageDetail;
import underhold.sizing.StageRole;
import underhold.sizing.Unsettled;
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

  static void write(EdgeCase site, SheetBuilder sheet, PileSummary piles, Work work) {
    before(sheet);
    piles(sheet, piles);
    onePit(site, sheet, work.dug(), work.dowels());
    int number = 1;
    for (List<Integer> round : work.dug().plan().rounds()) {
      round(sheet, number++, round, work.dug().plan());
    }
    closure(sheet);
    cut(site, sheet, work.held(), piles.piles().bracedAtMetres());
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
                    "Set out piles and pits together: no pile stands in the line of the pits or leans on soil that the wall will hold."),
                Phrase.of(
                    "Keep ground water out of the pits and prove it by piezometers; lower it only where the site allows that.")),
            List.of(
                new HoldPoint(
                    Phrase.of(
                        "Ground, water, rock head and loads are as taken here; limits of movement and who stops the work are agreed"),
                    ENGINEER))));
  }

  /**
   * Piles are jacked to what they carry of the structure, never to the load they are sized for,
   * which holds allowances: all together would lift it.
   */
  private static void piles(SheetBuilder sheet, PileSummary piles) {
    sheet.stage(
        new Stage(
            StageRole.CARRY,
            "Drilled piles take the load",
            List.of(
                Phrase.of(
                    "Build the {n} piles, caps and seats by their own sheet and in its order.",
                    "n",
                    Amount.count(piles.piles().piles())),
                jacked(piles),
                Phrase.of(
                    "Hold, measure, pack and lock; go back over the neighbours, for one jack unloads the next.")),
            List.of(
                new HoldPoint(
                    Phrase.of(
                        "Piles loaded and locked off, loads and readings recorded, released in writing before any edge pit is dug"),
                    ENGINEER))));
  }

  private static Phrase jacked(PileSummary piles) {
    Amount sized = Amount.force(piles.piles().pileKilonewtons());
    return piles
        .jackShare()
        .map(
            share ->
                Phrase.of(
                    "Jack each pile in steps to its share of the stated load, {P} on the mean, and lock it off by the sheet of the piles. All jacks together never lift more than the stated load of the structure, {W}; the {M} that the pile loaded most is sized for holds allowances and is no jack load.",
                    Map.of(
                        "P", share,
                        "W", Amount.force(share.si() * piles.piles().piles()),
                        "M", sized)))
        .orElseGet(
            () ->
                Phrase.of(
                    "Jack each pile in steps to its share of the stated load and lock it off by the sheet of the piles. All jacks together never lift more than the stated load of the structure; the {M} that the pile loaded most is sized for holds allowances and is no jack load.",
                    "M",
                    sized));
  }

  private static void onePit(EdgeCase site, SheetBuilder sheet, OpenPits dug, int dowels) {
    List<Phrase> work = new ArrayList<>();
    Unsettled.warning(
            "The boards named here are",
            sheet.unsettled("board-", "approach-", "sheeting-", "stand-up"))
        .ifPresent(work::add);
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
            "Cast an end pit against the side wall of the excavation, dowelled or keyed to it over the whole height."));
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
                    "Prove the joints between the pits, and between the end pits and the side walls of the excavation, over the whole height; grout them until they are as tight as that wall."),
                Phrase.of(
                    "Grout behind the boards where soil was lost; read piezometers on both sides.")),
            List.of(
                new HoldPoint(
                    Phrase.of(
                        "The wall is one piece from side wall to side wall, joints tight, all concrete has its strength"),
                    ENGINEER))));
  }

  private static void cut(
      EdgeCase site, SheetBuilder sheet, PropSection.Held held, List<Double> pileBraces) {
    List<ProppedWall> stages = held.props().stages();
    Optional<Phrase> warning =
        Unsettled.warning(
            "The wall and its walers, braces or ties are",
            sheet.unsettled(
                "brace-",
                "first-cut",
                "wall-",
                "joint-",
                "sliding-supported",
                "toe-",
                "base-heave",
                "piping",
                "water"));
    for (int i = 0; i < stages.size(); i++) {
      double level = held.props().levels().get(i);
      List<Phrase> work = new ArrayList<>();
      if (i == 0) {
        warning.ifPresent(work::add);
        pileBracing(pileBraces).ifPresent(work::add);
      }
      work.add(
          Phrase.of(
              "Dig in front no deeper than {d} below the structure.",
              "d",
              Amount.length(level + site.get(EdgeSetting.OVERDIG))));
      work.add(
          Phrase.of(
              "Set walers and braces or ties at {l}, wedge or stress them, for {R} per length of wall.",
              "l",
              Amount.length(level),
              "R",
              Amount.lineLoad(held.forces().get(i))));
      sheet.stage(
          new Stage(
                  StageRole.DIG,
                  "Level " + (i + 1) + " of braces or ties",
                  work,
                  List.of(
                      new HoldPoint(
                          Phrase.of(
                              "This level holds, by measured force or lift-off, before the cut goes on"
                                  + (pileBraces.isEmpty()
                                      ? ""
                                      : "; every level of bracing between the piles down to the bottom of the cut is tight")),
                          ENGINEER)))
              .with(new StageDetail.Brace()));
    }
  }

  /** Piles that the cut lays bare stand on the bracing with which they are sized. */
  private static Optional<Phrase> pileBracing(List<Double> levels) {
    if (levels.isEmpty()) {
      return Optional.empty();
    }
    Map<String, Amount> amounts = new LinkedHashMap<>();
    for (double level : levels) {
      amounts.put("b" + (amounts.size() + 1), Amount.length(level));
    }
    String places =
        String.join(", ", amounts.keySet().stream().map(name -> "{" + name + "}").toList());
    return Optional.of(
        Phrase.of(
            "Piles that the cut lays bare are sized with bracing in two directions at "
                + places
                + " below their caps, by their own sheet: each level of it is set and tight before the cut goes deeper, and stays until the lasting works hold the piles.",
            amounts));
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
