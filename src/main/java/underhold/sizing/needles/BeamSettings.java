package underhold.sizing.needles;

import java.util.Arrays;
import java.util.List;
import underhold.mechanics.steel.SectionTable;
import underhold.mechanics.steel.Steel;
import underhold.quantity.Measure;
import underhold.sizing.Amount;
import underhold.sizing.Choice;
import underhold.sizing.Setting;
import underhold.sizing.Source;

/** Settings of load, span and section. */
final class BeamSettings {
  static final Setting UNCERTAINTY =
      new Setting(
          "load-uncertainty",
          "factor on the stated load, which is an estimate",
          Amount.ratio(1.15),
          1,
          2,
          Sources.LOAD_KNOWN);
  static final Setting SHARE =
      new Setting(
          "pair-share",
          "least share of the column that one needle of the pair is designed for",
          Amount.ratio(0.6),
          0.5,
          1,
          Sources.PAIR_SHARE);
  static final Setting ECCENTRICITY =
      new Setting(
          "eccentricity",
          "eccentricity of the load from the mid-line of the pair",
          Amount.length(0.05),
          0,
          0.5,
          Source.judgement());
  static final Setting PAIR_SPACING =
      new Setting(
          "pair-spacing",
          "distance between the two needles of a pair",
          Amount.length(1),
          0.3,
          4,
          Source.judgement());
  static final Setting POSITION =
      new Setting(
          "load-position",
          "place of the load from the nearer seat, as a share of the span",
          Amount.ratio(0.5),
          0.1,
          0.5,
          Source.judgement());
  static final Setting LRFD_FACTOR =
      new Setting(
          "lrfd-factor",
          "load factor where the code is aisc-lrfd",
          Amount.ratio(1.6),
          1.2,
          2,
          Sources.LOAD_FACTOR);
  static final Setting EUROCODE_FACTOR =
      new Setting(
          "eurocode-factor",
          "load factor where the code is eurocode",
          Amount.ratio(1.5),
          1.35,
          2,
          Sources.EUROCODE_FACTOR);
  static final Setting YIELD =
      new Setting(
          "yield-strength",
          "yield strength of the steel",
          Amount.stress(Steel.A992.yieldKilopascals()),
          200_000,
          460_000,
          Source.published(
              "ASTM A992, 50 ksi (AISC Design Examples v15.1); S355 is a little more"));
  static final Setting SEAT_BEARING =
      new Setting(
          "load-bearing-length",
          "length along the needle over which it takes the load",
          Amount.length(0.2),
          0.05,
          1,
          Source.judgement());
  static final Setting JACK_BEARING =
      new Setting(
          "jack-bearing-length",
          "length along the needle over its jack or seat",
          Amount.length(0.3),
          0.05,
          1,
          Source.judgement());
  static final Setting END_DISTANCE =
      new Setting(
          "end-distance",
          "from the end of the needle to the middle of its jack",
          Amount.length(0.15),
          0.05,
          2,
          Source.judgement());
  static final Setting DEFLECTION_RATIO =
      new Setting(
          "deflection-ratio",
          "span over the largest deflection allowed; 240 for general falsework, 360 for floors",
          Amount.ratio(500),
          200,
          1500,
          Sources.DEFLECTION);
  static final Setting DEFLECTION_LIMIT =
      new Setting(
          "deflection-limit",
          "largest deflection allowed, whatever the span",
          Amount.thickness(0.006),
          0.001,
          0.05,
          Sources.DEFLECTION_CAP);
  static final Setting BACK_SPAN =
      new Setting(
          "back-span-ratio",
          "back span of a cantilevered needle over its overhang",
          Amount.ratio(1.5),
          0.5,
          5,
          Source.judgement());
  static final Setting CANTILEVER_LENGTH =
      new Setting(
          "cantilever-length-factor",
          "buckling length of an overhang whose tip is free, over its length",
          Amount.ratio(2.5),
          1,
          7.5,
          Sources.CANTILEVER_LENGTH);

  static final Choice TABLE =
      new Choice(
          "table",
          "table of sections to choose from",
          Arrays.stream(SectionTable.values()).map(SectionTable::id).toList(),
          Source.published(SectionTable.US_ORIGIN + "; " + SectionTable.EU_ORIGIN));
  static final Choice CODE =
      new Choice(
          "code",
          "code of the steel",
          List.of("aisc-asd", "aisc-lrfd", "eurocode"),
          Source.judgement());
  static final Choice ARRANGEMENT =
      new Choice(
          "arrangement",
          "arrangement of the needles; auto follows the load and the access",
          List.of("auto", "pair", "row", "cantilever"),
          Source.judgement());
  static final Choice RESTRAINT =
      new Choice(
          "load-restraint",
          "whether the top flange is held sideways and against twist where the load sits",
          List.of("none", "held"),
          Source.memory("AISC 360-16 commentary F1: load on a free top flange destabilises"));
  static final Choice STIFFENERS =
      new Choice(
          "stiffeners",
          "full-depth web stiffeners under the load and over each jack",
          List.of("fitted", "as-needed", "none"),
          Source.memory("practice: fit them by default, they cost little"));

  static final List<Setting> NUMBERS =
      List.of(
          UNCERTAINTY,
          SHARE,
          ECCENTRICITY,
          PAIR_SPACING,
          POSITION,
          LRFD_FACTOR,
          EUROCODE_FACTOR,
          YIELD,
          SEAT_BEARING,
          JACK_BEARING,
          END_DISTANCE,
          DEFLECTION_RATIO,
          DEFLECTION_LIMIT,
          BACK_SPAN,
          CANTILEVER_LENGTH);

  static final List<Choice> CHOICES = List.of(TABLE, CODE, ARRANGEMENT, RESTRAINT, STIFFENERS);

  private BeamSettings() {}

  /** A modulus of section in its own units. */
  static Amount modulus(double cubicMetres) {
    return new Amount(cubicMetres, Measure.VOLUME, "cm3", "in3");
  }

  /** An area of steel in its own units. */
  static Amount steelArea(double squareMetres) {
    return new Amount(squareMetres, Measure.AREA, "cm2", "in2");
  }
}
