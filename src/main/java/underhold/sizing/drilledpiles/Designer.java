package underhold.sizing.drilledpiles;

import static underhold.sizing.drilledpiles.PileInputs.COLUMN;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import underhold.mechanics.pile.column.BaringStages;
import underhold.mechanics.pile.group.GroupEfficiency;
import underhold.mechanics.soil.Outcome;
import underhold.sizing.drilledpiles.BondLayer.Kind;

/**
 * Chooses the fewest piles, and for them the shortest, that carry their load with the factors asked
 * for, also when any one of them is lost. Where nothing suffices it gives the closest, whose checks
 * then fail.
 */
final class Designer {
  /** Lengths are tried in steps of this, m. */
  static final double STEP_METRES = 0.25;

  private final PileCase site;
  private final Ground ground;
  private final PileStrength strength;
  private final double fixity;
  private final List<BaringStages.Stage> stages;
  private final double bared;
  private final double least;
  private final int steps;

  /** The toes tried so far, the shallowest first. */
  private final List<Toe> toes = new ArrayList<>();

  /** A toe with its resistance. */
  private record Toe(
      double depth, List<SidePiece> pieces, double side, double base, double structural) {
    double ultimate() {
      return side + base;
    }
  }

  private Designer(PileCase site) {
    this.site = site;
    this.ground = new Ground(site);
    this.strength = new PileStrength(site);
    this.fixity = strength.fixity();
    this.stages = strength.stages();
    this.bared = strength.bared(stages);
    this.least = site.notCounted() + site.get(PileNumbers.LEAST_BOND);
    double longest = Math.max(site.get(PileNumbers.LONGEST_BOND), least);
    this.steps = (int) Math.floor((longest - least) / STEP_METRES + 1e-9);
  }

  static PileDesign design(PileCase site) {
    return new Designer(site).design();
  }

  /** The toe so many steps below the least, reckoned when it is first asked for. */
  private Toe toe(int step) {
    while (toes.size() <= step) {
      double toe = site.dugLevel() + least + toes.size() * STEP_METRES;
      List<SidePiece> pieces = ground.pieces(toe);
      double side = pieces.stream().mapToDouble(SidePiece::resistanceKilonewtons).sum();
      toes.add(new Toe(toe, pieces, side, ground.base(toe), strength.allowable(pieces)));
    }
    return toes.get(step);
  }

  private PileDesign design() {
    Layouts layouts = new Layouts(site);
    for (int place = 0; layouts.has(place); place++) {
      PileLayout layout = layouts.get(place);
      if (!strongEnough(layout, bared)) {
        continue; // whatever the toe
      }
      for (int step = 0; step <= steps; step++) {
        Toe toe = toe(step);
        if (strongEnough(layout, Math.min(toe.structural(), bared))
            && groundSuffices(layout, toe)) {
          return finished(layout, toe);
        }
      }
    }
    toe(steps);
    return finished(
        layouts.last(), toes.stream().max(Comparator.comparingDouble(Toe::ultimate)).orElseThrow());
  }

  private boolean strongEnough(PileLayout layout, double section) {
    return layout.pileKilonewtons() <= section
        && layout.lossKilonewtons() <= (1 + site.get(GroupNumbers.OVERSTRESS)) * section;
  }

  private boolean groundSuffices(PileLayout layout, Toe toe) {
    double inGroup = groupFactor(site, layout, toe.pieces()) * toe.ultimate();
    return layout.lossKilonewtons() * site.get(GroupNumbers.LOSS_FACTOR) <= inGroup
        && layout.pileKilonewtons() <= inGroup / site.safetyFactor()
        && site.totalLoad()
            <= blockAllowable(site, layout, toe.pieces(), ground.unitBase(toe.depth()))
                .orElse(Double.MAX_VALUE);
  }

  private PileDesign finished(PileLayout layout, Toe toe) {
    return new PileDesign(
        layout,
        toe.depth(),
        toe.pieces(),
        ground.unitBase(toe.depth()),
        toe.base(),
        groupFactor(site, layout, toe.pieces()),
        toe.structural(),
        stages,
        bared,
        fixity);
  }

  /** Factor of closely spaced piles by the weakest kind of ground that counts. */
  static double groupFactor(PileCase site, PileLayout layout, List<SidePiece> pieces) {
    if (site.is(PileChoices.GROUP, "none")) {
      return 1;
    }
    double ratio = layout.leastSpacingMetres() / site.diameter();
    Outcome<Double> factor = Outcome.of(1.0);
    if (meets(pieces, Kind.CLAY)) {
      factor = GroupEfficiency.clay(ratio);
    } else if (meets(pieces, Kind.SAND)) {
      factor = GroupEfficiency.sand(ratio);
    }
    return factor.value().orElse(GroupEfficiency.AT_CLOSEST);
  }

  static boolean meets(List<SidePiece> pieces, Kind kind) {
    for (SidePiece one : pieces) {
      if (one.layer().kind() == kind) {
        return true;
      }
    }
    return false;
  }

  /** Depth of the block, its counted length, m; empty where rock carries or piles stand apart. */
  static Optional<Double> blockAllowable(
      PileCase site, PileLayout layout, List<SidePiece> pieces, double unitBase) {
    if (!site.pattern().equals(COLUMN) || pieces.isEmpty() || meets(pieces, Kind.ROCK)) {
      return Optional.empty();
    }
    return Optional.of(
        GroupEfficiency.blockKilonewtons(
                blockAlong(site, layout),
                blockAcross(site, layout),
                blockDepth(pieces),
                meanSide(pieces),
                unitBase)
            / site.safetyFactor());
  }

  static double blockAlong(PileCase site, PileLayout layout) {
    return (layout.columns() - 1) * layout.spacingAlongMetres() + site.diameter();
  }

  static double blockAcross(PileCase site, PileLayout layout) {
    return (layout.rows() - 1) * layout.spacingAcrossMetres() + site.diameter();
  }

  static double blockDepth(List<SidePiece> pieces) {
    return pieces.stream().mapToDouble(SidePiece::lengthMetres).sum();
  }

  /** Mean unit side resistance over the counted length, kPa. */
  static double meanSide(List<SidePiece> pieces) {
    return pieces.stream().mapToDouble(one -> one.unitKilopascals() * one.lengthMetres()).sum()
        / blockDepth(pieces);
  }
}
