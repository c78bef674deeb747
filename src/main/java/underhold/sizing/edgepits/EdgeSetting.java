package underhold.sizing.edgepits;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import underhold.sizing.Amount;
import underhold.sizing.Choice;
import underhold.sizing.Setting;
import underhold.sizing.SettingTable;
import underhold.sizing.Source;
import underhold.sizing.pits.OpenPits;
import underhold.sizing.pits.PitsSetting;
import underhold.sizing.pits.PitsSettings;

/** Settings of edge pits, each with its default, range, source and basis. */
@SuppressWarnings("ImmutableEnumChecker") // Setting is a record of immutable parts
enum EdgeSetting {
  WALL_THICKNESS(
      Amount.length(0.9),
      0.6,
      3,
      "thickness of the wall of pits, 3 ft: room to dig",
      Source.judgement()),
  PIT_WIDTH(
      Amount.length(1.2), 0.75, 1.5, "width of a pit along the edge, 4 ft", Source.practice()),
  WORKING_LEVEL(
      Amount.length(0),
      0,
      15,
      "level below ground from which the pits are sunk: 0 from the ground, more from a bench dug after the piles are released, never below the underside of the structure",
      Source.judgement()),
  TOE_EMBEDMENT(
      Amount.length(0.6),
      0.3,
      5,
      "depth of the wall below the excavation where it stands on soil",
      Source.judgement()),
  LEAST_PIT(
      Amount.length(1),
      0.5,
      3,
      "depth of soil over rock below which no wall is sized: rock support alone",
      Source.judgement()),
  SHARE_PARTIAL(
      Amount.ratio(0.5),
      0,
      1,
      "share of the structure's load on the soil while the piles take it, for which props and wall are sized as well",
      Source.judgement()),
  SHARE_AFTER(
      Amount.ratio(0),
      0,
      1,
      "share of the structure's load left on the soil once the piles are locked off",
      Source.judgement()),
  SITE_SURCHARGE(
      Amount.pressure(10.44),
      0,
      95,
      "surcharge on the ground behind, 2 ft of soil at 109 pcf at least",
      Sources.CALTRANS_SURCHARGE),
  OVERBURDEN_SHARE(
      Amount.ratio(1),
      0,
      1,
      "share of the soil's weight above the footing that counts behind the wall; less where the structure itself fills that depth",
      Source.judgement()),
  STABILITY_FACTOR(
      Amount.ratio(1.5), 1.5, 3, "factor on sliding and overturning", Sources.NYC_1817),
  FIRST_BRACE(
      Amount.length(0.3),
      0,
      3,
      "depth of the first level of braces below the footing",
      Source.judgement()),
  LEVEL_SPACING(
      Amount.length(1.5),
      1,
      5,
      "depth from one level of braces to the next, 5 ft: a plain concrete wall",
      Source.judgement()),
  OVERDIG(
      Amount.length(0.5),
      0.2,
      1.5,
      "ground dug below a level before its braces are set and hold",
      Source.judgement()),
  BRACE_ALONG(
      Amount.length(2.4),
      0.6,
      6,
      "spacing of braces along the wall, two pits, with a waler",
      Source.judgement()),
  BRACE_ANGLE(
      Amount.angle(30),
      0,
      60,
      "slope of a raker or tie below the horizontal; struts are level",
      Source.judgement()),
  BRACE_ALLOWABLE(
      Amount.force(0),
      0,
      20_000,
      "allowable force of a brace or tie by its own design; 0 where there is none yet",
      Source.judgement()),
  PASSIVE_SHARE(
      Amount.ratio(0),
      0,
      1,
      "share of the lateral bearing in front of the embedded toe that is counted at the end; 0 because slab, drains and pile caps are dug there",
      Source.judgement()),
  CLOSING_GAP(
      Amount.thickness(0.075),
      0.02,
      0.3,
      "gap between wall and structure, closed by a strip, 3 in",
      Source.judgement()),
  ALLOWABLE_BEARING(
      Amount.pressure(0),
      0,
      20_000,
      "allowable bearing pressure at the toe by the ground investigation; 0 where there is none: the presumptive value counts",
      Source.judgement()),
  DOWEL_DIAMETER(
      Amount.thickness(0.032), 0.016, 0.064, "diameter of a toe dowel", Source.judgement()),
  DOWEL_YIELD(
      Amount.stress(414_000),
      250_000,
      700_000,
      "yield strength of dowels, 60 ksi",
      Source.practice()),
  DOWEL_LENGTH(Amount.length(1.2), 0.4, 4, "length of a dowel, half in rock", Source.judgement()),
  ROCK_STRENGTH(
      Amount.stress(10_000),
      1_000,
      300_000,
      "unconfined strength of the rock at the dowels, weak rock until tested",
      Source.judgement()),
  ROCK_SLOPE(
      Amount.angle(10),
      0,
      45,
      "slope of the rock surface under the toe towards the excavation",
      Source.judgement()),
  ROCK_WEIGHT(Amount.unitWeight(26), 18, 30, "unit weight of the rock", Source.judgement()),
  JOINT_DIP(
      Amount.angle(57.5),
      5,
      85,
      "dip of the joint towards the excavation: 45 degrees plus half its friction angle, at which a dry joint without cohesion pushes most",
      Source.judgement()),
  JOINT_FRICTION(Amount.angle(25), 5, 45, "friction angle of the joint", Source.judgement()),
  JOINT_COHESION(Amount.pressure(0), 0, 500, "cohesion of the joint", Source.judgement()),
  LEDGE(Amount.length(0.3), 0, 2, "ledge of rock left in front of the toe", Source.judgement()),
  EXCAVATION_WIDTH(
      Amount.length(10),
      1,
      200,
      "shorter side of the excavation, for base heave",
      Source.judgement()),
  EXCAVATION_LENGTH(
      Amount.length(20),
      1,
      500,
      "longer side of the excavation, for base heave",
      Source.judgement());

  /** Pressure behind the wall. */
  static final Choice EARTH_PRESSURE =
      new Choice(
          "earth-pressure",
          "earth pressure on the wall",
          List.of("at-rest", "active"),
          Sources.IBC_1610);

  /** Water behind the wall. */
  static final Choice WATER =
      new Choice(
          "water",
          "water behind the wall: standing at its level, or drained or cut off and proved by piezometers",
          List.of("standing", "drained"),
          Source.judgement());

  /** Method of brace forces. */
  static final Choice BRACE_METHOD =
      new Choice(
          "brace-method",
          "method of brace forces: the larger of both, hinges at the levels, or tributary lengths",
          List.of("larger", "hinge", "tributary"),
          Sources.CALTRANS_PROPS);

  /** Kind of brace. */
  static final Choice BRACE_KIND =
      new Choice(
          "brace-kind",
          "what holds the wall: level struts, rakers, or ties into the ground",
          List.of("strut", "raker", "tie"),
          Source.judgement());

  /** What holds the toe. */
  static final Choice TOE_SUPPORT =
      new Choice(
          "toe-support",
          "what holds the toe at the end: a base slab cast as a strut in short lengths before the cut goes on, or the ground alone",
          List.of("slab", "ground"),
          Source.judgement());

  /** Table of base friction. */
  static final Choice BASE_FRICTION =
      new Choice(
          "base-friction",
          "friction under the toe: presumptive values of the building code, or lower ends of friction angles of mass concrete on ground",
          List.of("presumptive", "friction-angle"),
          Sources.IBC_1804);

  /** How the edge runs. */
  static final Choice EDGE_RUNS =
      new Choice(
          "edge-runs",
          "how the wall of pits runs to a structure on a line: across it, or along under it",
          List.of("across", "along"),
          Source.judgement());

  /** Settings of pits that this sheet reads besides those of the digging. */
  private static final List<PitsSetting> FROM_PITS =
      List.of(
          PitsSetting.LOAD_FACTOR,
          PitsSetting.PIER_STRENGTH,
          PitsSetting.CONCRETE_WEIGHT,
          PitsSetting.HEAVE_FACTOR,
          PitsSetting.PIPING_FACTOR);

  /** What may be set. */
  static final SettingTable TABLE = table();

  private final Setting setting;

  EdgeSetting(Amount fallback, double least, double most, String label, Source source) {
    String id = name().toLowerCase(Locale.ROOT).replace('_', '-');
    this.setting = new Setting(id, label, fallback, least, most, source);
  }

  /** The setting. */
  Setting setting() {
    return setting;
  }

  private static SettingTable table() {
    List<Setting> numbers = new ArrayList<>();
    for (EdgeSetting one : values()) {
      numbers.add(one.setting);
    }
    FROM_PITS.forEach(one -> numbers.add(one.setting()));
    numbers.addAll(OpenPits.settings());
    return new SettingTable(
        "edge-pits",
        numbers,
        List.of(
            EARTH_PRESSURE,
            WATER,
            BRACE_METHOD,
            BRACE_KIND,
            TOE_SUPPORT,
            BASE_FRICTION,
            EDGE_RUNS,
            PitsSettings.TIMBER));
  }
}
