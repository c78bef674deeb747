package underhold.consult.screening;

import java.util.regex.Pattern;
import underhold.site.FactDefinition;

/**
 * A column of a table of zones.
 *
 * @param number its place, from 1
 * @param name the name in the header, without its unit
 * @param kind what stands in it
 * @param layer the layer of the ground it speaks of, from 1; 0 for others
 * @param field the name of the fact or of the field of the layer
 * @param unit the unit of its bare numbers; empty where each cell must have its own
 */
record CsvColumn(int number, String name, Kind kind, int layer, String field, String unit) {
  private static final Pattern BARE_NUMBER =
      Pattern.compile("[-+]?[0-9][0-9., /]*(?:[eE][-+]?[0-9]+)?");

  /** What stands in a column. */
  enum Kind {
    ZONE,
    SITE,
    UNITS,
    NOTE,
    FACT,
    LAYER,
    PASSED_OVER
  }

  /** A cell as it would stand in a site file: a bare number gets the unit of the header. */
  String typed(String cell) {
    String text = cell.strip();
    return !unit.isEmpty() && BARE_NUMBER.matcher(text).matches() ? text + " " + unit : text;
  }

  /** Whether amounts of a fact have units, one of which may stand in the header. */
  static boolean takesUnit(FactDefinition definition) {
    return definition.kind() == underhold.site.FactKind.QUANTITY
        && definition.requireRange().measure().needsUnit();
  }
}
