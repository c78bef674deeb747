package underhold.classroom;

import java.util.Locale;

/** Working days in words. */
public final class Days {
  private Days() {}

  /** {@code 4 working days}, {@code no time}. */
  public static String of(double days) {
    if (days == 0) {
      return "no time";
    }
    String number =
        days == Math.rint(days)
            ? String.valueOf(Math.round(days))
            : String.format(Locale.ROOT, "%.1f", days);
    return number + (days == 1 ? " working day" : " working days");
  }
}
