package underhold.mechanics.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import underhold.mechanics.timber.OshaTimberTables.Row;
import underhold.mechanics.timber.OshaTimberTables.Timber;

/** Each rule of the timber calculators at its very edge. */
class TimberBoundariesTest {
  private static final double PSI = 6.894757293168361;
  private static final double FOOT = 0.3048;
  private static final double INCH = 0.0254;

  @Test
  @DisplayName("Own case, statics by hand: 20 kPa on 2 m of a 0.1 m board")
  void board_by_hand() {
    BoardUnderPressure board = new BoardUnderPressure(20, 2, 0.1);
    assertThat(board.moment()).isCloseTo(10, within(1e-12)); // 20 x 4 / 8
    assertThat(board.shear()).isCloseTo(20, within(1e-12)); // 20 x 2 / 2
    assertThat(board.sectionModulus()).isCloseTo(0.01 / 6, within(1e-15));
    assertThat(board.secondMoment()).isCloseTo(0.001 / 12, within(1e-15));
    assertThat(board.bendingStress()).isCloseTo(6000, within(1e-9)); // 10 x 6 / 0.01
    assertThat(board.shearStress()).isCloseTo(300, within(1e-9)); // 1.5 x 20 / 0.1
    // 5 x 20 x 16 / (384 x 1e7 x 0.001 / 12) = 1,600 / 320,000
    assertThat(board.deflection(1e7)).isCloseTo(0.005, within(1e-12));
    assertThat(board.endBearingStress(0.05)).isCloseTo(400, within(1e-9)); // 20 / 0.05
    // sqrt(6 x 10 / 6,000) = 0.1 m gives the thickness back
    assertThat(BoardUnderPressure.thicknessForBending(20, 2, 6000)).isCloseTo(0.1, within(1e-12));
    assertThat(BoardUnderPressure.thicknessForBending(0, 2, 6000)).isZero();
  }

  @ParameterizedTest(name = "{0} is refused")
  @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
  void a_board_refuses_what_no_board_has(double bad) {
    BoardUnderPressure board = new BoardUnderPressure(20, 2, 0.1);
    refused(() -> new BoardUnderPressure(20, bad, 0.1), "span of the board is", "above 0");
    refused(() -> new BoardUnderPressure(20, 2, bad), "thickness of the board is", "above 0");
    refused(() -> board.deflection(bad), "elastic modulus is", "above 0");
    refused(() -> board.endBearingStress(bad), "bearing length is", "above 0");
    refused(() -> BoardUnderPressure.thicknessForBending(1, bad, 1), "span of the board is", "");
    refused(() -> BoardUnderPressure.thicknessForBending(1, 1, bad), "allowable stress is", "");
    refused(() -> CombinedStress.bucklingStress(bad, 1, 1), "stability modulus is", "");
    refused(() -> CombinedStress.bucklingStress(1, bad, 1), "length is", "");
    refused(() -> CombinedStress.bucklingStress(1, 1, bad), "thickness is", "");
    refused(() -> CombinedStress.sum(0, bad, 0, 1, 1), "allowable axial stress is", "");
    refused(() -> CombinedStress.sum(0, 1, 0, bad, 1), "allowable bending stress is", "");
    refused(() -> NdsFactors.loadDuration(bad), "load duration is", "");
    refused(() -> NdsFactors.bearingArea(bad, false), "bearing length is", "");
    refused(() -> recommended(LaggingThickness.Ground.COMPETENT, 1, bad), "clear span is", "");
    refused(() -> new ReferenceValues("x", bad, 1, 1, 1, 1, true), "Fb is", "");
    refused(() -> new ReferenceValues("x", 1, bad, 1, 1, 1, true), "Fv is", "");
    refused(() -> new ReferenceValues("x", 1, 1, bad, 1, 1, true), "Fc-perp is", "");
    refused(() -> new ReferenceValues("x", 1, 1, 1, bad, 1, true), "Fc is", "");
    refused(() -> new ReferenceValues("x", 1, 1, 1, 1, bad, true), "E is", "");
  }

  @ParameterizedTest(name = "{0} is refused")
  @ValueSource(doubles = {-1e-9, Double.NaN, Double.POSITIVE_INFINITY})
  void what_may_be_nothing_may_not_be_less(double bad) {
    refused(
        () -> new BoardUnderPressure(bad, 2, 0.1), "pressure on the board is", "not be below 0");
    refused(
        () -> BoardUnderPressure.thicknessForBending(bad, 1, 1), "pressure on the board is", "");
    refused(() -> CombinedStress.sum(bad, 1, 0, 1, 1), "axial stress is", "");
    refused(() -> CombinedStress.sum(0, 1, bad, 1, 1), "bending stress is", "");
    refused(() -> recommended(LaggingThickness.Ground.COMPETENT, bad, 1), "depth is", "");
    refused(() -> SheetingSoil.A.tablePressure(bad), "depth is", "");
    refused(() -> SheetingSoil.ofCohesive(bad), "unconfined compressive strength is", "");
  }

  private static void refused(Runnable call, String name, String limit) {
    assertThatIllegalArgumentException()
        .isThrownBy(call::run)
        .withMessageStartingWith(name)
        .withMessageContaining(limit);
  }

  @Test
  @DisplayName(
      "Own case: an axial stress that just reaches the buckling stress leaves nothing for bending")
  void combined_stress_at_its_limit() {
    assertThat(CombinedStress.stable(999, 1000)).isTrue();
    assertThat(CombinedStress.stable(1000, 1000)).isFalse();
    refused(() -> CombinedStress.sum(1000, 1, 1, 1, 1000), "the axial stress reaches", "buckling");
    // (500/1000)^2 + 300 / (1,000 (1 - 500/2,000)) = 0.25 + 0.4
    assertThat(CombinedStress.sum(500, 1000, 300, 1000, 2000)).isCloseTo(0.65, within(1e-12));
    // 0.822 x 1,000,000 / (2 / 0.1)^2 = 2,055
    assertThat(CombinedStress.bucklingStress(1e6, 2, 0.1)).isCloseTo(2055, within(1e-9));
  }

  @ParameterizedTest(name = "{0}, {1} ft deep, {2} ft span: {3} in")
  @DisplayName(
      "FHWA-RD-75-130 lagging table (numbers from memory): a depth and a span at its limit take its"
          + " row and column")
  @CsvSource({
    "COMPETENT, 0, 5, 2",
    "COMPETENT, 25, 5, 2",
    "COMPETENT, 25, 6, 3",
    "COMPETENT, 25.01, 5, 3",
    "COMPETENT, 60, 10, 5",
    "COMPETENT, 60.01, 5, 0",
    "COMPETENT, 25, 5.01, 3",
    "COMPETENT, 25, 8.01, 4",
    "COMPETENT, 25, 10, 4",
    "COMPETENT, 25, 10.01, 0",
    "DIFFICULT, 25, 8, 4",
    "DIFFICULT, 25, 10, 5",
    "DIFFICULT, 26, 7, 4",
    "DANGEROUS, 15, 8, 5",
    "DANGEROUS, 15, 9, 0",
    "DANGEROUS, 15.01, 8, 6",
    "DANGEROUS, 35, 7, 6",
    "DANGEROUS, 35, 8, 0",
    "DANGEROUS, 35.01, 5, 0"
  })
  void lagging_at_its_limits(LaggingThickness.Ground ground, double deep, double span, double in) {
    OptionalDouble thickness = recommended(ground, deep * FOOT, span * FOOT);
    if (in == 0) {
      assertThat(thickness).isEmpty();
    } else {
      assertThat(thickness.orElseThrow()).isCloseTo(in * INCH, within(1e-12));
    }
  }

  private static OptionalDouble recommended(
      LaggingThickness.Ground ground, double depthMetres, double spanMetres) {
    return LaggingThickness.recommended(ground, depthMetres, spanMetres);
  }

  @ParameterizedTest(name = "{0} days: {1}")
  @DisplayName("NDS 2018, 2.3.2 (from memory): each load duration at its limit and just above")
  @CsvSource({
    "0.00694, 1.6",
    "0.00695, 1.25",
    "7, 1.25",
    "7.001, 1.15",
    "60, 1.15",
    "60.01, 1.0",
    "3650, 1.0",
    "3651, 0.9"
  })
  void load_duration(double days, double factor) {
    assertThat(NdsFactors.loadDuration(days)).isEqualTo(factor);
  }

  @ParameterizedTest(name = "{0} in wide: size {1}, flat {2}, flat and thick {3}")
  @DisplayName("NDS Supplement, Table 4A (from memory): size and flat use factors at their limits")
  @CsvSource({
    "4, 1.3, 1.15, 1.05",
    "6, 1.3, 1.15, 1.05",
    "6.1, 1.2, 1.15, 1.05",
    "8, 1.2, 1.15, 1.05",
    "8.1, 1.1, 1.15, 1.05",
    "10, 1.1, 1.2, 1.1",
    "10.1, 1.0, 1.2, 1.1",
    "12, 1.0, 1.2, 1.1",
    "12.1, 0.9, 1.2, 1.1"
  })
  void size_and_flat_use(double width, double size, double flat, double thick) {
    assertThat(NdsFactors.size(width)).isEqualTo(size);
    assertThat(NdsFactors.flatUse(width, 3)).isEqualTo(flat);
    assertThat(NdsFactors.flatUse(width, 4)).isEqualTo(thick);
  }

  @Test
  @DisplayName(
      "NDS 2018, 4.3.3 and 3.10.4 (from memory): wet bending at 1,150 psi, bearing at 6 in and at"
          + " the end")
  void wet_and_bearing_at_their_limits() {
    assertThat(NdsFactors.wetBending(1150 * PSI)).isEqualTo(1.0);
    assertThat(NdsFactors.wetBending(1150.01 * PSI)).isEqualTo(0.85);
    assertThat(NdsFactors.WET_BENDING_LIMIT_KILOPASCALS).isCloseTo(7928.97, within(0.01));
    assertThat(NdsFactors.bearingArea(6 * INCH, false)).isEqualTo(1.0);
    // (1 + 0.375) / 1
    assertThat(NdsFactors.bearingArea(INCH, false)).isCloseTo(1.375, within(1e-12));
    assertThat(NdsFactors.bearingArea(INCH, true)).isEqualTo(1.0);
  }

  @Test
  @DisplayName(
      "29 CFR 1926 Subpart P App. C: a row holds over its first depth and up to its second, 5 ft"
          + " itself with the first")
  void shoring_rows_at_their_depths() {
    assertThat(rows(5)).allSatisfy(row -> assertThat(row.toDepthFeet()).isEqualTo(10)).hasSize(4);
    assertThat(rows(10)).allSatisfy(row -> assertThat(row.toDepthFeet()).isEqualTo(10)).hasSize(4);
    assertThat(rows(10.01))
        .allSatisfy(row -> assertThat(row.overDepthFeet()).isEqualTo(10))
        .hasSize(4);
    assertThat(rows(15)).allSatisfy(row -> assertThat(row.toDepthFeet()).isEqualTo(15)).hasSize(4);
    assertThat(rows(20)).allSatisfy(row -> assertThat(row.toDepthFeet()).isEqualTo(20)).hasSize(4);
    assertThat(rows(20.01)).isEmpty();
    assertThat(rows(4.99)).isEmpty();
  }

  private static List<Row> rows(double feet) {
    return OshaTimberTables.rows(Timber.MIXED_OAK, SheetingSoil.A, feet * FOOT);
  }

  @Test
  @DisplayName(
      "29 CFR 1926 Subpart P App. C, Table C-1.1, 15 to 20 ft, third row: braces for each trench"
          + " width")
  void brace_by_trench_width() {
    Row row = rows(20).get(2);
    assertThat(row.brace(4 * FOOT)).isEqualTo("8x8");
    assertThat(row.brace(12 * FOOT)).isEqualTo("8x8");
    assertThat(row.brace(12.01 * FOOT)).isEqualTo("8x10");
    assertThat(row.brace(15 * FOOT)).isEqualTo("8x10");
    assertThat(row.brace(15.01 * FOOT)).isEqualTo("none in the table");
    Row shallow = rows(10).get(0);
    assertThat(shallow.brace(6 * FOOT)).isEqualTo("4x4");
    assertThat(shallow.brace(6.01 * FOOT)).isEqualTo("4x6");
    assertThat(shallow.brace(9.01 * FOOT)).isEqualTo("6x6");
    assertThat(OshaTimberTables.rows(Timber.DOUGLAS_FIR, SheetingSoil.B, 10 * FOOT))
        .extracting(one -> one.words(6.01 * FOOT))
        .containsExactly(
            "brace 4x6 at 6 ft along and 5 ft down, wale 6x8 at 5 ft, uprights 3x12 at 3 ft or 4x8"
                + " at 3 ft or 4x12 at 6 ft",
            "brace 6x6 at 8 ft along and 5 ft down, wale 8x8 at 5 ft, uprights 3x8 at 2 ft or 4x8"
                + " at 4 ft",
            "brace 6x6 at 10 ft along and 5 ft down, wale 8x10 at 5 ft, uprights 4x8 at 3 ft");
  }

  @Test
  @DisplayName(
      "29 CFR 1926 Subpart P App. C: 25, 45 and 80 psf per ft are 3.927, 7.069 and 12.567 kN/m3; 72"
          + " psf is 3.447 kPa")
  void table_pressure_in_si() {
    // 1 psf per ft = 0.04788026 kPa / 0.3048 m = 0.15708746 kN/m3
    assertThat(SheetingSoil.A.equivalentFluidWeight()).isCloseTo(3.92719, within(1e-4));
    assertThat(SheetingSoil.B.equivalentFluidWeight()).isCloseTo(7.06894, within(1e-4));
    assertThat(SheetingSoil.C.equivalentFluidWeight()).isCloseTo(12.56700, within(1e-4));
    assertThat(SheetingSoil.surchargePressure()).isCloseTo(3.44738, within(1e-4));
    assertThat(SheetingSoil.A.tablePressure(0)).isCloseTo(3.44738, within(1e-4));
    assertThat(SheetingSoil.ofCohesive(0)).isEqualTo(SheetingSoil.C);
  }

  @Test
  @DisplayName(
      "NDS 2018 Supplement, Tables 4A and 4B, No. 2 (from memory): fir, southern pine 2x12 and"
          + " mixed oak")
  void reference_values() {
    ReferenceValues fir = ReferenceValues.named("douglas-fir-larch").orElseThrow();
    assertThat(fir.bending() / PSI).isCloseTo(900, within(1e-9));
    assertThat(fir.shear() / PSI).isCloseTo(180, within(1e-9));
    assertThat(fir.compressionAcrossGrain() / PSI).isCloseTo(625, within(1e-9));
    assertThat(fir.compressionAlongGrain() / PSI).isCloseTo(1350, within(1e-9));
    assertThat(fir.elasticModulus() / PSI).isCloseTo(1_600_000, within(1e-6));
    // 1.03 x 1,600,000 x (1 - 1.645 x 0.25) / 1.66 = 584,494 psi
    assertThat(fir.stabilityModulus() / PSI).isCloseTo(584_494, within(1.0));
    assertThat(fir.sizeFactorIncluded()).isFalse();
    assertThat(ReferenceValues.named("southern-pine-2x12").orElseThrow().sizeFactorIncluded())
        .isTrue();
    assertThat(ReferenceValues.named("mixed-oak").orElseThrow().bending() / PSI)
        .isCloseTo(800, within(1e-9));
    assertThat(ReferenceValues.named("balsa")).isEmpty();
    assertThat(ReferenceValues.names()).hasSize(8).startsWith("douglas-fir-larch", "hem-fir");
  }

  @Test
  void remarks_and_the_head_of_a_table_are_no_rows() {
    List<String[]> rows = TableRows.read("lagging-thickness.csv");
    assertThat(rows).hasSize(7);
    assertThat(rows.get(0)).containsExactly("COMPETENT", "0", "25", "2", "3", "3", "3", "4", "4");
    assertThat(rows.get(6)[0]).isEqualTo("DANGEROUS");
  }

  @Test
  void a_table_that_is_not_there_is_a_fault_of_the_program() {
    assertThatIllegalStateException()
        .isThrownBy(() -> TableRows.read("no-such.csv"))
        .withMessageContaining("no-such.csv is missing");
  }
}
