package underhold.sizing.bracketpiles;

import static underhold.sizing.bracketpiles.BracketInputs.*;

import java.util.Map;
import underhold.mechanics.foundationbeam.BromsClay;
import underhold.mechanics.foundationbeam.BromsSand;
import underhold.mechanics.foundationbeam.PileOnSprings;
import underhold.mechanics.micropile.BracedBuckling;
import underhold.mechanics.micropile.FreeLength;
import underhold.mechanics.soil.pressure.RankinePressure;
import underhold.sizing.Amount;
import underhold.sizing.Phrase;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Verdict;
import underhold.sizing.zone.SoilClass;
import underhold.sizing.zone.Stratum;

/**
 * The pile bent in the ground, at half and double stiffness; first joint; buckling in soft soil.
 */
final class LateralSection {
  private static final double BUOYANCY = 9.81;

  private LateralSection() {}

  static void write(BracketCase site, PileTrial pile, SheetBuilder sheet) {
    springs(pile, sheet);
    rotation(site, pile, sheet);
    joint(site, pile, sheet);
    sheet.check(
        "head-sideways",
        "Sideways movement of the head in the softer case",
        Amount.thickness(pile.sideways(PileTrial.SOFT)),
        Amount.thickness(site.headSideways()),
        Verdict.REFER,
        Sources.UFC,
        Phrase.of(
            "At half, as reckoned and double soil reaction: {half}, {one}, {twice}.",
            Map.of(
                "half", Amount.thickness(pile.sideways(PileTrial.SOFT)),
                "one", Amount.thickness(pile.sideways(1)),
                "twice", Amount.thickness(pile.sideways(PileTrial.STIFF)))));
    ultimate(site, pile, sheet);
    buckling(site, pile, sheet);
  }

  private static void springs(PileTrial pile, SheetBuilder sheet) {
    PileOnSprings soft = pile.springs(PileTrial.SOFT);
    sheet
        .step(
            "pile-length-scale",
            "Characteristic length 1/lambda of the pile in its ground, at half the soil reaction",
            "lc = (4 × {E} × 3.1416 / 64 × ({OD}^4 - {ID}^4) / (0.5 × {k}))^0.25")
        .with("E", "modulus of steel", Amount.stress(FreeLength.STEEL_MODULUS_KILOPASCALS))
        .with("OD", "outside diameter, corrosion deducted", Amounts.outside(pile.casing()))
        .with("ID", "inside diameter", Amounts.inside(pile.casing()))
        .with(
            "k", "soil reaction, force per length per movement", pile.site().amount(SOIL_REACTION))
        .from(Sources.HETENYI)
        .note(
            Phrase.of(
                "As reckoned {one}, at double the reaction {twice}. The casing alone bends.",
                Map.of(
                    "one", Amount.length(pile.springs(1).characteristicLength()),
                    "twice", Amount.length(pile.springs(PileTrial.STIFF).characteristicLength()))))
        .gives(Amount.length(soft.characteristicLength()));
  }

  private static void rotation(BracketCase site, PileTrial pile, SheetBuilder sheet) {
    PileOnSprings soft = pile.springs(PileTrial.SOFT);
    boolean held = pile.heldByEdge();
    boolean bay = site.bareLength() > 0 && !held;
    var step =
        sheet
            .step(
                "head-rotation",
                "Rotation of the head, radians, in the softer case",
                (held ? "th = 2" : "th = 4")
                    + " × {M} / (0.5 × {k} × {lc}^3)"
                    + (bay ? " + {M} × {H} / ({E} × 3.1416 / 64 × ({OD}^4 - {ID}^4))" : ""))
            .with("M", "moment on the pile head", Amount.moment(pile.headMoment()))
            .with("k", "soil reaction", site.amount(SOIL_REACTION))
            .with(
                "lc",
                "characteristic length, soft case",
                Amount.length(soft.characteristicLength()));
    if (bay) {
      step.with(
              "H",
              "bare length; with braces four thirds of a bay",
              Amount.length(pile.turningLength()))
          .with("E", "modulus of steel", Amount.stress(FreeLength.STEEL_MODULUS_KILOPASCALS))
          .with("OD", "outside diameter, corrosion deducted", Amounts.outside(pile.casing()))
          .with("ID", "inside diameter", Amounts.inside(pile.casing()));
    }
    step.from(Sources.HETENYI)
        .note(
            Phrase.of(
                "As reckoned {one}, at double the reaction {twice}: it goes with the fourth root of the reaction.",
                Map.of(
                    "one", Amount.ratio(pile.rotation(1)),
                    "twice", Amount.ratio(pile.rotation(PileTrial.STIFF)))))
        .gives(Amount.ratio(pile.rotation(PileTrial.SOFT)));
  }

  private static void joint(BracketCase site, PileTrial pile, SheetBuilder sheet) {
    sheet
        .step("casing-piece", "Length of a casing piece", "lp = max({l}, min({lm}, {h} - {r}))")
        .with("l", "least piece", Amount.length(PileTrial.LEAST_PIECE_METRES))
        .with("lm", "longest piece", site.amount(BracketSetting.LONGEST_PIECE))
        .with("h", "headroom", site.amount(HEADROOM))
        .with("r", "headroom that the rig needs", site.amount(BracketSetting.HEADROOM_LOSS))
        .gives(Amount.length(pile.piece()));
    sheet.check(
        "headroom",
        "Headroom that ordinary small rigs need against what there is",
        site.amount(BracketSetting.LEAST_HEADROOM),
        site.amount(HEADROOM),
        Verdict.REFER,
        Sources.RIG,
        Phrase.of("Below it special rigs and very short pieces: ask a contractor."));
    double depth = pile.jointDepth();
    sheet.check(
        "casing-joint",
        "Moment at the first threaded joint against the thread",
        Amount.moment(pile.jointMoment()),
        Amount.moment(pile.jointStrength()),
        Verdict.FAILS,
        Sources.FHWA,
        Phrase.of(
            "First joint {d} below the bracket; joints from there to 1/lambda below the support: {n}. Half of the wall is gone at the thread. The moment is the greatest at half, single and double soil reaction. The joint holds deeper than {z}, or under a sleeve (sleeve-length). The first joint's depth goes on the drawing.",
            Map.of(
                "d", Amount.length(depth),
                "n", Amount.count(pile.jointsNearHead()),
                "z", Amount.length(safeJoint(site, pile)))));
  }

  /** Depth below the head from which a joint holds in the softer case, m. */
  private static double safeJoint(BracketCase site, PileTrial pile) {
    double below = pile.bent(PileTrial.SOFT).depthWhereMomentFallsTo(pile.jointStrength());
    return below > 0 ? site.bareLength() + below : 0;
  }

  /** Broms: the pile must not be pushed over by its moment. */
  private static void ultimate(BracketCase site, PileTrial pile, SheetBuilder sheet) {
    sheet.check(
        "sideways-resistance",
        "Least length in the ground against the factored moment, against what there is",
        Amount.length(leastInGround(site, pile)),
        Amount.length(BondSection.casingBottom(site, pile) - site.supportDepth()),
        Sources.BROMS,
        "Greater of the ultimate length in the soil at the support and three characteristic lengths, for which the bending formulas hold. Cased length below the support counts; the casing is carried down until it is enough.");
  }

  /** Length in the ground that the moment needs, m; 0 where no moment bends the pile. */
  static double leastInGround(BracketCase site, PileTrial pile) {
    if (pile.headMoment() <= 0) {
      return 0;
    }
    double moment = site.get(BracketSetting.LATERAL_FACTOR) * pile.headMoment();
    double width = pile.casing().outsideDiameterMetres();
    double ultimate =
        site.column().at(site.supportDepth()).map(one -> least(one, moment, width)).orElse(0.0);
    return Math.max(ultimate, pile.springs(PileTrial.SOFT).leastLength());
  }

  private static double least(Stratum layer, double moment, double width) {
    if (layer.soil() == SoilClass.ROCK) {
      return 0;
    }
    if (layer.soil().clay()) {
      return new BromsClay(layer.undrainedStrength().value(), width).leastLength(moment, 0);
    }
    double weight = Math.max(1, layer.unitWeight().value() - BUOYANCY);
    double passive = RankinePressure.passiveCoefficient(layer.frictionAngle().value());
    return new BromsSand(weight, width, passive).leastLength(moment, 0);
  }

  private static void buckling(BracketCase site, PileTrial pile, SheetBuilder sheet) {
    BracedBuckling buckling =
        BracedBuckling.of(pile.casing(), site.get(BracketSetting.CASING_YIELD));
    double limit = buckling.limitingStiffness();
    double soil = site.get(SOFTEST_REACTION);
    double critical = buckling.leastCriticalLoad(soil) / FreeLength.SAFETY_FACTOR;
    sheet
        .step(
            "buckling-stiffness",
            "Soil stiffness above which the pile yields before it buckles",
            "El = ({Fy} × {A})^2 / (4 × {E} × 3.1416 / 64 × ({OD}^4 - {ID}^4))")
        .with("Fy", "yield of the casing", site.amount(BracketSetting.CASING_YIELD))
        .with("A", "casing", Amounts.steelArea(pile.casing().area()))
        .with("E", "modulus of steel", Amount.stress(FreeLength.STEEL_MODULUS_KILOPASCALS))
        .with("OD", "outside diameter, corrosion deducted", Amounts.outside(pile.casing()))
        .with("ID", "inside diameter", Amounts.inside(pile.casing()))
        .from(Sources.MASCARDI)
        .gives(Amounts.bond(limit));
    sheet.check(
        "soft-ground-buckling",
        "Stiffness that keeps the pile from buckling against that of the softest layer",
        Amounts.bond(limit),
        Amounts.bond(soil),
        pile.axial() <= critical ? Verdict.REFER : Verdict.FAILS,
        Sources.MASCARDI,
        Phrase.of(
            "In the softest layer the pile buckles at {p} with the factor 2.12 taken off. Air, water, voids and soil that may liquefy do not brace at all.",
            "p",
            Amount.force(critical)));
  }
}
