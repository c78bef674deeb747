package underhold.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

@Label("own properties")
class QuantityTextTest {
  private static final String[] PIECES = {
    "1", "0", "12", "1,200", ",", ".", "-", "−", "+", "/", "1/2", "e", "e-5", "E400", " ", "  ",
    "\t", "\n", "\u00a0", "'", "\"", "′", "″", "''", "ft", "in", "m", "mm", "kN", "kip", "k", "/m",
    "per", "·", "*", "^", "2", "²", "%", "°", "NaN", "inf", "∞", "٣", "\u0000", "\ud800", "\u001b",
    "sq", "cu", "tonne", "x", "to", "(", "MPa", "lb", "days", "$1", "\\", "%s", "{0}"
  };

  @Provide
  Arbitrary<MeasureUnit> units() {
    return Arbitraries.of(
        Arrays.stream(Measure.values()).flatMap(measure -> measure.units().stream()).toList());
  }

  @Property(seed = Seeds.BUILD)
  @Label("what is printed for reading is read back within half of the fourth figure")
  void printed_text_is_read_back(
      @ForAll("units") MeasureUnit unit,
      @ForAll @Scale(12) @DoubleRange(min = -10, max = 10) double mantissa,
      @ForAll("exponents") int exponent) {
    double value = mantissa * Math.pow(10, exponent);
    Measure measure = unit.measure();

    Quantity back = readBack(QuantityPrinter.print(value, measure, unit.symbol()), unit);

    // half of the fourth figure of 1.000 is 5e-4 of the value, the worst there is
    assertThat(back.si()).isCloseTo(value, within(5.01e-4 * Math.abs(value)));
    assertThat(back.unit()).isEqualTo(unit.symbol());
  }

  @Property(seed = Seeds.BUILD)
  @Label("what is printed in full is read back to the fourteenth figure")
  void fully_printed_text_is_read_back(
      @ForAll("units") MeasureUnit unit,
      @ForAll @Scale(12) @DoubleRange(min = -10, max = 10) double mantissa,
      @ForAll("exponents") int exponent) {
    double value = mantissa * Math.pow(10, exponent);

    Quantity back = readBack(QuantityPrinter.printFull(value, unit.measure(), unit.symbol()), unit);

    // fifteen figures are printed: half of the last is at worst 5e-15
    assertThat(back.si()).isCloseTo(value, within(1e-14 * Math.abs(value)));
  }

  @Property(seed = Seeds.BUILD)
  @Label("converting there and back changes nothing that matters")
  void conversion_is_undone(
      @ForAll("units") MeasureUnit unit, @ForAll @DoubleRange(min = -1e9, max = 1e9) double value) {
    // two roundings to a double: 2.2e-16 each
    assertThat(unit.fromInside(unit.toInside(value)))
        .isCloseTo(value, within(5e-16 * Math.abs(value)));
  }

  @Property(seed = Seeds.BUILD)
  @Label("one unit more is more, in every unit")
  void conversion_keeps_the_order(
      @ForAll("units") MeasureUnit unit, @ForAll @DoubleRange(min = 0, max = 1e6) double value) {
    assertThat(unit.toInside(value + 1)).isGreaterThan(unit.toInside(value));
  }

  @Property(seed = Seeds.BUILD)
  @Label("no text whatever makes the reader fail")
  void any_text_is_answered(@ForAll String text, @ForAll Measure measure) {
    assertAnswered(text, measure);
  }

  @Example
  @Label("10,000 texts pieced together from all that matters to the reader: never a failure")
  void hostile_text_is_answered() {
    Random random = new Random(20_240_229);
    Measure[] measures = Measure.values();
    int read = 0;
    for (int i = 0; i < 10_000; i++) {
      StringBuilder text = new StringBuilder(random.nextBoolean() ? "7" : "");
      for (int piece = random.nextInt(7); piece >= 0; piece--) {
        text.append(PIECES[random.nextInt(PIECES.length)]);
      }
      Measure measure = measures[random.nextInt(measures.length)];
      if (random.nextBoolean()) {
        text.append(measure.units().get(0).symbol());
      }
      read += assertAnswered(text.toString(), measure);
    }
    assertThat(read).as("texts that were quantities after all").isBetween(100, 5000);
  }

  @Provide
  Arbitrary<Integer> exponents() {
    return Arbitraries.integers().between(-20, 20);
  }

  private static Quantity readBack(String text, MeasureUnit unit) {
    return Quantity.parse(text, unit.measure())
        .fold(
            ParsedQuantity.Parsed::quantity,
            rejected -> {
              throw new AssertionError(text + ": " + rejected.explanation());
            });
  }

  private static int assertAnswered(String text, Measure measure) {
    return Quantity.parse(text, measure)
        .fold(
            parsed -> {
              assertThat(parsed.quantity().si()).isFinite();
              assertThat(parsed.quantity().text()).isEqualTo(text.strip().replace('\t', ' '));
              assertThat(text).matches("(?s).*[0-9].*");
              return 1;
            },
            rejected -> {
              assertThat(rejected.explanation())
                  .isNotBlank()
                  .hasSizeLessThan(600)
                  .doesNotContainPattern("[\\p{Cntrl}]");
              return 0;
            });
  }
}
