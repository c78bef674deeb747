package underhold.sizing;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import underhold.quantity.UnitSystem;

/**
 * A sentence with amounts in it, {name} for each, which reads in either unit system.
 *
 * @param template the words
 * @param amounts the amounts by name
 */
public record Phrase(String template, Map<String, Amount> amounts) {
  private static final Pattern SLOT = Pattern.compile("\\{([^{}]+)}");

  public Phrase {
    amounts = Collections.unmodifiableMap(new LinkedHashMap<>(amounts));
    int open = template.indexOf('{');
    while (open >= 0) {
      int close = template.indexOf('}', open);
      String name = close < 0 ? template.substring(open) : template.substring(open + 1, close);
      if (!amounts.containsKey(name)) {
        throw new IllegalArgumentException("\"" + template + "\" lacks a value for " + name);
      }
      open = template.indexOf('{', close);
    }
  }

  /** Words alone. */
  public static Phrase of(String words) {
    return new Phrase(words, Map.of());
  }

  /** Words with one amount. */
  public static Phrase of(String template, String name, Amount amount) {
    return new Phrase(template, Map.of(name, amount));
  }

  /** Words with several amounts. */
  public static Phrase of(String template, Map<String, Amount> amounts) {
    return new Phrase(template, amounts);
  }

  /** Words with two amounts. */
  public static Phrase of(
      String template, String name, Amount amount, String other, Amount second) {
    return new Phrase(template, Map.of(name, amount, other, second));
  }

  /** The sentence in that unit system. */
  public String in(UnitSystem system) {
    return SLOT.matcher(template)
        .replaceAll(
            slot -> {
              Amount amount = amounts.get(slot.group(1));
              return amount == null ? "" : Matcher.quoteReplacement(amount.in(system));
            });
  }
}
