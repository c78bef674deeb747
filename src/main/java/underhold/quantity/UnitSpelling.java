package underhold.quantity;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Brings the many spellings of a unit to one key: "Kips per foot", "k/ft" and "KIP/FT" are all
 * "kip/ft"; "sq. ft.", "ft^2" and "square feet" are "ft2"; "kN m", "kN.m" and "kN-m" are "kN·m".
 *
 * <p>Case is ignored except in {@link #CASE_MATTERS}, where a small and a capital m are a thousand
 * million apart: those are taken as written or in capitals throughout.
 */
final class UnitSpelling {
  private static final Set<String> CASE_MATTERS = Set.of("mm", "MN", "MPa", "MNm");

  private static final Map<String, String> AS_WRITTEN = new HashMap<>();
  private static final Map<String, String> IN_ANY_CASE = new HashMap<>();

  static {
    word("m", "metre", "metres", "meter", "meters");
    word("mm", "millimetre", "millimetres", "millimeter", "millimeters");
    word("cm", "centimetre", "centimetres", "centimeter", "centimeters");
    word("ft", "foot", "feet", "'");
    word("in", "inch", "inches", "ins", "\"");
    word("yd", "yard", "yards", "yds");
    word("ft2", "sf", "sqft");
    word("in2", "sqin");
    word("m2", "sqm");
    word("ft3", "cf", "cuft");
    word("yd3", "cy", "cuyd");
    word("L", "litre", "litres", "liter", "liters");
    word("gal", "gallon", "gallons");
    word("N", "newton", "newtons");
    word("kN", "kilonewton", "kilonewtons");
    word("MN", "meganewton", "meganewtons");
    word("GN");
    word("lb", "lbs", "lbf", "pound", "pounds");
    word("kip", "kips", "k");
    word("ton", "tons");
    word("Pa", "pascal", "pascals");
    word("kPa", "kilopascal", "kilopascals");
    word("MPa", "megapascal", "megapascals");
    word("GPa", "gigapascal", "gigapascals");
    word("psf");
    word("ksf");
    word("tsf");
    word("psi");
    word("ksi");
    word("pcf");
    word("kcf");
    word("plf");
    word("klf");
    word("Nm");
    word("kNm");
    word("MNm");
    word("deg", "degs", "degree", "degrees", "°");
    word("rad", "radian", "radians");
    word("s", "sec", "secs", "second", "seconds");
    word("min", "mins", "minute", "minutes");
    word("h", "hr", "hrs", "hour", "hours");
    word("d", "day", "days");
    word("wk", "wks", "week", "weeks");
    word("%", "percent", "pct");
  }

  private static final Pattern PER = Pattern.compile("(?i)\\s*(?:/|\\bper\\b)\\s*");
  private static final Pattern TIMES = Pattern.compile("[\\s.·⋅∙•*×-]+");
  private static final Pattern TOKEN =
      Pattern.compile("(?:((?i)sq|square|cu|cubic)·)?([A-Za-z]+)([23])?|([%°'\"])|[/·]");
  private static final Pattern POWER_SIGN = Pattern.compile("\\^(?=[23])");
  private static final Pattern PER_CENT = Pattern.compile("(?i)per\\s+cent");

  private UnitSpelling() {}

  /** The key of a spelling; empty when a word in it is no unit word. */
  static Optional<String> key(String spelling) {
    String joined = join(spelling);
    StringBuilder key = new StringBuilder();
    Matcher token = TOKEN.matcher(joined);
    int at = 0;
    while (at < joined.length()) {
      if (!token.find() || token.start() != at) {
        return Optional.empty();
      }
      at = token.end();
      String typed = token.group(2) != null ? token.group(2) : token.group(4);
      if (typed == null) {
        key.append(token.group());
        continue;
      }
      Optional<String> word = lookUp(typed);
      boolean powerTwice = token.group(1) != null && token.group(3) != null;
      if (word.isEmpty() || powerTwice) {
        return Optional.empty();
      }
      key.append(word.get()).append(power(token));
    }
    return key.isEmpty() ? Optional.empty() : Optional.of(key.toString());
  }

  private static String join(String spelling) {
    String text = Typography.plain(spelling).strip();
    text = text.replace('\u00B2', '2').replace('\u00B3', '3'); // superscripts
    text = POWER_SIGN.matcher(text).replaceAll("");
    text = PER_CENT.matcher(text).replaceAll("percent");
    if (text.endsWith(".")) {
      text = text.substring(0, text.length() - 1);
    }
    return TIMES.matcher(PER.matcher(text).replaceAll("/")).replaceAll("·");
  }

  private static String power(Matcher token) {
    String prefix = token.group(1);
    if (prefix != null) {
      return lower(prefix).startsWith("sq") ? "2" : "3";
    }
    String digit = token.group(3);
    return digit == null ? "" : digit;
  }

  private static Optional<String> lookUp(String typed) {
    String exact = AS_WRITTEN.get(typed);
    return Optional.ofNullable(exact != null ? exact : IN_ANY_CASE.get(lower(typed)));
  }

  private static void word(String symbol, String... others) {
    if (CASE_MATTERS.contains(symbol)) {
      AS_WRITTEN.put(symbol, symbol);
      AS_WRITTEN.put(symbol.toUpperCase(Locale.ROOT), symbol);
    } else {
      IN_ANY_CASE.put(lower(symbol), symbol);
    }
    for (String other : others) {
      IN_ANY_CASE.put(lower(other), symbol);
    }
  }

  private static String lower(String typed) {
    return typed.toLowerCase(Locale.ROOT);
  }
}
