package underhold.report.drawing.pits;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import underhold.sizing.Amount;
import underhold.sizing.Sheet;
import underhold.sizing.SheetInput;
import underhold.sizing.StageDetail.PitRound;

/**
 * The row of pits as a sheet holds it.
 *
 * @param pits from end to end of the wall
 * @param rounds in the order of digging
 * @param wall length of wall that is underpinned
 */
public record PitLayout(List<Pit> pits, List<PitRound> rounds, Amount wall) {
  /**
   * A pit.
   *
   * @param number along the wall, from 1
   * @param round in which it is dug, from 1
   * @param startMetres where it begins, from the end of the wall
   * @param width along the wall
   */
  public record Pit(int number, int round, double startMetres, Amount width) {
    /** Where it ends, from the end of the wall [m]. */
    public double endMetres() {
      return startMetres + width.si();
    }
  }

  public PitLayout {
    pits = List.copyOf(pits);
    rounds = List.copyOf(rounds);
  }

  /** The row of a sheet; empty where it holds no rounds of pits or a row with holes. */
  public static Optional<PitLayout> of(Sheet sheet) {
    List<PitRound> rounds =
        sheet.stages().stream()
            .map(stage -> stage.detail())
            .filter(PitRound.class::isInstance)
            .map(PitRound.class::cast)
            .toList();
    Optional<Amount> wall = sheet.input("wall-length").flatMap(SheetInput::amount);
    return of(rounds, wall);
  }

  /**
   * The row that these rounds make together.
   *
   * @param rounds in the order of digging
   * @param wall length of wall; that of all pits where it is empty
   */
  public static Optional<PitLayout> of(List<PitRound> rounds, Optional<Amount> wall) {
    List<Pit> found = new ArrayList<>();
    for (int round = 0; round < rounds.size(); round++) {
      PitRound dug = rounds.get(round);
      for (int i = 0; i < dug.pits().size(); i++) {
        found.add(
            new Pit(dug.pits().get(i), round + 1, 0, Amount.length(dug.widthsMetres().get(i))));
      }
    }
    found.sort(Comparator.comparingInt(Pit::number));
    List<Pit> placed = new ArrayList<>();
    double start = 0;
    for (Pit pit : found) {
      if (pit.number() != placed.size() + 1) {
        return Optional.empty();
      }
      placed.add(new Pit(pit.number(), pit.round(), start, pit.width()));
      start += pit.width().si();
    }
    return placed.isEmpty()
        ? Optional.empty()
        : Optional.of(new PitLayout(placed, rounds, wall.orElse(Amount.length(start))));
  }

  /** The pits of a round in the order in which the sheet names them. */
  public List<Integer> round(int number) {
    return rounds.get(number - 1).pits();
  }
}
