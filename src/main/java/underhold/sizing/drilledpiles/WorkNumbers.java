package underhold.sizing.drilledpiles;

import java.util.List;
import underhold.sizing.Setting;
import underhold.sizing.Source;

/** Numbers of the method that the user may change, for transfer, drilling and time. */
final class WorkNumbers {
  private static final Source JUDGE = Source.judgement();

  static final Setting LOAD_WIDTH =
      PileNumbers.length(
          "load-width", "width over which a column loads its beam", 0.5, 0, 5, JUDGE);
  static final Setting LOCK_OFF =
      PileNumbers.ratio(
          "lock-off",
          "jack load at lock-off, share of the working load (1.0 to 1.1)",
          1,
          0.5,
          1.1,
          JUDGE);
  static final Setting LIFT_LIMIT =
      PileNumbers.small(
          "lift-limit",
          "upward movement that stops the jacking (1 to 3 mm)",
          0.002,
          0.0005,
          0.01,
          JUDGE);
  static final Setting TEST_LOAD =
      PileNumbers.ratio(
          "test-load",
          "load of a load test, share of the working load",
          2,
          1,
          3,
          Sources.TEST_LOAD);
  static final Setting PROOF_LOAD =
      PileNumbers.ratio(
          "proof-load",
          "jack load to prove each pile against the structure, where its weight allows",
          1.5,
          1,
          2,
          Sources.JACKING);
  static final Setting TESTS =
      PileNumbers.count("tests", "load tests before the working piles", 1, 0, 50, JUDGE);

  static final Setting RIG_TOP =
      PileNumbers.length(
          "rig-top", "headroom that rig and head take up, 4 to 5 ft", 1.37, 0.3, 5, JUDGE);
  static final Setting LEAST_PIECE =
      PileNumbers.length("least-piece", "shortest practical piece of casing", 0.75, 0.3, 2, JUDGE);
  static final Setting LONGEST_PIECE =
      PileNumbers.length("longest-piece", "longest piece of casing", 6, 1, 15, JUDGE);
  static final Setting LARGE_HEADROOM =
      PileNumbers.length(
          "large-headroom", "headroom below which a large rig cannot work", 8, 4, 30, JUDGE);
  static final Setting SETUP =
      PileNumbers.hours(
          "setup-hours", "setting up, grouting and moving, each pile", 4, 0.5, 48, JUDGE);
  static final Setting SOIL_RATE =
      PileNumbers.length("soil-rate", "length drilled in soil in an hour", 2, 0.1, 20, JUDGE);
  static final Setting ROCK_RATE =
      PileNumbers.length(
          "rock-rate", "length drilled in rock in an hour (1 to 3 m)", 1, 0.05, 10, JUDGE);
  static final Setting JOINT_HOURS =
      PileNumbers.hours("joint-hours", "each joint of casing", 0.5, 0.05, 4, JUDGE);
  static final Setting OBSTRUCTION =
      PileNumbers.ratio(
          "obstruction-factor",
          "factor on drilling time where obstructions are frequent",
          1.5,
          1,
          5,
          JUDGE);
  static final Setting SHIFT =
      PileNumbers.hours("shift-hours", "working hours of a shift", 8, 2, 12, JUDGE);
  static final Setting POSSESSION_LOSS =
      PileNumbers.hours(
          "possession-loss",
          "hours of a night closure lost to setting up and clearing",
          1.5,
          0,
          12,
          JUDGE);
  static final Setting RIGS = PileNumbers.count("rigs", "rigs at work", 1, 1, 10, JUDGE);
  static final Setting OVERBREAK =
      PileNumbers.ratio("overbreak", "concrete ordered over the net volume", 1.2, 1, 3, JUDGE);
  static final Setting BULKING =
      PileNumbers.ratio("bulking", "loose spoil over soil in place", 1.3, 1, 2, JUDGE);

  private WorkNumbers() {}

  static List<Setting> all() {
    return List.of(
        LOAD_WIDTH,
        LOCK_OFF,
        LIFT_LIMIT,
        TEST_LOAD,
        PROOF_LOAD,
        TESTS,
        RIG_TOP,
        LEAST_PIECE,
        LONGEST_PIECE,
        LARGE_HEADROOM,
        SETUP,
        SOIL_RATE,
        ROCK_RATE,
        JOINT_HOURS,
        OBSTRUCTION,
        SHIFT,
        POSSESSION_LOSS,
        RIGS,
        OVERBREAK,
        BULKING);
  }
}
