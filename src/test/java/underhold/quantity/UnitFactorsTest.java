package underhold.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Stream;
import javax.measure.IncommensurableException;
import javax.measure.MetricPrefix;
import javax.measure.Unit;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import systems.uom.common.Imperial;
import systems.uom.common.USCustomary;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.unit.Units;

class UnitFactorsTest {
  private static final Unit<?> M = Units.METRE;
  private static final Unit<?> MM = MetricPrefix.MILLI(Units.METRE);
  private static final Unit<?> CM = MetricPrefix.CENTI(Units.METRE);
  private static final Unit<?> FT = USCustomary.FOOT;
  private static final Unit<?> IN = USCustomary.INCH;
  private static final Unit<?> YD = USCustomary.YARD;
  private static final Unit<?> N = Units.NEWTON;
  private static final Unit<?> KN = MetricPrefix.KILO(Units.NEWTON);
  private static final Unit<?> MN = MetricPrefix.MEGA(Units.NEWTON);
  private static final Unit<?> LBF = Imperial.POUND_FORCE;
  private static final Unit<?> KIP = Imperial.POUND_FORCE.multiply(1000);
  private static final Unit<?> TON = Imperial.POUND_FORCE.multiply(2000);
  private static final Unit<?> S = Units.SECOND;

  private static final Map<String, Unit<?>> REFERENCE = new HashMap<>();

  static {
    REFERENCE.put("m", M);
    REFERENCE.put("mm", MM);
    REFERENCE.put("cm", CM);
    REFERENCE.put("ft", FT);
    REFERENCE.put("in", IN);
    REFERENCE.put("yd", YD);
    REFERENCE.put("m2", M.pow(2));
    REFERENCE.put("mm2", MM.pow(2));
    REFERENCE.put("cm2", CM.pow(2));
    REFERENCE.put("ft2", USCustomary.SQUARE_FOOT);
    REFERENCE.put("in2", IN.pow(2));
    REFERENCE.put("yd2", YD.pow(2));
    REFERENCE.put("m3", M.pow(3));
    REFERENCE.put("L", Units.LITRE);
    REFERENCE.put("cm3", CM.pow(3));
    REFERENCE.put("ft3", USCustomary.CUBIC_FOOT);
    REFERENCE.put("yd3", YD.pow(3));
    REFERENCE.put("in3", USCustomary.CUBIC_INCH);
    REFERENCE.put("gal", USCustomary.GALLON_LIQUID);
    REFERENCE.put("kN", KN);
    REFERENCE.put("N", N);
    REFERENCE.put("MN", MN);
    REFERENCE.put("kip", KIP);
    REFERENCE.put("lb", LBF);
    REFERENCE.put("ton", TON);
    REFERENCE.put("kN/m", KN.divide(M));
    REFERENCE.put("N/m", N.divide(M));
    REFERENCE.put("MN/m", MN.divide(M));
    REFERENCE.put("kip/ft", KIP.divide(FT));
    REFERENCE.put("lb/ft", LBF.divide(FT));
    REFERENCE.put("kip/in", KIP.divide(IN));
    REFERENCE.put("lb/in", LBF.divide(IN));
    REFERENCE.put("kPa", MetricPrefix.KILO(Units.PASCAL));
    REFERENCE.put("Pa", Units.PASCAL);
    REFERENCE.put("MPa", MetricPrefix.MEGA(Units.PASCAL));
    REFERENCE.put("GPa", MetricPrefix.GIGA(Units.PASCAL));
    REFERENCE.put("psf", LBF.divide(FT.pow(2)));
    REFERENCE.put("ksf", KIP.divide(FT.pow(2)));
    REFERENCE.put("tsf", TON.divide(FT.pow(2)));
    REFERENCE.put("psi", LBF.divide(IN.pow(2)));
    REFERENCE.put("ksi", KIP.divide(IN.pow(2)));
    REFERENCE.put("kN/m3", KN.divide(M.pow(3)));
    REFERENCE.put("N/m3", N.divide(M.pow(3)));
    REFERENCE.put("MN/m3", MN.divide(M.pow(3)));
    REFERENCE.put("pcf", LBF.divide(FT.pow(3)));
    REFERENCE.put("kcf", KIP.divide(FT.pow(3)));
    REFERENCE.put("deg", USCustomary.DEGREE_ANGLE);
    REFERENCE.put("rad", Units.RADIAN);
    REFERENCE.put("m/s", M.divide(S));
    REFERENCE.put("cm/s", CM.divide(S));
    REFERENCE.put("mm/s", MM.divide(S));
    REFERENCE.put("m/h", M.divide(Units.HOUR));
    REFERENCE.put("m/day", M.divide(Units.DAY));
    REFERENCE.put("ft/s", USCustomary.FOOT_PER_SECOND);
    REFERENCE.put("ft/min", FT.divide(Units.MINUTE));
    REFERENCE.put("ft/h", FT.divide(Units.HOUR));
    REFERENCE.put("ft/day", FT.divide(Units.DAY));
    REFERENCE.put("in/s", IN.divide(S));
    REFERENCE.put("in/h", IN.divide(Units.HOUR));
    REFERENCE.put("h", Units.HOUR);
    REFERENCE.put("min", Units.MINUTE);
    REFERENCE.put("days", Units.DAY);
    REFERENCE.put("weeks", Units.WEEK);
    REFERENCE.put("kN·m", KN.multiply(M));
    REFERENCE.put("N·m", N.multiply(M));
    REFERENCE.put("MN·m", MN.multiply(M));
    REFERENCE.put("kip-ft", KIP.multiply(FT));
    REFERENCE.put("lb-ft", LBF.multiply(FT));
    REFERENCE.put("kip-in", KIP.multiply(IN));
    REFERENCE.put("lb-in", LBF.multiply(IN));
    REFERENCE.put("kN·m/m", KN.multiply(M).divide(M));
    REFERENCE.put("N·m/m", N.multiply(M).divide(M));
    REFERENCE.put("MN·m/m", MN.multiply(M).divide(M));
    REFERENCE.put("kip-ft/ft", KIP.multiply(FT).divide(FT));
    REFERENCE.put("lb-ft/ft", LBF.multiply(FT).divide(FT));
    REFERENCE.put("kip-in/ft", KIP.multiply(IN).divide(FT));
    REFERENCE.put("%", Units.PERCENT);
    REFERENCE.put("", AbstractUnit.ONE);
  }

  static Stream<MeasureUnit> everyUnit() {
    return Arrays.stream(Measure.values()).flatMap(measure -> measure.units().stream());
  }

  @ParameterizedTest
  @MethodSource("everyUnit")
  @DisplayName("JSR-385 reference (indriya, systems-common): every factor of every measure")
  void every_factor_agrees_with_the_reference_library(MeasureUnit unit)
      throws IncommensurableException {
    Unit<?> inside = REFERENCE.get(unit.measure().insideUnit());
    Unit<?> reference = REFERENCE.get(unit.symbol());
    assertThat(reference).as("reference for " + unit.symbol()).isNotNull();

    double expected = reference.getConverterToAny(inside).convert(1.0);

    // two roundings of a double apart at most, in either chain of conversions: 1e-14 is generous
    assertThat(unit.toInside(1.0)).isCloseTo(expected, within(1e-14 * expected));
  }

  @ParameterizedTest
  @CsvSource({
    "LENGTH, ft, 0.3048",
    "LENGTH, in, 0.0254",
    "LENGTH, yd, 0.9144",
    "AREA, ft2, 0.09290304",
    "FORCE, lb, 0.0044482216152605",
    "FORCE, kip, 4.4482216152605",
    "FORCE, ton, 8.896443230521",
    "SPEED, ft/min, 0.00508",
    "SPEED, ft/s, 0.3048",
    "DURATION, days, 24"
  })
  @DisplayName("NIST SP 811 (2008), appendix B: exact definitions, place from memory")
  void exact_definitions_are_met_exactly(Measure measure, String symbol, double expected) {
    assertThat(measure.requireUnit(symbol).toInside(1.0)).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource({
    "PRESSURE, psf, 4.788026e-2",
    "PRESSURE, psi, 6.894757",
    "PRESSURE, ksi, 6.894757e3",
    "FORCE_PER_LENGTH, lb/ft, 1.459390e-2",
    "FORCE_PER_LENGTH, lb/in, 1.751268e-1",
    "MOMENT, lb-ft, 1.355818e-3",
    "MOMENT, lb-in, 1.129848e-4",
    "VOLUME, ft3, 2.831685e-2",
    "VOLUME, yd3, 7.645549e-1",
    "VOLUME, gal, 3.785412e-3"
  })
  @DisplayName("NIST SP 811 (2008), B.8, seven printed figures, from memory")
  void rounded_factors_agree_to_the_figures_printed(
      Measure measure, String symbol, double expected) {
    // the source prints seven figures, so half a unit of the seventh: 5e-7 at the most
    assertThat(measure.requireUnit(symbol).toInside(1.0))
        .isCloseTo(expected, within(5e-7 * expected));
  }

  @Test
  @DisplayName("own case: 4 ft, 48 in, 4' 0\" and 1.2192 m are one and the same double")
  void equal_lengths_are_equal_whatever_unit_they_were_typed_in() {
    assertThat(Stream.of("4 ft", "48 in", "4' 0\"", "1.2192 m", "1219.2 mm", "121.92 cm"))
        .allSatisfy(
            text ->
                assertThat(Quantity.parse(text, Measure.LENGTH).toOptional())
                    .hasValueSatisfying(length -> assertThat(length.si()).isEqualTo(1.2192)));
  }
}
