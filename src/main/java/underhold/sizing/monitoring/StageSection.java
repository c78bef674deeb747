package underhold.sizing.monitoring;

import java.util.List;
import underhold.sizing.HoldPoint;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Stage;
import underhold.sizing.StageRole;

/** Order of work with its hold points, and who acts and how at each level. */
final class StageSection {
  private static final String ENGINEER = "engineer of record";
  private static final String OWNER = "owner of the structure, with the engineer of record";

  private StageSection() {}

  static void write(MonitoringCase site, SheetBuilder sheet, Triggers triggers) {
    sheet.stage(before(site));
    sheet.stage(during(site, triggers));
    sheet.stage(
        level(
            "At the alert level",
            Phrase.of(
                "From {a}, or the alert difference between neighbouring points: the surveyor tells the engineer and the contractor the same day and reads again within a day; the engineer looks for the cause and shortens the interval.",
                "a",
                triggers.alert()),
            "Cause found, next reading below the level or the engineer's written leave to go on",
            ENGINEER));
    sheet.stage(
        level(
            "At the action level",
            Phrase.of(
                "From {a}, or the action difference, or the vibration allowed: digging stops at that face; the engineer changes the work (props, berm, smaller lifts, less water lowered) and the contractor does it before digging again; owner and authority are told.",
                "a",
                triggers.action()),
            "Changed work is in place and readings show that the movement has stopped",
            ENGINEER));
    sheet.stage(
        level(
            "At the stop level",
            Phrase.of(
                "From {a}, or the stop difference, or a new crack of the category accepted: all work within reach stops, the contractor makes the face safe (backfill, berm, props), people leave the part concerned, and the engineer surveys the structure.",
                "a",
                triggers.stop()),
            "Structure found safe, a new prediction and a new plan agreed",
            OWNER));
    sheet.stage(
        new Stage(
            StageRole.AFTER,
            "After the work",
            List.of(
                Phrase.of(
                    "Read every {t} for {all} at least, longer while clay drains.",
                    "t",
                    site.amount(MonitoringSettings.AFTER_INTERVAL),
                    "all",
                    site.amount(MonitoringSettings.AFTER_TIME)),
                Phrase.of("Survey the structure again, beside the survey of before.")),
            List.of(
                new HoldPoint(
                    Phrase.of("Three sets in turn agree within the accuracy of the instrument"),
                    ENGINEER))));
  }

  private static Stage before(MonitoringCase site) {
    return new Stage(
        StageRole.PREPARE,
        "Before any work",
        List.of(
            Phrase.of(
                "Tell the owners of adjoining structures in writing, in time by the local code, and get leave to enter."),
            Phrase.of(
                "Survey the condition of the structure, inside and outside: photographs, cracks with their widths, tilt; agree it with the owner."),
            Phrase.of(
                "Agree limits, levels and who acts, by name and telephone, with the owner and the contractor."),
            Phrase.of(
                "Set points at {p}, gauges across the cracks found, datum points outside the zone, vibration monitors at the foundation.",
                "p",
                site.amount(MonitoringSettings.SPACING)),
            Phrase.of(
                "Take {n} sets over {t}.",
                "n",
                site.amount(MonitoringSettings.BASELINE_SETS),
                "t",
                site.amount(MonitoringSettings.BASELINE_TIME))),
        List.of(
            new HoldPoint(
                Phrase.of(
                    "Baseline readings are steady within the accuracy asked for, and their swing with temperature is known: no work before"),
                ENGINEER),
            new HoldPoint(
                Phrase.of("A prediction of movement is there and lies within the limits"),
                ENGINEER)));
  }

  private static Stage during(MonitoringCase site, Triggers triggers) {
    return new Stage(
        StageRole.WATCH,
        "While work goes on",
        List.of(
            Phrase.of(
                "Read all points every {t}, and before and after each lift of digging, each prop taken out, each change of water level.",
                "t",
                site.amount(MonitoringSettings.WORK_INTERVAL)),
            Phrase.of(
                "Read crack gauges every two weeks at least and whenever a level is reached."),
            Phrase.of("Vibration monitors run all the time that plant works, and warn by message."),
            Phrase.of(
                "Green below {a}: the surveyor reports weekly, with graphs against time and against the stage of digging.",
                "a",
                triggers.alert())),
        List.of(
            new HoldPoint(
                Phrase.of(
                    "No lift is dug before the readings of the lift above are in and below the alert level"),
                ENGINEER)));
  }

  private static Stage level(String title, Phrase work, String release, String by) {
    return new Stage(
        StageRole.TRIGGER, title, List.of(work), List.of(new HoldPoint(Phrase.of(release), by)));
  }
}
