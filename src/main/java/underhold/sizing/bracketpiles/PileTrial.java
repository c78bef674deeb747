package underhold.sizing.bracketpiles;

import static underhold.sizing.bracketpiles.BracketInputs.*;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import underhold.mechanics.bracket.EccentricLoad;
import underhold.mechanics.foundationbeam.DeflectedPile;
import underhold.mechanics.foundationbeam.PileOnSprings;
import underhold.mechanics.micropile.CasingSection;
import underhold.mechanics.micropile.CombinedStress;
import underhold.mechanics.micropile.FhwaCapacity;
import underhold.mechanics.micropile.FreeLength;
import underhold.mechanics.micropile.IbcCapacity;
import underhold.mechanics.micropile.PileMaterials;
import underhold.mechanics.micropile.SteelBar;
import underhold.mechanics.micropile.ThreadedJoint;
import underhold.sizing.Check;

/**
 * The pile of one casing: what acts on it and what it carries.
 *
 * @param site the zone
 * @param gross casing as bought
 */
record PileTrial(BracketCase site, CasingSection gross) {
  /** The soil reaction is run at half and at double. */
  static final double SOFT = 0.5;

  static final double STIFF = 2;

  /** Least length of a casing piece; judgement. */
  static final double LEAST_PIECE_METRES = 0.3;

  private static final double ROUNDING = 1e-9;

  private static final double NEXT_BAY = 4.0 / 3;

  /** Room for a coupler, 1 in; common practice. */
  private static final double COUPLER_ROOM_METRES = 0.0254;

  /**
   * The lightest casing that passes; else the lightest that is strong enough whatever the limit on
   * the eccentricity; else the strongest in bending.
   */
  static PileTrial choose(BracketCase site) {
    List<PileTrial> all =
        site.settings().casingsToTry().stream().map(casing -> new PileTrial(site, casing)).toList();
    return first(all, pile -> pile.strong() && pile.withinEccentricity())
        .or(() -> first(all, PileTrial::strong))
        .orElseGet(
            () ->
                all.stream()
                    .max(Comparator.comparingDouble(pile -> pile.gross().sectionModulus()))
                    .orElseThrow());
  }

  private static Optional<PileTrial> first(List<PileTrial> all, Predicate<PileTrial> wanted) {
    return all.stream().filter(wanted).findFirst();
  }

  CasingSection casing() {
    return gross.less(site.corrosion());
  }

  double eccentricity() {
    return site.eccentricity(gross);
  }

  EccentricLoad bracket() {
    return new EccentricLoad(site.load(), eccentricity());
  }

  /** Axial load of the pile, kN: of the near one in a pair. */
  double axial() {
    return site.path() == MomentPath.PAIRED
        ? bracket().nearPile(site.get(BracketSetting.PAIR_APART))
        : site.load();
  }

  /** Pull on the far pile of a pair, kN. */
  double pull() {
    return site.path() == MomentPath.PAIRED
        ? bracket().farPileUplift(site.get(BracketSetting.PAIR_APART))
        : 0;
  }

  /** Moment on the pile head, kN m. */
  double headMoment() {
    return switch (site.path()) {
      case PILE_HEAD, TIED -> bracket().moment();
      case COUPLE -> site.get(BracketSetting.COUPLE_PILE_SHARE) * bracket().moment();
      case PAIRED -> 0;
    };
  }

  double casingYield() {
    return site.get(BracketSetting.CASING_YIELD);
  }

  SteelBar bar() {
    return site.settings().bar();
  }

  FhwaCapacity fhwa() {
    return new FhwaCapacity(materials(), casing(), bar().areaSquareMetres());
  }

  IbcCapacity ibc() {
    return new IbcCapacity(materials(), casing(), bar().areaSquareMetres());
  }

  private PileMaterials materials() {
    return new PileMaterials(
        site.get(BracketSetting.GROUT_STRENGTH), casingYield(), bar().yieldKilopascals());
  }

  double hole() {
    return gross.outsideDiameterMetres() + site.get(BracketSetting.HOLE_OVERCUT);
  }

  CombinedStress braced() {
    return CombinedStress.braced(casing(), casingYield());
  }

  /** Free length with fixity below it, m. */
  double freeLength() {
    return site.bareBay()
        + site.get(site.softHead() ? BracketSetting.FIXITY_SOFT : BracketSetting.FIXITY_STIFF);
  }

  double lengthFactor() {
    boolean held = site.path().headHeld() || site.braceLevels() > 0;
    return site.get(held ? BracketSetting.K_HELD_TOP : BracketSetting.K_FREE_TOP);
  }

  FreeLength free() {
    return new FreeLength(casing(), casingYield(), freeLength(), lengthFactor());
  }

  boolean bared() {
    return site.bareLength() > 0;
  }

  OptionalDouble baredRatio() {
    return CombinedStress.free(free()).ratio(axial(), headMoment());
  }

  double combinedRatio() {
    return braced().ratio(axial(), headMoment()).orElse(Double.MAX_VALUE);
  }

  PileOnSprings springs(double factor) {
    return new PileOnSprings(
        FreeLength.STEEL_MODULUS_KILOPASCALS * casing().secondMoment(),
        factor * site.get(SOIL_REACTION));
  }

  /** The head counts as held only where the ground reaches up to it. */
  boolean heldByEdge() {
    return site.path() == MomentPath.TIED && !bared();
  }

  DeflectedPile bent(double factor) {
    return heldByEdge()
        ? springs(factor).momentOnHeldHead(headMoment())
        : springs(factor).momentOnFreeHead(headMoment());
  }

  /**
   * Length over which a bared pile turns freely, m: all of it, or with braces the first bay and a
   * third of the next, the span that turns over the first brace. By statics.
   */
  double turningLength() {
    return site.braceLevels() > 0
        ? Math.min(site.bareLength(), site.bareBay() * NEXT_BAY)
        : site.bareLength();
  }

  /** Rotation of the head, radians. */
  double rotation(double factor) {
    return heldByEdge()
        ? bent(factor).headRotation()
        : springs(factor).freeTopRotation(headMoment(), turningLength());
  }

  /** Sideways movement of the head, m. */
  double sideways(double factor) {
    return heldByEdge() ? 0 : springs(factor).freeTopDeflection(headMoment(), turningLength());
  }

  /** Length of one casing piece, m. */
  double piece() {
    double room = site.get(HEADROOM) - site.get(BracketSetting.HEADROOM_LOSS);
    return Math.max(LEAST_PIECE_METRES, Math.min(site.get(BracketSetting.LONGEST_PIECE), room));
  }

  /** Depth of the first joint below the head that no sleeve covers, m. */
  double jointDepth() {
    double set = site.get(BracketSetting.FIRST_JOINT);
    double depth = set > 0 ? set : piece();
    double sleeve = site.get(BracketSetting.SLEEVE_LENGTH);
    double more = Math.max(0, Math.ceil((sleeve - depth) / piece() - ROUNDING));
    return depth + more * piece();
  }

  /** Greatest moment at that joint over soft and stiff ground, kN m. */
  double jointMoment() {
    return Math.max(jointMoment(SOFT), Math.max(jointMoment(1), jointMoment(STIFF)));
  }

  double jointMoment(double factor) {
    double below = Math.max(0, jointDepth() - site.bareLength());
    return Math.abs(bent(factor).moment(below));
  }

  /** Joints from the head down to 1/lambda below the support. */
  double jointsNearHead() {
    double reach = site.bareLength() + springs(1).characteristicLength();
    return Math.max(0, Math.floor((reach - jointDepth()) / piece() + 1));
  }

  double jointStrength() {
    CombinedStress stress = bared() ? CombinedStress.free(free()) : braced();
    return new ThreadedJoint(casing()).allowableMoment(stress, axial());
  }

  /** Cased compression by both codes, the least, over a free length cut by buckling, kN. */
  double casedCompression() {
    return share() * Math.min(fhwa().casedCompression(), ibc().casedCompression());
  }

  double share() {
    return bared() ? free().shareOfCapacity() : 1;
  }

  double uncasedCompression() {
    return Math.min(fhwa().uncasedCompression(hole()), ibc().uncasedCompression(hole()));
  }

  /** Largest eccentricity that the chosen path carries, m: by strength, and by judgement. */
  double largestEccentricity() {
    double limit = site.get(BracketSetting.LARGEST_ECCENTRICITY);
    boolean limited = site.path() == MomentPath.PILE_HEAD || site.load() <= 0;
    return limited ? Math.min(limit, largestByStrength()) : largestByStrength();
  }

  /** Largest eccentricity by strength alone, m; the limit where nothing loads the bracket. */
  double largestByStrength() {
    double load = site.load();
    if (load <= 0) {
      return site.get(BracketSetting.LARGEST_ECCENTRICITY);
    }
    double casing =
        (bared() ? CombinedStress.free(free()) : braced()).greatestMoment(axial()) / load;
    return switch (site.path()) {
      case PILE_HEAD -> site.get(BracketSetting.MOMENT_SHARE) * casing;
      case TIED -> casing;
      case COUPLE -> AnchorSection.allowablePull(site) * site.get(BracketSetting.COUPLE_ARM) / load;
      case PAIRED -> fhwa().uncasedTension() * site.get(BracketSetting.PAIR_APART) / load;
    };
  }

  private boolean eccentricityRestsOnCasing() {
    return site.path() == MomentPath.PILE_HEAD || site.path() == MomentPath.TIED;
  }

  /** Whether the bar with some room for its coupler goes into the casing. */
  boolean barFits() {
    return bar().outsideDiameterMetres() + COUPLER_ROOM_METRES <= gross.insideDiameter();
  }

  private boolean withinEccentricity() {
    return !eccentricityRestsOnCasing() || Check.covers(eccentricity(), largestEccentricity());
  }

  private boolean strong() {
    return barFits()
        && combinedRatio() <= 1
        && (!bared() || baredRatio().orElse(2) <= 1)
        && jointMoment() <= jointStrength()
        && axial() <= casedCompression()
        && axial() <= uncasedCompression()
        && sideways(SOFT) <= site.headSideways();
  }
}
