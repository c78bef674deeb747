package underhold.sizing.pits.order;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;

/** Puts dates to rounds. */
final class Calendars {
  private static final double SAME_DAY = 1e-9;

  private Calendars() {}

  /**
   * Every round waits until the round before carries; within a round the crews take pit after pit.
   */
  static DiggingPlan inStep(PitRow row, OrderRules rules, List<List<Integer>> rounds) {
    List<Double> starts = new ArrayList<>(Collections.nCopies(row.count(), 0.0));
    double begin = 0;
    for (List<Integer> round : rounds) {
      double last = begin;
      for (int i = 0; i < round.size(); i++) {
        int turn = i / rules.crews();
        last = begin + turn * rules.times().crewDays();
        starts.set(round.get(i), last);
      }
      begin = last + rules.times().openDays();
    }
    return new DiggingPlan(row, rules, rounds, starts, true);
  }

  /** Each pit begins as soon as a crew is free and the rules allow, in the order of the rounds. */
  static DiggingPlan rolling(PitRow row, OrderRules rules, List<List<Integer>> rounds) {
    List<Integer> waiting = new ArrayList<>();
    rounds.forEach(waiting::addAll);
    List<Double> starts = new ArrayList<>(Collections.nCopies(row.count(), 0.0));
    List<Integer> open = new ArrayList<>();
    double now = 0;
    while (!waiting.isEmpty()) {
      double moment = now;
      open.removeIf(pit -> starts.get(pit) + rules.times().openDays() <= moment + SAME_DAY);
      int busy = busyCrews(open, starts, rules, moment);
      for (Iterator<Integer> next = waiting.iterator(); busy < rules.crews() && next.hasNext(); ) {
        int pit = next.next();
        if (rules.mayOpen(row, open, pit)) {
          starts.set(pit, moment);
          open.add(pit);
          next.remove();
          busy++;
        }
      }
      now = nextEvent(open, starts, rules, moment);
    }
    return new DiggingPlan(row, rules, rounds, starts, false);
  }

  private static int busyCrews(
      List<Integer> open, List<Double> starts, OrderRules rules, double now) {
    int busy = 0;
    for (int pit : open) {
      busy += starts.get(pit) + rules.times().crewDays() > now + SAME_DAY ? 1 : 0;
    }
    return busy;
  }

  private static double nextEvent(
      List<Integer> open, List<Double> starts, OrderRules rules, double now) {
    double next = Double.MAX_VALUE;
    for (int pit : open) {
      double crewFree = starts.get(pit) + rules.times().crewDays();
      double carries = starts.get(pit) + rules.times().openDays();
      next = crewFree > now + SAME_DAY ? Math.min(next, crewFree) : Math.min(next, carries);
    }
    return next;
  }
}
