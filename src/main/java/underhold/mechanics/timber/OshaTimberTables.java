package underhold.mechanics.timber;

import java.util.List;
import java.util.Locale;

/**
 * Timber trench shoring by table: 29 CFR 1926 Subpart P Appendix C, Tables C-1.1 to C-2.3.
 *
 * <p>The tables stop where loads from structures within one trench depth exceed a 2 ft soil
 * surcharge: beside a loaded footing they are a floor, never the design. Valid for depths over 5 ft
 * up to 20 ft and trench widths up to 15 ft.
 */
public final class OshaTimberTables {
  private static final double[] WIDTHS_FEET = {4, 6, 9, 12, 15};
  private static final double TOLERANCE_FEET = 1e-6;
  private static final List<Row> ROWS =
      TableRows.read("osha-timber-shoring.csv").stream().map(Row::parse).toList();

  private OshaTimberTables() {}

  /** Timber family of the tables. */
  public enum Timber {
    /** C-1: mixed oak, actual sizes, Fb at least 850 psi. */
    MIXED_OAK("C-1."),
    /** C-2: Douglas fir, nominal sizes surfaced four sides, Fb at least 1,500 psi. */
    DOUGLAS_FIR("C-2.");

    private final String prefix;

    Timber(String prefix) {
      this.prefix = prefix;
    }
  }

  /**
   * One row, in feet and inches as printed.
   *
   * @param table number of the table
   * @param braces brace sizes for trench widths up to 4, 6, 9, 12 and 15 ft
   * @param wale wale size, "none" where the table asks for none
   * @param uprights upright sizes and spacing
   */
  public record Row(
      String table,
      SheetingSoil soil,
      double overDepthFeet,
      double toDepthFeet,
      double braceSpacingFeet,
      List<String> braces,
      double braceVerticalSpacingFeet,
      String wale,
      double waleSpacingFeet,
      String uprights) {

    public Row {
      braces = List.copyOf(braces);
    }

    private static Row parse(String[] cell) {
      return new Row(
          cell[0],
          SheetingSoil.valueOf(cell[1]),
          Double.parseDouble(cell[2]),
          Double.parseDouble(cell[3]),
          Double.parseDouble(cell[4]),
          List.of(cell[5], cell[6], cell[7], cell[8], cell[9]),
          Double.parseDouble(cell[10]),
          cell[11],
          Double.parseDouble(cell[12]),
          cell[13]);
    }

    /** Brace size for a trench of that width, "none in the table" where it is wider than 15 ft. */
    public String brace(double trenchWidthMetres) {
      double feet = trenchWidthMetres / TableRows.METRES_PER_FOOT;
      for (int i = 0; i < WIDTHS_FEET.length; i++) {
        if (feet <= WIDTHS_FEET[i] + TOLERANCE_FEET) {
          return braces.get(i);
        }
      }
      return "none in the table";
    }

    /** The row in words, sizes as printed (inches, feet). */
    public String words(double trenchWidthMetres) {
      String wales =
          wale.equals("none")
              ? "no wale"
              : String.format(Locale.ROOT, "wale %s at %.0f ft", wale, waleSpacingFeet);
      return String.format(
          Locale.ROOT,
          "brace %s at %.0f ft along and %.0f ft down, %s, uprights %s",
          brace(trenchWidthMetres),
          braceSpacingFeet,
          braceVerticalSpacingFeet,
          wales,
          uprights);
    }
  }

  /**
   * All rows of a timber family, soil and depth, by rising brace spacing; empty outside the tables.
   */
  public static List<Row> rows(Timber timber, SheetingSoil soil, double depthMetres) {
    double feet = depthMetres / TableRows.METRES_PER_FOOT;
    return ROWS.stream()
        .filter(row -> row.table().startsWith(timber.prefix) && row.soil() == soil)
        .filter(
            row ->
                feet
                    > row.overDepthFeet()
                        - (row.overDepthFeet() == 5 ? TOLERANCE_FEET : -TOLERANCE_FEET))
        .filter(row -> feet <= row.toDepthFeet() + TOLERANCE_FEET)
        .toList();
  }
}
