package underhold.sizing.needles;

import java.util.ArrayList;
import java.util.List;
import underhold.sizing.Amount;
import underhold.sizing.Check;
import underhold.sizing.HoldPoint;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Stage;
import underhold.sizing.StageDetail;
import underhold.sizing.StageRole;
import underhold.sizing.Unsettled;

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
    List<Check> setback = sheet.unsettled("seat-setback");
    if (!setback.isEmpty()) {
      sheet.stage(unresolved(setback));
    }
    sheet.stage(seats(site, sheet));
    sheet.stage(setting(site, sheet, load));
    sheet.stage(preload(preload));
    sheet.stage(digging(beam, !setback.isEmpty()));
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

  /** Seats that the excavation undermines: nothing here holds them, and nothing is dug before. */
  private static Stage unresolved(List<Check> setback) {
    return new Stage(
            StageRole.BUILD,
            "Not resolved: seats inside the influence line of the excavation",
            List.of(
                Phrase.of(
                    "The seats stand inside the influence line of the excavation and no shoring for them is designed on this sheet: "
                        + Unsettled.words(setback)
                        + "."),
                Phrase.of(
                    "Design shoring for the loads of the seats and build it before they are loaded; or found the seats at or below the bottom of the excavation, on piles or piers if need be; or move them outside the line; then make this sheet again.")),
            List.of(
                new HoldPoint(
                    Phrase.of(
                        "No load on the seats and no excavation before shoring designed for the loads of the seats, or deeper seats, or seats outside the line, are in and released in writing"),
                    ENGINEER)))
        .with(new StageDetail.ByOthers());
  }

  private static Stage seats(NeedleCase site, SheetBuilder sheet) {
    List<Phrase> work = new ArrayList<>();
    work.add(Phrase.of("Dig to good bearing at each seat; pads level on undisturbed ground."));
    if (site.is(SupportSettings.SEAT, "crib")) {
      work.add(Phrase.of("Build the cribs plumb, every crossing tight, load in their middle."));
    }
    work.add(
        Phrase.of("Set jacks over the web stiffeners, steel blocks as large as the jack base."));
    Unsettled.warning(
            "Seats and jacks are",
            sheet.unsettled("seat-bearing", "seat-settlement", "seat-piles", "crib-", "jack-"))
        .ifPresent(work::add);
    return new Stage(
        StageRole.BUILD,
        "Seats",
        work,
        List.of(
            new HoldPoint(Phrase.of("Ground under each pad carries what it must"), GEOTECHNICAL),
            new HoldPoint(
                Phrase.of("Cribs plumb, jacks rated, marked and calibrated"), COMPETENT)));
  }

  private static Stage setting(NeedleCase site, SheetBuilder sheet, LoadSection.Load load) {
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
    List<Phrase> work = new ArrayList<>();
    work.add(Phrase.of("Strut openings nearby and tie the structure before it is cut."));
    work.add(place);
    work.add(
        Phrase.of("Fix and cure seats, keys, collar or packs; fit stiffeners; bring jacks snug."));
    Unsettled.warning(
            "Needles and pick-up are",
            sheet.unsettled("needle-", "pick-up", "wall-between", "tail-", "differential-"))
        .ifPresent(work::add);
    return new Stage(
        StageRole.BUILD,
        "Needles and pick-up",
        work,
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
    work.add(
        Phrase.of(
            "Follow the ram with screw, lock nut or steel shims, wedges within 3 to 6 mm (1/8 to 1/4"
                + " in) of it all the time; never leave a load on oil."));
    work.addAll(steps);
    work.add(
        Phrase.of("Lock off on screw, lock nut or steel shims, block the jacks; read after 24 h."));
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

  private static Stage digging(NeedleBeam beam, boolean inside) {
    List<Phrase> work = new ArrayList<>();
    work.add(
        Phrase.of("Cut or undermine the footing in stages; read and re-shim after each stage."));
    if (beam instanceof NeedleBeam.Tailed) {
      work.add(Phrase.of("Check the hold-down of every tail before and after each stage."));
    }
    work.add(
        Phrase.of(
            inside
                ? "Excavate only behind the shoring designed for the seats, or above the level at"
                    + " which deeper seats stand: all digging here is inside their influence line."
                : "Excavate; no digging inside the seats' influence line unless it is shored."));
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
