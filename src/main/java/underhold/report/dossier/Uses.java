package underhold.report.dossier;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import underhold.quantity.UnitSystem;
import underhold.report.document.Prose;
import underhold.sizing.Formula;
import underhold.sizing.Origin;
import underhold.sizing.Sheet;
import underhold.sizing.SheetInput;
import underhold.sizing.Step;

/** Where an input of a sheet bites: the steps that take it and the checks referred for it. */
final class Uses {
  private static final double SAME = 1e-9;

  /** Words that name no quantity: they are part of many names. */
  private static final Set<String> GENERIC =
      Set.of("share", "factor", "length", "width", "depth", "load", "value", "level");

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

  /** Whether a step has a symbol of the same value that means this input and no other. */
  private boolean takes(Step step, SheetInput input) {
    return step.formula().symbols().stream().anyMatch(symbol -> means(symbol, input));
  }

  /**
   * By the input's own name; by a part of it, or a longer form, only where no other input of that
   * value could be meant as well: a value that two inputs share is no proof of either.
   */
  private boolean means(Formula.Symbol symbol, SheetInput input) {
    if (!same(symbol, input)) {
      return false;
    }
    String meaning = head(symbol.meaning());
    if (meaning.equals(head(input.label()))) {
      return true;
    }
    return alike(meaning, head(input.label()))
        && sheet.sheet().inputs().stream()
            .filter(other -> !other.equals(input) && same(symbol, other))
            .noneMatch(other -> alike(meaning, head(other.label())));
  }

  private static boolean alike(String meaning, String name) {
    return !GENERIC.contains(meaning) && (meaning.contains(name) || name.contains(meaning));
  }

  private static boolean same(Formula.Symbol symbol, SheetInput input) {
    return input
        .amount()
        .filter(amount -> amount.measure() == symbol.amount().measure())
        .filter(
            amount ->
                Math.abs(symbol.amount().si() - amount.si())
                    <= SAME * Math.max(1, Math.abs(amount.si())))
        .isPresent();
  }

  /** The words before the first comma, semicolon, colon or bracket. */
  private static String head(String words) {
    return words.split("[,;:(]", 2)[0].strip().toLowerCase(Locale.ROOT);
  }
}
