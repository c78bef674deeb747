package underhold.sizing.drilledpiles;

import java.util.List;
import underhold.sizing.Setting;
import underhold.sizing.Source;

/** Numbers of the method that the user may change: loads, layout and the loss of a pile. */
final class GroupNumbers {
  private static final Source JUDGE = Source.judgement();

  static final Setting CAP_ALLOWANCE =
      PileNumbers.ratio(
          "cap-allowance", "weight of caps and beams, share of the load", 0.10, 0, 0.5, JUDGE);
  static final Setting PILES =
      PileNumbers.count(
          "piles", "number of piles of one group; 0 for as many as needed", 0, 0, 4000, JUDGE);
  static final Setting MOST_PILES =
      PileNumbers.count(
          "most-piles", "largest number of piles tried under a wall or slab", 2000, 4, 4000, JUDGE);
  static final Setting MOST_COLUMN_PILES =
      PileNumbers.count(
          "most-column-piles", "largest number of piles tried under one column", 40, 4, 200, JUDGE);
  static final Setting SPACING_RATIO =
      PileNumbers.ratio(
          "spacing",
          "least spacing of piles, in diameters; 2.5 to 3 in practice",
          3,
          2.5,
          10,
          Sources.SPACING);
  static final Setting LEAST_SPACING =
      PileNumbers.length("least-spacing", "least spacing of piles", 0.75, 0.3, 5, JUDGE);
  static final Setting WIDEST_NEEDLES =
      PileNumbers.length(
          "needle-spacing", "widest spacing of needle beams under a wall", 2, 0.5, 6, JUDGE);
  static final Setting WIDEST_GRID =
      PileNumbers.length(
          "grid-spacing", "widest spacing of piles under a slab or box", 5, 1, 15, JUDGE);
  static final Setting LONGEST_BEAM =
      PileNumbers.length(
          "longest-beam",
          "span above which transfer beams are too deep and too limber",
          20,
          3,
          40,
          Source.practice());
  static final Setting OFF_WALL =
      PileNumbers.length(
          "off-wall",
          "centre of pile from the side of the footing, 550 mm",
          0.55,
          0.2,
          3,
          Sources.SMALL_RIG);
  static final Setting ECCENTRICITY =
      PileNumbers.small(
          "eccentricity", "load off the centre of its piles", 0.075, 0, 1, Sources.TOLERANCE);
  static final Setting UNEVEN =
      PileNumbers.ratio(
          "uneven-slab", "factor for uneven load of piles under a slab", 1.1, 1, 2, JUDGE);
  static final Setting OVERSTRESS =
      PileNumbers.ratio(
          "loss-overstress", "overstress allowed when one pile is lost", 0.33, 0, 0.5, JUDGE);
  static final Setting LOSS_FACTOR =
      PileNumbers.ratio(
          "loss-factor", "factor of safety on the ground when one pile is lost", 1.5, 1, 3, JUDGE);
  static final Setting LOSS_WALL =
      PileNumbers.ratio(
          "loss-share-wall",
          "share of a lost needle that falls on one neighbour; at an end all of it, by the lever",
          1,
          0.5,
          1.5,
          Source.statics());
  static final Setting LOSS_SLAB =
      PileNumbers.ratio(
          "loss-share-slab",
          "share of a lost pile under a slab that falls on one neighbour",
          0.5,
          0.25,
          1,
          JUDGE);

  private GroupNumbers() {}

  static List<Setting> all() {
    return List.of(
        CAP_ALLOWANCE,
        PILES,
        MOST_PILES,
        MOST_COLUMN_PILES,
        SPACING_RATIO,
        LEAST_SPACING,
        WIDEST_NEEDLES,
        WIDEST_GRID,
        LONGEST_BEAM,
        OFF_WALL,
        ECCENTRICITY,
        UNEVEN,
        OVERSTRESS,
        LOSS_FACTOR,
        LOSS_WALL,
        LOSS_SLAB);
  }
}
