package underhold.mechanics.micropile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import underhold.quantity.Seeds;

class CasingTableTest {
  private static final double INCH = 0.0254;

  @ParameterizedTest(
      name =
          "Own case, nominal {0} x {1} in: A {2} in2, I {3} in4, S {4}, Z {5} in3, r {6} in, bore {7} in2")
  @CsvSource({
    "5.5, .361, 5.83, 19.3, 7.03, 9.55, 1.821, 17.93",
    "5.5, .415, 6.63, 21.6, 7.84, 10.75, 1.804, 17.13",
    "7, .408, 8.45, 46.1, 13.16, 17.75, 2.335, 30.04",
    "7, .453, 9.32, 50.2, 14.33, 19.45, 2.320, 29.17",
    "7, .498, 10.17, 54.1, 15.45, 21.09, 2.306, 28.31",
    "7, .500, 10.21, 54.2, 15.50, 21.17, 2.305, 28.27",
    "7, .730, 14.38, 71.6, 20.46, 28.83, 2.232, 24.11",
    "7.625, .500, 11.19, 71.4, 18.72, 25.42, 2.525, 34.47",
    "9.625, .472, 13.57, 142.5, 29.61, 39.58, 3.240, 59.19",
    "9.625, .545, 15.55, 160.8, 33.41, 44.99, 3.216, 57.21",
    "10.75, .500, 16.10, 212.0, 39.43, 52.57, 3.628, 74.66",
    "11.875, .582, 20.65, 330.0, 55.59, 74.29, 3.998, 90.11"
  })
  void section_properties(
      double od, double wall, double a, double i, double s, double z, double r, double bore) {
    CasingSection casing = CasingSection.inches(od, wall);
    assertThat(CasingSection.table()).contains(casing);
    // three and four figures printed
    assertThat(casing.area() / INCH / INCH).isCloseTo(a, withPercentage(0.1));
    assertThat(casing.secondMoment() / Math.pow(INCH, 4)).isCloseTo(i, withPercentage(0.3));
    assertThat(casing.sectionModulus() / Math.pow(INCH, 3)).isCloseTo(s, withPercentage(0.1));
    assertThat(casing.plasticModulus() / Math.pow(INCH, 3)).isCloseTo(z, withPercentage(0.1));
    assertThat(casing.radiusOfGyration() / INCH).isCloseTo(r, withPercentage(0.05));
    assertThat(casing.boreArea() / INCH / INCH).isCloseTo(bore, withPercentage(0.05));
  }

  @Test
  void the_table_lists_twelve_casings_by_diameter_then_wall() {
    List<CasingSection> table = CasingSection.table();
    assertThat(table).hasSize(12);
    for (int i = 1; i < table.size(); i++) {
      CasingSection before = table.get(i - 1);
      CasingSection after = table.get(i);
      assertThat(
              after.outsideDiameterMetres() > before.outsideDiameterMetres()
                  || (after.outsideDiameterMetres() == before.outsideDiameterMetres()
                      && after.wallMetres() > before.wallMetres()))
          .isTrue();
    }
  }

  @Test
  void corrosion_takes_from_the_outside_only() {
    CasingSection worn = CasingSection.inches(7, 0.5).less(0.0016);
    assertThat(worn.outsideDiameterMetres()).isCloseTo(0.1778 - 0.0032, within(1e-12));
    assertThat(worn.insideDiameter())
        .isCloseTo(CasingSection.inches(7, 0.5).insideDiameter(), within(1e-12));
    assertThatThrownBy(() -> CasingSection.inches(7, 0.5).less(0.0127))
        .hasMessageContaining("whole wall");
    assertThatThrownBy(() -> new CasingSection(0.1, 0.05)).hasMessageContaining("fills");
  }

  @Test
  @DisplayName(
      "Bars (ASTM A615 and A722, from memory, verify): #14 is 1,452 mm2 at 75 ksi, 1.25 in is 806 mm2 at 120 ksi")
  void bars() {
    SteelBar fourteen = SteelBar.named("No. 14 Gr 75").orElseThrow();
    assertThat(fourteen.areaSquareMetres()).isCloseTo(1452e-6, withPercentage(0.1));
    assertThat(fourteen.yieldKilopascals()).isCloseTo(517_107, withPercentage(0.01));
    assertThat(fourteen.outsideDiameterMetres()).isCloseTo(0.0472, within(0.0001));
    SteelBar strong = SteelBar.named("1.25 in Gr 150").orElseThrow();
    assertThat(strong.areaSquareMetres()).isCloseTo(806e-6, withPercentage(0.1));
    assertThat(strong.yieldKilopascals()).isCloseTo(827_371, withPercentage(0.01));
    assertThat(strong.ultimateKilopascals()).isCloseTo(1_034_214, withPercentage(0.01));
    assertThat(SteelBar.table()).hasSize(15);
    assertThat(SteelBar.named("No. 15")).isEmpty();
  }

  @Test
  void a_bar_that_fills_the_casing_is_refused() {
    PileMaterials materials = new PileMaterials(28_000, 550_000, 517_000);
    CasingSection casing = CasingSection.inches(5.5, 0.415);
    assertThatThrownBy(() -> new FhwaCapacity(materials, casing, casing.boreArea()))
        .hasMessageContaining("does not fit");
    assertThatThrownBy(() -> new IbcCapacity(materials, casing, casing.boreArea()))
        .hasMessageContaining("does not fit");
  }

  @Property(tries = 300, seed = Seeds.BUILD)
  void capacities_are_finite_and_grow_with_wall_and_grout(
      @ForAll @DoubleRange(min = 0.1, max = 0.3) double od,
      @ForAll @DoubleRange(min = 0.05, max = 0.4) double wallShare,
      @ForAll @DoubleRange(min = 10_000, max = 60_000) double grout) {
    CasingSection thin = new CasingSection(od, od * wallShare);
    CasingSection thick = new CasingSection(od, od * wallShare * 1.05);
    PileMaterials materials = new PileMaterials(grout, 552_000, 517_000);
    double less = new FhwaCapacity(materials, thin, 0).casedCompression();
    assertThat(less).isFinite().isPositive();
    assertThat(new FhwaCapacity(materials, thick, 0).casedCompression()).isGreaterThan(less);
    assertThat(
            new FhwaCapacity(new PileMaterials(grout * 1.1, 552_000, 517_000), thin, 0)
                .casedCompression())
        .isGreaterThan(less);
    assertThat(new IbcCapacity(materials, thin, 0).casedCompression()).isLessThan(less);
  }
}
