package underhold.mechanics.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import underhold.mechanics.timber.OshaTimberTables.Row;
import underhold.mechanics.timber.OshaTimberTables.Timber;

class OshaTimberTablesTest {
  private static final double FOOT = 0.3048;
  private static final double PSF = 0.04788025898;

  @Test
  @DisplayName(
      "29 CFR 1926 Subpart P App. C, Example 1: Type A, 13 ft deep, 5 ft wide, four arrangements")
  void example_1_rows() {
    List<Row> rows = OshaTimberTables.rows(Timber.MIXED_OAK, SheetingSoil.A, 13 * FOOT);
    assertThat(rows)
        .extracting(row -> row.words(5 * FOOT))
        .containsExactly(
            "brace 4x4 at 6 ft along and 4 ft down, no wale, uprights 3x8 at 6 ft",
            "brace 4x6 at 8 ft along and 4 ft down, wale 8x8 at 4 ft, uprights 2x6 at 4 ft",
            "brace 6x6 at 10 ft along and 4 ft down, wale 8x10 at 4 ft, uprights 2x6 at 5 ft",
            "brace 6x6 at 12 ft along and 4 ft down, wale 10x10 at 4 ft, uprights 3x8 at 6 ft");
  }

  @Test
  @DisplayName(
      "29 CFR 1926 Subpart P App. C, Example 2: Type B, 13 ft deep, 5 ft wide, three arrangements")
  void example_2_rows() {
    List<Row> rows = OshaTimberTables.rows(Timber.MIXED_OAK, SheetingSoil.B, 13 * FOOT);
    assertThat(rows)
        .extracting(row -> row.words(5 * FOOT))
        .containsExactly(
            "brace 6x6 at 6 ft along and 5 ft down, wale 8x8 at 5 ft, uprights 2x6 at 2 ft",
            "brace 6x8 at 8 ft along and 5 ft down, wale 10x10 at 5 ft, uprights 2x6 at 2 ft",
            "brace 8x8 at 10 ft along and 5 ft down, wale 10x12 at 5 ft, uprights 2x6 at 2 ft");
  }

  @ParameterizedTest(name = "type {0}, {1} ft: {2} psf")
  @DisplayName(
      "29 CFR 1926 Subpart P App. C: Pa = 25, 45 or 80 H + 72 psf (Examples 1 and 2 print 397; others by the formula)")
  @CsvSource({
    "A, 5, 197",
    "A, 8, 272",
    "A, 10, 322",
    "A, 13, 397",
    "A, 15, 447",
    "A, 20, 572",
    "B, 5, 297",
    "B, 8, 432",
    "B, 10, 522",
    "B, 13, 657",
    "B, 15, 747",
    "B, 20, 972",
    "C, 5, 472",
    "C, 8, 712",
    "C, 10, 872",
    "C, 13, 1112",
    "C, 15, 1272",
    "C, 20, 1672"
  })
  void table_pressures(SheetingSoil soil, double feet, double psf) {
    assertThat(soil.tablePressure(feet * FOOT) / PSF).isCloseTo(psf, within(0.01));
  }

  @ParameterizedTest(name = "Own case, the same in metric units: type {0}, {1} h + 3.447 kPa")
  @CsvSource({"A, 3.927", "B, 7.069", "C, 12.567"})
  void table_pressures_in_metric_units(SheetingSoil soil, double slope) {
    for (double metres : new double[] {1.6, 3, 6}) {
      assertThat(soil.tablePressure(metres)).isCloseTo(slope * metres + 3.447, within(0.005));
    }
  }

  @ParameterizedTest(name = "{0}")
  @DisplayName("29 CFR 1926 Subpart P App. C: rows of each table, with the bars it prints as empty")
  @CsvSource({
    "C-1.1, A, MIXED_OAK, 4, 4, 4",
    "C-1.2, B, MIXED_OAK, 3, 3, 3",
    "C-1.3, C, MIXED_OAK, 3, 2, 1",
    "C-2.1, A, DOUGLAS_FIR, 4, 4, 4",
    "C-2.2, B, DOUGLAS_FIR, 3, 3, 3",
    "C-2.3, C, DOUGLAS_FIR, 3, 2, 1"
  })
  void rows_of_each_table(
      String table, SheetingSoil soil, Timber timber, int to10, int to15, int to20) {
    int[] rows = {to10, to15, to20};
    double[] feet = {9, 14, 19};
    for (int i = 0; i < rows.length; i++) {
      assertThat(OshaTimberTables.rows(timber, soil, feet[i] * FOOT))
          .hasSize(rows[i])
          .allSatisfy(row -> assertThat(row.table()).isEqualTo(table));
    }
  }

  @Test
  @DisplayName(
      "29 CFR 1926 Subpart P App. C: Example 1, load on arrangement 1 is 397 psf x 4 ft x 6 ft = 9,528 lb")
  void brace_load_of_example_1() {
    double pounds = SheetingSoil.A.tablePressure(13 * FOOT) / PSF * 4 * 6;
    assertThat(pounds).isCloseTo(9528, within(0.5));
  }

  @Test
  void tables_are_empty_outside_their_depths() {
    assertThat(OshaTimberTables.rows(Timber.MIXED_OAK, SheetingSoil.A, 4.9 * FOOT)).isEmpty();
    assertThat(OshaTimberTables.rows(Timber.MIXED_OAK, SheetingSoil.A, 20.1 * FOOT)).isEmpty();
    assertThat(OshaTimberTables.rows(Timber.MIXED_OAK, SheetingSoil.A, 10 * FOOT))
        .allSatisfy(row -> assertThat(row.toDepthFeet()).isEqualTo(10));
    assertThat(OshaTimberTables.rows(Timber.DOUGLAS_FIR, SheetingSoil.C, 20 * FOOT))
        .extracting(Row::uprights)
        .containsExactly("4x6 close");
    assertThat(
            OshaTimberTables.rows(Timber.DOUGLAS_FIR, SheetingSoil.B, 6 * FOOT)
                .get(0)
                .brace(16 * FOOT))
        .isEqualTo("none in the table");
  }

  @Test
  @DisplayName("29 CFR 1926 Subpart P App. A: 1.5 tsf itself is Type A, 0.5 tsf itself is Type C")
  void cohesive_types_at_their_limits() {
    double tonPerSquareFoot = 95.76051796;
    assertThat(SheetingSoil.ofCohesive(1.5 * tonPerSquareFoot)).isEqualTo(SheetingSoil.A);
    assertThat(SheetingSoil.ofCohesive(1.49 * tonPerSquareFoot)).isEqualTo(SheetingSoil.B);
    assertThat(SheetingSoil.ofCohesive(0.51 * tonPerSquareFoot)).isEqualTo(SheetingSoil.B);
    assertThat(SheetingSoil.ofCohesive(0.5 * tonPerSquareFoot)).isEqualTo(SheetingSoil.C);
  }

  @Test
  @DisplayName(
      "FHWA-RD-75-130 lagging table (numbers from memory): spans under 5 ft take the 5 ft column, gaps stay gaps")
  void lagging_table() {
    LaggingThickness.Ground competent = LaggingThickness.Ground.COMPETENT;
    assertThat(LaggingThickness.recommended(competent, 8 * FOOT, 4 * FOOT)).hasValue(2 * 0.0254);
    assertThat(LaggingThickness.recommended(competent, 26 * FOOT, 7 * FOOT)).hasValue(3 * 0.0254);
    assertThat(LaggingThickness.recommended(LaggingThickness.Ground.DANGEROUS, 10 * FOOT, 9 * FOOT))
        .isEmpty();
    assertThat(LaggingThickness.recommended(LaggingThickness.Ground.DANGEROUS, 40 * FOOT, 5 * FOOT))
        .isEmpty();
    assertThat(LaggingThickness.recommended(competent, 8 * FOOT, 11 * FOOT)).isEmpty();
  }

  @ParameterizedTest(
      name =
          "FHWA-RD-75-130 (numbers from memory): {0} to {1} ft, spans of 5 to 10 ft: {2} {3} {4} {5} {6} {7} in, 0 for none")
  @CsvSource({
    "COMPETENT, 25, 2, 3, 3, 3, 4, 4",
    "COMPETENT, 60, 3, 3, 3, 4, 4, 5",
    "DIFFICULT, 25, 3, 3, 3, 4, 4, 5",
    "DIFFICULT, 60, 3, 3, 4, 4, 5, 5",
    "DANGEROUS, 15, 3, 3, 4, 5, 0, 0",
    "DANGEROUS, 25, 3, 4, 5, 6, 0, 0",
    "DANGEROUS, 35, 4, 5, 6, 0, 0, 0"
  })
  void every_row_of_the_lagging_table(
      LaggingThickness.Ground ground,
      double depth,
      int five,
      int six,
      int seven,
      int eight,
      int nine,
      int ten) {
    int[] inches = {five, six, seven, eight, nine, ten};
    for (int i = 0; i < inches.length; i++) {
      double found =
          LaggingThickness.recommended(ground, depth * FOOT, (5 + i) * FOOT).orElse(0) / 0.0254;
      assertThat(found).isCloseTo(inches[i], within(1e-9));
    }
  }
}
