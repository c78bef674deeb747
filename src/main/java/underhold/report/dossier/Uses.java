package underhold.report.dossier;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import underhold.quantity.UnitSystem;
import underhold.report.document.Prose;
import underhold.sizing.Amount;
import underhold.sizing.Formula;
import underhold.sizing.Origin;
import underhold.sizing.Sheet;
import underhold.sizing.SheetInput;
import underhold.sizing.Step;

/** Where an input of a sheet bites: the steps that take it and the checks referred for it. */
final class Uses {
  private final ZoneSheet sheet;
  private final UnitSystem units;

  Uses(ZoneSheet sheet, UnitSystem units) {
    this.sheet = sheet;
    this.units = units;
  }

  /**
   * Words, and after them the steps that take an input under its own name and the checks that say
   * they rest on it; the words alone where none does.
   */
  Prose after(Prose words, SheetInput input) {
    Sheet all = sheet.sheet();
    List<Prose> checks = new ArrayList<>();
    List<Prose> steps = new ArrayList<>();
    if (input.origin() == Origin.ASSUMED) {
      int number = 0;
      for (underhold.sizing.Check check : all.checks()) {
        number++;
        if (check.note().in(units).contains(input.label())) {
          checks.add(place(number, "check", check.id()));
        }
      }
    }
    int number = 0;
    for (Step step : all.steps()) {
      number++;
      if (takes(step, input)) {
        steps.add(place(number, "step", step.id()));
      }
    }
    List<Prose> uses = new ArrayList<>();
    if (!checks.isEmpty()) {
      uses.add(counted("referred for it: check ", "referred for it: checks ", checks));
    }
    if (!steps.isEmpty()) {
      uses.add(counted("step ", "steps ", steps));
    }
    return uses.isEmpty() ? words : words.then("; ").then(Cells.joined(uses, "; "));
  }

  private Prose place(int number, String kind, String id) {
    return Prose.empty().link(String.valueOf(number), sheet.anchor(kind, id));
  }

  private static Prose counted(String one, String several, List<Prose> places) {
    return Prose.of(places.size() == 1 ? one : several).then(Cells.joined(places, ", "));
  }

  /** Whether a step has a symbol of the same value and meaning. */
  private static boolean takes(Step step, SheetInput input) {
    return input.amount().isPresent()
        && step.formula().symbols().stream()
            .anyMatch(symbol -> same(symbol, input.amount().get(), input.label()));
  }

  private static boolean same(Formula.Symbol symbol, Amount amount, String label) {
    double difference = Math.abs(symbol.amount().si() - amount.si());
    if (symbol.amount().measure() != amount.measure()
        || difference > 1e-9 * Math.max(1, Math.abs(amount.si()))) {
      return false;
    }
    String meaning = head(symbol.meaning());
    String name = head(label);
    return meaning.contains(name) || name.contains(meaning);
  }

  /** The words before the first comma, semicolon, colon or bracket. */
  private static String head(String words) {
    return words.split("[,;:(]", 2)[0].strip().toLowerCase(Locale.ROOT);
  }
}
