package underhold.sizing.pits.order;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * Finds the order with the fewest rounds and, among those, the shortest calendar.
 *
 * <p>For equal pits (also with narrower end pits) that must keep d - 1 pits between them, any d
 * neighbours need d rounds; a share of the wall that holds k pits needs n / k rounds, rounded up.
 * Taking every R-th pit together with the larger of the two reaches that bound. The calendar is
 * then the shortest of rounds in step and rounds that roll on as soon as the rules allow, tried in
 * a fixed number of orders unless the bound of {@link #fewestDays} is reached before. Should the
 * plain order 1-4-2-5-3 give a shorter calendar without more rounds, it is taken: the answer is
 * never worse than it in rounds or days.
 *
 * <p>Accuracy: rounds are the fewest (proved by trial of all partitions up to nine pits); days
 * reach the bound where there is a crew for every open pit, and came within a tenth of it with
 * fewer.
 */
public final class DiggingOrder {
  private static final Comparator<DiggingPlan> SHORTEST =
      Comparator.comparingDouble(DiggingOrder::roundedDays)
          .thenComparing(plan -> plan.inStep() ? 0 : 1);

  /** Fixed, so that the same wall always gets the same order. */
  private static final long SEED = 4123;

  private static final int LEAST_TRIES = 20;
  private static final int MOST_TRIES = 150;

  /** Long walls get fewer tries: they leave less to gain. */
  private static final int PITS_TRIED = 4000;

  private static final double SAME_DAY = 1e-6;

  /** The last plans: a sheet is reckoned again for every value that is only assumed. */
  private static final Map<Question, DiggingPlan> RECENT =
      Collections.synchronizedMap(
          new LinkedHashMap<>() {
            @Override
            protected boolean removeEldestEntry(Map.Entry<Question, DiggingPlan> eldest) {
              return size() > KEPT;
            }
          });

  private static final int KEPT = 64;

  private DiggingOrder() {}

  private record Question(List<Double> widthsMetres, OrderRules rules) {}

  /** The best order found; lawful for every row and all rules. */
  public static DiggingPlan plan(PitRow row, OrderRules rules) {
    Question question = new Question(row.widthsMetres(), rules);
    DiggingPlan known = RECENT.get(question);
    DiggingPlan plan = known == null ? find(row, rules) : known;
    RECENT.put(question, plan);
    return plan;
  }

  /** The same, reckoned anew. */
  static DiggingPlan find(PitRow row, OrderRules rules) {
    List<List<Integer>> fewest = fewestRounds(row, rules);
    DiggingPlan best = shortest(row, rules, fewest);
    DiggingPlan plain = plain(row, rules);
    boolean plainIsShorter = roundedDays(plain) < roundedDays(best);
    if (plainIsShorter && plain.roundCount() <= best.roundCount()) {
      return plain;
    }
    return plainIsShorter ? shortestWithin(row, rules, plain) : best;
  }

  /** The plain order 1-4-2-5-3 with the rounds broken up where the rules ask for it, in step. */
  public static DiggingPlan plain(PitRow row, OrderRules rules) {
    return Calendars.inStep(row, rules, Rounds.plain(row, rules));
  }

  private static List<List<Integer>> fewestRounds(PitRow row, OrderRules rules) {
    List<List<Integer>> first = Rounds.firstFit(row, rules);
    List<List<Integer>> plain = Rounds.plain(row, rules);
    List<List<Integer>> best = plain.size() < first.size() ? plain : first;
    for (int step = 1; step < best.size(); step++) {
      List<List<Integer>> rounds = Rounds.everyNth(row, step);
      if (Rounds.lawful(row, rules, rounds)) {
        return rounds;
      }
    }
    List<List<Integer>> sameCount = Rounds.everyNth(row, best.size());
    return Rounds.lawful(row, rules, sameCount) ? sameCount : best;
  }

  /**
   * The plain order has more rounds but is quicker: look between the two, and take it as the last
   * resort.
   */
  private static DiggingPlan shortestWithin(PitRow row, OrderRules rules, DiggingPlan plain) {
    List<DiggingPlan> plans = new ArrayList<>(List.of(plain));
    for (int step = 1; step <= plain.roundCount(); step++) {
      List<List<Integer>> rounds = Rounds.everyNth(row, step);
      if (Rounds.lawful(row, rules, rounds)) {
        plans.add(shortest(row, rules, rounds));
      }
    }
    plans.add(Calendars.rolling(row, rules, Rounds.plain(row, rules)));
    return plans.stream()
        .filter(plan -> roundedDays(plan) <= roundedDays(plain))
        .min(Comparator.comparingInt(DiggingPlan::roundCount).thenComparing(SHORTEST))
        .orElse(plain);
  }

  private static DiggingPlan shortest(PitRow row, OrderRules rules, List<List<Integer>> rounds) {
    DiggingPlan best = Calendars.inStep(row, rules, rounds);
    double bound = CalendarBound.days(row, rules) + SAME_DAY;
    List<List<Integer>> mixed = rounds;
    Random chance = new Random(SEED);
    int tries = Math.max(LEAST_TRIES, Math.min(MOST_TRIES, PITS_TRIED / row.count()));
    for (int i = 0; i < tries && best.calendarDays() > bound; i++) {
      DiggingPlan rolling = Calendars.rolling(row, rules, mixed);
      best = SHORTEST.compare(rolling, best) < 0 ? rolling : best;
      mixed = mixed(rounds, chance);
    }
    return best;
  }

  /** The same rounds in another order, each in another order. */
  private static List<List<Integer>> mixed(List<List<Integer>> rounds, Random chance) {
    List<List<Integer>> mixed = new ArrayList<>();
    for (List<Integer> round : rounds) {
      List<Integer> other = new ArrayList<>(round);
      Collections.shuffle(other, chance);
      mixed.add(other);
    }
    Collections.shuffle(mixed, chance);
    return mixed;
  }

  /** Days below which no order can go. */
  public static double fewestDays(PitRow row, OrderRules rules) {
    return CalendarBound.days(row, rules);
  }

  /** Days without the noise of sums. */
  private static double roundedDays(DiggingPlan plan) {
    return Math.rint(plan.calendarDays() * 1e6) / 1e6;
  }
}
