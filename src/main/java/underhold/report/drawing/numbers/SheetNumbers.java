package underhold.report.drawing.numbers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import underhold.advice.SupportOption;
import underhold.quantity.UnitSystem;
import underhold.report.drawing.Drawn;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;
import underhold.sizing.Amount;
import underhold.sizing.Check;
import underhold.sizing.Formula;
import underhold.sizing.MissingInput;
import underhold.sizing.Sheet;
import underhold.sizing.SheetInput;
import underhold.sizing.Step;

/** The numbers of one sheet by the ids of its steps, checks and inputs. */
public final class SheetNumbers {
  private final Sheet sheet;
  private final UnitSystem units;

  /** The numbers of a sheet, read in that unit system. */
  public SheetNumbers(Sheet sheet, UnitSystem units) {
    this.sheet = sheet;
    this.units = units;
  }

  public Sheet sheet() {
    return sheet;
  }

  public UnitSystem units() {
    return units;
  }

  /**
   * Why nothing can be drawn from the sheet; empty where it can.
   *
   * @param steps ids of steps that the drawing cannot do without
   * @param inputs names of inputs that it cannot do without
   */
  public Optional<Drawn> refusal(List<String> steps, List<String> inputs) {
    if (!sheet.complete()) {
      return withheld("it holds no number and asks about " + asked(sheet));
    }
    List<String> lacking = new ArrayList<>();
    steps.stream().filter(id -> sheet.step(id).isEmpty()).forEach(lacking::add);
    inputs.stream().filter(name -> input(name).isEmpty()).forEach(lacking::add);
    return lacking.isEmpty()
        ? Optional.empty()
        : withheld("it does not hold " + String.join(", ", lacking));
  }

  /** What a sheet cannot do without, by the labels of the facts. */
  public static String asked(Sheet sheet) {
    return sheet.missing().stream()
        .map(MissingInput::name)
        .map(name -> FactDictionary.standard().find(name).map(FactDefinition::label).orElse(name))
        .collect(Collectors.joining(", "));
  }

  /** No drawing, for that reason. */
  public Optional<Drawn> withheld(String reason) {
    return Optional.of(
        Drawn.none(
            "Not drawn from the sheet of "
                + SupportOption.find(sheet.methodId())
                    .map(SupportOption::label)
                    .orElse(sheet.methodId())
                + ": "
                + reason
                + "."));
  }

  /** What a step gives. */
  public Optional<Amount> result(String step) {
    return sheet.step(step).map(Step::result);
  }

  /** A symbol in the formula of a step. */
  public Optional<Amount> symbol(String step, String sign) {
    return sheet.step(step).stream()
        .flatMap(one -> one.formula().symbols().stream())
        .filter(symbol -> symbol.sign().equals(sign))
        .map(Formula.Symbol::amount)
        .findFirst();
  }

  /** An amount in the note of a step. */
  public Optional<Amount> noted(String step, String name) {
    return sheet.step(step).map(one -> one.note().amounts().get(name));
  }

  /** An amount in the note of a check. */
  public Optional<Amount> checkNoted(String check, String name) {
    return sheet.check(check).map(one -> one.note().amounts().get(name));
  }

  /** A check. */
  public Optional<Check> check(String id) {
    return sheet.check(id);
  }

  /** The amount of an input. */
  public Optional<Amount> input(String name) {
    return sheet.input(name).flatMap(SheetInput::amount);
  }

  /** The words of an input; empty where there is none. */
  public String word(String name) {
    return sheet.input(name).map(SheetInput::words).orElse("");
  }

  /** Whether that input was taken for want of a fact. */
  public boolean assumed(String name) {
    return sheet
        .input(name)
        .filter(one -> one.origin() == underhold.sizing.Origin.ASSUMED)
        .isPresent();
  }

  /** An item of the bill or of the times. */
  public Optional<Amount> item(String name) {
    return sheet.quantities().stream()
        .filter(one -> one.name().equals(name))
        .findFirst()
        .or(() -> sheet.time().stream().filter(one -> one.name().equals(name)).findFirst())
        .map(underhold.sizing.BillItem::amount);
  }

  /** The value that a drawing asked for before; its lack is a fault of the drawing. */
  public static double si(Optional<Amount> amount) {
    return amount.map(Amount::si).orElseThrow();
  }

  /** An amount with its unit; empty words where there is none. */
  public String in(Optional<Amount> amount) {
    return amount.map(one -> one.in(units)).orElse("");
  }

  /** A length that follows from the sheet's, with its unit. */
  public String length(double metres) {
    return Amount.length(metres).in(units);
  }

  /** A depth below ground that follows from the sheet's, in words. */
  public String ground(double metres) {
    return length(metres) + " below ground";
  }

  /** A thickness that follows from the sheet's, with its unit. */
  public String thick(double metres) {
    return Amount.thickness(metres).in(units);
  }

  /** A number in the unit in which it is printed. */
  public double shown(Amount amount) {
    return amount.measure().requireUnit(amount.unit(units)).fromInside(amount.si());
  }
}
