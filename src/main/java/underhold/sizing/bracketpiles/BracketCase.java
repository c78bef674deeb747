package underhold.sizing.bracketpiles;

import static underhold.sizing.bracketpiles.BracketInputs.*;

import underhold.mechanics.micropile.CasingSection;
import underhold.mechanics.micropile.PileSpacing;
import underhold.sizing.Amount;
import underhold.sizing.Origin;
import underhold.sizing.zone.GroundColumn;
import underhold.sizing.zone.Inputs;
import underhold.sizing.zone.NumberInput;

/**
 * One zone with complete inputs: what every part of the sheet reads.
 *
 * @param inputs complete inputs
 * @param settings settings in force
 * @param column the ground
 */
record BracketCase(Inputs inputs, BracketSettings settings, GroundColumn column) {
  private static final double ROUND_METRES = 0.05;
  private static final double ROUNDING = 1e-9;

  double get(NumberInput input) {
    return inputs.get(input);
  }

  Amount amount(NumberInput input) {
    return inputs.amount(input);
  }

  /** Sideways movement allowed at the head, m: the structure's own limit where it is less. */
  double headSideways() {
    double usual = get(BracketSetting.HEAD_SIDEWAYS);
    return inputs.has(BracketInputs.MOVEMENT_LIMIT)
        ? Math.min(usual, get(BracketInputs.MOVEMENT_LIMIT))
        : usual;
  }

  double get(BracketSetting setting) {
    return settings.get(setting);
  }

  Amount amount(BracketSetting setting) {
    return settings.amount(setting);
  }

  boolean onColumn() {
    return inputs.has(COLUMN_LOAD);
  }

  MomentPath path() {
    return MomentPath.of(inputs.get(PATH));
  }

  boolean pathDecided() {
    return inputs.find(PATH).orElseThrow().origin() != Origin.ASSUMED;
  }

  /** Whether the structure is in no state to span or take a seat without an engineer's word. */
  boolean weakStructure() {
    String condition = inputs.get(CONDITION);
    return condition.equals("poor") || condition.equals("dangerous");
  }

  /** Whether the edge is masonry or rubble, without an allowable stress of its own. */
  boolean masonryEdge() {
    String material = inputs.get(MATERIAL);
    return rubbleFooting() || material.endsWith("masonry") || material.equals("rubble");
  }

  boolean rubbleFooting() {
    return inputs.get(FOOTING).equals("rubble");
  }

  /** Whether the seat bears on concrete. */
  boolean concreteSeat() {
    return !rubbleFooting();
  }

  boolean spanAssumed() {
    return inputs.find(CLEAR_SPAN).orElseThrow().origin() == Origin.ASSUMED;
  }

  /** Wall loss that counts, m. */
  double corrosion() {
    return inputs.get(LIFE).equals("permanent") ? get(BracketSetting.CORROSION_LOSS) : 0;
  }

  /** Length of pile that the excavation bares, m. */
  double bareLength() {
    return inputs.get(BARED).equals("yes") ? get(EXCAVATION) : 0;
  }

  /** Length between the head and the first brace, or of the whole bare length, m. */
  double bareBay() {
    return bareLength() / (braceLevels() + 1);
  }

  int braceLevels() {
    return (int) Math.floor(get(BracketSetting.BRACE_LEVELS));
  }

  /** Depth of the pile's sideways support below ground, m. */
  double supportDepth() {
    return get(FOUNDING_DEPTH) + bareLength();
  }

  /** Depth of the base of the excavation below ground, m. */
  double subgradeDepth() {
    return get(FOUNDING_DEPTH) + get(EXCAVATION);
  }

  boolean softHead() {
    return PileGround.softHead(column, supportDepth());
  }

  /** Mislocation that counts, m. */
  double mislocation() {
    return settings.surveyed() ? 0 : get(BracketSetting.MISLOCATION);
  }

  /** e of a casing, m. */
  double eccentricity(CasingSection casing) {
    double reach =
        inputs.has(LOAD_OFFSET)
            ? get(LOAD_OFFSET)
            : casing.outsideDiameterMetres() / 2
                + get(BracketSetting.PILE_GAP)
                + get(BracketSetting.SEAT_DEPTH) / 2;
    return reach + get(BracketSetting.SHIM_SHIFT) + mislocation();
  }

  /** Widest spacing that the edge allows, m. */
  double widestSpacing() {
    return EdgeSection.widest(this);
  }

  /** Spacing of brackets, m. */
  double spacing() {
    double set = get(BracketSetting.SPACING);
    if (set > 0) {
      return set;
    }
    double rounded = Math.floor(widestSpacing() / ROUND_METRES + ROUNDING) * ROUND_METRES;
    return Math.max(rounded, PileSpacing.LEAST_METRES);
  }

  /** Load of one bracket, kN. */
  double load() {
    return onColumn() ? get(COLUMN_LOAD) / bracketsPerColumn() : get(LINE_LOAD) * spacing();
  }

  double bracketsPerColumn() {
    return Math.floor(get(BracketSetting.BRACKETS_PER_COLUMN));
  }

  /** Brackets along the edge or at the column; one where the length is not known. */
  double count() {
    if (onColumn()) {
      return bracketsPerColumn();
    }
    return inputs.has(WALL_LENGTH)
        ? Math.max(1, Math.ceil(get(WALL_LENGTH) / spacing() - ROUNDING))
        : 1;
  }
}
