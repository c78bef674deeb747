package underhold.consult.stage;

import java.util.List;
import underhold.sizing.Amount;
import underhold.sizing.Choice;
import underhold.sizing.Setting;
import underhold.sizing.SettingTable;
import underhold.sizing.Source;

/**
 * What a plan takes where no sheet gives a time, and how many rigs and crews there are. All are
 * working days or counts, all judgement, all open to change.
 */
public final class PlanSettings {
  private static final double LONGEST = 500;

  static final Setting SURVEY = days("survey-days", "condition survey and baseline readings", 10);
  static final Setting DECIDE =
      days("decide-days", "investigation until a method can be chosen for a zone", 20);
  static final Setting PREPARE = days("prepare-days", "trials and setting out for one zone", 5);
  static final Setting WATER = days("water-days", "lowering ground water and proving it", 10);
  static final Setting DRILL = days("drill-days", "drilling where no sheet gives its time", 10);
  static final Setting BUILD =
      days("build-days", "building one part of a support where no sheet gives its time", 5);
  static final Setting HARDEN =
      days(
          "harden-days",
          "concrete or grout of caps, seats and trial piles hardens where no sheet gives it",
          5);
  static final Setting STEP = days("step-days", "one step of load where no sheet gives it", 0.5);
  static final Setting LOCK_OFF =
      days("lock-off-days", "locking off, packing, and reading again", 1);
  static final Setting PITS = days("pits-days", "all pits of a zone where no sheet gives them", 30);
  static final Setting CLOSE = days("close-days", "joining pits to one wall", 5);
  static final Setting LIFT = days("lift-days", "one lift of digging with its brace", 5);
  static final Setting LASTING = days("lasting-days", "what stays: slab, columns, new footing", 20);
  static final Setting RETURN = days("return-days", "handing load back where no sheet gives it", 3);
  static final Setting REMOVE = days("remove-days", "taking temporary works of a zone away", 3);
  static final Setting REINSTATE =
      days("reinstate-days", "backfill, reinstatement and readings until steady", 10);
  static final Setting SHIFT =
      new Setting(
          "shift-hours", "working hours of a shift", Amount.hours(8), 1, 24, Source.judgement());
  static final Setting NIGHT_LOSS =
      new Setting(
          "night-loss",
          "hours of a night closure lost to handing over, walking in and out",
          Amount.hours(1),
          0,
          8,
          Source.judgement());
  static final Setting RIGS =
      new Setting(
          "rigs", "zones that are drilled at one time", Amount.count(1), 1, 20, Source.judgement());
  static final Setting PIT_ZONES =
      new Setting(
          "pit-zones",
          "zones in which pits are dug at one time",
          Amount.count(1),
          1,
          20,
          Source.judgement());
  static final Choice TRACK_STEPS =
      new Choice(
          "load-by-closure",
          "whether each step of load below live rail waits for a closure of its own",
          List.of("yes", "no"),
          Source.judgement());

  /** What may be set. */
  public static final SettingTable TABLE =
      new SettingTable(
          "stages",
          List.of(
              SURVEY,
              DECIDE,
              PREPARE,
              WATER,
              DRILL,
              BUILD,
              HARDEN,
              STEP,
              LOCK_OFF,
              PITS,
              CLOSE,
              LIFT,
              LASTING,
              RETURN,
              REMOVE,
              REINSTATE,
              SHIFT,
              NIGHT_LOSS,
              RIGS,
              PIT_ZONES),
          List.of(TRACK_STEPS));

  private PlanSettings() {}

  private static Setting days(String name, String label, double fallback) {
    return new Setting(
        name, "working days: " + label, Amount.count(fallback), 0, LONGEST, Source.judgement());
  }
}
