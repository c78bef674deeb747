package underhold.sizing.pits;

import static underhold.sizing.pits.PitsFact.*;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import underhold.mechanics.timber.SheetingSoil;
import underhold.sizing.Amount;
import underhold.sizing.Given;
import underhold.sizing.MissingInput;
import underhold.sizing.Origin;
import underhold.sizing.Source;
import underhold.sizing.Verdict;
import underhold.sizing.zone.SoilClass;

/** The input with every gap filled, each value with its origin. */
final class PitsCase {
  /** 120 pcf; Caltrans asks for at least 115 pcf where data are poor. */
  private static final double ASSUMED_FACE_WEIGHT = 18.85;

  /** Light soil below the base lowers its bearing capacity. */
  private static final double ASSUMED_BASE_WEIGHT = 16;

  /** 2 ft of soil at 109 pcf. */
  private static final double ASSUMED_SURCHARGE = 10.44;

  /** 2,500 psi. */
  private static final double ASSUMED_CONCRETE = 2500 * 6.894757293168361;

  /** 40 ksi. */
  private static final double ASSUMED_YIELD = 275_800;

  private final Map<PitsFact, Given<Double>> amounts = new EnumMap<>(PitsFact.class);
  private final PitsSettings settings;
  final Given<WallMaterial> material;
  final Given<WallCondition> condition;
  final Given<SoilClass> faceSoil;
  final Given<SoilClass> baseSoil;
  final Given<Boolean> facesRun;
  final Given<StandUp> standUp;
  final Given<SheetingSoil> oshaType;
  final Given<Boolean> bracePossible;
  final Given<Boolean> lateralStabilityVerified;

  private PitsCase(PitsInput input, PitsSettings settings) {
    this.settings = settings;
    amounts.putAll(input.amounts());
    material = input.material().orElseThrow();
    faceSoil = input.faceSoil().orElseThrow();
    condition = orAssumed(input.condition(), WallCondition.POOR);
    baseSoil = orAssumed(input.baseSoil(), faceSoil.value());
    facesRun =
        input
            .facesRun()
            .orElseGet(
                () -> new Given<>(faceSoil.value().runs(), faceSoil.origin(), faceSoil.source()));
    standUp = orAssumed(input.standUp(), StandUp.MINUTES);
    bracePossible = orAssumed(input.bracePossible(), false);
    lateralStabilityVerified = orAssumed(input.lateralStabilityVerified(), false);
    fillDepths();
    fillSoil();
    fillWall();
    oshaType = input.oshaType().orElseGet(this::sheetingType);
  }

  static PitsCase of(PitsInput input, PitsSettings settings) {
    return new PitsCase(input, settings);
  }

  /** What the sizing cannot do without. */
  static List<MissingInput> missing(PitsInput input) {
    List<MissingInput> missing = new ArrayList<>();
    need(missing, input, WALL_LINE_LOAD, "bearing, span and dry pack rest on it");
    need(missing, input, WALL_LENGTH, "the number and order of pits follow from it");
    need(
        missing,
        input,
        FOOTING_WIDTH,
        "it sets the pier, its bearing pressure and the pressure on the sheeting");
    need(
        missing,
        input,
        FOUNDING_DEPTH,
        "it sets the soil pressure and the depth of the approach pits");
    need(missing, input, WATER_ABOVE_PIT_BASE, "pits under water in soil that runs are not safe");
    if (input.amount(PIT_DEPTH).isEmpty()) {
      need(missing, input, EXCAVATION_BELOW_FOOTING, "the depth of the pits follows from it");
    }
    if (input.material().isEmpty()) {
      missing.add(
          new MissingInput(
              "material",
              "What is the footing or wall above the pits made of: reinforced concrete, plain concrete, solid masonry or rubble?",
              "the width of a pit is what it can span"));
    }
    if (input.faceSoil().isEmpty()) {
      missing.add(
          new MissingInput(
              "face-soil",
              "What soil will the pits be dug through, the worst layer?",
              "sheeting, standing time and digging time rest on it"));
    }
    return missing;
  }

  private static void need(List<MissingInput> missing, PitsInput input, PitsFact fact, String why) {
    if (input.amount(fact).isEmpty()) {
      missing.add(new MissingInput(fact.id(), fact.question(), why));
    }
  }

  private void fillDepths() {
    double excavation =
        amounts.containsKey(EXCAVATION_BELOW_FOOTING) ? get(EXCAVATION_BELOW_FOOTING) : 0;
    derive(
        PIT_DEPTH,
        Math.max(PIT_DEPTH_LEAST, excavation + get(PitsSetting.TOE_EMBEDMENT)),
        "depth of the excavation plus the toe embedment");
    assume(EXCAVATION_BELOW_FOOTING, get(PIT_DEPTH), Source.judgement());
    derive(
        RETAINED_HEIGHT,
        get(EXCAVATION_BELOW_FOOTING) > 0 ? get(PIT_DEPTH) : 0,
        "the whole pier; soil in front of its toe is not counted");
    assume(CORNERS, 2, Source.judgement());
  }

  /** A pier lower than this is no pit. */
  private static final double PIT_DEPTH_LEAST = 0.3;

  private void fillSoil() {
    Source table = Sources.CALTRANS_SOIL;
    assume(FACE_UNIT_WEIGHT, ASSUMED_FACE_WEIGHT, table);
    assume(FACE_FRICTION_ANGLE, faceSoil.value().frictionAngleDegrees(), basis(faceSoil.value()));
    assume(
        FACE_UNDRAINED_STRENGTH,
        faceSoil.value().undrainedStrengthKilopascals(),
        Source.judgement());
    assume(BASE_UNIT_WEIGHT, ASSUMED_BASE_WEIGHT, Source.judgement());
    assume(BASE_FRICTION_ANGLE, baseSoil.value().frictionAngleDegrees(), basis(baseSoil.value()));
    assume(
        BASE_UNDRAINED_STRENGTH,
        baseSoil.value().undrainedStrengthKilopascals(),
        Source.judgement());
    assume(SURCHARGE, ASSUMED_SURCHARGE, Sources.CALTRANS_SURCHARGE);
    assume(LASTING_WATER_ABOVE_PIT_BASE, get(WATER_ABOVE_PIT_BASE), Source.judgement());
  }

  private void fillWall() {
    if (material.value().concrete()) {
      derive(WALL_THICKNESS, get(FOOTING_WIDTH), "the footing itself spans");
      if (has(WALL_HEIGHT)) { // without it nothing is reckoned from the strength
        assume(WALL_CONCRETE_STRENGTH, ASSUMED_CONCRETE, Sources.ACI_PLAIN);
      }
      if (has(WALL_HEIGHT) && has(WALL_STEEL_AREA)) {
        assume(
            WALL_STEEL_YIELD,
            ASSUMED_YIELD,
            Source.memory("common US bars before about 1970, 40 ksi"));
      }
    }
  }

  private static Source basis(SoilClass soil) {
    return soil == SoilClass.DENSE_GRAVEL
            || soil == SoilClass.DENSE_SAND
            || soil == SoilClass.LOOSE_SAND
        ? Sources.CALTRANS_SOIL
        : Source.judgement();
  }

  private Given<SheetingSoil> sheetingType() {
    boolean clayKnown = given(FACE_UNDRAINED_STRENGTH).origin() != Origin.ASSUMED;
    if (faceSoil.value().clay() && clayKnown) {
      SheetingSoil type = SheetingSoil.ofCohesive(2 * get(FACE_UNDRAINED_STRENGTH));
      return Given.derived(
          type == SheetingSoil.A ? SheetingSoil.B : type,
          "from twice the undrained strength; type A not credited before a competent person's tests");
    }
    SheetingSoil type = faceSoil.value().sheetingSoil();
    return Given.assumed(type == SheetingSoil.A ? SheetingSoil.B : type, Source.judgement());
  }

  private static <T> Given<T> orAssumed(Optional<Given<T>> given, T value) {
    return given.orElseGet(() -> Given.assumed(value, Source.judgement()));
  }

  private void assume(PitsFact fact, double value, Source why) {
    amounts.putIfAbsent(fact, Given.assumed(value, why));
  }

  private void derive(PitsFact fact, double value, String why) {
    amounts.putIfAbsent(fact, Given.derived(value, why));
  }

  PitsSettings settings() {
    return settings;
  }

  boolean has(PitsFact fact) {
    return amounts.containsKey(fact);
  }

  Given<Double> given(PitsFact fact) {
    Given<Double> given = amounts.get(fact);
    if (given == null) {
      throw new IllegalStateException(fact + " is asked for but nobody gave or assumed it");
    }
    return given;
  }

  double get(PitsFact fact) {
    return given(fact).value();
  }

  Amount amount(PitsFact fact) {
    return fact.amount(get(fact));
  }

  double get(PitsSetting setting) {
    return settings.get(setting);
  }

  Amount amount(PitsSetting setting) {
    return settings.amount(setting);
  }

  /** Verdict of a check that does not pass: a value nobody stated never rules pits out. */
  Verdict otherwise(PitsFact... facts) {
    boolean guessed =
        Arrays.stream(facts).anyMatch(fact -> has(fact) && given(fact).origin() == Origin.ASSUMED);
    return guessed ? Verdict.REFER : Verdict.FAILS;
  }

  /** The same where the check rests on a choice. */
  static Verdict otherwise(Given<?> choice) {
    return choice.origin() == Origin.ASSUMED ? Verdict.REFER : Verdict.FAILS;
  }

  /** Fact that holds the strength of the soil at the faces. */
  PitsFact faceStrength() {
    return faceSoil.value().clay() ? FACE_UNDRAINED_STRENGTH : FACE_FRICTION_ANGLE;
  }

  /** Fact that holds the strength of the soil below the base. */
  PitsFact baseStrength() {
    return baseSoil.value().clay() ? BASE_UNDRAINED_STRENGTH : BASE_FRICTION_ANGLE;
  }

  /** Whether the wall counts as poor for the share that may be open. */
  boolean poorWall() {
    return condition.value() == WallCondition.POOR || material.value() == WallMaterial.RUBBLE;
  }

  /** Share of the wall that may be open. */
  PitsSetting openShare() {
    return poorWall() ? PitsSetting.POOR_OPEN_SHARE : PitsSetting.OPEN_SHARE;
  }

  /** Pressure under the footing beside an open pit, whose load it takes over, kPa. */
  double raisedFootingPressure() {
    return get(WALL_LINE_LOAD) / get(FOOTING_WIDTH) * (1 + 1 / get(PitsSetting.CLEAR_PIT_WIDTHS));
  }

  /** Depth of the approach pit below the footing. */
  double approachBelowFooting() {
    return Math.min(get(PitsSetting.APPROACH_DEPTH), get(PIT_DEPTH));
  }

  /** Thickness of the piers across the wall. */
  double pierThickness() {
    return get(FOOTING_WIDTH);
  }
}
