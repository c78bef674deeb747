package underhold.sizing.drilledpiles;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import underhold.sizing.Amount;
import underhold.sizing.HoldPoint;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Stage;
import underhold.sizing.StageDetail;
import underhold.sizing.StageRole;

/**
 * Load on the piles: the steps, each held, and after the last of them proof, lock-off and release,
 * each a stage of its own, so that no crew runs past a hold point.
 */
final class JackStages {
  private static final String ENGINEER = "engineer of record";
  private static final String INSPECTOR = "special inspector";

  private static final double HUNDRED = 100;

  private final PileCase site;
  private final PileDesign design;
  private final PileCount count;

  private JackStages(PileCase site, PileDesign design) {
    this.site = site;
    this.design = design;
    this.count = PileCount.of(site, design);
  }

  static void write(PileCase site, PileDesign design, SheetBuilder sheet) {
    JackStages stages = new JackStages(site, design);
    sheet.stage(stages.jack());
    stages.lock().forEach(sheet::stage);
  }

  /** Load in steps, each held; nothing here goes past the last of them. */
  private Stage jack() {
    List<Phrase> work = new ArrayList<>();
    work.add(
        Phrase.of(
            "At every step jack each pile to its share of the stated load, together or from the middle outwards, and hold it until readings are steady. All jacks together"
                + (count.columns() > 1 ? " under one column" : "")
                + " never lift more than the stated load, {W}.",
            "W",
            Amount.force(site.structureLoad())));
    work.add(
        Phrase.of(
            "Stop at {lift} of upward movement, at any crack, or when a pile sinks without end.",
            "lift",
            site.amount(WorkNumbers.LIFT_LIMIT)));
    work.add(
        Phrase.of(
            "Lock or shim every jack before the shift or the closure ends: nothing hangs on oil alone."));
    List<Phrase> steps = steps();
    work.addAll(steps);
    return new Stage(
            StageRole.LOAD,
            DrilledPiles.TRANSFER_STAGE,
            work,
            List.of(
                new HoldPoint(
                    Phrase.of(
                        "Structure, piles and jacks read at this step, "
                            + count.everyPile(false)
                            + " at its load: steady, within limits"),
                    ENGINEER)))
        .with(new StageDetail.LoadSteps(steps, site.amount(WorkNumbers.LIFT_LIMIT)));
  }

  /** What follows the last step, each with its own hold point. */
  private List<Stage> lock() {
    return List.of(
        new Stage(
            StageRole.LOCK,
            "Proof of the piles",
            List.of(
                Phrase.of(
                    "Where the weight above allows it, prove each pile to {k} times its load, the jacks together still within the stated load.",
                    "k",
                    site.amount(WorkNumbers.PROOF_LOAD))),
            List.of(
                new HoldPoint(
                    Phrase.of(
                        count.everyPile(true)
                            + " held its proof load, or the engineer says in writing what proves it instead"),
                    ENGINEER))),
        new Stage(
            StageRole.LOCK,
            "Lock-off and packing",
            List.of(
                Phrase.of(
                    "Jack neighbours again: one jack unloads the next. Lock off, at {J} on the mean.",
                    "J",
                    Amount.force(TransferSection.lockOff(site, design))),
                Phrase.of("Keep jack pressure until the packing is driven and complete.")),
            List.of(
                new HoldPoint(
                    Phrase.of(
                        count.everyPile(true)
                            + " is locked off and its packing is driven and complete, before a jack is released"),
                    INSPECTOR))),
        new Stage(
            StageRole.LOCK,
            "Release of the jacks",
            List.of(
                Phrase.of(
                    "Release the jacks on to the packing one after the other, reading at each."),
                Phrase.of("Read again after a day.")),
            List.of(
                new HoldPoint(
                    Phrase.of(
                        count.everyPile(true)
                            + " carries its load and readings are within limits: only now may the old support be cut or the ground below it be dug"),
                    ENGINEER))));
  }

  private List<Phrase> steps() {
    double share = TransferSection.jackShare(site, design);
    return Arrays.stream(TransferSection.STEPS)
        .mapToObj(
            percent ->
                Phrase.of(
                    "Jack each pile to " + percent + " % of its share, {J} on the mean.",
                    "J",
                    Amount.force(share * percent / HUNDRED)))
        .toList();
  }
}
