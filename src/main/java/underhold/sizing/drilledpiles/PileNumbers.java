package underhold.sizing.drilledpiles;

import java.util.List;
import underhold.mechanics.pile.axial.ExcludedLength;
import underhold.quantity.Measure;
import underhold.sizing.Amount;
import underhold.sizing.Setting;
import underhold.sizing.Source;

/** Numbers of the method that the user may change: the pile and the ground. */
final class PileNumbers {
  private static final double INCH = 0.0254;
  private static final double KSI = 6894.757293;
  private static final Source JUDGE = Source.judgement();

  static final Setting SMALL_DIAMETER =
      small(
          "small-diameter",
          "casing of a small rig, outer diameter, 9 5/8 in",
          9.625 * INCH,
          0.1,
          0.45,
          Sources.SMALL_RIG);
  static final Setting SMALL_WALL =
      small(
          "small-wall",
          "casing of a small rig, wall, 0.545 in",
          0.545 * INCH,
          0.004,
          0.03,
          Sources.SMALL_RIG);
  static final Setting LARGE_DIAMETER =
      small(
          "large-diameter",
          "casing of a large rig, outer diameter, 24 in",
          24 * INCH,
          0.3,
          1.5,
          JUDGE);
  static final Setting LARGE_WALL =
      small("large-wall", "casing of a large rig, wall, 1/2 in", 0.5 * INCH, 0.006, 0.05, JUDGE);
  static final Setting RUST =
      small(
          "rust",
          "loss of wall by rust, on the outside",
          INCH / 16,
          0,
          0.003,
          Source.memory("usual allowance, 1/16 in"));
  static final Setting CASING_YIELD =
      stress(
          "casing-yield",
          "yield stress of the casing; 80 ksi only with mill certificates",
          50 * KSI,
          240_000,
          560_000,
          JUDGE);
  static final Setting STEEL_MODULUS =
      stress(
          "steel-modulus",
          "modulus of steel, 29,000 ksi",
          29_000 * KSI,
          1.9e8,
          2.1e8,
          Source.memory("ANSI/AISC 360"));
  static final Setting CONCRETE =
      stress("concrete", "f'c of concrete or grout, 4000 psi", 4 * KSI, 15_000, 60_000, JUDGE);
  static final Setting SMALL_BAR =
      steelArea(
          "small-bar-area",
          "centre bar of a small pile, 57 mm (2 1/4 in)",
          2.55e-3,
          0,
          0.01,
          JUDGE);
  static final Setting LARGE_BARS =
      steelArea("large-bar-area", "bars of a large pile, about 1 %", 2.92e-3, 0, 0.1, JUDGE);
  static final Setting BAR_YIELD =
      stress("bar-yield", "yield stress of bars", 60 * KSI, 240_000, 700_000, JUDGE);
  static final Setting SOCKET_CLEARANCE =
      small(
          "socket-clearance",
          "socket in rock less than the casing's inner diameter",
          0.02,
          0,
          0.1,
          JUDGE);

  static final Setting HEAD_ABOVE =
      length(
          "head-above-footing",
          "underside of cap above the underside of the footing",
          0,
          0,
          3,
          JUDGE);
  static final Setting DISTURBED =
      length(
          "disturbed-zone",
          "ground below the dug level that is not counted, 5 ft",
          ExcludedLength.TOP_METRES,
          0,
          5,
          JUDGE);
  static final Setting CLAY_BASE_EXCLUDED =
      ratio(
          "clay-base-excluded",
          "shaft above a base in clay that is not counted, in diameters",
          1,
          0,
          2,
          Sources.ALPHA_1999);
  static final Setting WEATHERED =
      length(
          "weathered-rock",
          "top of rock that is not counted: casing seat, weathered rock",
          0.5,
          0,
          5,
          JUDGE);
  static final Setting FIXED_ALPHA =
      ratio(
          "fixed-alpha",
          "alpha where one value is taken for all clay",
          0.45,
          0.1,
          1,
          Sources.ALPHA_FIXED);
  static final Setting SOCKET_COEFFICIENT =
      ratio(
          "socket-coefficient",
          "C of a normal rock socket; 0.63 at the lower bound of tests",
          1,
          0.3,
          1,
          Sources.ROCK_SIDE);
  static final Setting LEAST_BOND =
      length("least-embedment", "least embedment below the ground not counted", 3, 1, 15, JUDGE);
  static final Setting LONGEST_BOND =
      length("longest-embedment", "longest embedment below the dug level", 20, 3, 60, JUDGE);
  static final Setting PROVED_BELOW =
      length(
          "last-layer-proved",
          "how far below its top the last layer is taken as proved",
          3,
          0,
          40,
          JUDGE);
  static final Setting BORING_DEPTH =
      length("boring-depth", "depth of the borings below ground; 0 if not told", 0, 0, 150, JUDGE);
  static final Setting BELOW_TOE =
      length("ground-below-toe", "ground that must be known below the toes", 3, 0, 20, JUDGE);

  private PileNumbers() {}

  static List<Setting> all() {
    return List.of(
        SMALL_DIAMETER,
        SMALL_WALL,
        LARGE_DIAMETER,
        LARGE_WALL,
        RUST,
        CASING_YIELD,
        STEEL_MODULUS,
        CONCRETE,
        SMALL_BAR,
        LARGE_BARS,
        BAR_YIELD,
        SOCKET_CLEARANCE,
        HEAD_ABOVE,
        DISTURBED,
        CLAY_BASE_EXCLUDED,
        WEATHERED,
        FIXED_ALPHA,
        SOCKET_COEFFICIENT,
        LEAST_BOND,
        LONGEST_BOND,
        PROVED_BELOW,
        BORING_DEPTH,
        BELOW_TOE);
  }

  static Setting length(
      String name, String label, double value, double least, double most, Source source) {
    return new Setting(name, label, Amount.length(value), least, most, source);
  }

  static Setting small(
      String name, String label, double value, double least, double most, Source source) {
    return new Setting(name, label, Amount.thickness(value), least, most, source);
  }

  static Setting ratio(
      String name, String label, double value, double least, double most, Source source) {
    return new Setting(name, label, Amount.ratio(value), least, most, source);
  }

  static Setting count(
      String name, String label, double value, double least, double most, Source source) {
    return new Setting(name, label, Amount.count(value), least, most, source);
  }

  static Setting hours(
      String name, String label, double value, double least, double most, Source source) {
    return new Setting(name, label, Amount.hours(value), least, most, source);
  }

  private static Setting stress(
      String name, String label, double value, double least, double most, Source source) {
    return new Setting(name, label, Amount.stress(value), least, most, source);
  }

  private static Setting steelArea(
      String name, String label, double value, double least, double most, Source source) {
    return new Setting(
        name, label, new Amount(value, Measure.AREA, "mm2", "in2"), least, most, source);
  }
}
