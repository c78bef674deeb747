package underhold.mechanics.movement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
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
import underhold.mechanics.movement.SettlementProfile.Point;
import underhold.quantity.Seeds;

class DistortionAndDamageTest {

  @ParameterizedTest(name = "{5}, {6}: {0} from {1} to {2}, {3}")
  @CsvSource({
    "skempton-no-cracking, 0.001, 0.001, FROM_MEMORY, Skempton and MacDonald, Skempton and MacDonald 1956, 1/1000",
    "skempton-design, 0.002, 0.002, FROM_MEMORY, Skempton and MacDonald, Skempton and MacDonald 1956, 1/500",
    "skempton-cracking, 0.0033333, 0.0033333, PUBLISHED, Skempton and MacDonald, Skempton and MacDonald 1956, 1/300",
    "skempton-structural, 0.0066667, 0.0066667, PUBLISHED, Skempton and MacDonald, Skempton and MacDonald 1956, 1/150",
    "bjerrum-machines, 0.0013333, 0.0013333, FROM_MEMORY, Bjerrum, Bjerrum 1963, 1/750",
    "bjerrum-diagonals, 0.0016667, 0.0016667, FROM_MEMORY, Bjerrum, Bjerrum 1963, 1/600",
    "bjerrum-no-cracking, 0.002, 0.002, FROM_MEMORY, Bjerrum, Bjerrum 1963, 1/500",
    "bjerrum-first-cracks, 0.0033333, 0.0033333, FROM_MEMORY, Bjerrum, Bjerrum 1963, 1/300",
    "bjerrum-visible-tilt, 0.004, 0.004, FROM_MEMORY, Bjerrum, Bjerrum 1963, 1/250",
    "bjerrum-structural, 0.0066667, 0.0066667, FROM_MEMORY, Bjerrum, Bjerrum 1963, 1/150",
    "sowers-high-brick, 0.0005, 0.001, PUBLISHED, Sowers, Sowers 1962 in course notes, high brick",
    "sowers-low-brick, 0.001, 0.002, PUBLISHED, Sowers, Sowers 1962 in course notes, one-storey brick",
    "sowers-plaster, 0.001, 0.001, PUBLISHED, Sowers, Sowers 1962 in course notes, plaster",
    "sowers-concrete-frame, 0.0025, 0.004, PUBLISHED, Sowers, Sowers 1962 in course notes, RC frame",
    "sowers-curtain-wall, 0.003, 0.003, PUBLISHED, Sowers, Sowers 1962 in course notes, curtain wall",
    "sowers-continuous-steel, 0.002, 0.002, PUBLISHED, Sowers, Sowers 1962 in course notes that misprint 0.020, continuous steel",
    "sowers-simple-steel, 0.005, 0.005, PUBLISHED, Sowers, Sowers 1962 in course notes, simple steel",
    "hutchings-high-brick, 0.001, 0.001, PUBLISHED, Hutchings, Hutchings 1978 by a mine-subsidence table, high brick",
    "hutchings-low-brick, 0.001, 0.002, PUBLISHED, Hutchings, Hutchings 1978 by a mine-subsidence table, single-storey brick",
    "hutchings-frames, 0.002, 0.004, PUBLISHED, Hutchings, Hutchings 1978 by a mine-subsidence table, frames",
    "hutchings-structural, 0.007, 0.007, PUBLISHED, Hutchings, Hutchings 1978 by a mine-subsidence table, structural damage"
  })
  void publishedDistortionLimits(
      String id, double least, double most, Provenance provenance, String author) {
    DistortionLimit limit = DistortionLimit.find(id).orElseThrow();
    assertThat(limit.least()).isCloseTo(least, withPercentage(0.01));
    assertThat(limit.most()).isCloseTo(most, withPercentage(0.01));
    assertThat(limit.citation().provenance()).isEqualTo(provenance);
    assertThat(limit.author()).isEqualTo(author);
  }

  @Test
  void everyDistortionLimitIsTestedAndNamesItsSource() {
    assertThat(DistortionLimit.rows()).hasSize(21);
    assertThat(DistortionLimit.rows()).extracting(DistortionLimit::id).doesNotHaveDuplicates();
    assertThat(DistortionLimit.find("none such")).isEmpty();
  }

  @ParameterizedTest(
      name = "USACE EM 1110-1-1904 Table 2-1 (secondary): {0} {1} in, average settlement")
  @CsvSource({
    "plain-brick-long, 3",
    "plain-brick-short, 4",
    "framed, 4",
    "reinforced-brick, 6",
    "solid-concrete, 12",
    "general-cap, 2",
    "common-specification, 1"
  })
  void averageSettlements(String id, double inches) {
    assertThat(AverageSettlementLimit.find(id).orElseThrow().settlementMetres())
        .isCloseTo(inches * 0.0254, within(1e-12));
    assertThat(AverageSettlementLimit.rows()).hasSize(7);
  }

  @ParameterizedTest(name = "Rankin 1988 (from memory): {0} mm and 1 in {1}: {2}")
  @CsvSource({
    "9, 600, NEGLIGIBLE",
    "10, 500, NEGLIGIBLE",
    "9, 499, SLIGHT",
    "10.1, 600, SLIGHT",
    "50, 200, SLIGHT",
    "50.1, 300, MODERATE",
    "40, 199, MODERATE",
    "75, 50, MODERATE",
    "75.1, 600, HIGH",
    "5, 49, HIGH"
  })
  void rankin(double millimetres, double inOf, RankinRisk risk) {
    assertThat(RankinRisk.of(millimetres / 1000, 1 / inOf)).isEqualTo(risk);
  }

  @Test
  void theHighestRiskHasNoBound() {
    assertThat(RankinRisk.NEGLIGIBLE.mostSettlementMetres()).isEqualTo(0.010);
    assertThat(RankinRisk.MODERATE.mostSlope()).isEqualTo(0.02);
    assertThat(RankinRisk.HIGH.bounded()).isFalse();
    assertThatIllegalStateException().isThrownBy(RankinRisk.HIGH::mostSlope);
    assertThatIllegalStateException().isThrownBy(RankinRisk.HIGH::mostSettlementMetres);
  }

  @ParameterizedTest(
      name =
          "Burland 1995, limiting tensile strain (two secondary copies; one misprints 0.0075 for 0.075): {0} %: category {1}")
  @CsvSource({
    "0, 0",
    "0.05, 0",
    "0.0501, 1",
    "0.075, 1",
    "0.0751, 2",
    "0.15, 2",
    "0.1501, 3",
    "0.3, 3",
    "0.3001, 4"
  })
  void categoryByStrain(double percent, int category) {
    assertThat(DamageCategory.ofStrain(percent / 100).number()).isEqualTo(category);
  }

  @ParameterizedTest(
      name = "Burland, crack widths (two secondary copies): {0} mm: category {1}, {2}")
  @CsvSource({
    "0.1, 0, negligible",
    "0.11, 1, very slight",
    "1, 1, very slight",
    "1.1, 2, slight",
    "5, 2, slight",
    "5.1, 3, moderate",
    "15, 3, moderate",
    "15.1, 4, severe",
    "25, 4, severe",
    "25.1, 5, very severe"
  })
  void categoryByCrack(double millimetres, int category, String label) {
    DamageCategory found = DamageCategory.ofCrack(millimetres / 1000);
    assertThat(found.number()).isEqualTo(category);
    assertThat(found.label()).isEqualTo(label);
    assertThat(DamageCategory.numbered(category)).isEqualTo(found);
  }

  @Test
  void boundsOfTheCategories() {
    assertThat(DamageCategory.MODERATE.mostStrain()).isEqualTo(0.003);
    assertThat(DamageCategory.MODERATE.widestCrackMetres()).isEqualTo(0.015);
    assertThat(DamageCategory.SEVERAL_CRACKS_METRES).isEqualTo(0.003);
    assertThat(DamageCategory.SEVERE.bounded()).isFalse();
    assertThat(DamageCategory.MODERATE.bounded()).isTrue();
    assertThatIllegalStateException().isThrownBy(DamageCategory.SEVERE::mostStrain);
    assertThatIllegalStateException().isThrownBy(DamageCategory.VERY_SEVERE::widestCrackMetres);
    assertThatIllegalArgumentException().isThrownBy(() -> DamageCategory.numbered(6));
    assertThatIllegalArgumentException().isThrownBy(() -> DamageCategory.numbered(-1));
    assertThatIllegalArgumentException().isThrownBy(() -> DamageCategory.ofStrain(-1e-9));
  }

  @Test
  @DisplayName(
      "Son and Cording 2005 (from memory): without lateral strain 1.67 and 3.33 x 10^-3 are distortions of 1/300 and 1/150")
  void pointStrainBounds() {
    // Tolerance 0.3 %: the bounds are printed to three figures.
    assertThat(new PointStrain(0, 1.0 / 300).principal()).isCloseTo(1.67e-3, withPercentage(0.3));
    assertThat(new PointStrain(0, 1.0 / 150).principal()).isCloseTo(3.33e-3, withPercentage(0.3));
    assertThat(PointStrainDamage.of(0.5e-3)).isEqualTo(PointStrainDamage.NEGLIGIBLE);
    assertThat(PointStrainDamage.of(0.51e-3)).isEqualTo(PointStrainDamage.VERY_SLIGHT);
    assertThat(PointStrainDamage.of(0.75e-3)).isEqualTo(PointStrainDamage.VERY_SLIGHT);
    assertThat(PointStrainDamage.of(1.67e-3)).isEqualTo(PointStrainDamage.SLIGHT);
    assertThat(PointStrainDamage.of(3.33e-3)).isEqualTo(PointStrainDamage.MODERATE_TO_SEVERE);
    assertThat(PointStrainDamage.of(3.34e-3)).isEqualTo(PointStrainDamage.SEVERE_TO_VERY_SEVERE);
  }

  @Test
  @DisplayName("Own case: eL 0.6, b 0.8 x 10^-3: ep = 0.3 + 0.5 = 0.8 x 10^-3 at 26.57 degrees")
  void pointStrainByHand() {
    PointStrain strain = new PointStrain(0.6e-3, 0.8e-3);
    assertThat(strain.principal()).isCloseTo(0.8e-3, within(1e-15));
    assertThat(strain.angleDegrees()).isCloseTo(26.565, within(1e-3));
    assertThat(new PointStrain(0, 0.001).angleDegrees()).isCloseTo(45, within(1e-9));
    assertThat(new PointStrain(0, 0).principal()).isZero();
    assertThat(new PointStrain(0, 0).angleDegrees()).isZero();
  }

  @Test
  @DisplayName(
      "Own case: 12, 4, 0, 0 mm at 0, 5, 10, 20 m: tilt -0.0006, slope 0.0016, distortion 0.001, hogging 6/20000")
  void profileByHand() {
    SettlementProfile wall =
        new SettlementProfile(List.of(point(0, 12), point(5, 4), point(10, 0), point(20, 0)));
    assertThat(wall.lengthMetres()).isEqualTo(20);
    assertThat(wall.largestSettlementMetres()).isEqualTo(0.012);
    assertThat(wall.tilt()).isCloseTo(-0.0006, within(1e-12));
    assertThat(wall.steepestSlope()).isCloseTo(0.0016, within(1e-12));
    assertThat(wall.angularDistortion()).isCloseTo(0.001, within(1e-12));
    assertThat(wall.hoggingRatio()).isCloseTo(0.006 / 20, within(1e-12));
    assertThat(wall.saggingRatio()).isZero();
  }

  @Test
  @DisplayName("Own case: 0, 6, 0 mm at 2, 6, 10 m sags 6/8000 and distorts 1.5 per thousand")
  void saggingByHand() {
    SettlementProfile wall = new SettlementProfile(List.of(point(2, 0), point(6, 6), point(10, 0)));
    assertThat(wall.saggingRatio()).isCloseTo(0.006 / 8, within(1e-12));
    assertThat(wall.hoggingRatio()).isZero();
    assertThat(wall.angularDistortion()).isCloseTo(0.0015, within(1e-12));
  }

  @Property(seed = Seeds.BUILD)
  void aTiltOfTheWholeNeitherBendsNorDistorts(
      @ForAll @DoubleRange(min = -0.02, max = 0.02) double tilt,
      @ForAll @DoubleRange(min = -0.01, max = 0.01) double first,
      @ForAll @DoubleRange(min = -0.01, max = 0.01) double second,
      @ForAll @DoubleRange(min = 0.5, max = 20) double bay) {
    SettlementProfile level = profile(0, first, second, bay);
    SettlementProfile tilted = profile(tilt, first, second, bay);
    assertThat(tilted.angularDistortion()).isCloseTo(level.angularDistortion(), within(1e-12));
    assertThat(tilted.hoggingRatio()).isCloseTo(level.hoggingRatio(), within(1e-12));
    assertThat(tilted.saggingRatio()).isCloseTo(level.saggingRatio(), within(1e-12));
    assertThat(tilted.tilt()).isCloseTo(level.tilt() + tilt, within(1e-12));
  }

  private static SettlementProfile profile(double tilt, double first, double second, double bay) {
    return new SettlementProfile(
        List.of(
            new Point(0, 0),
            new Point(bay, first + tilt * bay),
            new Point(3 * bay, second + tilt * 3 * bay)));
  }

  @Test
  void profilesThatCannotBeAreRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new SettlementProfile(List.of(point(0, 1))))
        .withMessageContaining("two points");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new SettlementProfile(List.of(point(0, 1), point(0, 2))))
        .withMessageContaining("neighbouring points");
    assertThatIllegalArgumentException().isThrownBy(() -> new Point(Double.NaN, 0));
  }

  private static Point point(double metres, double millimetres) {
    return new Point(metres, millimetres / 1000);
  }
}
