package underhold.report.drawing.monitoring;

import static underhold.report.drawing.numbers.SheetNumbers.si;

import java.util.ArrayList;
import java.util.List;
import underhold.report.drawing.numbers.SheetNumbers;
import underhold.sizing.Amount;
import underhold.sizing.Step;

/**
 * The excavation, the element beside it and how far each rule reaches. Depths are below ground,
 * distances from the face of the excavation [m].
 *
 * @param gap edge of the footing from the face
 * @param depth of the excavation
 * @param footing underside of the footing; 0 where the ground is
 * @param rules the rules of the sheet in its order
 */
record Reaches(double gap, double depth, double footing, List<Rule> rules) {
  private static final String ID = "zone-";
  private static final String COMPARISON = "for comparison only";

  Reaches {
    rules = List.copyOf(rules);
  }

  /** How a rule is drawn. */
  enum Line {
    /** From the foot of the face up to the level of the footing. */
    SLOPE,
    /** The ground that must stay: a slope, then a level berm. */
    BERM,
    /** A distance along the ground. */
    DISTANCE
  }

  /**
   * A rule.
   *
   * @param id names it in the drawing
   * @param title of the rule
   * @param reach from the face
   * @param text reach with its unit
   * @param note what it was made for, and whether the element is inside
   * @param line how it is drawn
   * @param berm where the level berm begins, for a berm
   * @param bermLevel depth of the berm, for a berm
   */
  record Rule(
      String id,
      String title,
      double reach,
      Amount text,
      String note,
      Line line,
      double berm,
      double bermLevel) {
    boolean comparison() {
      return note.contains(COMPARISON);
    }

    boolean inside() {
      return note.contains("is inside");
    }
  }

  static Reaches of(SheetNumbers numbers) {
    double depth = si(numbers.input("excavation-depth"));
    double footing = Math.max(0, depth - si(numbers.input("excavation-below-footing")));
    List<Rule> rules = new ArrayList<>();
    for (Step step : numbers.sheet().steps()) {
      if (step.id().startsWith(ID)) {
        rules.add(rule(numbers, step, footing));
      }
    }
    return new Reaches(si(numbers.input("gap")), depth, footing, rules);
  }

  private static Rule rule(SheetNumbers numbers, Step step, double footing) {
    List<Amount> symbols =
        step.formula().symbols().stream().map(symbol -> symbol.amount()).toList();
    boolean berm = step.id().equals("zone-berm") && symbols.size() >= 3;
    boolean distance =
        step.id().startsWith("zone-monitoring") || step.id().startsWith("zone-clearance");
    double reach = step.result().si();
    return new Rule(
        step.id(),
        step.title().replaceFirst("^Reach by: ", ""),
        reach,
        step.result(),
        step.note().in(numbers.units()),
        berm ? Line.BERM : distance ? Line.DISTANCE : Line.SLOPE,
        berm ? reach - symbols.get(0).si() : 0,
        berm ? footing - symbols.get(symbols.size() - 1).si() : footing);
  }

  /** The widest reach, or the gap where that is wider. */
  double widest() {
    return Math.max(gap, rules.stream().mapToDouble(Rule::reach).max().orElse(0));
  }
}
