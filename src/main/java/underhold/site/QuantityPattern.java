package underhold.site;

import java.util.LinkedHashSet;
import java.util.Set;
import java.util.stream.Collectors;
import underhold.quantity.Measure;
import underhold.quantity.MeasureUnit;

/**
 * Regular expressions (ECMA-262) for typed quantities, for editors that check a file by its schema.
 * They know each unit's symbol and name; the program itself reads more spellings.
 */
final class QuantityPattern {
  private static final String NUMBER =
      "[+-]?((\\d[\\d,]*(\\.\\d*)?|\\.\\d+)([eE][+-]?\\d+)?|(\\d+[ -])?\\d+/\\d+)";
  private static final String FEET_AND_INCHES =
      "[+-]?\\d+ ?('|ft) ?-? ?" + "\\d+(\\.\\d+| \\d+/\\d+)? ?(\"|in)";
  private static final String SLOPE = "1 *([iI][nN]|:) *\\d+(\\.\\d+)?";
  private static final String UNKNOWN = "[uU]nknown";

  private QuantityPattern() {}

  static String slope() {
    return "^ *(" + UNKNOWN + "|" + SLOPE + ") *$";
  }

  static String of(Measure measure) {
    String units =
        measure.units().stream()
            .flatMap(unit -> spellings(unit).stream())
            .map(QuantityPattern::quoted)
            .collect(Collectors.joining("|"));
    String unit = units.isEmpty() ? "" : " *(" + units + ")\\.?";
    if (!measure.needsUnit() && !unit.isEmpty()) {
      unit = "(" + unit + ")?";
    }
    String feet = measure == Measure.LENGTH ? "|" + FEET_AND_INCHES : "";
    return "^ *(" + UNKNOWN + "|" + NUMBER + unit + feet + ") *$";
  }

  private static Set<String> spellings(MeasureUnit unit) {
    Set<String> spellings = new LinkedHashSet<>();
    if (unit.symbol().isEmpty()) {
      return spellings;
    }
    spellings.add(unit.symbol());
    spellings.add(unit.name().replaceAll(" *\\(.*\\)", ""));
    switch (unit.symbol()) {
      case "ft" -> spellings.add("'");
      case "in" -> spellings.add("\"");
      case "deg" -> spellings.add("°");
      default -> {}
    }
    return spellings;
  }

  /** The spelling with its signs escaped; powers also as {@code ^2} and as superscripts. */
  private static String quoted(String spelling) {
    return spelling
        .replace(".", "\\.")
        .replace("·", "[·.-]?")
        .replace("2", "(\\^?2|²)")
        .replace("3", "(\\^?3|³)");
  }
}
