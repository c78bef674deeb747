package underhold.sizing.edgepits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import underhold.quantity.UnitSystem;
import underhold.sizing.Check;
import underhold.sizing.Formula;
import underhold.sizing.Phrase;
import underhold.sizing.Sheet;
import underhold.sizing.Step;

/** Reads a sheet line by line, as an engineer who checks it by hand. */
final class Reading {
  /** Hand calculations are carried to six figures. */
  private static final double RELATIVE = 1e-5;

  private final Sheet sheet;

  private Reading(Sheet sheet) {
    this.sheet = sheet;
  }

  static Reading of(Sheet sheet) {
    return new Reading(sheet);
  }

  Step step(String id) {
    return sheet.step(id).orElseThrow(() -> new AssertionError("no step " + id));
  }

  Check check(String id) {
    return sheet.check(id).orElseThrow(() -> new AssertionError("no check " + id));
  }

  String note(String id) {
    return check(id).note().in(UnitSystem.SI);
  }

  /** A step's result and its title. */
  Reading gives(String id, String title, double value) {
    assertThat(step(id).title()).as(id).isEqualTo(title);
    return gives(id, value);
  }

  Reading gives(String id, double value) {
    near(id, step(id).result().si(), value);
    return this;
  }

  /** A number that the step shows as substituted. */
  Reading takes(String id, String sign, double value) {
    near(id + " " + sign, symbol(id, sign).amount().si(), value);
    return this;
  }

  /** The same with what it says of it. */
  Reading takes(String id, String sign, String meaning, double value) {
    assertThat(symbol(id, sign).meaning()).as(id + " " + sign).isEqualTo(meaning);
    return takes(id, sign, value);
  }

  Reading asks(String id, double demand, double capacity) {
    near(id + " demand", check(id).demand().si(), demand);
    near(id + " capacity", check(id).capacity().si(), capacity);
    return this;
  }

  /** What a stage says to do, with its numbers. */
  String work(String title) {
    return sheet.stages().stream()
        .filter(one -> one.title().equals(title))
        .map(one -> String.join("\n", one.work().stream().map(this::words).toList()))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no stage " + title));
  }

  List<String> hazards() {
    return sheet.cautions().stream().map(one -> one.hazard()).toList();
  }

  double quantity(String name) {
    return sheet.quantities().stream()
        .filter(one -> one.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + name))
        .amount()
        .si();
  }

  private String words(Phrase phrase) {
    return phrase.in(UnitSystem.SI);
  }

  private Formula.Symbol symbol(String id, String sign) {
    return step(id).formula().symbols().stream()
        .filter(one -> one.sign().equals(sign))
        .findFirst()
        .orElseThrow(() -> new AssertionError(id + " has no " + sign));
  }

  private static void near(String what, double found, double value) {
    assertThat(found).as(what).isCloseTo(value, within(RELATIVE * Math.abs(value) + 1e-9));
  }
}
