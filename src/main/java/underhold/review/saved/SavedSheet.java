package underhold.review.saved;

import java.util.List;
import java.util.Optional;
import underhold.quantity.UnitSystem;
import underhold.sizing.BillItem;
import underhold.sizing.Check;
import underhold.sizing.MissingInput;
import underhold.sizing.Sheet;
import underhold.sizing.SheetInput;
import underhold.sizing.Step;

/**
 * The calculation sheet of an option, with the site's own settings.
 *
 * @param verdict of all its checks together
 * @param asks the inputs it lacks and cannot do without; then it holds no number
 * @param inputs its inputs and settings
 * @param steps its steps
 * @param checks its checks
 * @param quantities its bill
 * @param time its durations
 */
public record SavedSheet(
    String verdict,
    List<String> asks,
    List<SavedInput> inputs,
    List<SavedStep> steps,
    List<SavedCheck> checks,
    List<SavedItem> quantities,
    List<SavedItem> time) {
  public SavedSheet {
    asks = List.copyOf(asks);
    inputs = List.copyOf(inputs);
    steps = List.copyOf(steps);
    checks = List.copyOf(checks);
    quantities = List.copyOf(quantities);
    time = List.copyOf(time);
  }

  static SavedSheet of(Sheet sheet, UnitSystem units) {
    return new SavedSheet(
        sheet.verdict().label(),
        sheet.missing().stream().map(MissingInput::name).distinct().toList(),
        sheet.inputs().stream().map(input -> input(input, units)).toList(),
        sheet.steps().stream().map(step -> step(step, units)).toList(),
        sheet.checks().stream().map(check -> check(check, units)).toList(),
        sheet.quantities().stream().map(item -> item(item, units)).toList(),
        sheet.time().stream().map(item -> item(item, units)).toList());
  }

  private static SavedInput input(SheetInput input, UnitSystem units) {
    return new SavedInput(
        input.name(),
        input.label(),
        input.amount().isPresent() ? Optional.empty() : Optional.of(input.words()),
        input.amount().map(amount -> SavedAmount.of(amount, units)),
        input.origin().label(),
        input.source().words());
  }

  private static SavedStep step(Step step, UnitSystem units) {
    return new SavedStep(
        step.id(), step.title(), step.formulaText(units), SavedAmount.of(step.result(), units));
  }

  private static SavedCheck check(Check check, UnitSystem units) {
    return new SavedCheck(
        check.id(),
        check.title(),
        SavedAmount.of(check.demand(), units),
        SavedAmount.of(check.capacity(), units),
        check.verdict().label());
  }

  private static SavedItem item(BillItem item, UnitSystem units) {
    return new SavedItem(item.name(), SavedAmount.of(item.amount(), units));
  }

  /** The step of that id. */
  public Optional<SavedStep> step(String id) {
    return steps.stream().filter(step -> step.id().equals(id)).findFirst();
  }

  /** The check of that id. */
  public Optional<SavedCheck> check(String id) {
    return checks.stream().filter(check -> check.id().equals(id)).findFirst();
  }
}
