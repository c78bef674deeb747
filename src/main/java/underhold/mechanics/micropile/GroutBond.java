package underhold.mechanics.micropile;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Usual range of nominal bond of grout to ground. Source: FHWA NHI-05-039 (2005), Table 5-3. Basis:
 * from memory, verify. Ranges for first design; tests decide.
 *
 * @param key short name of the ground
 * @param ground the ground in words
 * @param ranges range by kind of grouting, where one is given
 */
public record GroutBond(String key, String ground, Map<Grouting, Range> ranges) {
  private static final Map<String, GroutBond> TABLE = load();

  public GroutBond {
    ranges = Map.copyOf(ranges);
  }

  /** How the bond length is grouted. */
  public enum Grouting {
    /** A: by gravity or tremie. */
    GRAVITY(2),
    /** B: 0.5 to 1 MPa as the casing is pulled. */
    PRESSURE(4),
    /** C: once again after 15 to 25 minutes, above 1 MPa. */
    POST_GROUTED_ONCE(6),
    /** D: repeatedly hours later through sleeves, 2 to 8 MPa. */
    POST_GROUTED_REPEATEDLY(8);

    /** Column of the low end in the table. */
    private final int column;

    Grouting(int column) {
      this.column = column;
    }
  }

  /**
   * A range.
   *
   * @param lowKilopascals low end
   * @param highKilopascals high end
   */
  public record Range(double lowKilopascals, double highKilopascals) {
    private static final double THIRD = 1.0 / 3;

    public Range {
      Require.positive("low end", lowKilopascals);
      if (!(highKilopascals >= lowKilopascals) || Double.isInfinite(highKilopascals)) {
        throw new IllegalArgumentException("the high end is below the low end");
      }
    }

    /** The value at a share of the range: 0 low end, 1 high end, kPa. */
    public double at(double share) {
      if (!(share >= 0 && share <= 1)) {
        throw new IllegalArgumentException("share is " + share + ", it must be from 0 to 1");
      }
      return lowKilopascals + share * (highKilopascals - lowKilopascals);
    }

    /** Top of the lower third, kPa: what judgement allows without a test. */
    public double lowerThird() {
      return at(THIRD);
    }
  }

  /** The row of that name. */
  public static Optional<GroutBond> named(String key) {
    return Optional.ofNullable(TABLE.get(key));
  }

  /** All rows, in the order of the table. */
  public static List<GroutBond> table() {
    return List.copyOf(TABLE.values());
  }

  /** The range for a kind of grouting; empty where the table gives none (rock: gravity only). */
  public Optional<Range> range(Grouting grouting) {
    return Optional.ofNullable(ranges.get(grouting));
  }

  private static Map<String, GroutBond> load() {
    Map<String, GroutBond> table = new LinkedHashMap<>();
    for (List<String> row : TableRows.read("grout-bond.csv")) {
      Map<Grouting, Range> ranges = new EnumMap<>(Grouting.class);
      for (Grouting grouting : Grouting.values()) {
        int column = grouting.column;
        if (!row.get(column).isBlank()) {
          ranges.put(
              grouting,
              new Range(TableRows.number(row, column), TableRows.number(row, column + 1)));
        }
      }
      table.put(row.get(0), new GroutBond(row.get(0), row.get(1).replace(';', ','), ranges));
    }
    return table;
  }
}
