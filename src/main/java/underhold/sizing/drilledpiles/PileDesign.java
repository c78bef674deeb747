package underhold.sizing.drilledpiles;

import java.util.List;
import underhold.mechanics.pile.column.BaringStages;

/**
 * The piles chosen.
 *
 * @param layout number and places
 * @param toeMetres depth of the toes below ground
 * @param pieces shaft that counts
 * @param unitBaseKilopascals unit base resistance, 0 where none is counted
 * @param baseKilonewtons base resistance
 * @param groupFactor factor of closely spaced piles
 * @param structuralKilonewtons allowable load of the section, held by the ground
 * @param stages stages of baring, none where piles are not bared
 * @param baredKilonewtons allowable load as a column in the worst stage
 * @param fixityMetres depth of fixity
 */
record PileDesign(
    PileLayout layout,
    double toeMetres,
    List<SidePiece> pieces,
    double unitBaseKilopascals,
    double baseKilonewtons,
    double groupFactor,
    double structuralKilonewtons,
    List<BaringStages.Stage> stages,
    double baredKilonewtons,
    double fixityMetres) {
  PileDesign {
    pieces = List.copyOf(pieces);
    stages = List.copyOf(stages);
  }

  double sideKilonewtons() {
    return pieces.stream().mapToDouble(SidePiece::resistanceKilonewtons).sum();
  }

  /** Depth below ground down to which the casing is left, m. */
  double casingBottomMetres() {
    return pieces.isEmpty() ? toeMetres : pieces.get(0).topMetres();
  }

  double ultimateKilonewtons() {
    return sideKilonewtons() + baseKilonewtons;
  }
}
