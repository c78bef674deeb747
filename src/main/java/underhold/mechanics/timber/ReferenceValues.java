package underhold.mechanics.timber;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reference design stresses of one species and grade, kPa.
 *
 * <p>Source: NDS 2018 Supplement, Tables 4A and 4B, No. 2 grade, 2 to 4 in thick. Basis: from
 * memory, verify.
 *
 * @param name species and, for southern pine, the nominal width
 * @param bending Fb
 * @param shear Fv
 * @param compressionAcrossGrain Fc-perp
 * @param compressionAlongGrain Fc
 * @param elasticModulus E
 * @param sizeFactorIncluded whether the size factor is already in Fb (southern pine)
 */
public record ReferenceValues(
    String name,
    double bending,
    double shear,
    double compressionAcrossGrain,
    double compressionAlongGrain,
    double elasticModulus,
    boolean sizeFactorIncluded) {

  /**
   * Coefficient of variation of E for visually graded lumber (NDS 2018 Appendix F; from memory).
   */
  private static final double COEFFICIENT_OF_VARIATION_OF_E = 0.25;

  private static final Map<String, ReferenceValues> TABLE = load();

  public ReferenceValues {
    TableRows.requirePositive("Fb", bending);
    TableRows.requirePositive("Fv", shear);
    TableRows.requirePositive("Fc-perp", compressionAcrossGrain);
    TableRows.requirePositive("Fc", compressionAlongGrain);
    TableRows.requirePositive("E", elasticModulus);
  }

  /** The row of that name, if the table has it. */
  public static Optional<ReferenceValues> named(String name) {
    return Optional.ofNullable(TABLE.get(name));
  }

  /** All names, in the order of the table. */
  public static List<String> names() {
    return List.copyOf(TABLE.keySet());
  }

  /**
   * Elastic modulus for stability, Emin = 1.03 E (1 - 1.645 COV) / 1.66, kPa (NDS 2018 Appendix D;
   * from memory, verify).
   */
  public double stabilityModulus() {
    return 1.03 * elasticModulus * (1 - 1.645 * COEFFICIENT_OF_VARIATION_OF_E) / 1.66;
  }

  private static Map<String, ReferenceValues> load() {
    Map<String, ReferenceValues> table = new LinkedHashMap<>();
    for (String[] cell : TableRows.read("reference-design-values.csv")) {
      table.put(
          cell[0],
          new ReferenceValues(
              cell[0],
              psi(cell[1]),
              psi(cell[2]),
              psi(cell[3]),
              psi(cell[4]),
              psi(cell[5]),
              cell[6].equals("yes")));
    }
    return table;
  }

  private static double psi(String cell) {
    return Double.parseDouble(cell) * TableRows.KILOPASCALS_PER_PSI;
  }
}
