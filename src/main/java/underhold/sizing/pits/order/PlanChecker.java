package underhold.sizing.pits.order;

import java.util.ArrayList;
import java.util.List;

/**
 * Proves a digging plan against its rules without using the planner: from the calendar alone and
 * from the widths alone.
 */
public final class PlanChecker {
  private static final double TOLERANCE = 1e-6;

  private PlanChecker() {}

  /** Every rule the plan breaks, in words; empty for a lawful plan. */
  public static List<String> violations(DiggingPlan plan) {
    List<String> found = new ArrayList<>();
    completeness(plan, found);
    if (found.isEmpty()) {
      together(plan, found);
      for (double moment : plan.startDays()) {
        atMoment(plan, moment, found);
      }
      roundsKeepSpacing(plan, found);
    }
    return found;
  }

  private static void completeness(DiggingPlan plan, List<String> found) {
    List<Integer> all = plan.rounds().stream().flatMap(List::stream).sorted().toList();
    int count = plan.row().widthsMetres().size();
    if (all.size() != count || plan.startDays().size() != count) {
      found.add("the plan digs " + all.size() + " of " + count + " pits");
      return;
    }
    for (int pit = 0; pit < count; pit++) {
      if (all.get(pit) != pit) {
        found.add("pit " + (pit + 1) + " is missing or dug twice");
      }
      double start = plan.startDays().get(pit);
      if (!(start >= 0) || Double.isInfinite(start)) {
        found.add("pit " + (pit + 1) + " begins on day " + start);
      }
    }
  }

  /**
   * Two pits whose open times overlap must keep their distance; so no neighbour starts before
   * strength.
   */
  private static void together(DiggingPlan plan, List<String> found) {
    double[] edge = edges(plan);
    double openDays = openDays(plan);
    for (int left = 0; left < plan.row().count(); left++) {
      for (int right = left + 1; right < plan.row().count(); right++) {
        double apart = Math.abs(plan.startDays().get(left) - plan.startDays().get(right));
        if (apart < openDays - TOLERANCE && tooClose(plan, edge, left, right)) {
          found.add(
              "pits " + (left + 1) + " and " + (right + 1) + " are open together and too close");
        }
      }
    }
  }

  private static void atMoment(DiggingPlan plan, double moment, List<String> found) {
    double open = 0;
    int pits = 0;
    int digging = 0;
    double crewDays = plan.rules().times().digDays() + plan.rules().times().concreteDays();
    for (int pit = 0; pit < plan.row().count(); pit++) {
      double age = moment - plan.startDays().get(pit);
      if (age >= -TOLERANCE && age < openDays(plan) - TOLERANCE) {
        open += plan.row().widthsMetres().get(pit);
        pits++;
        digging += age < crewDays - TOLERANCE ? 1 : 0;
      }
    }
    double length = edges(plan)[plan.row().count()];
    if (pits > 1 && open > plan.rules().openShare() * length + TOLERANCE) {
      found.add("on day " + moment + " an open length of " + open + " m is more than the share");
    }
    if (digging > plan.rules().crews()) {
      found.add(
          "on day "
              + moment
              + " "
              + digging
              + " pits are dug by "
              + plan.rules().crews()
              + " crews");
    }
  }

  private static void roundsKeepSpacing(DiggingPlan plan, List<String> found) {
    double[] edge = edges(plan);
    for (List<Integer> round : plan.rounds()) {
      double sum = 0;
      for (int one : round) {
        sum += plan.row().widthsMetres().get(one);
        for (int other : round) {
          if (one < other && tooClose(plan, edge, one, other)) {
            found.add(
                "a round holds pits "
                    + (one + 1)
                    + " and "
                    + (other + 1)
                    + ", which are too close");
          }
        }
      }
      if (round.size() > 1
          && sum > plan.rules().openShare() * edge[plan.row().count()] + TOLERANCE) {
        found.add("a round opens " + sum + " m, more than the share");
      }
    }
  }

  private static boolean tooClose(DiggingPlan plan, double[] edge, int left, int right) {
    double clear = edge[right] - edge[left + 1];
    double wider = Math.max(edge[left + 1] - edge[left], edge[right + 1] - edge[right]);
    return right == left + 1 || clear < plan.rules().clearWidths() * wider - TOLERANCE;
  }

  /** Where each pit begins along the wall, and the far end. */
  private static double[] edges(DiggingPlan plan) {
    List<Double> widths = plan.row().widthsMetres();
    double[] edge = new double[widths.size() + 1];
    for (int pit = 0; pit < widths.size(); pit++) {
      edge[pit + 1] = edge[pit] + widths.get(pit);
    }
    return edge;
  }

  private static double openDays(DiggingPlan plan) {
    PitTimes times = plan.rules().times();
    return times.digDays()
        + times.concreteDays()
        + times.waitBeforeDryPackDays()
        + times.dryPackDays()
        + times.waitBeforeNeighbourDays();
  }
}
