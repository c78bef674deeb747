package underhold.quantity;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Guesses, for messages only, what was meant by a unit that is not known. */
final class UnitSuggestions {
  private static final String NOT_A_FORCE =
      " is a mass, or one of several tons: for a force use kN (or ton, the US short ton of 2000"
          + " lbf), for a unit weight kN/m3";
  private static final String NO_FIXED_LENGTH =
      " has no fixed length: use h, days (24 hours) or weeks";

  private static final Map<String, String> AMBIGUOUS = new LinkedHashMap<>();

  static {
    for (String mass :
        new String[] {
          "tonne",
          "tonnes",
          "t",
          "te",
          "mt",
          "tf",
          "metric ton",
          "metric tons",
          "long ton",
          "long tons",
          "kg",
          "kgs",
          "kgf",
          "kilogram",
          "kilograms",
          "kg/m3",
          "t/m3",
          "t/m2",
          "t/m"
        }) {
      AMBIGUOUS.put(mass, NOT_A_FORCE);
    }
    for (String time : new String[] {"month", "months", "year", "years", "yr", "shift", "shifts"}) {
      AMBIGUOUS.put(time, NO_FIXED_LENGTH);
    }
  }

  private UnitSuggestions() {}

  /** Why a unit that people use has no single meaning here. */
  static Optional<String> ambiguous(String typed) {
    String word = typed.toLowerCase(Locale.ROOT).replace('³', '3').replace('²', '2');
    return Optional.ofNullable(AMBIGUOUS.get(word)).map(why -> Typography.quoted(typed) + why);
  }

  /** What stands behind the longest head of the text that is a unit of the measure. */
  static Optional<String> trailingText(String typed, Measure measure) {
    for (int end = typed.length() - 1; end > 0; end--) {
      char next = typed.charAt(end);
      boolean wordEnds = " \t,;:(".indexOf(next) >= 0 || Character.isDigit(next);
      if (wordEnds && measure.unit(typed.substring(0, end)).isPresent()) {
        return Optional.of(typed.substring(end).strip());
      }
    }
    return Optional.empty();
  }

  /** The unit of the measure whose symbol or name is nearly what was typed. */
  static Optional<String> nearest(String typed, Measure measure) {
    String word = typed.toLowerCase(Locale.ROOT);
    int tolerated = word.length() < 2 ? 0 : word.length() <= 4 ? 1 : 2;
    return measure.units().stream()
        .filter(unit -> !unit.symbol().isEmpty())
        .filter(unit -> distance(unit, word) <= tolerated)
        .min(Comparator.comparingInt(unit -> distance(unit, word)))
        .map(MeasureUnit::symbol);
  }

  private static int distance(MeasureUnit unit, String word) {
    return Stream.of(unit.symbol(), unit.name())
        .mapToInt(known -> EditDistance.between(known.toLowerCase(Locale.ROOT), word))
        .min()
        .orElse(Integer.MAX_VALUE);
  }
}
