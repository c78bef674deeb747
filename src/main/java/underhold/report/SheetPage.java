package underhold.report;

import java.util.List;
import java.util.Locale;
import underhold.quantity.UnitSystem;
import underhold.sizing.BillItem;
import underhold.sizing.Caution;
import underhold.sizing.Check;
import underhold.sizing.Sheet;
import underhold.sizing.SheetInput;
import underhold.sizing.Stage;
import underhold.sizing.Step;

/** A calculation sheet for a person at a terminal: what fails first, then every step to redo. */
public final class SheetPage {
  private static final int MARK = 10;
  private static final int STEP_MARK = 6;

  private final TextPage page;
  private final UnitSystem units;

  private SheetPage(Look look, UnitSystem units) {
    this.page = new TextPage(look);
    this.units = units;
  }

  /** The whole sheet of a zone. */
  public static String of(Sheet sheet, String zone, UnitSystem units, Look look) {
    SheetPage view = new SheetPage(look, units);
    view.head(sheet, zone);
    view.missing(sheet);
    view.checks(sheet.checks());
    view.inputs(sheet.inputs());
    view.steps(sheet.steps());
    view.bill("Quantities", sheet.quantities());
    view.bill("Time", sheet.time());
    PitSketch.on(view.page, "Pits in plan", sheet, units);
    view.stages(sheet.stages());
    view.cautions(sheet.cautions());
    view.notCovered(sheet.notCovered());
    return view.page.blank().text();
  }

  private void head(Sheet sheet, String zone) {
    page.tinted(Tint.STRONG, 0, sheet.title() + ", zone " + zone);
    page.para(
        0,
        sheet.complete()
            ? "Verdict: " + sheet.verdict().label() + ". For review, not for construction."
            : "Not sized: facts are missing.");
  }

  private void missing(Sheet sheet) {
    if (!sheet.missing().isEmpty()) {
      page.heading("Missing");
      sheet
          .missing()
          .forEach(one -> page.item(2, "?", 3, one.question() + " (" + one.name() + ")"));
    }
  }

  private void checks(List<Check> checks) {
    if (checks.isEmpty()) {
      return;
    }
    page.heading("Checks");
    for (Check check : checks) {
      String use =
          check.utilisation().isPresent()
              ? String.format(Locale.ROOT, " (%.0f %%)", 100 * check.utilisation().getAsDouble())
              : "";
      page.item(
          2,
          check.verdict().label(),
          MARK,
          check.title()
              + ": "
              + check.demand().in(units)
              + " of "
              + check.capacity().in(units)
              + use
              + after(check.note().in(units))
              + " ["
              + check.source().words()
              + "]");
    }
  }

  private void inputs(List<SheetInput> inputs) {
    if (inputs.isEmpty()) {
      return;
    }
    page.heading("Inputs");
    for (SheetInput input : inputs) {
      page.item(
          2,
          "-",
          2,
          input.label()
              + ": "
              + input.value(units)
              + " ["
              + input.origin().label()
              + "; "
              + input.source().words()
              + "]");
    }
  }

  private void steps(List<Step> steps) {
    if (steps.isEmpty()) {
      return;
    }
    page.heading("Steps");
    int number = 0;
    for (Step step : steps) {
      page.item(
          2, ++number + ".", STEP_MARK - 2, step.title() + " [" + step.source().words() + "]");
      page.para(STEP_MARK, step.formulaText(units));
      step.formula()
          .symbols()
          .forEach(
              symbol ->
                  page.para(
                      STEP_MARK + 2,
                      symbol.sign() + " = " + symbol.amount().in(units) + ", " + symbol.meaning()));
      page.para(STEP_MARK, step.calculation(units));
      if (!step.note().in(units).isEmpty()) {
        page.para(STEP_MARK, step.note().in(units));
      }
    }
  }

  private void bill(String heading, List<BillItem> items) {
    if (items.isEmpty()) {
      return;
    }
    page.heading(heading);
    items.forEach(
        item ->
            page.item(
                2,
                "-",
                2,
                item.name() + ": " + item.amount().in(units) + " " + item.note().in(units)));
  }

  private void stages(List<Stage> stages) {
    if (stages.isEmpty()) {
      return;
    }
    page.heading("Stages and hold points");
    int number = 0;
    for (Stage stage : stages) {
      page.item(2, ++number + ".", STEP_MARK - 2, stage.title());
      stage.work().forEach(work -> page.para(STEP_MARK, work.in(units)));
      stage
          .holdPoints()
          .forEach(
              hold ->
                  page.item(
                      STEP_MARK,
                      "HOLD",
                      5,
                      stopped(hold.condition().in(units))
                          + " Released by: "
                          + hold.releasedBy()
                          + "."));
    }
  }

  private void cautions(List<Caution> cautions) {
    if (cautions.isEmpty()) {
      return;
    }
    page.heading("Cautions");
    cautions.forEach(
        caution ->
            page.item(
                2,
                "!",
                3,
                caution.hazard()
                    + ": "
                    + caution.advice().in(units)
                    + " Decides: "
                    + caution.decidedBy()
                    + "."));
  }

  private void notCovered(List<String> what) {
    if (!what.isEmpty()) {
      page.heading("What this sheet does not cover");
      what.forEach(one -> page.item(2, "-", 2, one));
    }
  }

  private static String stopped(String text) {
    return text.endsWith(".") ? text : text + ".";
  }

  private static String after(String note) {
    return note.isEmpty() ? "" : ". " + note;
  }
}
