package underhold.report.drawing.edgepits;

import static underhold.report.drawing.numbers.SheetNumbers.si;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underhold.report.drawing.Drawn;
import underhold.report.drawing.numbers.SheetNumbers;
import underhold.sizing.Amount;

/**
 * What the section needs of the sheet. Depths are below the underside of the structure [m] unless
 * they say otherwise.
 *
 * @param founding underside of the structure below ground
 * @param excavation bottom of the excavation
 * @param height base of the wall
 * @param thickness of the wall
 * @param rock rock head, where the sheet has one above the base of a wall on soil
 * @param rockFace height of rock cut below the wall; 0 for none
 * @param ledge ledge of rock left in front of the toe
 * @param levels braces from the top down
 * @param kind strut, raker or tie
 * @param slope of rakers or ties below the horizontal [degrees]
 * @param pile diameter of the piles that carry the structure
 */
record EdgeWallNumbers(
    double founding,
    double excavation,
    double height,
    double thickness,
    Optional<Double> rock,
    double rockFace,
    double ledge,
    List<Level> levels,
    String kind,
    double slope,
    Optional<Double> pile) {

  EdgeWallNumbers {
    levels = List.copyOf(levels);
  }

  /**
   * A level of braces.
   *
   * @param depth below the underside of the structure
   * @param line force per length of wall
   * @param brace force in one brace
   * @param ground ground in front when it is the lowest that holds
   */
  record Level(double depth, Amount line, Amount brace, Amount ground) {}

  static Optional<Drawn> refusal(SheetNumbers numbers) {
    return numbers
        .refusal(
            List.of(
                "wall-height",
                "earth-coefficient",
                "vertical-at-top",
                "pressure-rise",
                "pressure-water",
                "pressure-top-design"),
            List.of("founding-depth", "excavation-below-footing", "wall-thickness"))
        .or(
            () ->
                levels(numbers).size() < count(numbers)
                    ? numbers.withheld("it does not say where all its braces stand")
                    : Optional.empty());
  }

  static EdgeWallNumbers of(SheetNumbers numbers) {
    String kind = numbers.word("brace-kind");
    return new EdgeWallNumbers(
        si(numbers.input("founding-depth")),
        si(numbers.input("excavation-below-footing")),
        si(numbers.result("wall-height")),
        si(numbers.input("wall-thickness")),
        numbers.symbol("wall-height", "r").map(Amount::si),
        numbers.result("rock-face").map(Amount::si).orElse(0.0),
        numbers.input("ledge").map(Amount::si).orElse(0.0),
        levels(numbers),
        kind,
        numbers.symbol("brace-1", "a").map(Amount::si).orElse(0.0),
        numbers.input("primary-pile-diameter").map(Amount::si));
  }

  private static int count(SheetNumbers numbers) {
    int count = 0;
    while (numbers.result("brace-" + (count + 1)).isPresent()) {
      count++;
    }
    return count;
  }

  private static List<Level> levels(SheetNumbers numbers) {
    List<Level> levels = new ArrayList<>();
    for (int i = 1; i <= count(numbers); i++) {
      String step = i == 1 ? "hinge-1" : "hinge-below-" + i;
      Optional<Amount> depth = numbers.symbol(step, "l");
      Optional<Amount> line = numbers.result("brace-line-" + i);
      Optional<Amount> brace = numbers.result("brace-" + i);
      Optional<Amount> ground = numbers.result("ground-" + i);
      if (depth.isPresent() && line.isPresent() && brace.isPresent() && ground.isPresent()) {
        levels.add(new Level(depth.get().si(), line.get(), brace.get(), ground.get()));
      }
    }
    return levels;
  }

  /** Whether the wall stops on rock above the bottom of the excavation. */
  boolean onLedge() {
    return rockFace > 0;
  }

  /** The lowest place that matters. */
  double deepest() {
    return Math.max(height, excavation);
  }
}
