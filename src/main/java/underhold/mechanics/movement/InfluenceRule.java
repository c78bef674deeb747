package underhold.mechanics.movement;

import java.util.function.ToDoubleFunction;
import underhold.mechanics.soil.Outcome;

/**
 * How far from its face an excavation is felt, by each published rule; they disagree, so they stand
 * side by side.
 *
 * <p>A line of slope 1 vertical on k horizontal from the base of the excavation up to the underside
 * of the footing gives a reach of k times the depth below the footing; a footing whose edge is
 * nearer, or just there, is inside. Monitoring rings of a code use the depth below ground or a
 * fixed distance. None of them is a proof that nothing moves outside.
 *
 * <p>Left out: a rule of 30 degrees from the toe, whose datum is not stated; the slopes at which
 * trenches are cut back, which are about cave-in; zone charts whose lines were not at hand.
 */
@SuppressWarnings("ImmutableEnumChecker") // its parts are records of immutable parts
public enum InfluenceRule {
  /** Lines that must not cross below neighbouring footings; meant for their stresses. */
  STRESS_OVERLAP(
      "30 degrees from the vertical",
      "overlap of the stresses of neighbouring footings, not excavations",
      "tan(30) times the depth below the footing",
      new Citation("UFC 3-220-20 (16 January 2025), 5-2.5 (extract)", Provenance.PUBLISHED),
      false,
      at -> Math.tan(Math.toRadians(30)) * at.below()),
  /** Practitioners' rule for stable native soil. */
  FORTY_FIVE_DEGREES(
      "45 degrees from the base",
      "stable native soil",
      "1 times the depth below the footing",
      new Citation("practitioner opinion", Provenance.COMMON_PRACTICE),
      true,
      ExcavationBeside::below),
  /** Clearance not less than depth of excavation less depth of foundation. */
  CLEARANCE_AS_DEPTH(
      "clearance as deep as the excavation goes below",
      "houses",
      "depth of the excavation less depth of the foundation",
      new Citation(
          "UK house-building standard, clearance of excavations (secondary)", Provenance.PUBLISHED),
      true,
      ExcavationBeside::below),
  /** 1 on 1 for sand. */
  ONE_ON_ONE(
      "1 on 1",
      "sand and firm ground",
      "1 times the depth below the footing",
      new Citation(
          "attributed to Merritt, Standard Handbook for Civil Engineers (secondary)",
          Provenance.PUBLISHED),
      true,
      ExcavationBeside::below),
  /** Local guides. */
  ONE_ON_ONE_AND_A_HALF(
      "1 vertical on 1.5 horizontal",
      "local guides",
      "1.5 times the depth below the footing",
      new Citation("local guides on excavation beside buildings", Provenance.FROM_MEMORY),
      true,
      at -> 1.5 * at.below()),
  /** A practitioner's rule. */
  TEN_ON_SIX(
      "10 horizontal on 6 vertical",
      "pads beside a pit",
      "10 / 6 times the depth below the footing",
      new Citation("practitioner opinion", Provenance.COMMON_PRACTICE),
      true,
      at -> 10.0 / 6 * at.below()),
  /** 1 on 2 for soft clay and silt; the flatter reading, since its direction is not stated. */
  ONE_ON_TWO(
      "1 on 2",
      "soft clay and silt; read as the flatter slope",
      "2 times the depth below the footing",
      new Citation(
          "attributed to Merritt, Standard Handbook for Civil Engineers (secondary)",
          Provenance.PUBLISHED),
      true,
      at -> 2 * at.below()),
  /** Specification of 1914: outside it, on firm soil, no permanent underpinning. */
  FIRM_GROUND_1914(
      "1 vertical on 2 horizontal from the footing's edge",
      "firm soil, subway specification of 1914",
      "2 times the depth below the footing",
      new Citation(
          "Engineering News 1914, The New York Rapid Transit Railway Extensions, ch. 9",
          Provenance.PUBLISHED),
      true,
      at -> 2 * at.below()),
  /** Ground that must stay beside a footing where nothing else is done. */
  BERM(
      "berm and slope that must stay",
      "excavation without a wall, at most 4 m below the footing",
      "2 m + 2 times (depth below the footing + 0.5 m)",
      new Citation(
          "DIN 4123:2013-04, Excavations, foundations and underpinning in the area of existing buildings, 7.2 (extract)",
          Provenance.STANDARD),
      true,
      InfluenceRule::berm),
  /** Neighbours within the depth of the excavation are watched. */
  MONITORING_DEPTH(
      "monitoring within the depth of the excavation",
      "every neighbour",
      "depth of the excavation below ground",
      new Citation("New York City Building Code 2014, 3309.4.4", Provenance.STANDARD),
      true,
      ExcavationBeside::depthMetres),
  /** Historic neighbours are watched to 90 ft. */
  MONITORING_HISTORIC(
      "monitoring of historic structures",
      "protected structures",
      "90 ft (27.4 m)",
      new Citation("New York City Building Code 2014, 3309.4.4", Provenance.STANDARD),
      true,
      at -> 27.432);

  /** Width of the berm of DIN 4123, m. */
  public static final double BERM_WIDTH_METRES = 2.0;

  /** Height of the berm above founding level, DIN 4123, m. */
  public static final double BERM_ABOVE_FOOTING_METRES = 0.5;

  /** Deepest excavation below the footing for the berm rule, DIN 4123, m. */
  public static final double BERM_DEEPEST_METRES = 4.0;

  /** Excavation depth and distance of the small-work exemption, 5 ft, m (NYC 3309.4.4). */
  public static final double SMALL_WORK_METRES = 1.524;

  private static final double BERM_SLOPE = 2;

  private final String title;
  private final String purpose;
  private final String formula;
  private final Citation citation;
  private final boolean forExcavations;
  private final ToDoubleFunction<ExcavationBeside> reach;

  InfluenceRule(
      String title,
      String purpose,
      String formula,
      Citation citation,
      boolean forExcavations,
      ToDoubleFunction<ExcavationBeside> reach) {
    this.title = title;
    this.purpose = purpose;
    this.formula = formula;
    this.citation = citation;
    this.forExcavations = forExcavations;
    this.reach = reach;
  }

  private static double berm(ExcavationBeside at) {
    return at.belowFootingMetres() <= -BERM_ABOVE_FOOTING_METRES
        ? 0
        : BERM_WIDTH_METRES + BERM_SLOPE * (at.belowFootingMetres() + BERM_ABOVE_FOOTING_METRES);
  }

  /**
   * The reach from the face, m; or why the rule does not serve.
   *
   * <p>The lines reach nowhere from an excavation that stays above the footing.
   */
  public Outcome<Double> reachMetres(ExcavationBeside at) {
    if (this == BERM && at.belowFootingMetres() > BERM_DEEPEST_METRES) {
      return Outcome.outOfRange("the berm rule ends at 4 m below the footing");
    }
    if (this == MONITORING_HISTORIC && !at.historic()) {
      return Outcome.outOfRange("the structure is not protected");
    }
    if (this == MONITORING_DEPTH && smallWork(at)) {
      return Outcome.of(0.0);
    }
    return Outcome.of(reach.applyAsDouble(at));
  }

  /**
   * Whether the footing is inside: at the limit it is. A reach of nothing holds nothing; a rule
   * that does not serve gives no answer.
   */
  public Outcome<Boolean> inside(ExcavationBeside at) {
    return reachMetres(at).map(far -> far > 0 && at.gapMetres() <= far * (1 + ROUNDING));
  }

  /** Rounding of sums only. */
  private static final double ROUNDING = 1e-9;

  /** At most 5 ft deep and more than 5 ft away, or at most 5 ft deep and not below the footing. */
  private static boolean smallWork(ExcavationBeside at) {
    return at.depthMetres() <= SMALL_WORK_METRES
        && (at.gapMetres() > SMALL_WORK_METRES || at.belowFootingMetres() <= 0);
  }

  /** Name in words. */
  public String title() {
    return title;
  }

  /** What the rule was made for. */
  public String purpose() {
    return purpose;
  }

  /** Reach in words. */
  public String formula() {
    return formula;
  }

  /** Source. */
  public Citation citation() {
    return citation;
  }

  /** Whether the rule is about excavations; otherwise it stands for comparison only. */
  public boolean forExcavations() {
    return forExcavations;
  }
}
