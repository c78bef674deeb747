package underhold.quantity;

import static underhold.quantity.Factors.CENTI;
import static underhold.quantity.Factors.CUBIC_METRES_PER_GALLON;
import static underhold.quantity.Factors.DEGREES_PER_RADIAN;
import static underhold.quantity.Factors.HOURS_PER_DAY;
import static underhold.quantity.Factors.HOURS_PER_WEEK;
import static underhold.quantity.Factors.KILO;
import static underhold.quantity.Factors.KILONEWTONS_PER_KIP;
import static underhold.quantity.Factors.KILONEWTONS_PER_POUND_FORCE;
import static underhold.quantity.Factors.KILONEWTONS_PER_TON_FORCE;
import static underhold.quantity.Factors.MEGA;
import static underhold.quantity.Factors.METRES_PER_FOOT;
import static underhold.quantity.Factors.METRES_PER_INCH;
import static underhold.quantity.Factors.METRES_PER_YARD;
import static underhold.quantity.Factors.MILLI;
import static underhold.quantity.Factors.SECONDS_PER_DAY;
import static underhold.quantity.Factors.SECONDS_PER_HOUR;
import static underhold.quantity.Factors.SECONDS_PER_MINUTE;
import static underhold.quantity.Factors.ratio;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Every unit the program knows, by measure and by {@link UnitSpelling key}. */
final class UnitTable {
  private static final Optional<UnitSystem> SI = Optional.of(UnitSystem.SI);
  private static final Optional<UnitSystem> US = Optional.of(UnitSystem.US);
  private static final Optional<UnitSystem> BOTH = Optional.empty();

  private static final Map<Measure, List<MeasureUnit>> BY_MEASURE = new EnumMap<>(Measure.class);
  private static final Map<Measure, MeasureUnit> PLAIN = new EnumMap<>(Measure.class);
  private static final Map<String, MeasureUnit> BY_SYMBOL = new HashMap<>();
  private static final Map<String, MeasureUnit> BY_OTHER_SPELLING = new HashMap<>();

  static {
    lengthsAreasVolumes();
    forces();
    pressures();
    anglesAndTimes();
    moments();
    plainNumbers();
  }

  /** Loaded only when a unit is typed otherwise than by its symbol: that keeps the start short. */
  private static final class Keys {
    private static final Map<String, MeasureUnit> BY_KEY = new HashMap<>();

    static {
      BY_SYMBOL.forEach(Keys::register);
      BY_OTHER_SPELLING.forEach(Keys::register);
    }

    private static void register(String spelling, MeasureUnit unit) {
      String key =
          UnitSpelling.key(spelling)
              .orElseThrow(() -> new IllegalStateException(spelling + " cannot be spelled"));
      putOnce(BY_KEY, key, unit);
    }
  }

  private UnitTable() {}

  static List<MeasureUnit> of(Measure measure) {
    return Collections.unmodifiableList(BY_MEASURE.getOrDefault(measure, List.of()));
  }

  /** The unit with that spelling, whatever it measures; a plain number has no spelling. */
  static Optional<MeasureUnit> find(String spelling) {
    MeasureUnit bySymbol = BY_SYMBOL.get(spelling);
    return bySymbol != null
        ? Optional.of(bySymbol)
        : UnitSpelling.key(spelling).map(Keys.BY_KEY::get);
  }

  /** The unit of that measure with that spelling; the empty spelling is a plain number. */
  static Optional<MeasureUnit> find(String spelling, Measure measure) {
    if (spelling.isBlank()) {
      return Optional.ofNullable(PLAIN.get(measure));
    }
    Optional<MeasureUnit> unit = find(spelling);
    return unit.isPresent() && unit.get().measure() == measure ? unit : Optional.empty();
  }

  private static void lengthsAreasVolumes() {
    add(Measure.LENGTH, "m", "metres", BigDecimal.ONE, SI);
    add(Measure.LENGTH, "mm", "millimetres", MILLI, SI);
    add(Measure.LENGTH, "cm", "centimetres", CENTI, SI);
    add(Measure.LENGTH, "ft", "feet", METRES_PER_FOOT, US);
    add(Measure.LENGTH, "in", "inches", METRES_PER_INCH, US);
    add(Measure.LENGTH, "yd", "yards", METRES_PER_YARD, US);

    add(Measure.AREA, "m2", "square metres", BigDecimal.ONE, SI);
    add(Measure.AREA, "mm2", "square millimetres", MILLI.pow(2), SI);
    add(Measure.AREA, "cm2", "square centimetres", CENTI.pow(2), SI);
    add(Measure.AREA, "ft2", "square feet", METRES_PER_FOOT.pow(2), US);
    add(Measure.AREA, "in2", "square inches", METRES_PER_INCH.pow(2), US);
    add(Measure.AREA, "yd2", "square yards", METRES_PER_YARD.pow(2), US);

    add(Measure.VOLUME, "m3", "cubic metres", BigDecimal.ONE, SI);
    add(Measure.VOLUME, "L", "litres", MILLI, SI);
    add(Measure.VOLUME, "cm3", "cubic centimetres", CENTI.pow(3), SI);
    add(Measure.VOLUME, "ft3", "cubic feet", METRES_PER_FOOT.pow(3), US);
    add(Measure.VOLUME, "yd3", "cubic yards", METRES_PER_YARD.pow(3), US);
    add(Measure.VOLUME, "in3", "cubic inches", METRES_PER_INCH.pow(3), US);
    add(Measure.VOLUME, "gal", "US liquid gallons", CUBIC_METRES_PER_GALLON, US);
  }

  private static void forces() {
    add(Measure.FORCE, "kN", "kilonewtons", BigDecimal.ONE, SI);
    add(Measure.FORCE, "N", "newtons", MILLI, SI);
    add(Measure.FORCE, "MN", "meganewtons", KILO, SI);
    add(Measure.FORCE, "kip", "kips (1000 lbf)", KILONEWTONS_PER_KIP, US);
    add(Measure.FORCE, "lb", "pounds-force", KILONEWTONS_PER_POUND_FORCE, US);
    add(Measure.FORCE, "ton", "US short tons-force (2000 lbf)", KILONEWTONS_PER_TON_FORCE, US);

    BigDecimal foot = METRES_PER_FOOT;
    BigDecimal inch = METRES_PER_INCH;
    BigDecimal pound = KILONEWTONS_PER_POUND_FORCE;
    BigDecimal kip = KILONEWTONS_PER_KIP;
    Measure perLength = Measure.FORCE_PER_LENGTH;
    add(perLength, "kN/m", "kilonewtons per metre", BigDecimal.ONE, SI, "N/mm");
    add(perLength, "N/m", "newtons per metre", MILLI, SI);
    add(perLength, "MN/m", "meganewtons per metre", KILO, SI, "kN/mm");
    add(perLength, "kip/ft", "kips per foot (klf)", ratio(kip, foot), US, "klf");
    add(perLength, "lb/ft", "pounds-force per foot (plf)", ratio(pound, foot), US, "plf");
    add(perLength, "kip/in", "kips per inch", ratio(kip, inch), US);
    add(perLength, "lb/in", "pounds-force per inch", ratio(pound, inch), US);
  }

  private static void pressures() {
    BigDecimal squareFoot = METRES_PER_FOOT.pow(2);
    BigDecimal squareInch = METRES_PER_INCH.pow(2);
    BigDecimal cubicFoot = METRES_PER_FOOT.pow(3);
    BigDecimal pound = KILONEWTONS_PER_POUND_FORCE;
    BigDecimal kip = KILONEWTONS_PER_KIP;
    BigDecimal ton = KILONEWTONS_PER_TON_FORCE;
    Measure pressure = Measure.PRESSURE;
    add(pressure, "kPa", "kilopascals (kN/m2)", BigDecimal.ONE, SI, "kN/m2");
    add(pressure, "Pa", "pascals (N/m2)", MILLI, SI, "N/m2");
    add(pressure, "MPa", "megapascals (N/mm2)", KILO, SI, "N/mm2", "MN/m2");
    add(pressure, "GPa", "gigapascals (kN/mm2)", MEGA, SI, "kN/mm2", "GN/m2");
    add(pressure, "psf", "pounds-force per square foot", ratio(pound, squareFoot), US, "lb/ft2");
    add(pressure, "ksf", "kips per square foot", ratio(kip, squareFoot), US, "kip/ft2");
    add(pressure, "tsf", "US short tons per square foot", ratio(ton, squareFoot), US, "ton/ft2");
    add(pressure, "psi", "pounds-force per square inch", ratio(pound, squareInch), US, "lb/in2");
    add(pressure, "ksi", "kips per square inch", ratio(kip, squareInch), US, "kip/in2");

    Measure weight = Measure.UNIT_WEIGHT;
    add(weight, "kN/m3", "kilonewtons per cubic metre", BigDecimal.ONE, SI);
    add(weight, "N/m3", "newtons per cubic metre", MILLI, SI);
    add(weight, "MN/m3", "meganewtons per cubic metre", KILO, SI);
    add(weight, "pcf", "pounds-force per cubic foot", ratio(pound, cubicFoot), US, "lb/ft3");
    add(weight, "kcf", "kips per cubic foot", ratio(kip, cubicFoot), US, "kip/ft3");
  }

  private static void anglesAndTimes() {
    add(Measure.ANGLE, "deg", "degrees", BigDecimal.ONE, BOTH);
    add(Measure.ANGLE, "rad", "radians", DEGREES_PER_RADIAN, BOTH);

    Measure speed = Measure.SPEED;
    BigDecimal foot = METRES_PER_FOOT;
    add(speed, "m/s", "metres per second", BigDecimal.ONE, SI);
    add(speed, "cm/s", "centimetres per second", CENTI, SI);
    add(speed, "mm/s", "millimetres per second", MILLI, SI);
    add(speed, "m/h", "metres per hour", ratio(BigDecimal.ONE, SECONDS_PER_HOUR), SI);
    add(speed, "m/day", "metres per day", ratio(BigDecimal.ONE, SECONDS_PER_DAY), SI);
    add(speed, "ft/s", "feet per second", foot, US);
    add(speed, "ft/min", "feet per minute", ratio(foot, SECONDS_PER_MINUTE), US);
    add(speed, "ft/h", "feet per hour", ratio(foot, SECONDS_PER_HOUR), US);
    add(speed, "ft/day", "feet per day", ratio(foot, SECONDS_PER_DAY), US);
    add(speed, "in/s", "inches per second", METRES_PER_INCH, US);
    add(speed, "in/h", "inches per hour", ratio(METRES_PER_INCH, SECONDS_PER_HOUR), US);

    BigDecimal hoursPerMinute = ratio(BigDecimal.ONE, SECONDS_PER_MINUTE);
    add(Measure.DURATION, "h", "hours", BigDecimal.ONE, BOTH);
    add(Measure.DURATION, "min", "minutes", hoursPerMinute, BOTH);
    add(Measure.DURATION, "days", "days of 24 hours", HOURS_PER_DAY, BOTH);
    add(Measure.DURATION, "weeks", "weeks of seven days", HOURS_PER_WEEK, BOTH);
  }

  private static void moments() {
    BigDecimal foot = METRES_PER_FOOT;
    BigDecimal inch = METRES_PER_INCH;
    BigDecimal pound = KILONEWTONS_PER_POUND_FORCE;
    BigDecimal kip = KILONEWTONS_PER_KIP;
    Measure moment = Measure.MOMENT;
    add(moment, "kN·m", "kilonewton metres", BigDecimal.ONE, SI, "kNm");
    add(moment, "N·m", "newton metres", MILLI, SI, "Nm");
    add(moment, "MN·m", "meganewton metres", KILO, SI, "MNm");
    add(moment, "kip-ft", "kip feet", kip.multiply(foot), US, "ft·kip");
    add(moment, "lb-ft", "pound-force feet", pound.multiply(foot), US, "ft·lb");
    add(moment, "kip-in", "kip inches", kip.multiply(inch), US, "in·kip");
    add(moment, "lb-in", "pound-force inches", pound.multiply(inch), US, "in·lb");

    BigDecimal inchPerFoot = ratio(inch, foot);
    Measure perLength = Measure.MOMENT_PER_LENGTH;
    add(perLength, "kN·m/m", "kilonewton metres per metre", BigDecimal.ONE, SI, "kNm/m");
    add(perLength, "N·m/m", "newton metres per metre", MILLI, SI, "Nm/m");
    add(perLength, "MN·m/m", "meganewton metres per metre", KILO, SI, "MNm/m");
    add(perLength, "kip-ft/ft", "kip feet per foot", kip, US, "ft·kip/ft");
    add(perLength, "lb-ft/ft", "pound-force feet per foot", pound, US, "ft·lb/ft");
    add(perLength, "kip-in/ft", "kip inches per foot", kip.multiply(inchPerFoot), US, "in·kip/ft");
  }

  private static void plainNumbers() {
    add(Measure.COUNT, "", "a plain number", BigDecimal.ONE, BOTH);
    add(Measure.RATIO, "", "a plain number", BigDecimal.ONE, BOTH);
    add(Measure.RATIO, "%", "per cent", CENTI, BOTH);
  }

  private static void add(
      Measure measure,
      String symbol,
      String name,
      BigDecimal factor,
      Optional<UnitSystem> system,
      String... otherSpellings) {
    MeasureUnit unit = new MeasureUnit(symbol, name, measure, factor, system);
    List<MeasureUnit> sameMeasure = BY_MEASURE.get(measure);
    if (sameMeasure == null) {
      sameMeasure = new ArrayList<>();
      BY_MEASURE.put(measure, sameMeasure);
    }
    sameMeasure.add(unit);
    if (symbol.isEmpty()) {
      PLAIN.put(measure, unit);
    } else {
      putOnce(BY_SYMBOL, symbol, unit);
    }
    for (String spelling : otherSpellings) {
      putOnce(BY_OTHER_SPELLING, spelling, unit);
    }
  }

  private static void putOnce(Map<String, MeasureUnit> units, String name, MeasureUnit unit) {
    if (units.put(name, unit) != null) {
      throw new IllegalStateException(name + " stands for two units");
    }
  }
}
