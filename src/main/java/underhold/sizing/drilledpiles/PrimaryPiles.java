package underhold.sizing.drilledpiles;

import java.util.List;

/**
 * The piles as the main support of a structure, for a method that works beside them.
 *
 * @param piles piles of all groups
 * @param pileKilonewtons working load of the pile loaded most
 * @param totalKilonewtons working load of one group, caps and beams included
 * @param diameterMetres outer diameter of the casing
 * @param toeMetres depth of the toes below ground
 * @param dugLevelMetres final dug level below ground
 * @param spacingMetres least spacing
 * @param shareCarried share of the structure's load that the piles carry once locked off, 1 at the
 *     most; before that they carry none and the ground under the structure all of it
 * @param drillingHours hours of drilling of all piles
 * @param bracedAtMetres levels of bracing with which the piles are sized where they stand bare, m
 *     below their caps; none where they need none
 */
public record PrimaryPiles(
    int piles,
    double pileKilonewtons,
    double totalKilonewtons,
    double diameterMetres,
    double toeMetres,
    double dugLevelMetres,
    double spacingMetres,
    double shareCarried,
    double drillingHours,
    List<Double> bracedAtMetres) {

  public PrimaryPiles {
    bracedAtMetres = List.copyOf(bracedAtMetres);
  }

  /** Share of the structure's load still on the ground after lock-off. */
  public double shareOnGround() {
    return 1 - shareCarried;
  }
}
