package underhold.report.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import underhold.report.html.FormulaPart.Amount;
import underhold.report.html.FormulaPart.Call;
import underhold.report.html.FormulaPart.Group;
import underhold.report.html.FormulaPart.Power;
import underhold.report.html.FormulaPart.Product;
import underhold.report.html.FormulaPart.Row;
import underhold.report.html.FormulaPart.Symbol;
import underhold.report.html.FormulaPart.Text;

/**
 * Reads a formula or a calculation as the sheets write them: sides joined by {@code =}, sums by
 * {@code +} and {@code -}, products by {@code ×} and {@code /}, each between blanks; powers with
 * {@code ^}; functions; brackets; symbols; amounts with their units. It only reads how a formula is
 * built, so that it can be set; it reckons nothing.
 */
final class FormulaParser {
  private static final int LONGEST = 1_500;
  private static final int DEEPEST = 40;
  private static final String UNIT = "[\\p{L}%°µ][^\\s(),^×=]*";
  private static final Pattern NUMBER =
      Pattern.compile("\\d+(?:,\\d{3})*(?:\\.\\d+)?(?:[eE][-+]?\\d+)?");
  private static final Pattern AMOUNT =
      Pattern.compile("-?" + NUMBER + "(?: ?" + UNIT + "(?: " + NUMBER + " " + UNIT + ")?)?");
  private static final Pattern NAME = Pattern.compile("\\p{L}[\\p{L}\\p{N}_]*'?");

  /** A number that nothing reckons with, in brackets: "(20.7 kPa)", "(1/3)", "(4 ft 6 1/2 in)". */
  private static final Pattern BRACKETED =
      Pattern.compile("\\((-?\\d(?:(?! [-+×/=] )[^(),^])*)\\)");

  private final String text;
  private int at;
  private int depth;

  private FormulaParser(String text) {
    this.text = text;
  }

  /** The parts of the text; empty when it is not understood as a whole. */
  static Optional<FormulaPart> read(String text) {
    if (text.length() > LONGEST) {
      return Optional.empty();
    }
    FormulaParser parser = new FormulaParser(text);
    try {
      List<FormulaPart> sides = new ArrayList<>();
      sides.add(parser.sum());
      while (parser.skip(" = ")) {
        sides.add(new Text(" = "));
        sides.add(parser.sum());
      }
      FormulaPart whole = new Row(sides);
      boolean read = parser.at == text.length() && whole.plain().equals(text);
      return read ? Optional.of(whole) : Optional.empty();
    } catch (NotUnderstood notUnderstood) {
      return Optional.empty();
    }
  }

  private FormulaPart sum() {
    if (++depth > DEEPEST) {
      throw new NotUnderstood();
    }
    List<FormulaPart> parts = new ArrayList<>();
    parts.add(product());
    while (true) {
      if (skip(" + ")) {
        parts.add(new Text(" + "));
      } else if (skip(" - ")) {
        parts.add(new Text(" - "));
      } else {
        depth--;
        return parts.size() == 1 ? parts.get(0) : new Row(parts);
      }
      parts.add(product());
    }
  }

  private FormulaPart product() {
    List<FormulaPart> factors = new ArrayList<>();
    List<Boolean> divides = new ArrayList<>();
    factors.add(power());
    while (true) {
      if (skip(" × ")) {
        divides.add(false);
      } else if (skip(" / ")) {
        divides.add(true);
      } else {
        return divides.isEmpty() ? factors.get(0) : new Product(factors, divides);
      }
      factors.add(power());
    }
  }

  private FormulaPart power() {
    FormulaPart base = atom();
    return skip("^") ? new Power(base, atom()) : base;
  }

  private FormulaPart atom() {
    Matcher bracketed = matcher(BRACKETED);
    if (bracketed.lookingAt()) {
      at = bracketed.end();
      return new Group(new Amount(bracketed.group(1)));
    }
    if (skip("(")) {
      FormulaPart inside = sum();
      expect(")");
      return new Group(inside);
    }
    Matcher amount = matcher(AMOUNT);
    if (amount.lookingAt()) {
      at = amount.end();
      return new Amount(amount.group());
    }
    if (skip("-")) {
      return new Row(List.of(new Text("-"), power()));
    }
    Matcher name = matcher(NAME);
    if (!name.lookingAt()) {
      throw new NotUnderstood();
    }
    at = name.end();
    return skip("(") ? call(name.group()) : new Symbol(name.group());
  }

  private FormulaPart call(String name) {
    List<FormulaPart> arguments = new ArrayList<>();
    arguments.add(sum());
    while (skip(", ")) {
      arguments.add(sum());
    }
    expect(")");
    return new Call(name, arguments);
  }

  private Matcher matcher(Pattern pattern) {
    return pattern.matcher(text).region(at, text.length());
  }

  private boolean skip(String sign) {
    boolean there = text.startsWith(sign, at);
    if (there) {
      at += sign.length();
    }
    return there;
  }

  private void expect(String sign) {
    if (!skip(sign)) {
      throw new NotUnderstood();
    }
  }

  /** The text is not built as a formula is. */
  private static final class NotUnderstood extends RuntimeException {
    NotUnderstood() {
      super(null, null, false, false);
    }
  }
}
