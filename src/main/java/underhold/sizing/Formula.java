package underhold.sizing;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import underhold.quantity.UnitSystem;

/**
 * A formula as text whose symbols stand in braces: "M = {p} × {L}^2 / 8". Without the braces it is
 * the formula, with the symbols replaced it is the calculation. The metric text is consistent in
 * the inside units (m, kN, kPa, degrees), so it can be evaluated as it stands; a second text serves
 * US readers where a coefficient has units.
 *
 * @param siText formula with metric coefficients
 * @param usText formula with US coefficients; the same where no coefficient has units
 * @param symbols what each symbol means and is worth
 */
public record Formula(String siText, String usText, List<Symbol> symbols) {
  private static final Pattern SLOT = Pattern.compile("\\{([^{}]+)}");

  public Formula {
    symbols = List.copyOf(symbols);
    check(siText, symbols);
    if (!usText.equals(siText)) {
      check(usText, symbols);
    }
  }

  /** Every slot has its symbol; by plain search, for sheets hold hundreds of formulas. */
  private static void check(String text, List<Symbol> symbols) {
    int open = text.indexOf('{');
    while (open >= 0) {
      int close = text.indexOf('}', open);
      if (close < 0) {
        throw new IllegalArgumentException("\"" + text + "\" has an open brace");
      }
      find(symbols, text.substring(open + 1, close));
      open = text.indexOf('{', close);
    }
    if (!text.contains(" = ")) {
      throw new IllegalArgumentException("\"" + text + "\" does not say what it gives");
    }
  }

  /**
   * A symbol of a formula.
   *
   * @param sign as written in the formula
   * @param meaning in words
   * @param amount value
   */
  public record Symbol(String sign, String meaning, Amount amount) {}

  /** The formula in symbols. */
  public String text(UnitSystem system) {
    return SLOT.matcher(template(system))
        .replaceAll(slot -> Matcher.quoteReplacement(slot.group(1)));
  }

  /** The formula with its numbers and units, without the left-hand side. */
  public String substituted(UnitSystem system) {
    return SLOT.matcher(rightHandSide(system))
        .replaceAll(
            slot ->
                Matcher.quoteReplacement(
                    bracketed(find(symbols, slot.group(1)).amount().in(system))));
  }

  /** The sign that the formula gives. */
  public String leftHandSide() {
    return siText.substring(0, siText.indexOf(" = "));
  }

  /** The right-hand side with its braces. */
  public String rightHandSide(UnitSystem system) {
    String template = template(system);
    return template.substring(template.indexOf(" = ") + 3);
  }

  private String template(UnitSystem system) {
    return system == UnitSystem.US ? usText : siText;
  }

  private static String bracketed(String value) {
    return value.contains(" ") || value.startsWith("-") ? "(" + value + ")" : value;
  }

  private static Symbol find(List<Symbol> symbols, String sign) {
    for (Symbol symbol : symbols) {
      if (symbol.sign().equals(sign)) {
        return symbol;
      }
    }
    throw new IllegalArgumentException("the formula lacks a value for " + sign);
  }
}
