package underhold.sizing.drilledpiles;

import static underhold.sizing.drilledpiles.PileInputs.POSITION;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import underhold.mechanics.pile.column.BaringStages;
import underhold.sizing.Amount;
import underhold.sizing.HoldPoint;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Stage;
import underhold.sizing.StageDetail;
import underhold.sizing.StageRole;

/**
 * The dig: round the piles where the excavation goes under the structure, beside it where it does
 * not. Piles are sized as bared either way unless a setting says otherwise; that is no leave to
 * take the soil away.
 */
final class DigStages {
  private static final String ENGINEER = "engineer of record";

  /** Where soil is taken from under the structure. */
  private static final Set<String> UNDER =
      Set.of("partly-under", "wholly-under", "crosses-support");

  private final PileCase site;
  private final PileDesign design;
  private final List<Double> braces;

  private DigStages(PileCase site, PileDesign design) {
    this.site = site;
    this.design = design;
    this.braces = new PileStrength(site).braces();
  }

  static void write(PileCase site, PileDesign design, SheetBuilder sheet) {
    DigStages stages = new DigStages(site, design);
    if (!stages.under()) {
      stages.beside(sheet);
    } else {
      design.stages().forEach(stage -> sheet.stage(stages.lift(stage)));
    }
    sheet.stage(stages.lasting());
  }

  /** Whether somebody stated that the excavation goes under the structure. */
  private boolean under() {
    return site.inputs().find(POSITION).filter(one -> UNDER.contains(one.value())).isPresent();
  }

  private void beside(SheetBuilder sheet) {
    if (site.baredHeight() <= 0) {
      return;
    }
    List<Phrase> work = new ArrayList<>();
    work.add(
        Phrase.of(
            "Dig beside the structure to {d} below the caps, in lifts, behind what holds its face. The soil under the footing and around the piles stays: nobody digs there.",
            "d",
            Amount.length(site.baredHeight())));
    work.add(
        design.stages().isEmpty()
            ? Phrase.of(
                "Where soil runs out or is found cut away there: stop, fill the place again, tell the engineer. The piles are not sized to stand bare (bared).")
            : bracesRule());
    sheet.stage(
        new Stage(
            StageRole.DIG,
            "Digging beside the piles",
            work,
            List.of(
                new HoldPoint(
                    Phrase.of(
                        "Before each lift: the face above is held, no soil is lost from under the footing or round the piles, readings within limits"),
                    ENGINEER))));
  }

  private Phrase bracesRule() {
    String words =
        "Where soil runs out or is found cut away there: stop, fill the place again, tell the engineer. The piles are sized to stand bare over {b}, ";
    return braces.isEmpty()
        ? Phrase.of(
            words + "without bracing, but the footing is not to be dug out.",
            "b",
            Amount.length(site.baredHeight()))
        : Phrase.of(
            words
                + "only with bracing in two directions at {r} below the caps and at any further level of this sheet, each set on the way down, by the engineer's leave.",
            "b",
            Amount.length(site.baredHeight()),
            "r",
            Amount.length(braces.get(0)));
  }

  private Stage lift(BaringStages.Stage stage) {
    boolean braced = stage.bracesSet() < braces.size();
    List<Phrase> work = new ArrayList<>();
    work.add(
        Phrase.of(
            "Dig evenly on all sides of the piles to {d} below the caps, "
                + StrengthSection.braces(stage.bracesSet())
                + ".",
            "d",
            Amount.length(stage.dugMetres())));
    if (braced) {
      work.add(
          Phrase.of(
              "Set bracing at {b} below the caps, in two directions, and tighten it.",
              Map.of("b", Amount.length(braces.get(stage.bracesSet())))));
    }
    Stage lift =
        new Stage(
            StageRole.DIG,
            "Digging, stage " + stage.number() + " of " + design.stages().size(),
            work,
            List.of(
                new HoldPoint(
                    Phrase.of(
                        (braced
                                ? "Bracing of this level holds, piles are straight"
                                : braces.isEmpty()
                                    ? "Piles are straight"
                                    : "All bracing holds, piles are straight")
                            + ", readings within limits"),
                    ENGINEER)));
    return braced ? lift.with(new StageDetail.Brace()) : lift;
  }

  private Stage lasting() {
    List<Phrase> work = new ArrayList<>();
    work.add(
        Phrase.of(
            under()
                ? "Build the new structure round the piles, or encase and brace them for good."
                : "Build the new structure beside; encase caps, jacks and packing for good."));
    if (under() && !braces.isEmpty()) {
      work.add(Phrase.of("Take bracing out only when what replaces it holds the piles sideways."));
    }
    return new Stage(
        StageRole.LASTING,
        "Lasting support",
        work,
        List.of(
            new HoldPoint(
                Phrase.of("Readings steady; jacks locked, packed and encased"), ENGINEER)));
  }
}
