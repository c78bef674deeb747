package underhold.review.file;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * The canonical text of a JSON tree by RFC 8785 (JSON Canonicalization Scheme, 2020): no blanks,
 * names in the order of their UTF-16 units, numbers as ECMAScript prints them. Anybody can take the
 * same fingerprint with other tools.
 */
public final class CanonicalJson {
  /** Digits after which a decimal number still comes back from a double unchanged. */
  private static final int SAFE_DIGITS = 15;

  private static final int MOST_DIGITS = 17;

  /** From this power of ten on, and below that one, numbers are written with an exponent. */
  private static final int LARGE = 21;

  private static final int SMALL = -6;

  private CanonicalJson() {}

  /**
   * The text of a tree of maps, lists, texts, numbers and truth values.
   *
   * @throws IllegalArgumentException if it holds anything else, a number that is not finite, or
   *     half a character
   */
  public static String of(Object tree) {
    StringBuilder out = new StringBuilder();
    write(tree, out);
    return out.toString();
  }

  private static void write(Object value, StringBuilder out) {
    if (value instanceof Map<?, ?> map) {
      Map<String, Object> sorted = new TreeMap<>();
      map.forEach((name, item) -> sorted.put(String.valueOf(name), item));
      String between = "{";
      for (Map.Entry<String, Object> entry : sorted.entrySet()) {
        out.append(between);
        quoted(entry.getKey(), out);
        out.append(':');
        write(entry.getValue(), out);
        between = ",";
      }
      out.append(sorted.isEmpty() ? "{}" : "}");
    } else if (value instanceof List<?> list) {
      String between = "[";
      for (Object item : list) {
        out.append(between);
        write(item, out);
        between = ",";
      }
      out.append(list.isEmpty() ? "[]" : "]");
    } else if (value instanceof String text) {
      quoted(text, out);
    } else if (value instanceof Boolean) {
      out.append(value);
    } else if (value instanceof Number number) {
      out.append(number(number.doubleValue()));
    } else {
      throw new IllegalArgumentException("not a value of JSON: " + value);
    }
  }

  /** A number as ECMAScript prints it: the fewest digits that give the same double again. */
  static String number(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("not a number of JSON: " + value);
    }
    if (value == 0) {
      return "0";
    }
    BigDecimal shortest = shortest(Math.abs(value));
    String digits = shortest.unscaledValue().toString();
    int exponent = digits.length() - shortest.scale(); // the point stands after so many digits
    String sign = value < 0 ? "-" : "";
    if (exponent > LARGE || exponent <= SMALL) {
      int power = exponent - 1;
      String fraction = digits.length() > 1 ? "." + digits.substring(1) : "";
      return sign + digits.charAt(0) + fraction + "e" + (power < 0 ? "" : "+") + power;
    }
    if (exponent <= 0) {
      return sign + "0." + "0".repeat(-exponent) + digits;
    }
    if (digits.length() <= exponent) {
      return sign + digits + "0".repeat(exponent - digits.length());
    }
    return sign + digits.substring(0, exponent) + "." + digits.substring(exponent);
  }

  private static BigDecimal shortest(double value) {
    BigDecimal exact = new BigDecimal(value);
    for (int digits = SAFE_DIGITS; digits < MOST_DIGITS; digits++) {
      BigDecimal rounded = exact.round(new MathContext(digits, RoundingMode.HALF_EVEN));
      if (rounded.doubleValue() == value) {
        return fewer(rounded.stripTrailingZeros(), value);
      }
    }
    return exact.round(new MathContext(MOST_DIGITS, RoundingMode.HALF_EVEN)).stripTrailingZeros();
  }

  /** Numbers near the least double keep fewer digits than others. */
  private static BigDecimal fewer(BigDecimal found, double value) {
    if (value >= Double.MIN_NORMAL) {
      return found;
    }
    for (int digits = 1; digits < found.precision(); digits++) {
      BigDecimal rounded =
          new BigDecimal(value).round(new MathContext(digits, RoundingMode.HALF_EVEN));
      if (rounded.doubleValue() == value) {
        return rounded.stripTrailingZeros();
      }
    }
    return found;
  }

  private static void quoted(String text, StringBuilder out) {
    out.append('"');
    for (int i = 0; i < text.length(); i++) {
      char sign = text.charAt(i);
      switch (sign) {
        case '"' -> out.append("\\\"");
        case '\\' -> out.append("\\\\");
        case '\b' -> out.append("\\b");
        case '\t' -> out.append("\\t");
        case '\n' -> out.append("\\n");
        case '\f' -> out.append("\\f");
        case '\r' -> out.append("\\r");
        default -> {
          if (sign < ' ') {
            out.append(String.format(Locale.ROOT, "\\u%04x", (int) sign));
          } else if (Character.isSurrogate(sign)) {
            i = pair(text, i, out);
          } else {
            out.append(sign);
          }
        }
      }
    }
    out.append('"');
  }

  /** Writes a character of two halves; the place of its second half. */
  private static int pair(String text, int at, StringBuilder out) {
    if (!Character.isHighSurrogate(text.charAt(at))
        || at + 1 == text.length()
        || !Character.isLowSurrogate(text.charAt(at + 1))) {
      throw new IllegalArgumentException("the text holds half a character");
    }
    out.append(text, at, at + 2);
    return at + 1;
  }
}
