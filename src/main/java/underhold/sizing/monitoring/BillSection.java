package underhold.sizing.monitoring;

import static underhold.sizing.monitoring.MonitoringInputs.*;
import static underhold.sizing.monitoring.MonitoringSettings.*;

import underhold.quantity.Measure;
import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.Setting;
import underhold.sizing.SheetBuilder;

/** Points, instruments, sets of readings and their time. */
final class BillSection {
  /** Fewest points from which bending can be read. */
  private static final double FEWEST_POINTS = 3;

  private static final double ROUNDING = 1e-9;

  private BillSection() {}

  static void write(MonitoringCase site, SheetBuilder sheet) {
    double points = Math.max(FEWEST_POINTS, up(site.get(LENGTH) / site.get(SPACING)) + 1);
    sheet
        .quantity(
            "levelling points at the foot",
            Amount.count(points),
            "one at each end and at the spacing set between; at least 3, from which bending can be read")
        .quantity(
            "position targets on the face",
            Amount.count(points * site.get(TARGET_ROWS)),
            "one above each levelling point in each row")
        .quantity(
            "crack gauges",
            Amount.count(points - 1),
            "at least one for each bay; besides, one on each crack that the survey finds")
        .quantity(
            "datum points",
            site.amount(BENCHMARKS),
            "outside every zone of influence above, checked against each other")
        .quantity(
            "vibration monitors", site.amount(GEOPHONES), "at the foundation nearest the work")
        .quantity(
            "condition survey",
            Amount.count(1),
            "photographs and crack widths, agreed with the owner, before any work");
    double work = sets(site, WORK_TIME, WORK_INTERVAL);
    double after = sets(site, AFTER_TIME, AFTER_INTERVAL);
    sheet
        .quantity(
            "sets of readings before", site.amount(BASELINE_SETS), "on different days and weathers")
        .quantity(
            "sets of readings during the work", Amount.count(work), "work time over its interval")
        .quantity(
            "sets of readings after",
            Amount.count(after),
            "least; they go on until three sets in turn agree within the accuracy");
    sheet
        .time("before any work", site.amount(BASELINE_TIME), Phrase.of("Baseline."))
        .time(
            "during the work",
            site.amount(WORK_TIME),
            Phrase.of("One set every {t}.", "t", site.amount(WORK_INTERVAL)))
        .time(
            "after the work",
            site.amount(AFTER_TIME),
            Phrase.of("One set every {t}, until steady.", "t", site.amount(AFTER_INTERVAL)))
        .time(
            "in all",
            new Amount(
                site.get(BASELINE_TIME) + site.get(WORK_TIME) + site.get(AFTER_TIME),
                Measure.DURATION,
                "weeks",
                "weeks"),
            Phrase.of("Sum of the three."));
  }

  private static double sets(MonitoringCase site, Setting time, Setting interval) {
    return up(site.get(time) / site.get(interval));
  }

  private static double up(double value) {
    return Math.ceil(value - ROUNDING);
  }
}
