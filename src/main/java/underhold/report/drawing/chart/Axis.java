package underhold.report.drawing.chart;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * A straight scale of values on paper.
 *
 * @param low lowest value
 * @param high highest value
 * @param step from one tick to the next: 1, 2 or 5 times a power of ten
 * @param from where the lowest value lies on paper [mm]
 * @param to where the highest lies [mm]
 */
record Axis(double low, double high, double step, double from, double to) {
  private static final double ROUNDING = 1e-9;
  private static final int[] LEADS = {1, 2, 5, 10};

  Axis {
    if (!(high > low) || !(step > 0) || !Double.isFinite(high - low)) {
      throw new IllegalArgumentException("no scale runs from " + low + " to " + high);
    }
  }

  /** From nought to the first tick at or past a value, with about so many parts. */
  static Axis upTo(double value, int parts, double from, double to) {
    return between(0, value > 0 ? value : 1, parts, from, to);
  }

  /** From the last tick at or before one value to the first at or past another. */
  static Axis between(double low, double high, int parts, double from, double to) {
    double step = step((high - low) / parts);
    double first = Math.floor(low / step + ROUNDING) * step;
    double last = Math.ceil(high / step - ROUNDING) * step;
    return new Axis(first, last > first ? last : first + step, step, from, to);
  }

  private static double step(double least) {
    double power = Math.pow(10, Math.floor(Math.log10(least)));
    for (int lead : LEADS) {
      if (lead * power >= least * (1 - ROUNDING)) {
        return lead * power;
      }
    }
    return 10 * power;
  }

  /** Where a value lies on paper [mm]. */
  double at(double value) {
    return from + (value - low) / (high - low) * (to - from);
  }

  /** The values with a tick. */
  List<Double> ticks() {
    List<Double> ticks = new ArrayList<>();
    int count = (int) Math.round((high - low) / step);
    for (int i = 0; i <= count; i++) {
      ticks.add(low + i * step);
    }
    return ticks;
  }

  /** A tick's value, with as many decimals as the step needs. */
  String label(double tick) {
    int decimals = (int) Math.max(0, -Math.floor(Math.log10(step) + ROUNDING));
    BigDecimal value = BigDecimal.valueOf(tick).setScale(decimals, RoundingMode.HALF_UP);
    return value.signum() == 0 ? "0" : value.toPlainString();
  }
}
