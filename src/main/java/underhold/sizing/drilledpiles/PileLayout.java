package underhold.sizing.drilledpiles;

import static underhold.sizing.drilledpiles.PileInputs.*;

import underhold.mechanics.pile.group.RigidCap;
import underhold.mechanics.pile.group.RigidCap.Loss;
import underhold.mechanics.pile.group.RigidCap.Position;

/**
 * Piles in plan: columns of piles along the structure and rows across it.
 *
 * @param columns piles along
 * @param rows rows across
 * @param spacingAlongMetres spacing along
 * @param spacingAcrossMetres spacing across
 * @param pileKilonewtons working load of the pile loaded most
 * @param lossKilonewtons load of the pile loaded most when any one is lost
 */
record PileLayout(
    int columns,
    int rows,
    double spacingAlongMetres,
    double spacingAcrossMetres,
    double pileKilonewtons,
    double lossKilonewtons) {

  int piles() {
    return columns * rows;
  }

  double leastSpacingMetres() {
    double along = columns > 1 ? spacingAlongMetres : Double.MAX_VALUE;
    double across = rows > 1 ? spacingAcrossMetres : Double.MAX_VALUE;
    return Math.min(Math.min(along, across), 1e6);
  }

  /** The piles under a rigid cap. */
  RigidCap cap() {
    return RigidCap.grid(columns, rows, spacingAlongMetres, spacingAcrossMetres);
  }

  /** The least layout with at least that many piles. */
  static PileLayout of(PileCase site, int number) {
    return switch (site.kind()) {
      case COLUMN -> column(site, number);
      case WALL -> wall(site, number);
      default -> slab(site, number);
    };
  }

  private static PileLayout column(PileCase site, int number) {
    int columns = Math.max(2, (number + 1) / 2);
    double load = site.totalLoad();
    double off = site.get(GroupNumbers.ECCENTRICITY);
    PileLayout plain = new PileLayout(columns, 2, site.leastSpacing(), site.rowDistance(), 0, 0);
    Position at = new Position(off, off);
    double largest =
        plain.cap().loadsKilonewtons(load, at).orThrow().stream()
            .mapToDouble(Double::doubleValue)
            .max()
            .orElse(load);
    double lost = plain.cap().worstLoss(load, at).map(Loss::largestKilonewtons).orThrow();
    return plain.loaded(largest, lost);
  }

  private static PileLayout wall(PileCase site, int number) {
    double length = site.lineLength();
    int spans =
        Math.max(
            (int) Math.ceil(length / site.get(GroupNumbers.WIDEST_NEEDLES) - 1e-9),
            (number + 1) / 2 - 1);
    spans = Math.max(spans, 1);
    double spacing = length / spans;
    double row = site.rowDistance();
    double needle = site.lineLoad() * spacing * (1 + site.get(GroupNumbers.CAP_ALLOWANCE));
    double share = 0.5 + Math.min(site.get(GroupNumbers.ECCENTRICITY) / row, 0.5);
    return new PileLayout(spans + 1, 2, spacing, row, 0, 0)
        .loaded(needle * share, needle * share * (1 + site.get(GroupNumbers.LOSS_WALL)));
  }

  private static PileLayout slab(PileCase site, int number) {
    double length = site.get(LENGTH);
    double width = site.get(WIDTH);
    double widest = site.get(GroupNumbers.WIDEST_GRID);
    int columns =
        (int) Math.max(Math.ceil(length / widest), Math.ceil(Math.sqrt(number * length / width)));
    columns = Math.max(columns, 2);
    int rows = (int) Math.max(Math.ceil(width / widest), Math.ceil((double) number / columns));
    rows = Math.max(rows, 2);
    double along = length / columns;
    double across = width / rows;
    double load =
        site.get(AREA_LOAD)
            * along
            * across
            * (1 + site.get(GroupNumbers.CAP_ALLOWANCE))
            * site.get(GroupNumbers.UNEVEN);
    return new PileLayout(columns, rows, along, across, 0, 0)
        .loaded(load, load * (1 + site.get(GroupNumbers.LOSS_SLAB)));
  }

  private PileLayout loaded(double pile, double lost) {
    return new PileLayout(
        columns, rows, spacingAlongMetres, spacingAcrossMetres, pile, Math.max(lost, pile));
  }
}
