package underhold.review.saved;

import java.util.List;
import java.util.Locale;

/**
 * A stage of the plan.
 *
 * @param id unique in the plan
 * @param zone its zone; empty for the whole site
 * @param method its method; empty where it belongs to none
 * @param kind what kind of work it is
 * @param title what it is
 * @param days how many working days it takes
 * @param start the working day on which it can begin, from 0
 * @param after the ids of the stages that come before it
 */
public record SavedStage(
    String id,
    String zone,
    String method,
    String kind,
    String title,
    double days,
    double start,
    List<String> after) {
  public SavedStage {
    after = List.copyOf(after);
  }

  /** Title and days in one line. */
  public String line() {
    String length = days == Math.rint(days) ? String.valueOf((long) days) : round(days);
    return title + ", " + length + (days == 1 ? " day" : " days");
  }

  private static String round(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }
}
