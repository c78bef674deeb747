package underhold.sizing.drilledpiles;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import underhold.mechanics.pile.column.BaringStages;
import underhold.sizing.Amount;
import underhold.sizing.HoldPoint;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Stage;
import underhold.sizing.StageDetail;
import underhold.sizing.StageRole;

/** Order of work with its hold points. */
final class StageSection {
  private static final String ENGINEER = "engineer of record";
  private static final String GEOTECHNICAL = "geotechnical engineer";
  private static final String INSPECTOR = "special inspector";

  private static final double HUNDRED = 100;

  private StageSection() {}

  static void write(PileCase site, PileDesign design, SheetBuilder sheet) {
    sheet.stage(before(site, design));
    sheet.stage(drill(design));
    sheet.stage(transfer());
    sheet.stage(jack(site, design));
    List<Double> braces = new PileStrength(site).braces();
    for (BaringStages.Stage stage : design.stages()) {
      sheet.stage(dig(stage, braces, design.stages().size()));
    }
    sheet.stage(
        new Stage(
            StageRole.LASTING,
            "Lasting support",
            List.of(
                Phrase.of(
                    "Build the new structure round the piles, or encase and brace them for good."),
                Phrase.of("Take bracing out only when what replaces it holds the piles sideways.")),
            List.of(
                new HoldPoint(
                    Phrase.of("Readings steady; jacks locked, packed and encased"), ENGINEER))));
  }

  private static Stage before(PileCase site, PileDesign design) {
    return new Stage(
        StageRole.PREPARE,
        "Before drilling",
        List.of(
            Phrase.of(
                "Survey the structure, set level and tilt points, take readings until they are steady."),
            Phrase.of(
                "Bore to {z} below ground at the least, and probe each pile place for old works.",
                "z",
                Amount.length(design.toeMetres() + site.get(PileNumbers.BELOW_TOE))),
            Phrase.of(
                "Drill a trial pile away from the structure; record loss of ground, flush and time."),
            Phrase.of(
                "Test to {k} times the working load where tests are counted on.",
                "k",
                site.amount(WorkNumbers.TEST_LOAD))),
        List.of(
            new HoldPoint(
                Phrase.of(
                    "Ground, water and obstructions are as assumed; the drilling method takes no ground from under the structure"),
                GEOTECHNICAL),
            new HoldPoint(
                Phrase.of("Limits of movement and who stops the work are agreed"), ENGINEER)));
  }

  private static Stage drill(PileDesign design) {
    return new Stage(
        StageRole.DRILL,
        "Piles, before any digging below the footing",
        List.of(
            Phrase.of(
                "Drill piles outside first, then inside, no two neighbours on the same day; case ahead of the bit in ground that runs."),
            Phrase.of(
                "Take each of {n} piles to {z} below ground; measure, clean, set bars, place concrete or grout from the base up.",
                "n",
                Amount.count(design.layout().piles()),
                "z",
                Amount.length(design.toeMetres())),
            Phrase.of(
                "Leave the casing from the cap to {z} below ground.",
                "z",
                Amount.length(design.casingBottomMetres()))),
        List.of(
            new HoldPoint(
                Phrase.of(
                    "Each pile reached the layer and length counted on; the base of a socket is seen where it is counted"),
                INSPECTOR),
            new HoldPoint(
                Phrase.of(
                    "Every pile of the group is made and has its strength: no digging below the footing before"),
                ENGINEER)));
  }

  private static Stage transfer() {
    return new Stage(
        StageRole.BUILD,
        "Caps, beams and jacks",
        List.of(
            Phrase.of(
                "Build caps and needle beams; the pile head reaches {in} into the cap, the cap {out} beyond the pile.",
                "in",
                Amount.thickness(0.0762),
                "out",
                Amount.thickness(0.1016)),
            Phrase.of(
                "Set a jack with a locking ring on each pile, plates and packing ready beside it; hold beam and footing sideways.")),
        List.of(
            new HoldPoint(
                Phrase.of(
                    "Beams, bearings and the structure above are proved for the forces given"),
                ENGINEER)));
  }

  private static Stage jack(PileCase site, PileDesign design) {
    return new Stage(
            StageRole.LOAD,
            DrilledPiles.TRANSFER_STAGE,
            List.of(
                Phrase.of(
                    "Jack each pile in steps of 25, 50, 75 and 100 % of its share of the stated load, {P} on the mean, together or from the middle outwards; hold each until readings are steady. All jacks together never lift more than the stated load, {W}.",
                    "P",
                    Amount.force(TransferSection.jackShare(site, design)),
                    "W",
                    Amount.force(site.structureLoad())),
                Phrase.of(
                    "Where the weight above allows it, prove each pile to {k} times its load.",
                    "k",
                    site.amount(WorkNumbers.PROOF_LOAD)),
                Phrase.of(
                    "Stop at {lift} of upward movement, at any crack, or when a pile sinks without end.",
                    "lift",
                    site.amount(WorkNumbers.LIFT_LIMIT)),
                Phrase.of(
                    "Jack neighbours again: one jack unloads the next. Lock off, at {J} on the mean.",
                    "J",
                    Amount.force(TransferSection.lockOff(site, design))),
                Phrase.of(
                    "Keep jack pressure until the packing is driven and complete, then release.")),
            List.of(
                new HoldPoint(
                    Phrase.of(
                        "Every pile carries its load and readings are within limits: only now may the old support be cut or the ground below it be dug"),
                    ENGINEER)))
        .with(new StageDetail.LoadSteps(steps(site, design)));
  }

  private static List<Phrase> steps(PileCase site, PileDesign design) {
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

  private static Stage dig(BaringStages.Stage stage, List<Double> braces, int stages) {
    Phrase dig =
        Phrase.of(
            "Dig evenly on all sides of the piles to {d} below the caps, "
                + StrengthSection.braces(stage.bracesSet())
                + ".",
            "d",
            Amount.length(stage.dugMetres()));
    List<Phrase> work =
        stage.bracesSet() < braces.size()
            ? List.of(
                dig,
                Phrase.of(
                    "Set bracing at {b} below the caps, in two directions, and tighten it.",
                    Map.of("b", Amount.length(braces.get(stage.bracesSet())))))
            : List.of(dig);
    Stage lift =
        new Stage(
            StageRole.DIG,
            "Digging, stage " + stage.number() + " of " + stages,
            work,
            List.of(
                new HoldPoint(
                    Phrase.of(
                        "Bracing of this level holds, piles are straight, readings within limits"),
                    ENGINEER)));
    return stage.bracesSet() < braces.size() ? lift.with(new StageDetail.Brace()) : lift;
  }
}
