package underhold.sizing.edgepits;

import static underhold.sizing.edgepits.EdgeInputs.*;

import java.util.Optional;
import java.util.OptionalDouble;
import underhold.mechanics.soil.Water;
import underhold.mechanics.soil.bearing.PresumptiveBearing;
import underhold.mechanics.soil.edgewall.BackPressure;
import underhold.mechanics.soil.edgewall.EdgeWall;
import underhold.mechanics.soil.edgewall.PresumptiveSliding;
import underhold.mechanics.soil.edgewall.StagedProps;
import underhold.mechanics.soil.pressure.AtRestPressure;
import underhold.mechanics.soil.pressure.RankinePressure;
import underhold.mechanics.soil.stability.PierAsRetainingWall.Holding;
import underhold.sizing.Amount;
import underhold.sizing.Choice;
import underhold.sizing.Given;
import underhold.sizing.Origin;
import underhold.sizing.Settings;
import underhold.sizing.Verdict;
import underhold.sizing.pits.PitsSetting;
import underhold.sizing.zone.Inputs;
import underhold.sizing.zone.NumberInput;
import underhold.sizing.zone.SoilClass;
import underhold.sizing.zone.WordInput;

/** A zone with complete inputs, and what follows from them at once. */
final class EdgeCase {
  /** The whole load, before the piles take it. */
  static final double SHARE_BEFORE = 1;

  final Inputs inputs;
  final Settings settings;
  final EdgeGeometry geometry;
  final SoilClass face;
  final SoilClass base;

  private final double leftByPiles;

  EdgeCase(Inputs inputs, Settings settings, double leftByPiles) {
    this.inputs = inputs;
    this.settings = settings;
    this.leftByPiles = leftByPiles;
    OptionalDouble rock =
        inputs
            .find(ROCK_DEPTH)
            .map(Given::value)
            .map(OptionalDouble::of)
            .orElse(OptionalDouble.empty());
    this.geometry = EdgeGeometry.of(inputs.get(EXCAVATION), rock, settings);
    this.face = soil(inputs.get(FACE_SOIL));
    this.base =
        geometry.onRock()
            ? SoilClass.ROCK
            : soil(inputs.find(BASE_SOIL).map(Given::value).orElse(inputs.get(FACE_SOIL)));
  }

  double get(NumberInput input) {
    return inputs.get(input);
  }

  double get(EdgeSetting setting) {
    return settings.get(setting.setting());
  }

  double get(PitsSetting setting) {
    return settings.get(setting.setting());
  }

  Amount amount(NumberInput input) {
    return inputs.amount(input);
  }

  Amount amount(EdgeSetting setting) {
    return settings.amount(setting.setting());
  }

  Amount amount(PitsSetting setting) {
    return settings.amount(setting.setting());
  }

  boolean chosen(Choice choice, String word) {
    return settings.get(choice).equals(word);
  }

  boolean says(WordInput input, String word) {
    return inputs.find(input).filter(given -> given.value().equals(word)).isPresent();
  }

  /** Whether the input was stated or follows from what was. */
  boolean known(WordInput input) {
    return inputs.find(input).filter(given -> given.origin() != Origin.ASSUMED).isPresent();
  }

  /** Verdict of a check that does not pass: a value nobody stated never rules edge pits out. */
  Verdict otherwise(NumberInput... rests) {
    for (NumberInput one : rests) {
      if (inputs.find(one).filter(given -> given.origin() == Origin.ASSUMED).isPresent()) {
        return Verdict.REFER;
      }
    }
    return known(BASE_SOIL) || geometry.onRock() ? Verdict.FAILS : Verdict.REFER;
  }

  /** The structure's pressure on the soil while all its load stands there, kPa. */
  double structurePressure() {
    return inputs.has(AREA_LOAD) ? get(AREA_LOAD) : get(LINE_LOAD) / get(FOOTING_WIDTH);
  }

  /** Whether the wall of pits runs along under a structure on a line. */
  boolean along() {
    return inputs.has(LINE_LOAD) && chosen(EdgeSetting.EDGE_RUNS, "along");
  }

  /** The structure's load over the wall of pits, kN/m of wall. */
  double structureOnWall() {
    return along()
        ? structurePressure() * Math.min(thickness(), get(FOOTING_WIDTH))
        : structurePressure() * thickness();
  }

  /** Its pressure on the soil behind the wall; none where the whole footing is over the wall. */
  double structureBehind() {
    return along() && get(FOOTING_WIDTH) <= thickness() ? 0 : structurePressure();
  }

  double thickness() {
    return get(EdgeSetting.WALL_THICKNESS);
  }

  double height() {
    return geometry.wallHeight();
  }

  boolean drained() {
    return chosen(EdgeSetting.WATER, "drained");
  }

  /** Depth of the water behind below the top of the wall, at least 0, at most its height. */
  double waterBelowTop() {
    return drained()
        ? height()
        : Math.min(height(), Math.max(0, get(WATER_DEPTH) - get(FOUNDING_DEPTH)));
  }

  /** Water behind above the top of the wall. */
  double waterAboveTop() {
    return drained() ? 0 : Math.max(0, get(FOUNDING_DEPTH) - get(WATER_DEPTH));
  }

  double coefficient() {
    double angle = get(FACE_FRICTION);
    return chosen(EdgeSetting.EARTH_PRESSURE, "at-rest")
        ? AtRestPressure.normallyConsolidated(angle)
        : RankinePressure.activeCoefficient(angle);
  }

  /** Vertical stress behind the top of the wall without the structure, kPa. */
  double verticalAtTop() {
    double soil =
        get(FACE_WEIGHT) * get(FOUNDING_DEPTH) * get(EdgeSetting.OVERBURDEN_SHARE)
            + get(EdgeSetting.SITE_SURCHARGE);
    return Math.max(soil, Water.KILONEWTONS_PER_CUBIC_METRE * waterAboveTop());
  }

  /** Presumptive values of the ground at the toe, where the table holds for it. */
  Optional<PresumptiveSliding> presumptive() {
    return base.presumptiveClass().flatMap(PresumptiveBearing::find).map(PresumptiveSliding::new);
  }

  /** Lateral bearing per depth of the soil in front, by its class or the weakest of the table. */
  double lateralBearing() {
    String id = face.presumptiveClass().orElse("clay");
    return PresumptiveBearing.find(id).orElseThrow().lateralKilopascalsPerMetre();
  }

  /** Whether clay holds the toe by its cohesion. */
  boolean cohesive() {
    return chosen(EdgeSetting.BASE_FRICTION, "presumptive")
        && presumptive().filter(PresumptiveSliding::clay).isPresent();
  }

  /** Friction angle under the toe on level ground, degrees; 0 where nothing holds. */
  double baseFrictionDegrees() {
    if (!chosen(EdgeSetting.BASE_FRICTION, "presumptive")) {
      return base.baseFrictionDegrees();
    }
    double coefficient =
        presumptive().map(one -> one.row().frictionCoefficient().orElse(0)).orElse(0.0);
    return Math.toDegrees(Math.atan(coefficient));
  }

  /** Coefficient of friction under the toe, less the slope of the rock. */
  double friction() {
    double slope = geometry.onRock() ? get(EdgeSetting.ROCK_SLOPE) : 0;
    return Math.tan(Math.toRadians(Math.max(0, baseFrictionDegrees() - slope)));
  }

  /** The wall alone. */
  EdgeWall wall() {
    BackPressure back =
        new BackPressure(
            coefficient(), get(FACE_WEIGHT), verticalAtTop(), waterBelowTop(), waterAboveTop());
    return new EdgeWall(
        height(),
        thickness(),
        get(PitsSetting.CONCRETE_WEIGHT),
        structureOnWall(),
        structureBehind(),
        back,
        Holding.friction(Math.min(1, friction())));
  }

  /** Share that the piles leave on the soil after lock-off, by their own sheet. */
  double leftByPiles() {
    return leftByPiles;
  }

  /** Share once the piles are locked off: the setting, or what they leave where that is more. */
  double shareAfter() {
    return Math.max(get(EdgeSetting.SHARE_AFTER), leftByPiles);
  }

  /** Share for which props, toe and wall are sized. */
  double designShare() {
    return Math.max(get(EdgeSetting.SHARE_PARTIAL), shareAfter());
  }

  /** The props for the design share. */
  StagedProps props() {
    return new StagedProps(
        wall().pressureAt(designShare()),
        get(EdgeSetting.FIRST_BRACE),
        get(EdgeSetting.LEVEL_SPACING),
        get(EdgeSetting.OVERDIG),
        geometry.ground());
  }

  /** The force of the method chosen, of those of both. */
  double byMethod(double hinge, double tributary) {
    return switch (settings.get(EdgeSetting.BRACE_METHOD)) {
      case "hinge" -> hinge;
      case "tributary" -> tributary;
      default -> Math.max(hinge, tributary);
    };
  }

  /** Resistance under the base with that vertical force, kN/m. */
  double baseResistance(double normal, double contact) {
    return cohesive()
        ? presumptive().orElseThrow().base(normal, contact)
        : friction() * Math.max(0, normal);
  }

  /** Slope of braces: level for struts. */
  double braceSlope() {
    return chosen(EdgeSetting.BRACE_KIND, "strut") ? 0 : get(EdgeSetting.BRACE_ANGLE);
  }
}
