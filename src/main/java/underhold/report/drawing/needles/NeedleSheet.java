package underhold.report.drawing.needles;

import java.util.Optional;
import underhold.quantity.UnitSystem;
import underhold.sizing.Amount;
import underhold.sizing.Check;
import underhold.sizing.Formula;
import underhold.sizing.Sheet;
import underhold.sizing.SheetInput;
import underhold.sizing.Step;
import underhold.sizing.Verdict;

/**
 * What a drawing of needles reads from their sheet. The load is at x = 0; the nearer seat, or the
 * fulcrum, stands to the right.
 *
 * @param sheet the sheet
 * @param cantilever whether the needle hangs over a fulcrum
 * @param near from the load to the nearer seat, or the overhang
 * @param far from the load to the farther seat, or the back span
 */
record NeedleSheet(Sheet sheet, boolean cantilever, Amount near, Amount far) {

  /** The needle of a sheet; empty where it holds no span or no moment. */
  static Optional<NeedleSheet> of(Sheet sheet) {
    boolean cantilever = sheet.step("overhang").isPresent();
    Optional<Amount> near = sheet.step(cantilever ? "overhang" : "near-distance").map(Step::result);
    Optional<Amount> far = sheet.step(cantilever ? "back-span" : "far-distance").map(Step::result);
    return near.isPresent() && far.isPresent() && sheet.step("needle-moment").isPresent()
        ? Optional.of(new NeedleSheet(sheet, cantilever, near.get(), far.get()))
        : Optional.empty();
  }

  /** World x of the left end of what carries: the farther seat, or the tip. */
  double leftSupport() {
    return cantilever ? 0 : -far.si();
  }

  /** World x of the nearer seat, or of the fulcrum. */
  double rightSupport() {
    return near.si();
  }

  /** World x of the right end: of the nearer seat, or of the tail. */
  double rightEnd() {
    return cantilever ? near.si() + far.si() : near.si();
  }

  /** World x midway across the excavation, where the seats stand alike on both sides. */
  double middle() {
    return cantilever ? 0 : (near.si() - far.si()) / 2;
  }

  Optional<Amount> input(String name) {
    return sheet.input(name).flatMap(SheetInput::amount);
  }

  String words(String name) {
    return sheet.input(name).map(SheetInput::words).orElse("");
  }

  Optional<Amount> result(String step) {
    return sheet.step(step).map(Step::result);
  }

  String text(String step, UnitSystem units) {
    return result(step).map(amount -> amount.in(units)).orElse("?");
  }

  /** A symbol of a step's formula. */
  Optional<Amount> symbol(String step, String sign) {
    return sheet
        .step(step)
        .flatMap(
            found ->
                found.formula().symbols().stream()
                    .filter(symbol -> symbol.sign().equals(sign))
                    .map(Formula.Symbol::amount)
                    .findFirst());
  }

  /** Span between the seats as the sheet has it: stated, else clear of the excavation. */
  Optional<Amount> span() {
    return input("seat-span").or(() -> result("clear-of-excavation"));
  }

  /** Name of the section, from the check of the needle. */
  String section() {
    return sheet
        .check("needle-section")
        .map(Check::title)
        .map(title -> title.replaceFirst("^Needle ", ""))
        .orElse("");
  }

  boolean row() {
    return words("layout").endsWith("row");
  }

  /** Width of what is picked up, seen along the needle. */
  Optional<Amount> carried() {
    return row() ? input("wall-thickness") : input("column-width");
  }

  /** Whether the check of the setback does not pass. */
  boolean insideLine() {
    return sheet
        .check("seat-setback")
        .filter(check -> check.verdict() != Verdict.PASSES)
        .isPresent();
  }
}
