package underhold.report.drawing.piles;

import static underhold.report.drawing.numbers.SheetNumbers.si;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underhold.report.drawing.numbers.SheetNumbers;

/**
 * Piles in plan as their sheet has them, from one corner: columns along the structure, rows across
 * it, numbered row by row as the sheet numbers them.
 *
 * @param kind what they carry
 * @param columns piles along
 * @param rows piles across
 * @param along spacing along [m]; 0 for one column
 * @param across spacing across [m]; 0 for one row
 * @param groups like groups under like columns
 * @param diameter of a pile [m]
 * @param structure outline of what they carry along and across [m], about the middle of the piles;
 *     a negative length along is not told
 */
record PileField(
    Kind kind,
    int columns,
    int rows,
    double along,
    double across,
    int groups,
    double diameter,
    Outline structure) {

  /** What the piles carry. */
  enum Kind {
    COLUMN,
    WALL,
    SLAB
  }

  /**
   * An outline.
   *
   * @param words what it is
   * @param along [m]; below 0 where it is not told
   * @param across [m]
   */
  record Outline(String words, double along, double across) {
    boolean told() {
      return along > 0;
    }
  }

  /** A pile in plan [m]. */
  record Place(int number, double x, double y) {}

  double length() {
    return (columns - 1) * along;
  }

  double width() {
    return (rows - 1) * across;
  }

  int count() {
    return columns * rows;
  }

  List<Place> places() {
    List<Place> places = new ArrayList<>();
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        places.add(new Place(row * columns + column + 1, column * along, row * across));
      }
    }
    return places;
  }

  /** The field of a sheet; empty where what it holds does not add up to its number of piles. */
  static Optional<PileField> of(SheetNumbers numbers) {
    double diameter =
        si(
            numbers
                .symbol("group-settlement", "D")
                .or(() -> numbers.symbol("group-factor", "D"))
                .or(() -> numbers.symbol("side-1", "D")));
    Optional<PileField> field =
        numbers.symbol("pile-load", "n").isPresent()
            ? Optional.of(column(numbers, diameter))
            : numbers.symbol("pile-load", "R").isPresent()
                ? wall(numbers, diameter)
                : slab(numbers, diameter);
    double piles = numbers.item("piles").map(one -> one.si()).orElse(0.0);
    return field.filter(one -> Math.round(piles) == (long) one.count() * one.groups());
  }

  private static PileField column(SheetNumbers numbers, double diameter) {
    int count = (int) Math.round(si(numbers.symbol("pile-load", "n")));
    int columns = Math.max(1, count / 2);
    double along = columns > 1 ? 2 * si(numbers.symbol("pile-load", "x")) / (columns - 1) : 0;
    int groups = (int) Math.round(numbers.input("columns").map(one -> one.si()).orElse(1.0));
    double footing = numbers.input("footing-width").map(one -> one.si()).orElse(0.0);
    return new PileField(
        Kind.COLUMN,
        columns,
        2,
        along,
        2 * si(numbers.symbol("pile-load", "y")),
        Math.max(1, groups),
        diameter,
        new Outline("footing", -1, footing));
  }

  private static Optional<PileField> wall(SheetNumbers numbers, double diameter) {
    double spacing = si(numbers.symbol("pile-load", "s"));
    boolean box = numbers.result("line-load").isPresent();
    return numbers
        .input(box ? "undermined-length" : "wall-length")
        .map(
            length -> {
              double across =
                  numbers
                      .input(box ? "undermined-width" : "footing-width")
                      .map(one -> one.si())
                      .orElse(0.0);
              return new PileField(
                  Kind.WALL,
                  (int) Math.round(length.si() / spacing) + 1,
                  2,
                  spacing,
                  si(numbers.symbol("pile-load", "R")),
                  1,
                  diameter,
                  new Outline(box ? "part undermined" : "wall footing", length.si(), across));
            });
  }

  private static Optional<PileField> slab(SheetNumbers numbers, double diameter) {
    Optional<Double> length = numbers.input("undermined-length").map(one -> one.si());
    Optional<Double> width = numbers.input("undermined-width").map(one -> one.si());
    if (length.isEmpty() || width.isEmpty()) {
      return Optional.empty();
    }
    double along = si(numbers.symbol("pile-load", "sx"));
    double across = si(numbers.symbol("pile-load", "sy"));
    return Optional.of(
        new PileField(
            Kind.SLAB,
            (int) Math.round(length.get() / along),
            (int) Math.round(width.get() / across),
            along,
            across,
            1,
            diameter,
            new Outline("part undermined", length.get(), width.get())));
  }
}
