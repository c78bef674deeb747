package underhold.sizing.bracketpiles;

import java.util.Locale;
import underhold.quantity.Measure;
import underhold.sizing.Amount;
import underhold.sizing.Setting;
import underhold.sizing.Source;

/** Numbers of design and practice, each with default, range, source and basis. */
@SuppressWarnings("ImmutableEnumChecker") // Setting is a record of immutable parts
enum BracketSetting {
  SPACING(
      Amount.length(0),
      0,
      6,
      "spacing of brackets; 0: the widest that the edge allows",
      Source.judgement()),
  BRACKETS_PER_COLUMN(
      Amount.count(2), 1, 8, "brackets that share a column's load", Source.judgement()),
  EDGE_MOMENT(
      Amount.moment(0),
      0,
      1e5,
      "design moment phi Mn of the edge as a beam; 0: not known",
      Sources.EDGE_SPAN),
  EDGE_SHEAR(
      Amount.force(0),
      0,
      1e5,
      "design shear phi Vn of the edge as a beam; 0: not known",
      Sources.EDGE_SPAN),
  EDGE_LOAD_FACTOR(
      Amount.ratio(1.6), 1, 2, "load factor of the edge and of anchors", Source.practice()),
  MASONRY_SPACING(
      Amount.length(2.4),
      0.6,
      3.6,
      "widest spacing under masonry that arches, 8 ft",
      Source.practice()),
  SOUND_WALL_HEIGHT(
      Amount.length(0),
      0,
      30,
      "height of sound masonry without openings above the edge; 0: not known",
      Source.practice()),
  PLAIN_SPACING(
      Amount.length(1.8),
      0.6,
      3.6,
      "widest spacing under an unreinforced strip, 4 to 6 ft",
      Source.practice()),
  PILE_GAP(
      Amount.thickness(0.0381),
      0.01,
      1,
      "gap between edge and pile; 1 to 2 in is usual",
      Source.practice()),
  SEAT_DEPTH(
      Amount.thickness(0.1524),
      0.05,
      1,
      "depth of the seat in from the face, 4 to 8 in; its middle carries",
      Source.practice()),
  SHIM_SHIFT(
      Amount.thickness(0.0254),
      0,
      0.1,
      "inward shift of the resultant by shims tight at the inner end",
      Source.judgement()),
  MISLOCATION(
      Amount.thickness(0.0762),
      0,
      0.3,
      "mislocation added to the eccentricity until the pile is surveyed; EN 14199 allows 100 mm",
      Sources.IBC_MISLOCATION),
  LARGEST_ECCENTRICITY(
      Amount.thickness(0.3048),
      0.05,
      2,
      "largest eccentricity of a single pile with a free bracket, 10 to 12 in",
      Source.judgement()),
  MOMENT_SHARE(
      Amount.ratio(0.6),
      0.1,
      1,
      "share of the casing's moment that a free bracket may use",
      Source.judgement()),
  COUPLE_ARM(
      Amount.thickness(0.4064),
      0.1,
      3,
      "arm of the couple between face plate and anchors",
      Source.judgement()),
  COUPLE_PILE_SHARE(
      Amount.ratio(0.25),
      0,
      1,
      "share of the moment that the pile is checked for beside a couple, kp / (kp + ks)",
      Source.judgement()),
  PAIR_APART(
      Amount.length(1.2), 0.6, 6, "distance between the piles of a pair", Source.judgement()),
  CASING_YIELD(
      Amount.stress(551_581),
      240_000,
      760_000,
      "yield of the casing, 80 ksi; mill-secondary pipe by coupon test",
      Source.practice()),
  GROUT_STRENGTH(
      Amount.stress(27_579), 17_000, 55_000, "strength of the grout, 4 to 5 ksi", Sources.FHWA),
  CORROSION_LOSS(
      Amount.thickness(0.0015875),
      0,
      0.006,
      "wall lost outside over a permanent life, 1/16 in; none for a temporary job",
      Sources.FHWA),
  SOIL_REACTION(
      Amount.stress(0),
      0,
      300_000,
      "soil reaction k on the pile, force per length per movement; 0: from the soil",
      Sources.FHWA_STIFFNESS),
  FIRST_JOINT(
      Amount.length(0),
      0,
      12,
      "depth of the first threaded joint below the bracket; 0: one casing piece",
      Source.judgement()),
  SLEEVE_LENGTH(
      Amount.length(0),
      0,
      6,
      "length of an outer sleeve over the joints below the bracket",
      Source.practice()),
  HEADROOM_LOSS(
      Amount.length(1.4),
      0.6,
      3,
      "headroom that the rig itself needs above a casing piece, 4 to 5 ft",
      Source.statics()),
  LONGEST_PIECE(Amount.length(3.048), 0.9, 12.2, "longest casing piece, 10 ft", Source.practice()),
  LEAST_HEADROOM(Amount.length(2.2), 1.8, 6, "headroom of ordinary small rigs, 87 in", Sources.RIG),
  BRACE_LEVELS(
      Amount.count(0),
      0,
      10,
      "levels at which walers brace a bared pile, evenly spaced",
      Source.judgement()),
  K_FREE_TOP(Amount.ratio(2.1), 0.65, 2.5, "K of a bared pile whose head is free", Sources.FHWA),
  K_HELD_TOP(
      Amount.ratio(1.0), 0.65, 2.5, "K of a bared pile that is held at both ends", Sources.FHWA),
  FIXITY_STIFF(
      Amount.length(1.524), 0, 6, "depth to fixity in stiff soil, 5 ft", Sources.IBC_FIXITY),
  FIXITY_SOFT(
      Amount.length(3.048), 0, 9, "depth to fixity in soft soil, 10 ft", Sources.IBC_FIXITY),
  BOND_SHARE(
      Amount.ratio(1.0 / 3),
      0,
      1,
      "where in the table's range of bond; the lower third without a test, the middle with one",
      Source.judgement()),
  BOND_SAFETY(
      Amount.ratio(2.0),
      1.5,
      4,
      "factor of safety on bond; 2.5 where tests are few or clay creeps",
      Sources.FHWA),
  BOND_SAFETY_TENSION(
      Amount.ratio(2.5), 1.5, 4, "factor of safety on bond in tension", Sources.FHWA),
  HOLE_OVERCUT(
      Amount.thickness(0),
      0,
      0.1,
      "by how much the drilled hole is wider than the casing",
      Source.practice()),
  CASING_BELOW_SUBGRADE(
      Amount.length(1.524),
      0,
      15,
      "least casing below the base of the excavation, not counted as bond, 5 ft",
      Source.judgement()),
  LEAST_BOND(Amount.length(3.048), 0.5, 15, "least bond length, 10 ft", Source.judgement()),
  LONGEST_PILE(Amount.length(30), 5, 80, "longest pile that is still reckoned", Source.judgement()),
  PLATE_THICKNESS(
      Amount.thickness(0.01905),
      0.006,
      0.08,
      "thickness of each bracket plate",
      Source.judgement()),
  PLATE_YIELD(
      Amount.stress(248_211), 200_000, 460_000, "yield of plates, 36 ksi", Source.practice()),
  PLATE_ULTIMATE(
      Amount.stress(399_896), 300_000, 700_000, "ultimate strength of plates", Source.practice()),
  LARGEST_FILLET(
      Amount.thickness(0.0127), 0.004, 0.025, "largest fillet leg, 1/2 in", Source.judgement()),
  CONCRETE_STRENGTH(
      Amount.stress(17_237),
      7_000,
      60_000,
      "strength of the edge's concrete, 2,500 psi for old work until cored",
      Source.judgement()),
  MASONRY_BEARING(
      Amount.stress(690),
      200,
      5_000,
      "allowable bearing of masonry in lime mortar, 100 psi",
      Source.judgement()),
  LONGEST_SEAT(
      Amount.length(1.2), 0.1, 3, "longest seat along the edge, as a spreader", Source.judgement()),
  ANCHOR_COUNT(Amount.count(2), 1, 12, "anchors of one bracket in a row", Source.judgement()),
  ANCHOR_AREA(
      new Amount(0.606 * 0.0254 * 0.0254, Measure.AREA, "mm2", "in2"),
      1e-5,
      1e-2,
      "stress area of one anchor, 1 in rod",
      Sources.ACI_ANCHOR_MEMORY),
  ANCHOR_ULTIMATE(
      Amount.stress(517_107),
      300_000,
      1_100_000,
      "ultimate strength of anchors, 75 ksi",
      Sources.ACI_ANCHOR_MEMORY),
  ANCHOR_YIELD(
      Amount.stress(379_212),
      200_000,
      1_000_000,
      "yield of anchors, 55 ksi",
      Sources.ACI_ANCHOR_MEMORY),
  ANCHOR_EMBEDMENT(Amount.thickness(0.2032), 0.05, 1, "embedment of anchors", Source.judgement()),
  ANCHOR_EDGE(
      Amount.thickness(0.2286), 0.05, 3, "distance of anchors to the edge", Source.judgement()),
  ANCHOR_SPREAD(
      Amount.thickness(0.2032), 0, 2, "distance between the outer anchors", Source.judgement()),
  BOLT_PLATE(
      Amount.thickness(0.2),
      0.05,
      1,
      "side of the square plate behind a through-bolt",
      Source.judgement()),
  LATERAL_FACTOR(
      Amount.ratio(2.0),
      1,
      3,
      "factor on load for the ultimate sideways resistance",
      Sources.BROMS),
  HEAD_SIDEWAYS(
      Amount.thickness(0.0127),
      0.002,
      0.05,
      "sideways movement allowed at the head, 1/4 to 1/2 in",
      Sources.UFC),
  USUAL_LOAD(
      Amount.force(534),
      50,
      5_000,
      "load of one bracket above which pairs or a yoke are usual, 120 kip",
      Source.judgement()),
  SLIP(
      Amount.thickness(0.003),
      0,
      0.02,
      "slip that mobilises bond at working load, 0.05 to 0.2 in",
      Source.judgement()),
  BEDDING(
      Amount.thickness(0.003),
      0,
      0.02,
      "bedding of seat and shims without preload, 1/16 to 1/8 in",
      Source.judgement()),
  PRELOAD(
      Amount.ratio(0.75),
      0,
      1.1,
      "preload as a share of the bracket's load, 75 to 110 % of the dead load",
      Source.practice()),
  LOCK_OFF(
      Amount.thickness(0.0015875),
      0,
      0.01,
      "movement lost at lock-off, 1/32 to 1/16 in",
      Source.practice()),
  CREEP(Amount.thickness(0.001), 0, 0.02, "creep after lock-off", Source.judgement()),
  LIFT_LIMIT(
      Amount.thickness(0.0015), 0.0002, 0.01, "lift at which preloading stops", Source.practice()),
  PROOF_LEVEL(
      Amount.ratio(1.67),
      1.2,
      2.5,
      "proof test as a multiple of the load: 1.5 usual (Geo-Institute), 1.6 met (from memory), 1.67 one city's specification",
      Sources.CITY_TEST),
  VERIFICATION_LEVEL(
      Amount.ratio(2.0),
      1.5,
      2.5,
      "verification test as a multiple of the load, 2.0 to 2.5",
      Sources.GEO_INSTITUTE),
  PROOF_SHARE(
      Amount.ratio(0.05), 0, 1, "share of piles that are proof tested", Sources.GEO_INSTITUTE),
  PILE_TIME(
      Amount.hours(12), 2, 80, "working hours to drill and grout one pile", Source.judgement()),
  BRACKET_TIME(
      Amount.hours(8), 2, 80, "working hours to fit and preload one bracket", Source.judgement()),
  CURE(Amount.hours(168), 24, 672, "grout age before load, 7 days", Source.practice());

  private final Setting setting;

  BracketSetting(Amount fallback, double least, double most, String label, Source source) {
    setting =
        new Setting(
            name().toLowerCase(Locale.ROOT).replace('_', '-'),
            label,
            fallback,
            least,
            most,
            source);
  }

  Setting setting() {
    return setting;
  }
}
