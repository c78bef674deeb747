package underhold.sizing.pits;

import java.util.Locale;
import underhold.sizing.Amount;
import underhold.sizing.Setting;
import underhold.sizing.Source;

/** Settings of the pits method, each with its default, range, source and basis. */
@SuppressWarnings("ImmutableEnumChecker") // Setting is a record of immutable parts
public enum PitsSetting {
  /** Cap on the width. */
  WIDEST_PIT(
      Amount.length(1.2),
      0.6,
      1.524,
      "widest pit along the wall; DIN 4123 allows 1.25 m, UK guidance 1.0 m without expert advice, US practice 4 to 5 ft",
      Sources.TOMLINSON),
  /** Least width in which a person can dig. */
  NARROWEST_PIT(
      Amount.length(0.75),
      0.6,
      1.2,
      "narrowest pit, along the wall, in which a person can dig, 2 ft 6 in; 0.9 m by other practice",
      Source.memory(
          "custom of residential pier underpinning, 2 ft 6 in; Foundation Engineering Handbook, underpinning chapter, 0.9 m")),
  /** Soil lost beside each face. */
  EDGE_ALLOWANCE(
      Amount.length(0.1),
      0,
      0.5,
      "length beside each side of an open pit that is not counted as support",
      Source.judgement()),
  /** Practice width, reinforced. */
  REINFORCED_WIDTH(
      Amount.length(1.8),
      0.6,
      3,
      "unsupported length by practice, reinforced concrete strip or wall",
      Source.memory("practice lengths, 1.8 to 3 m")),
  /** Practice width, plain. */
  PLAIN_WIDTH(
      Amount.length(1.2),
      0.6,
      1.524,
      "unsupported length by practice, plain concrete",
      Source.memory("practice lengths, 1.2 to 1.5 m")),
  /** Practice width, sound masonry. */
  MASONRY_WIDTH(
      Amount.length(1.2),
      0.6,
      1.524,
      "unsupported length by practice, sound masonry",
      Sources.TOMLINSON),
  /** Practice width, poor masonry. */
  POOR_MASONRY_WIDTH(
      Amount.length(0.75),
      0.5,
      1.0,
      "unsupported length by practice, poor masonry or concrete",
      Source.memory("practice lengths, 0.7 to 1.0 m")),
  /** Practice width, rubble. */
  RUBBLE_WIDTH(
      Amount.length(0.75),
      0.5,
      0.9,
      "unsupported length by practice, rubble",
      Source.memory("practice lengths, 0.75 to 0.9 m")),
  /** Line load limit. */
  LINE_LOAD_LIMIT(
      Amount.lineLoad(250),
      50,
      2000,
      "wall load above which sectional pits need a full design",
      Sources.DIN_4123_SCOPE),
  /** Load factor of strength checks. */
  LOAD_FACTOR(
      Amount.ratio(1.6),
      1.2,
      2,
      "factor on all working loads in concrete strength checks",
      Source.memory(
          "ACI 318-19 5.3, load factor of live load and earth pressure, taken for all loads")),
  /** Rise of the arch. */
  ARCH_RISE(
      Amount.ratio(0.6),
      0.2,
      0.7,
      "rise of the arch in a wall, share of its height",
      Source.memory("masonry arching practice, 0.6 to 0.7")),
  /** Compressed zone. */
  ARCH_ZONE(
      Amount.ratio(0.1),
      0.05,
      0.2,
      "compressed zone of that arch, share of the height",
      Source.memory("masonry arching practice, 0.1 to 0.2")),
  /** Masonry compression, sound. */
  MASONRY_COMPRESSION(
      Amount.stress(100 * 6.894757),
      200,
      5000,
      "allowable compression, sound solid brick of the weakest class in mortar N, 100 psi",
      Sources.TMS_BEARING),
  /** Masonry compression, poor or rubble. */
  POOR_MASONRY_COMPRESSION(
      Amount.stress(60 * 6.894757),
      100,
      2000,
      "allowable compression, old lime mortar or rubble, 60 psi",
      Source.memory("old walls in lime mortar, 60 to 100 psi; test")),
  /** Clear spacing. */
  CLEAR_PIT_WIDTHS(
      Amount.ratio(3), 2, 10, "clear distance between open pits, in pit widths", Sources.DIN_4123),
  /** Open share. */
  OPEN_SHARE(Amount.ratio(0.25), 0.05, 0.34, "share of the wall open at once", Sources.TOMLINSON),
  /** Open share of poor wall. */
  POOR_OPEN_SHARE(
      Amount.ratio(1.0 / 6),
      0.05,
      0.34,
      "share of the wall open at once, poor wall or rubble",
      Sources.TOMLINSON),
  /** Crews. */
  CREWS(Amount.count(2), 1, 50, "crews that dig at the same time", Source.judgement()),
  /** People in a crew. */
  CREW_SIZE(
      Amount.count(3),
      2,
      6,
      "people in a crew: digger, hoist, top",
      Source.memory("pit practice, 2 to 3")),
  /** Hours of a shift. */
  SHIFT(Amount.hours(8), 4, 12, "working day", Source.judgement()),
  /** Hand digging, light soil. */
  DIG_RATE(
      Amount.volume(6.1),
      0.5,
      15,
      "hand digging a day and crew, light soil (8 yd3)",
      Sources.COST_BOOK),
  /** Hand digging, heavy soil. */
  DIG_RATE_HEAVY(
      Amount.volume(3.05),
      0.25,
      10,
      "hand digging a day and crew, heavy soil (4 yd3)",
      Sources.COST_BOOK),
  /** Sheeting and obstructions. */
  DIG_SLOWDOWN(
      Amount.ratio(1.5),
      1,
      5,
      "factor on digging time for sheeting, confined hoisting and small obstructions",
      Source.judgement()),
  /** Placing concrete. */
  CONCRETE_TIME(
      Amount.hours(4), 1, 24, "placing concrete in a pit, working hours", Source.judgement()),
  /** Wait before dry pack. */
  DRY_PACK_WAIT(
      Amount.hours(24),
      12,
      168,
      "from concrete to dry pack: next day in UK guidance; 24 h least, 48 h better by other practice",
      Sources.UK_BAY),
  /** Dry packing. */
  DRY_PACK_TIME(
      Amount.hours(2), 0.5, 16, "ramming the dry pack of a pit, working hours", Source.judgement()),
  /** Wait before neighbour. */
  NEIGHBOUR_WAIT(
      Amount.hours(48),
      24,
      336,
      "from dry pack until a neighbour may start; strength decides (DIN 4123: enough strength; practice 24 to 72 h or 50 to 75 % of f'c)",
      Source.memory("pit practice, 24 to 72 h")),
  /** Concrete of the piers. */
  PIER_STRENGTH(
      Amount.stress(3000 * 6.894757293168361),
      17_236,
      60_000,
      "specified strength of pier concrete, 3,000 psi",
      Source.judgement()),
  /** Weight of concrete. */
  CONCRETE_WEIGHT(
      Amount.unitWeight(150 * 0.157087463846246),
      20,
      26,
      "unit weight of pier concrete, 150 pcf",
      Source.practice()),
  /** Embedment below excavation. */
  TOE_EMBEDMENT(
      Amount.length(0.3),
      0,
      3,
      "depth of the pier below the excavation where the pit depth is not given",
      Source.judgement()),
  /** Gap. */
  DRY_PACK_GAP(
      Amount.thickness(0.075),
      0.04,
      0.15,
      "gap for dry pack, 3 in; UK guidance 50 mm; never below 1.5 in",
      Sources.CONTRACTOR),
  /** Dry pack stress. */
  DRY_PACK_STRESS(
      Amount.stress(40 * 6.894757),
      50,
      5000,
      "bearing stress at the dry pack; typical 20 to 40 psi",
      Sources.PRACTITIONER),
  /** Approach length along. */
  APPROACH_LENGTH(
      Amount.length(1.2), 0.9, 2.5, "approach pit, along the wall, 4 ft", Source.practice()),
  /** Approach length out. */
  APPROACH_WIDTH(
      Amount.length(1.5),
      0.9,
      2.5,
      "approach pit, out from the wall, 5 ft (4 to 5)",
      Source.practice()),
  /** Approach depth. */
  APPROACH_DEPTH(
      Amount.length(1.8),
      1,
      3,
      "approach pit, depth below the footing before digging goes under it, 6 ft; never deeper than the pit",
      Source.practice()),
  /** Arching. */
  ARCHING(
      Amount.ratio(1),
      0.6,
      1,
      "share of soil pressure on the boards; 0.6 with arching, which cannot develop beside a footing",
      Sources.CALTRANS_LAGGING),
  /** Rough boards. */
  BOARD_LOSS(
      Amount.thickness(0),
      0,
      0.0127,
      "thickness lost from the nominal by dressing: 0 for rough-cut boards, 12.7 mm (1/2 in) for dressed",
      Source.memory("lumber sizes")),
  /** Board height. */
  BOARD_HEIGHT(
      Amount.thickness(0.2032),
      0.15,
      0.31,
      "height of a board, which is also the lift exposed at a time, 8 in",
      Source.memory("pit practice, 8 to 12 in")),
  /** Duration of load. */
  BOARD_DURATION(
      Amount.hours(168),
      24,
      1440,
      "least time for which the boards are taken to carry the full load",
      Source.judgement()),
  /** Deflection of boards. */
  BOARD_DEFLECTION(
      Amount.thickness(0.0127), 0.003, 0.025, "deflection of boards, 1/2 in", Source.judgement()),
  /** Bearing of board end. */
  BOARD_BEARING(
      Amount.thickness(0.0381),
      0.019,
      0.1,
      "bearing length of a board end in its corner, 1.5 in",
      Source.judgement()),
  /** Bearing factor. */
  BEARING_FACTOR(
      Amount.ratio(3),
      2,
      4,
      "factor of safety on ultimate bearing; 3 customary, 2 to 2.5 with good data",
      Source.memory("customary in US practice")),
  /** Bearing factor of soil between open pits. */
  TEMPORARY_BEARING_FACTOR(
      Amount.ratio(2),
      1.5,
      3,
      "factor of safety on bearing between open pits, for days",
      Source.judgement()),
  /** Pier stability factor. */
  PIER_FACTOR(
      Amount.ratio(1.5), 1.5, 3, "factor on sliding and overturning of the pier", Sources.NYC_1817),
  /** Heave factor. */
  HEAVE_FACTOR(Amount.ratio(1.5), 1.2, 3, "factor on base heave", Sources.CALTRANS_HEAVE),
  /** Piping factor. */
  PIPING_FACTOR(Amount.ratio(1.5), 1.5, 3, "factor on the critical gradient", Sources.PIPING),
  /** Dry base. */
  DRY_BASE(
      Amount.length(0.5), 0.3, 3, "ground water below the pit base, at least", Sources.WATER_RULE),
  /** Expected movement. */
  EXPECTED_MOVEMENT(
      Amount.thickness(0.013),
      0.003,
      0.05,
      "settlement to expect from well-executed pits, 6 to 13 mm (1/4 to 1/2 in)",
      Sources.FHWA_MOVEMENT),
  /** Angle of raker. */
  BRACE_ANGLE(
      Amount.angle(45),
      0,
      60,
      "slope of a raker or anchor below the horizontal",
      Source.judgement()),
  /** Bulking. */
  BULKING(Amount.ratio(1.25), 1, 1.8, "bulking of spoil", Source.judgement());

  private final Setting setting;

  PitsSetting(Amount fallback, double least, double most, String label, Source source) {
    String id = name().toLowerCase(Locale.ROOT).replace('_', '-');
    this.setting = new Setting(id, label, fallback, least, most, source);
  }

  /** The setting. */
  public Setting setting() {
    return setting;
  }
}
