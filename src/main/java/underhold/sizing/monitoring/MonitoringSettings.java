package underhold.sizing.monitoring;

import java.util.List;
import underhold.mechanics.movement.DeepBeam;
import underhold.quantity.Measure;
import underhold.sizing.Amount;
import underhold.sizing.Choice;
import underhold.sizing.Setting;
import underhold.sizing.SettingTable;
import underhold.sizing.Source;

/** Settings of the monitoring plan, each with its default, range, source and basis. */
final class MonitoringSettings {
  private static final double DAY = 24;
  private static final double WEEK = 7 * DAY;

  static final Setting ALERT =
      new Setting(
          "alert-share",
          "alert level as a share of the limit; green below it",
          percent(0.5),
          0.2,
          0.7,
          Sources.TRIGGER_PRACTICE);
  static final Setting ACTION =
      new Setting(
          "action-share",
          "action level as a share of the limit",
          percent(0.8),
          0.71,
          0.95,
          Sources.TRIGGER_PRACTICE);
  static final Setting STOP =
      new Setting(
          "stop-share",
          "stop level as a share of the limit",
          percent(1),
          0.96,
          1,
          Sources.TRIGGER_PRACTICE);
  static final Setting INSTRUMENT =
      new Setting(
          "instrument-accuracy",
          "accuracy of one reading of level or position",
          Amount.thickness(0.001),
          0.00001,
          0.02,
          Sources.ACCURACY_EXAMPLE);
  static final Setting ACCURACY_SHARE =
      new Setting(
          "accuracy-share",
          "most that the accuracy may be of the alert level",
          Amount.ratio(1.0 / 3),
          0.05,
          0.5,
          Sources.ACCURACY_EXAMPLE);
  static final Setting SPACING =
      new Setting(
          "point-spacing",
          "distance between neighbouring points along the wall",
          Amount.length(5),
          1,
          20,
          Source.practice());
  static final Setting FADE =
      new Setting(
          "fade-depths",
          "depths of the excavation over which the movement is taken to fade to nothing; less is more severe",
          Amount.ratio(1),
          0.25,
          3,
          Source.judgement());
  static final Setting SIDEWAYS =
      new Setting(
          "sideways-share",
          "movement sideways as a share of settlement",
          percent(1),
          0,
          2,
          Sources.LIFT_PRACTICE);
  static final Setting STOREY =
      new Setting("storey-height", "height of a storey", Amount.length(3), 2, 6, Source.practice());
  static final Setting WALL_RATIO =
      new Setting(
          "wall-modulus-ratio",
          "E / G of masonry walls",
          Amount.ratio(DeepBeam.MASONRY_RATIO),
          0.5,
          20,
          Sources.of(DeepBeam.CITATION));
  static final Setting FRAME_RATIO =
      new Setting(
          "frame-modulus-ratio",
          "E / G of frames",
          Amount.ratio(DeepBeam.FRAME_RATIO),
          0.5,
          20,
          Sources.of(DeepBeam.CITATION));
  static final Setting FREQUENCY =
      new Setting(
          "vibration-frequency",
          "dominant frequency of the vibration in hertz; 10 and below is the careful end",
          Amount.count(10),
          1,
          250,
          Source.judgement());
  static final Setting TARGET_ROWS =
      new Setting(
          "target-rows",
          "rows of position targets on the face, foot and head",
          Amount.count(2),
          1,
          6,
          Source.practice());
  static final Setting BENCHMARKS =
      new Setting(
          "benchmarks",
          "datum points outside every zone of influence",
          Amount.count(2),
          2,
          10,
          Source.practice());
  static final Setting GEOPHONES =
      new Setting(
          "vibration-monitors", "vibration monitors", Amount.count(2), 1, 20, Source.practice());
  static final Setting BASELINE_SETS =
      new Setting(
          "baseline-sets",
          "sets of readings before any work",
          Amount.count(3),
          2,
          30,
          Source.practice());
  static final Setting BASELINE_TIME =
      new Setting(
          "baseline-time",
          "time over which they are spread",
          weeks(2),
          WEEK / 7,
          52 * WEEK,
          Source.practice());
  static final Setting WORK_TIME =
      new Setting(
          "work-time",
          "time in which the excavation is open or work goes on beside it; replace it by the programme",
          weeks(8),
          WEEK / 7,
          520 * WEEK,
          Source.judgement());
  static final Setting WORK_INTERVAL =
      new Setting(
          "work-interval",
          "time between sets while work goes on",
          Amount.hours(DAY),
          0.25,
          4 * WEEK,
          Source.practice());
  static final Setting AFTER_TIME =
      new Setting(
          "after-time",
          "least time of readings after the work",
          weeks(8),
          WEEK / 7,
          520 * WEEK,
          Source.judgement());
  static final Setting AFTER_INTERVAL =
      new Setting(
          "after-interval",
          "time between sets after the work",
          days(7),
          DAY,
          13 * WEEK,
          Source.practice());

  static final Choice CATEGORY =
      new Choice(
          "damage-category",
          "worst damage accepted",
          List.of("very-slight", "negligible", "slight", "moderate"),
          Source.judgement());
  static final Choice BENDING =
      new Choice(
          "bending",
          "the way the wall is taken to bend: it hogs where the movement fades with distance, it sags over a trough",
          List.of("worse", "hogging", "sagging"),
          Source.judgement());
  static final Choice AUTHOR =
      new Choice(
          "distortion-author",
          "whose limit of angular distortion governs beside a stated one",
          List.of("strictest", "skempton-macdonald", "bjerrum", "sowers", "hutchings"),
          Source.judgement());

  static final SettingTable TABLE =
      new SettingTable(
          MonitoringMethod.ID,
          List.of(
              ALERT,
              ACTION,
              STOP,
              INSTRUMENT,
              ACCURACY_SHARE,
              SPACING,
              FADE,
              SIDEWAYS,
              STOREY,
              WALL_RATIO,
              FRAME_RATIO,
              FREQUENCY,
              TARGET_ROWS,
              BENCHMARKS,
              GEOPHONES,
              BASELINE_SETS,
              BASELINE_TIME,
              WORK_TIME,
              WORK_INTERVAL,
              AFTER_TIME,
              AFTER_INTERVAL),
          List.of(CATEGORY, BENDING, AUTHOR));

  private MonitoringSettings() {}

  static Amount percent(double share) {
    return new Amount(share, Measure.RATIO, "%", "%");
  }

  static Amount weeks(double number) {
    return new Amount(number * WEEK, Measure.DURATION, "weeks", "weeks");
  }

  private static Amount days(double number) {
    return new Amount(number * DAY, Measure.DURATION, "days", "days");
  }
}
