package underhold.sizing.pits.order;

import java.util.ArrayList;
import java.util.List;

/** Ways of dividing a row of pits into rounds. */
final class Rounds {
  private static final int[] PLAIN_ORDER = {0, 3, 1, 4, 2};

  private Rounds() {}

  /**
   * Every so-many-th pit together; even groups first, so that neighbours follow each other late.
   */
  static List<List<Integer>> everyNth(PitRow row, int step) {
    List<List<Integer>> rounds = new ArrayList<>();
    for (int half = 0; half < 2; half++) {
      for (int first = half; first < Math.min(step, row.count()); first += 2) {
        rounds.add(group(row, first, step));
      }
    }
    return rounds;
  }

  /** The plain order 1-4-2-5-3, each group broken up until it keeps the rules. */
  static List<List<Integer>> plain(PitRow row, OrderRules rules) {
    List<List<Integer>> rounds = new ArrayList<>();
    for (int first : PLAIN_ORDER) {
      List<Integer> left = new ArrayList<>(group(row, first, PLAIN_ORDER.length));
      while (!left.isEmpty()) {
        List<Integer> round = fill(row, rules, left);
        left.removeAll(round);
        rounds.add(round);
      }
    }
    return rounds;
  }

  /** First fit: each pit, from one end, joins the first round that can take it. */
  static List<List<Integer>> firstFit(PitRow row, OrderRules rules) {
    List<List<Integer>> rounds = new ArrayList<>();
    for (int pit = 0; pit < row.count(); pit++) {
      int candidate = pit;
      rounds.stream()
          .filter(round -> rules.mayOpen(row, round, candidate))
          .findFirst()
          .orElseGet(
              () -> {
                List<Integer> fresh = new ArrayList<>();
                rounds.add(fresh);
                return fresh;
              })
          .add(pit);
    }
    return rounds;
  }

  /** Whether all pits of each round may be open together. */
  static boolean lawful(PitRow row, OrderRules rules, List<List<Integer>> rounds) {
    return rounds.stream().allMatch(round -> fill(row, rules, round).size() == round.size());
  }

  private static List<Integer> fill(PitRow row, OrderRules rules, List<Integer> pits) {
    List<Integer> round = new ArrayList<>();
    for (int pit : pits) {
      if (rules.mayOpen(row, round, pit)) {
        round.add(pit);
      }
    }
    return round;
  }

  private static List<Integer> group(PitRow row, int first, int step) {
    List<Integer> pits = new ArrayList<>();
    for (int pit = first; pit < row.count(); pit += step) {
      pits.add(pit);
    }
    return pits;
  }
}
