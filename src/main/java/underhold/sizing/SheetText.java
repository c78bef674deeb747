package underhold.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import underhold.quantity.UnitSystem;

/** A sheet as plain lines, for reading and redoing by hand. */
public final class SheetText {
  private SheetText() {}

  /** All lines. */
  public static List<String> lines(Sheet sheet, UnitSystem system) {
    List<String> lines = new ArrayList<>(List.of(sheet.title() + " [" + sheet.methodId() + "]"));
    sheet
        .inputs()
        .forEach(
            input ->
                lines.add(
                    "  %s: %s [%s; %s]"
                        .formatted(
                            input.label(),
                            input.value(system),
                            input.origin().label(),
                            input.source().words())));
    sheet
        .missing()
        .forEach(one -> lines.add("  MISSING %s: %s".formatted(one.name(), one.question())));
    sheet.steps().forEach(step -> step(lines, step, system));
    sheet.checks().forEach(check -> lines.add(check(check, system)));
    sheet.quantities().forEach(item -> lines.add("  quantity " + item(item, system)));
    sheet.time().forEach(item -> lines.add("  time " + item(item, system)));
    for (Stage stage : sheet.stages()) {
      lines.add("  stage " + stage.title());
      stage.work().forEach(work -> lines.add("    " + work.in(system)));
      stage
          .holdPoints()
          .forEach(
              hold ->
                  lines.add("    HOLD " + hold.condition().in(system) + " - " + hold.releasedBy()));
    }
    sheet
        .cautions()
        .forEach(
            caution ->
                lines.add(
                    "  caution %s: %s Decides: %s."
                        .formatted(
                            caution.hazard(), caution.advice().in(system), caution.decidedBy())));
    sheet.notCovered().forEach(what -> lines.add("  not covered: " + what));
    return lines;
  }

  private static void step(List<String> lines, Step step, UnitSystem system) {
    lines.add("  step " + step.title() + " [" + step.source().words() + "]");
    lines.add("    " + step.formulaText(system));
    step.formula()
        .symbols()
        .forEach(
            symbol ->
                lines.add(
                    "      %s = %s, %s"
                        .formatted(symbol.sign(), symbol.amount().in(system), symbol.meaning())));
    lines.add("    " + step.calculation(system));
    String note = step.note().in(system);
    if (!note.isEmpty()) {
      lines.add("    " + note);
    }
  }

  private static String check(Check check, UnitSystem system) {
    String use =
        check.utilisation().isPresent()
            ? String.format(Locale.ROOT, "%.0f %%", 100 * check.utilisation().getAsDouble())
            : "no capacity";
    return "  check %s: %s of %s, %s: %s [%s] %s"
        .formatted(
            check.title(),
            check.demand().in(system),
            check.capacity().in(system),
            use,
            check.verdict().label(),
            check.source().words(),
            check.note().in(system));
  }

  private static String item(BillItem item, UnitSystem system) {
    return item.name() + ": " + item.amount().in(system) + " " + item.note().in(system);
  }
}
