package underhold.sizing.drilledpiles;

import static underhold.sizing.drilledpiles.PileInputs.LOWERING;
import static underhold.sizing.drilledpiles.PileInputs.WATER;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import underhold.mechanics.pile.Atmosphere;
import underhold.mechanics.pile.PileSection;
import underhold.mechanics.pile.axial.ClayAlpha;
import underhold.mechanics.pile.axial.ClayBase;
import underhold.mechanics.pile.axial.ExcludedLength;
import underhold.mechanics.pile.axial.RockBase;
import underhold.mechanics.pile.axial.RockSide;
import underhold.mechanics.pile.axial.SandBase;
import underhold.mechanics.pile.axial.SandBetaOneillReese;
import underhold.mechanics.pile.axial.SandBetaRational;
import underhold.mechanics.pile.axial.SandBetaRational.Grain;
import underhold.sizing.drilledpiles.BondLayer.Kind;
import underhold.sizing.zone.SoilClass;

/** Side and base resistance of one pile below the dug level, by the methods set. */
final class Ground {
  /** Unit weight of water, kN/m3. */
  static final double WATER_WEIGHT = 9.81;

  /** Clay of a higher su/pa is counted with this one only. */
  static final double STRONGEST_CLAY = 2.5;

  /** Sand is cut into pieces of at most this length, m. */
  private static final double PIECE = 3;

  /** A piece shorter than this is none: the ends of a layer met with a rounding error, m. */
  private static final double LEAST_PIECE = 1e-6;

  private final PileCase site;
  private final double notCounted;

  /** Pieces cut already: of a layer above the toe they are the same for every toe below it. */
  private final Map<Cut, List<SidePiece>> cuts = new HashMap<>();

  private record Cut(int layer, double from, double to) {}

  Ground(PileCase site) {
    this.site = site;
    this.notCounted = site.notCounted();
  }

  /**
   * Depth of the water that counts after digging, m: at the dug level at the highest where it is
   * lowered, else as stated.
   */
  double waterLevel() {
    return lowered() ? Math.max(site.get(WATER), site.dugLevel()) : site.get(WATER);
  }

  /**
   * Whether ground water goes down with the dig. By the site's facts it does only where somebody
   * stated that it may, can and harms nothing; else the ground below keeps its head.
   */
  boolean lowered() {
    return switch (site.settings().get(PileChoices.WATER)) {
      case "dug-level" -> true;
      case "stated" -> false;
      default -> site.is(LOWERING, "yes");
    };
  }

  /** Effective vertical stress after digging at a depth below ground, kPa. */
  double effectiveStress(double depth) {
    double total = 0;
    for (BondLayer layer : site.layers()) {
      double from = Math.max(layer.topMetres(), site.dugLevel());
      double to = Math.min(layer.bottomMetres(), depth);
      total += layer.unitWeight() * Math.max(0, to - from);
    }
    return Math.max(0, total - WATER_WEIGHT * Math.max(0, depth - waterLevel()));
  }

  /** The layer at a depth; the deepest one whose top is above it. */
  BondLayer at(double depth) {
    BondLayer found = site.layers().get(0);
    for (BondLayer layer : site.layers()) {
      if (layer.topMetres() <= depth) {
        found = layer;
      }
    }
    return found;
  }

  /** Pieces of shaft that count, from the top down, for a toe at that depth. */
  List<SidePiece> pieces(double toe) {
    List<SidePiece> pieces = new ArrayList<>();
    BondLayer last = at(toe);
    double excluded =
        last.kind() == Kind.CLAY ? site.get(PileNumbers.CLAY_BASE_EXCLUDED) * site.diameter() : 0;
    ExcludedLength counted =
        ExcludedLength.of(site.dugLevel(), Math.max(toe, site.dugLevel()), notCounted, excluded);
    for (int i = 0; i < site.layers().size(); i++) {
      BondLayer layer = site.layers().get(i);
      double weathered = layer.kind() == Kind.ROCK ? site.get(PileNumbers.WEATHERED) : 0;
      double from = Math.max(counted.fromMetres(), layer.topMetres() + weathered);
      double to = Math.min(counted.toMetres(), layer.bottomMetres());
      if (to - from > LEAST_PIECE && layer.kind() != Kind.NONE) {
        pieces.addAll(cuts.computeIfAbsent(new Cut(i, from, to), cut -> cut(layer, from, to)));
      }
    }
    return pieces;
  }

  private List<SidePiece> cut(BondLayer layer, double from, double to) {
    List<SidePiece> pieces = new ArrayList<>();
    int parts = layer.kind() == Kind.SAND ? (int) Math.ceil((to - from) / PIECE - 1e-9) : 1;
    for (int part = 0; part < Math.max(parts, 1); part++) {
      double top = from + (to - from) * part / Math.max(parts, 1);
      double bottom = from + (to - from) * (part + 1) / Math.max(parts, 1);
      pieces.add(piece(layer, top, bottom));
    }
    return pieces;
  }

  private SidePiece piece(BondLayer layer, double top, double bottom) {
    double middle = (top + bottom) / 2;
    double stress = effectiveStress(middle);
    double coefficient =
        switch (layer.kind()) {
          case CLAY -> alpha(countedStrength(layer));
          case SAND -> beta(layer, middle, stress);
          case ROCK -> rockCoefficient(layer);
          case NONE -> 0;
        };
    double unit =
        switch (layer.kind()) {
          case CLAY -> ClayAlpha.sideKilopascals(coefficient, countedStrength(layer));
          case SAND -> SandBetaOneillReese.sideKilopascals(coefficient, stress);
          case ROCK -> rockSide(layer, coefficient);
          case NONE -> 0;
        };
    return new SidePiece(layer, top, bottom, holeDiameter(layer), stress, coefficient, unit);
  }

  /** Diameter of the hole in a layer, m: in rock, and below it, what passes the casing. */
  private double holeDiameter(BondLayer layer) {
    for (BondLayer one : site.layers()) {
      if (one.kind() == Kind.ROCK
          && one.topMetres() <= layer.topMetres()
          && one.bottomMetres() > site.dugLevel()) {
        return site.socketDiameter();
      }
    }
    return site.diameter();
  }

  /** Undrained strength that counts, kPa. */
  static double countedStrength(BondLayer layer) {
    return Math.min(layer.undrainedStrength(), STRONGEST_CLAY * Atmosphere.KILOPASCALS);
  }

  private double alpha(double strength) {
    return switch (site.settings().get(PileChoices.ALPHA)) {
      case "2018" -> ClayAlpha.brown2018(strength);
      case "fixed" -> site.get(PileNumbers.FIXED_ALPHA);
      default -> ClayAlpha.oneillReese(strength).value().orElse(0.0);
    };
  }

  /** By depth below the ground surface, which gives less than by depth below the dug level. */
  private double beta(BondLayer layer, double depth, double stress) {
    if (site.is(PileChoices.BETA, "2010")) {
      return stress > 0 ? rational(layer, stress) : 0;
    }
    boolean gravelly =
        layer.soil() == SoilClass.DENSE_GRAVEL && site.is(PileChoices.GRAVEL, "gravelly");
    return gravelly
        ? SandBetaOneillReese.gravellySand(depth)
        : SandBetaOneillReese.sand(depth, layer.blowCount());
  }

  private static double rational(BondLayer layer, double stress) {
    return SandBetaRational.beta(
        angle(layer, stress), grain(layer).preconsolidationKilopascals(layer.blowCount()), stress);
  }

  /** phi' by blow count, degrees. */
  static double angle(BondLayer layer, double stress) {
    return SandBetaRational.frictionAngleDegrees(
        SandBetaRational.correctedBlowCount(layer.blowCount(), stress));
  }

  static Grain grain(BondLayer layer) {
    return switch (layer.soil()) {
      case DENSE_GRAVEL -> Grain.GRAVEL;
      case SILT -> Grain.SILTY_SAND;
      default -> Grain.CLEAN_SAND;
    };
  }

  private double rockCoefficient(BondLayer layer) {
    return switch (site.settings().get(PileChoices.ROCK)) {
      case "normal" -> site.get(PileNumbers.SOCKET_COEFFICIENT);
      case "textbook" -> 1;
      default ->
          RockSide.jointFactor(
                  100 * layer.rockQuality(),
                  site.is(PileChoices.JOINTS, "closed")
                      ? RockSide.Joints.CLOSED
                      : RockSide.Joints.OPEN)
              .value()
              .orElse(0.0);
    };
  }

  private double rockSide(BondLayer layer, double coefficient) {
    double concrete = site.get(PileNumbers.CONCRETE);
    return switch (site.settings().get(PileChoices.ROCK)) {
      case "normal" ->
          RockSide.normalSocketKilopascals(coefficient, layer.rockStrength(), concrete);
      case "textbook" -> RockSide.dasKilopascals(layer.rockStrength(), concrete);
      default -> RockSide.jointedRockKilopascals(coefficient, layer.rockStrength(), concrete);
    };
  }

  /** Unit base resistance at a toe, kPa; 0 where none is counted. */
  double unitBase(double toe) {
    if (!site.is(PileChoices.BASE, "counted")) {
      return 0;
    }
    BondLayer layer = at(toe);
    return switch (layer.kind()) {
      case CLAY ->
          ClayBase.baseKilopascals(
              ClayBase.factor(countedStrength(layer), baseDepthRatio(toe)), countedStrength(layer));
      case SAND ->
          SandBase.baseKilopascals(Math.min(layer.blowCount(), SandBase.SAND_END)).orThrow()
              * SandBase.wideBaseFactor(site.diameter());
      case ROCK -> RockBase.baseKilopascals(layer.rockStrength(), site.get(PileNumbers.CONCRETE));
      case NONE -> 0;
    };
  }

  /** Embedment below the dug level over the diameter. */
  double baseDepthRatio(double toe) {
    return Math.max(0, toe - site.dugLevel()) / site.diameter();
  }

  /** Diameter of the base, m. */
  double baseDiameter(double toe) {
    return holeDiameter(at(toe));
  }

  /** Ultimate base resistance, kN. */
  double base(double toe) {
    return unitBase(toe) * PileSection.uncased(baseDiameter(toe)).grossAreaSquareMetres();
  }
}
