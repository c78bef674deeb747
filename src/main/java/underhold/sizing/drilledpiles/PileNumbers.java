package underhold.sizing.drilledpiles;

import java.util.List;
import underhold.mechanics.pile.axial.ExcludedLength;
import underhold.quantity.Measure;
import underhold.sizing.Amount;
import underhold.sizing.Setting;
import underhold.sizing.Source;

/** Numbers of the method that the user may change, for piles and ground. */
final class PileNumbers {
  private static final double INCH = 0.0254;
  private static final double KSI = 6894.757293;
  private static final Source JUDGE = Source.judgement();

  static final Setting CAP_ALLOWANCE =
      ratio("cap-allowance", "weight of caps and beams, share of the load", 0.10, 0, 0.5, JUDGE);
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

  static final Setting PILES =
      count("piles", "number of piles of one group; 0 for as many as needed", 0, 0, 4000, JUDGE);
  static final Setting MOST_PILES =
      count(
          "most-piles", "largest number of piles tried under a wall or slab", 2000, 4, 4000, JUDGE);
  static final Setting MOST_COLUMN_PILES =
      count(
          "most-column-piles", "largest number of piles tried under one column", 40, 4, 200, JUDGE);
  static final Setting SPACING_RATIO =
      ratio(
          "spacing",
          "least spacing of piles, in diameters; 2.5 to 3 in practice",
          3,
          2.5,
          10,
          Sources.SPACING);
  static final Setting LEAST_SPACING =
      length("least-spacing", "least spacing of piles", 0.75, 0.3, 5, JUDGE);
  static final Setting WIDEST_NEEDLES =
      length("needle-spacing", "widest spacing of needle beams under a wall", 2, 0.5, 6, JUDGE);
  static final Setting WIDEST_GRID =
      length("grid-spacing", "widest spacing of piles under a slab or box", 5, 1, 15, JUDGE);
  static final Setting OFF_WALL =
      length(
          "off-wall",
          "centre of pile from the side of the footing, 550 mm",
          0.55,
          0.2,
          3,
          Sources.SMALL_RIG);
  static final Setting ECCENTRICITY =
      small("eccentricity", "load off the centre of its piles", 0.075, 0, 1, Sources.TOLERANCE);
  static final Setting UNEVEN =
      ratio("uneven-slab", "factor for uneven load of piles under a slab", 1.1, 1, 2, JUDGE);
  static final Setting OVERSTRESS =
      ratio("loss-overstress", "overstress allowed when one pile is lost", 0.33, 0, 0.5, JUDGE);
  static final Setting LOSS_FACTOR =
      ratio(
          "loss-factor", "factor of safety on the ground when one pile is lost", 1.5, 1, 3, JUDGE);
  static final Setting LOSS_WALL =
      ratio(
          "loss-share-wall",
          "share of a lost needle that falls on one neighbour; at an end all of it, by the lever",
          1,
          0.5,
          1.5,
          Source.statics());
  static final Setting LOSS_SLAB =
      ratio(
          "loss-share-slab",
          "share of a lost pile under a slab that falls on one neighbour",
          0.5,
          0.25,
          1,
          JUDGE);

  static final Setting BRACE_LEVELS =
      count("brace-levels", "levels of bracing, where there is room for them", 1, 0, 10, JUDGE);
  static final Setting FIRST_BRACE =
      length("first-brace", "first bracing below the cap", 1.5, 0.3, 10, JUDGE);
  static final Setting DIG_BELOW =
      length(
          "dig-below-brace",
          "how far a stage digs below the brace it makes room for",
          0.5,
          0,
          2,
          JUDGE);
  static final Setting K_HELD =
      ratio(
          "k-held",
          "K of the span under a cap held sideways",
          1,
          0.65,
          1.5,
          Source.memory("ANSI/AISC 360, commentary"));
  static final Setting K_SWAY =
      ratio(
          "k-sway",
          "K of the span under a cap that may sway",
          2.1,
          1.5,
          3,
          Source.memory("ANSI/AISC 360, commentary"));
  static final Setting NH =
      new Setting(
          "nh",
          "growth of the horizontal modulus of sand with depth, 20 pci",
          Amount.unitWeight(5429),
          200,
          50_000,
          JUDGE);
  static final Setting K_CLAY =
      new Setting(
          "k-clay",
          "horizontal modulus of clay at the dug level, 500 psi",
          Amount.stress(3447),
          100,
          200_000,
          JUDGE);

  static final Setting SIDE_FULL =
      ratio(
          "side-full",
          "movement at which the side of soil is fully called up, share of the diameter (0.5 to 1 %)",
          0.01,
          0.002,
          0.05,
          Sources.CURVES);
  static final Setting SOCKET_FULL =
      ratio("socket-full", "the same for rock", 0.005, 0.001, 0.05, Source.judgement());
  static final Setting BASE_FULL_CLAY =
      ratio(
          "base-full-clay",
          "movement at which a base in clay or rock is fully called up, share of the diameter (4 to 5 %)",
          0.05,
          0.01,
          0.2,
          Sources.CURVES);
  static final Setting BASE_FULL_SAND =
      ratio("base-full-sand", "the same for sand (5 to 10 %)", 0.1, 0.01, 0.2, Sources.CURVES);
  static final Setting SETTLEMENT_FELT =
      ratio(
          "settlement-felt",
          "share of the head settlement that the structure feels; below 1 only with proved preloading",
          1,
          0,
          1,
          JUDGE);

  private PileNumbers() {}

  static List<Setting> all() {
    return List.of(
        CAP_ALLOWANCE,
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
        BELOW_TOE,
        PILES,
        MOST_PILES,
        MOST_COLUMN_PILES,
        SPACING_RATIO,
        LEAST_SPACING,
        WIDEST_NEEDLES,
        WIDEST_GRID,
        OFF_WALL,
        ECCENTRICITY,
        UNEVEN,
        OVERSTRESS,
        LOSS_FACTOR,
        LOSS_WALL,
        LOSS_SLAB,
        BRACE_LEVELS,
        FIRST_BRACE,
        DIG_BELOW,
        K_HELD,
        K_SWAY,
        NH,
        K_CLAY,
        SIDE_FULL,
        SOCKET_FULL,
        BASE_FULL_CLAY,
        BASE_FULL_SAND,
        SETTLEMENT_FELT);
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
