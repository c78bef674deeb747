package underhold.sizing.pits.order;

import java.util.List;
import underhold.sizing.StageDetail;

/**
 * A digging order with its calendar.
 *
 * @param row the pits
 * @param rules the rules it keeps
 * @param rounds pits of each round, in order; every pit once
 * @param startDays day on which each pit is begun, 0 for the first
 * @param inStep whether every round waits for the whole round before; otherwise a pit begins as
 *     soon as the rules and the crews allow
 */
public record DiggingPlan(
    PitRow row,
    OrderRules rules,
    List<List<Integer>> rounds,
    List<Double> startDays,
    boolean inStep) {

  public DiggingPlan {
    rounds = rounds.stream().map(List::copyOf).toList();
    startDays = List.copyOf(startDays);
  }

  /** Day on which a pit carries. */
  public double doneDay(int pit) {
    return startDays.get(pit) + rules.times().openDays();
  }

  /** Days until the last pit carries. */
  public double calendarDays() {
    double last = 0;
    for (int pit = 0; pit < row.count(); pit++) {
      last = Math.max(last, doneDay(pit));
    }
    return last;
  }

  /** What a round of it counts, for a plan of stages. */
  public StageDetail.PitRound round(List<Integer> pits) {
    List<Integer> sorted = pits.stream().sorted().toList();
    return new StageDetail.PitRound(
        sorted.stream().map(pit -> pit + 1).toList(),
        sorted.stream().map(row::width).toList(),
        row.lengthMetres(),
        rules.openShare() * row.lengthMetres(),
        rules.crews(),
        rules.times().crewDays(),
        rules.times().openDays());
  }

  /** Number of rounds. */
  public int roundCount() {
    return rounds.size();
  }

  /** Greatest length of wall open at once by the calendar, m. */
  public double greatestOpenMetres() {
    double greatest = 0;
    for (int first = 0; first < row.count(); first++) {
      double moment = startDays.get(first);
      double open = 0;
      for (int pit = 0; pit < row.count(); pit++) {
        boolean isOpen = startDays.get(pit) <= moment && moment < doneDay(pit) - 1e-9;
        open += isOpen ? row.width(pit) : 0;
      }
      greatest = Math.max(greatest, open);
    }
    return greatest;
  }
}
