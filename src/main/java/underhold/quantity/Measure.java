package underhold.quantity;

import java.util.List;
import java.util.Optional;

/**
 * A kind of quantity, with the one unit in which the program holds it, the units in which it may be
 * typed, and the units in which it is printed for each {@link UnitSystem}.
 */
public enum Measure {
  /** A length, inside in metres. */
  LENGTH("a length", "m", "ft", "mm", "in", "4 ft or 1.2 m"),
  /** An area, inside in square metres. */
  AREA("an area", "m2", "ft2", "mm2", "in2", "12 ft2 or 1.1 m2"),
  /** A volume, inside in cubic metres; printed in cubic yards for {@link UnitSystem#US}. */
  VOLUME("a volume", "m3", "yd3", "m3", "yd3", "3 yd3 or 2.3 m3"),
  /** A force, inside in kilonewtons. */
  FORCE("a force", "kN", "kip", "kN", "kip", "60 kip or 270 kN"),
  /** A force per length of wall or beam, inside in kilonewtons per metre. */
  FORCE_PER_LENGTH(
      "a force per length", "kN/m", "kip/ft", "kN/m", "kip/ft", "12 kip/ft or 175 kN/m"),
  /** A pressure, stress or stiffness modulus, inside in kilopascals. */
  PRESSURE("a pressure", "kPa", "ksf", "kPa", "ksf", "3000 psf or 145 kPa"),
  /** A weight per volume, inside in kilonewtons per cubic metre. */
  UNIT_WEIGHT("a unit weight", "kN/m3", "pcf", "kN/m3", "pcf", "120 pcf or 19 kN/m3"),
  /** An angle, inside in degrees. */
  ANGLE("an angle", "deg", "deg", "deg", "deg", "30 deg"),
  /**
   * A speed, inside in metres per second: permeability, seepage, peak particle velocity (print the
   * last with {@link QuantityPrinter#printFine}: mm/s or in/s).
   */
  SPEED("a speed", "m/s", "ft/day", "mm/s", "in/s", "1e-5 m/s or 3 ft/day"),
  /** A duration, inside in hours; a day is 24 hours, never a working day. */
  DURATION("a duration", "h", "h", "h", "h", "36 h or 3 days"),
  /** A bending moment, inside in kilonewton metres. */
  MOMENT("a moment", "kN·m", "kip-ft", "kN·m", "kip-ft", "80 kip-ft or 110 kN·m"),
  /** A bending moment per length of wall, inside in kilonewton metres per metre. */
  MOMENT_PER_LENGTH(
      "a moment per length",
      "kN·m/m",
      "kip-ft/ft",
      "kN·m/m",
      "kip-ft/ft",
      "10 kip-ft/ft or 45 kN·m/m"),
  /**
   * A number of things, without a unit. It need not be whole (an averaged blow count is not): where
   * only whole numbers make sense the asker must say so.
   */
  COUNT("a count", "", "", "", "", "12"),
  /** A ratio, inside as a plain number: 0.25 and 25 % are the same. */
  RATIO("a ratio", "", "", "", "", "0.25 or 25 %");

  private final String phrase;
  private final String insideUnit;
  private final String usUnit;
  private final String fineSiUnit;
  private final String fineUsUnit;
  private final String example;

  Measure(
      String phrase,
      String insideUnit,
      String usUnit,
      String fineSiUnit,
      String fineUsUnit,
      String example) {
    this.phrase = phrase;
    this.insideUnit = insideUnit;
    this.usUnit = usUnit;
    this.fineSiUnit = fineSiUnit;
    this.fineUsUnit = fineUsUnit;
    this.example = example;
  }

  /** The measure in running text, with its article: "a length". */
  public String phrase() {
    return phrase;
  }

  /** What a user might type, for prompts and messages: "4 ft or 1.2 m". */
  public String example() {
    return example;
  }

  /** The symbol of the unit in which the program holds this measure; empty for a plain number. */
  public String insideUnit() {
    return insideUnit;
  }

  /** Whether a number typed without a unit is refused. */
  public boolean needsUnit() {
    return !insideUnit.isEmpty();
  }

  /** The symbol of the unit in which this measure is usually printed. */
  public String printUnit(UnitSystem system) {
    return system == UnitSystem.SI ? insideUnit : usUnit;
  }

  /**
   * The symbol of the unit for small sizes (mm and in for a length, mm/s and in/s for a speed); the
   * usual one where there is no finer unit.
   */
  public String finePrintUnit(UnitSystem system) {
    return system == UnitSystem.SI ? fineSiUnit : fineUsUnit;
  }

  /** The units in which this measure may be typed or printed, the most usual first. */
  public List<MeasureUnit> units() {
    return UnitTable.of(this);
  }

  /** The unit of this measure with the given symbol or other accepted spelling. */
  public Optional<MeasureUnit> unit(String spelling) {
    return UnitTable.find(spelling, this);
  }

  /**
   * The unit of this measure with the given symbol or other accepted spelling.
   *
   * @throws IllegalArgumentException if this measure has no such unit
   */
  public MeasureUnit requireUnit(String spelling) {
    Optional<MeasureUnit> unit = unit(spelling);
    if (unit.isEmpty()) {
      throw new IllegalArgumentException("\"" + spelling + "\" is not a unit of " + phrase);
    }
    return unit.get();
  }
}
