package underhold.report.drawing.piles;

import static underhold.report.drawing.numbers.SheetNumbers.si;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underhold.report.drawing.numbers.SheetNumbers;
import underhold.sizing.Amount;

/**
 * Levels of a drilled pile by its sheet, depths below ground [m].
 *
 * @param founding underside of the foundation
 * @param cap underside of the cap, where the pile begins
 * @param dug final dug level
 * @param counted where side resistance begins to count
 * @param casing bottom of the casing
 * @param toe of the pile
 * @param diameter of the casing
 * @param hole diameter of the hole below the casing
 * @param stages dug level of each stage of baring; none where the pile is not bared
 * @param braces levels of bracing
 * @param fixity depth at which the bared pile is held
 * @param water ground water
 */
record PileLevels(
    double founding,
    double cap,
    double dug,
    double counted,
    double casing,
    double toe,
    double diameter,
    double hole,
    List<Double> stages,
    List<Double> braces,
    Optional<Double> fixity,
    Optional<Double> water) {
  private static final double ROUNDING = 1e-6;

  PileLevels {
    stages = List.copyOf(stages);
    braces = List.copyOf(braces);
  }

  static PileLevels of(SheetNumbers numbers) {
    double founding = si(numbers.input("founding-depth"));
    double cap = founding - numbers.input("head-above-footing").map(Amount::si).orElse(0.0);
    double dug = si(numbers.result("dug-level"));
    double toe = si(numbers.symbol("embedment", "zt"));
    double hole = si(numbers.symbol("side-1", "D"));
    List<Double> stages = new ArrayList<>();
    for (int i = 1; numbers.noted("bared-stage-" + i, "dug").isPresent(); i++) {
      stages.add(cap + si(numbers.noted("bared-stage-" + i, "dug")));
    }
    return new PileLevels(
        founding,
        cap,
        dug,
        numbers.noted("dug-level", "from").map(Amount::si).orElse(dug),
        numbers.noted("side-1", "from").map(Amount::si).orElse(toe),
        toe,
        numbers
            .symbol("group-settlement", "D")
            .or(() -> numbers.symbol("group-factor", "D"))
            .map(Amount::si)
            .orElse(hole),
        hole,
        stages,
        braces(numbers, cap, dug, stages),
        numbers.result("fixity").map(Amount::si).map(depth -> dug + depth),
        numbers.input("ground-water").map(Amount::si));
  }

  /**
   * Each stage but the last digs a little below the brace that it makes room for. Where a stage
   * went down to the final level instead, its brace is told for the first level alone.
   */
  private static List<Double> braces(
      SheetNumbers numbers, double cap, double dug, List<Double> stages) {
    double below = numbers.input("dig-below-brace").map(Amount::si).orElse(0.0);
    Optional<Double> first = numbers.input("first-brace").map(Amount::si);
    List<Double> braces = new ArrayList<>();
    for (int i = 0; i + 1 < stages.size(); i++) {
      if (i == 0 && first.isPresent()) {
        braces.add(cap + first.get());
      } else if (stages.get(i) < dug - ROUNDING) {
        braces.add(stages.get(i) - below);
      }
    }
    return braces;
  }
}
