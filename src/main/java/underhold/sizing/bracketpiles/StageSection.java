package underhold.sizing.bracketpiles;

import static underhold.sizing.bracketpiles.BracketInputs.*;

import java.util.ArrayList;
import java.util.List;
import underhold.sizing.Amount;
import underhold.sizing.HoldPoint;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Stage;
import underhold.sizing.StageDetail;
import underhold.sizing.StageRole;

/** Order of work: everything carries before the ground goes. */
final class StageSection {
  private static final String ENGINEER = "engineer of record";
  private static final String GEOTECHNICAL = "geotechnical engineer";
  private static final String WELDING = "special inspector, welding";

  private static final int QUARTERS = 4;

  private StageSection() {}

  static void write(BracketCase site, PileTrial pile, SheetBuilder sheet) {
    sheet.stage(
        stage(
            StageRole.PREPARE,
            "Before drilling",
            List.of(
                Phrase.of(
                    "Survey the structure and its cracks; set level points at every bracket and sideways targets at the edge; read until steady."),
                Phrase.of(
                    "Expose the edge at each seat; core or sound it; find services on the pile line."),
                Phrase.of("Verification test on a sacrificial pile in each bond stratum.")),
            hold(
                "The edge, who carries the moment, the load and the bond are as assumed",
                ENGINEER)));
    sheet.stage(
        stage(
            StageRole.DRILL,
            "Install",
            List.of(
                Phrase.of(
                    "Drill and grout from the surface, no two fresh piles side by side; first threaded joint {d} below the bracket, marked on each pile.",
                    "d",
                    Amount.length(pile.jointDepth())),
                Phrase.of(
                    "Survey each pile: place within {m}, plumb within 2 %; reckon the eccentricity anew from what was built.",
                    "m", Amount.thickness(0.0254))),
            hold(
                "As-built eccentricity is within the design, or the design was changed",
                ENGINEER)));
    sheet.stage(
        stage(
                StageRole.BUILD,
                "Cure and test",
                List.of(
                    Phrase.of(
                        "Wait {c} and until the grout has reached its strength.",
                        "c",
                        site.amount(BracketSetting.CURE)),
                    TestSection.proof(site)),
                hold(
                    "Tests accepted: creep, slope at most 0.025 in/kip (0.14 mm/kN), movement",
                    GEOTECHNICAL))
            .with(new StageDetail.Curing()));
    sheet.stage(
        stage(
            StageRole.BUILD,
            "Brackets",
            brackets(site),
            hold("Welds and anchors inspected; seats full", WELDING)));
    sheet.stage(preload(site));
    lock(site).forEach(sheet::stage);
    sheet.stage(
        stage(
            StageRole.DIG,
            "Dig",
            dig(site),
            hold(
                "Before each lift: readings within limits, shims tight"
                    + (site.bareLength() > 0 && site.braceLevels() > 0
                        ? ", braces of the lift above carry"
                        : ""),
                ENGINEER)));
  }

  private static List<Phrase> brackets(BracketCase site) {
    List<Phrase> work = new ArrayList<>();
    work.add(
        site.onColumn()
            ? Phrase.of(
                "Expose one side of the column's footing at a time, fit its bracket, close it before the next.")
            : Phrase.of(
                "Expose the underside in bays no longer than {s}, never two next to each other; fit and shim the bracket before the next bay.",
                "s",
                Amount.length(site.spacing())));
    work.add(
        Phrase.of(
            "Weld sleeve and plates; seat on dry pack or non-shrink grout of 50 to 75 mm (2 to 3 in), shims over the full width."));
    if (site.path() == MomentPath.COUPLE) {
      work.add(Phrase.of("Drill and set the anchors, prove a sample by pulling."));
    }
    if (site.path() == MomentPath.TIED) {
      work.add(Phrase.of("Pack the pile head tight against the edge, steel to steel or concrete."));
    }
    return work;
  }

  /** Load in steps, each held; nothing here goes past the last of them. */
  private static Stage preload(BracketCase site) {
    List<Phrase> steps = steps(site);
    List<Phrase> work = new ArrayList<>();
    work.add(
        Phrase.of(
            "Hold each step for 5 to 15 minutes and read edge and pile head; no bracket goes on to the next step alone."));
    work.add(
        Phrase.of(
            "Stop when the edge lifts {l}, the head leans {h}, or the load does not hold; never above 1.1 times the dead load's share.",
            "l",
            site.amount(BracketSetting.LIFT_LIMIT),
            "h",
            Amount.thickness(site.headSideways())));
    work.add(
        Phrase.of(
            "Lock or shim every jack before the shift or the closure ends: nothing hangs on oil alone."));
    work.addAll(steps);
    return stage(
            StageRole.LOAD,
            "Preload",
            work,
            hold("Edge, pile heads and jacks read at this step: steady, within limits", ENGINEER))
        .with(new StageDetail.LoadSteps(steps, site.amount(BracketSetting.LIFT_LIMIT)));
  }

  private static List<Phrase> steps(BracketCase site) {
    double load = site.get(BracketSetting.PRELOAD) * site.load();
    List<Phrase> steps = new ArrayList<>();
    for (int quarter = 1; quarter <= QUARTERS; quarter++) {
      steps.add(
          Phrase.of(
              "Jack between bracket and edge to {j}; hold, read edge and pile head.",
              "j",
              Amount.force(load * quarter / QUARTERS)));
    }
    return steps;
  }

  /** What follows the last step, each with its own hold point. */
  private static List<Stage> lock(BracketCase site) {
    return List.of(
        stage(
            StageRole.LOCK,
            "Shims",
            List.of(Phrase.of("With the load on the jacks drive the shims tight and weld them.")),
            hold(
                "Shims tight over their width, welds inspected, before a jack is released",
                WELDING)),
        stage(
            StageRole.LOCK,
            "Release of the jacks",
            List.of(
                Phrase.of(
                    "Release the jacks; expect {l} to be lost. Read again after a day and re-level.",
                    "l",
                    site.amount(BracketSetting.LOCK_OFF))),
            hold("All brackets locked off, readings steady for a day, nothing lifted", ENGINEER)));
  }

  private static List<Phrase> dig(BracketCase site) {
    List<Phrase> work = new ArrayList<>();
    work.add(Phrase.of("Dig in lifts; read after each; check and re-level shims after each."));
    if (site.bareLength() > 0) {
      work.add(
          site.braceLevels() > 0
              ? Phrase.of(
                  "No pile stands bare for more than {b} below a waler that carries.",
                  "b",
                  Amount.length(site.bareBay()))
              : Phrase.of(
                  "The piles stand bare over {b} without braces.",
                  "b",
                  Amount.length(site.bareLength())));
    }
    work.add(
        Phrase.of(
            "Warn and stop at the levels of the monitoring plan: shares of the limit of {m}, or of a stricter one that governs.",
            "m",
            site.amount(MOVEMENT_LIMIT)));
    return work;
  }

  private static Stage stage(StageRole role, String title, List<Phrase> work, HoldPoint hold) {
    return new Stage(role, title, work, List.of(hold));
  }

  private static HoldPoint hold(String condition, String by) {
    return new HoldPoint(Phrase.of(condition), by);
  }
}
