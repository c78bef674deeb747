package underhold.sizing.drilledpiles;

import java.util.List;
import underhold.sizing.Amount;
import underhold.sizing.Setting;
import underhold.sizing.Source;

/** Numbers of the method that the user may change: the bared column and settlement. */
final class ColumnNumbers {
  private static final Source JUDGE = Source.judgement();

  static final Setting BRACE_LEVELS =
      PileNumbers.count(
          "brace-levels", "levels of bracing, where there is room for them", 1, 0, 10, JUDGE);
  static final Setting FIRST_BRACE =
      PileNumbers.length("first-brace", "first bracing below the cap", 1.5, 0.3, 10, JUDGE);
  static final Setting DIG_BELOW =
      PileNumbers.length(
          "dig-below-brace",
          "how far a stage digs below the brace it makes room for",
          0.5,
          0,
          2,
          JUDGE);
  static final Setting K_HELD =
      PileNumbers.ratio(
          "k-held",
          "K of the span under a cap held sideways",
          1,
          0.65,
          1.5,
          Source.memory("ANSI/AISC 360, commentary"));
  static final Setting K_SWAY =
      PileNumbers.ratio(
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
      PileNumbers.ratio(
          "side-full",
          "movement at which the side of soil is fully called up, share of the diameter (0.5 to 1 %)",
          0.01,
          0.002,
          0.05,
          Sources.CURVES);
  static final Setting SOCKET_FULL =
      PileNumbers.ratio("socket-full", "the same for rock", 0.005, 0.001, 0.05, Source.judgement());
  static final Setting BASE_FULL_CLAY =
      PileNumbers.ratio(
          "base-full-clay",
          "movement at which a base in clay or rock is fully called up, share of the diameter (4 to 5 %)",
          0.05,
          0.01,
          0.2,
          Sources.CURVES);
  static final Setting BASE_FULL_SAND =
      PileNumbers.ratio(
          "base-full-sand", "the same for sand (5 to 10 %)", 0.1, 0.01, 0.2, Sources.CURVES);
  static final Setting SETTLEMENT_FELT =
      PileNumbers.ratio(
          "settlement-felt",
          "share of the head settlement that the structure feels; below 1 only with proved preloading",
          1,
          0,
          1,
          JUDGE);
  static final Setting STEEL_LOAD_FACTOR =
      PileNumbers.ratio(
          "steel-load-factor",
          "factor on all loads where steel is designed by LRFD",
          1.6,
          1.2,
          2,
          Source.memory("ASCE 7, load factor of live load, taken for all loads"));

  private ColumnNumbers() {}

  static List<Setting> all() {
    return List.of(
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
        SETTLEMENT_FELT,
        STEEL_LOAD_FACTOR);
  }
}
