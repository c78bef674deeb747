package underhold.report;

import underhold.quantity.UnitSystem;
import underhold.report.drawing.pits.PitPlanText;
import underhold.sizing.Sheet;

/** The row of pits of a sheet, drawn with the rounds in which they are dug. */
final class PitSketch {
  private PitSketch() {}

  /** Under a heading; nothing where the sheet has no pits. */
  static void on(TextPage page, String heading, Sheet sheet, UnitSystem units) {
    PitPlanText.of(sheet, units)
        .ifPresent(
            plan -> {
              page.heading(heading);
              page.sketch(plan.lines(page.look().width()));
              plan.words().forEach(words -> page.para(2, words));
            });
  }
}
