package underhold.sizing.needles;

import java.util.ArrayList;
import java.util.List;
import underhold.sizing.Amount;
import underhold.sizing.HoldPoint;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Stage;
import underhold.sizing.StageDetail;
import underhold.sizing.StageRole;

/** Order of transfer and of return, with hold points. */
final class StageSection {
  private static final String ENGINEER = "engineer of record";
  private static final String COMPETENT = "competent person";
  private static final String INSPECTOR = "special inspector";
  private static final String GEOTECHNICAL = "geotechnical engineer";

  private static final int[] STEPS_PERCENT = {25, 50, 75, 100};

  /** Lift at which jacking stops, 1/16 in, m (from memory, pretest practice). */
  private static final double STOP_LIFT = 0.0015;

  private StageSection() {}

  static void write(
      NeedleCase site, SheetBuilder sheet, LoadSection.Load load, NeedleBeam beam, double preload) {
    sheet.stage(survey());
    sheet.stage(seats(site));
    sheet.stage(setting(site, load));
    sheet.stage(preload(preload));
    sheet.stage(digging(beam));
    sheet.stage(giveBack());
  }

  private static Stage survey() {
    return new Stage(
        StageRole.PREPARE,
        "Before any load moves",
        List.of(
            Phrase.of(
                "Survey the structure, note its cracks, set level points and crack gauges read to"
                    + " 1 mm or better; read until steady."),
            Phrase.of(
                "Take down the load of each support and its range; agree limits and who stops."),
            Phrase.of("Open up the pick-up: measure it, core or test it, find its steel.")),
        List.of(
            new HoldPoint(
                Phrase.of("Loads, limits, pick-up and arrangement are as this sheet has them"),
                ENGINEER)));
  }

  private static Stage seats(NeedleCase site) {
    List<Phrase> work = new ArrayList<>();
    work.add(Phrase.of("Dig to good bearing at each seat; pads level on undisturbed ground."));
    if (site.is(SupportSettings.SEAT, "crib")) {
      work.add(Phrase.of("Build the cribs plumb, every crossing tight, load in their middle."));
    }
    work.add(
        Phrase.of("Set jacks over the web stiffeners, steel blocks as large as the jack base."));
    return new Stage(
        StageRole.BUILD,
        "Seats",
        work,
        List.of(
            new HoldPoint(Phrase.of("Ground under each pad carries what it must"), GEOTECHNICAL),
            new HoldPoint(
                Phrase.of("Cribs plumb, jacks rated, marked and calibrated"), COMPETENT)));
  }

  private static Stage setting(NeedleCase site, LoadSection.Load load) {
    Phrase place =
        site.row()
            ? Phrase.of(
                "Cut holes at {s}, every second one first, each needle packed before the next hole"
                    + " is cut.",
                "s",
                Amount.length(load.spacing()))
            : Phrase.of(
                "Set the two needles, {s} apart, either side of the column, level and tied to each"
                    + " other.",
                "s",
                Amount.length(load.spacing()));
    return new Stage(
        StageRole.BUILD,
        "Needles and pick-up",
        List.of(
            Phrase.of("Strut openings nearby and tie the structure before it is cut."),
            place,
            Phrase.of(
                "Fix and cure seats, keys, collar or packs; fit stiffeners; bring jacks snug.")),
        List.of(
            new HoldPoint(
                Phrase.of("Pick-up, welds, stiffeners and pocket grout have their strength"),
                INSPECTOR)));
  }

  private static Stage preload(double preload) {
    List<Phrase> work = new ArrayList<>();
    List<Phrase> steps = new ArrayList<>();
    for (int percent : STEPS_PERCENT) {
      steps.add(
          Phrase.of(
              "Jack to "
                  + percent
                  + " % of the preload: {j} at each jack nearest to the load, all sides together;"
                  + " hold 5 to 15 min; read structure, needles and seats.",
              "j",
              Amount.force(percent / 100.0 * preload)));
    }
    work.add(
        Phrase.of(
            "Stop at once where the structure lifts {l}, where a crack opens, or where load falls"
                + " off between readings.",
            "l",
            Amount.thickness(STOP_LIFT)));
    work.addAll(steps);
    work.add(
        Phrase.of(
            "Lock off on screw, lock nut or steel shims, wedges within 3 to 6 mm (1/8 to 1/4 in)"
                + " of the ram all the time; never leave a load on oil. Read again after 24 h."));
    return new Stage(
            StageRole.LOAD,
            "Preload in steps",
            work,
            List.of(
                new HoldPoint(Phrase.of("Readings of each step are within limits"), ENGINEER),
                new HoldPoint(
                    Phrase.of("Locked off, jacks blocked, 24 h reading steady"), ENGINEER)))
        .with(new StageDetail.LoadSteps(steps, Amount.thickness(STOP_LIFT)));
  }

  private static Stage digging(NeedleBeam beam) {
    List<Phrase> work = new ArrayList<>();
    work.add(
        Phrase.of("Cut or undermine the footing in stages; read and re-shim after each stage."));
    if (beam instanceof NeedleBeam.Tailed) {
      work.add(Phrase.of("Check the hold-down of every tail before and after each stage."));
    }
    work.add(
        Phrase.of("Excavate; no digging inside the seats' influence line unless it is shored."));
    work.add(Phrase.of("Read jacks and levels each shift; keep spare shims and wedges at hand."));
    return new Stage(
        StageRole.DIG,
        "Cut free and excavate",
        work,
        List.of(
            new HoldPoint(
                Phrase.of("The needles carry: no movement after the first cut"), ENGINEER),
            new HoldPoint(
                Phrase.of("Seats, cribs and jacks at the start of each shift and after rain"),
                COMPETENT)));
  }

  private static Stage giveBack() {
    return new Stage(
        StageRole.HAND_BACK,
        "Return of the load",
        List.of(
            Phrase.of("Build the new support; let it cure; dry-pack or plate and wedge it tight."),
            Phrase.of(
                "Lower the jacks in the steps of the preload backwards, 75, 50, 25 and 0 %, with"
                    + " the same readings and pauses."),
            Phrase.of("Draw the needles, fill and pack the holes, read on until steady.")),
        List.of(
            new HoldPoint(Phrase.of("New support and dry pack have their strength"), INSPECTOR),
            new HoldPoint(Phrase.of("Readings are steady before a needle is drawn"), ENGINEER)));
  }
}
