package underhold.consult.firmness;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import underhold.consult.firmness.Firmness.Driver;
import underhold.consult.firmness.Firmness.Value;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;

/**
 * Finds the unknown facts that drive the doubt: those by whose values the answer stays or goes. The
 * measure is the first-order share of variance: the variance of the means of the groups of draws
 * with equal values, over the variance of all draws.
 */
final class Drivers {
  private static final int MOST = 3;

  /** Less than a tenth of the doubt drives nothing. */
  private static final double LEAST = 0.1;

  /** Amounts are told apart as small, middling and large. */
  private static final int PARTS = 3;

  private Drivers() {}

  static List<Driver> of(List<String> names, List<Drawn> sample) {
    List<Driver> drivers = new ArrayList<>();
    for (String name : names) {
      driver(FactDictionary.standard().require(name), sample, drivers);
    }
    drivers.sort(Comparator.comparing((Driver driver) -> -driver.explains()));
    return drivers.size() > MOST ? drivers.subList(0, MOST) : drivers;
  }

  private static void driver(FactDefinition fact, List<Drawn> sample, List<Driver> drivers) {
    List<Drawn> drawn = sample.stream().filter(one -> one.has(fact.name())).toList();
    Map<String, int[]> groups = new LinkedHashMap<>();
    for (Map.Entry<String, List<Drawn>> group : groups(fact, drawn).entrySet()) {
      int kept = (int) group.getValue().stream().filter(Drawn::stayed).count();
      groups.put(group.getKey(), new int[] {group.getValue().size(), kept});
    }
    int draws = drawn.size();
    int stayed = groups.values().stream().mapToInt(counts -> counts[1]).sum();
    double mean = draws == 0 ? 0 : stayed / (double) draws;
    double variance = mean * (1 - mean);
    if (variance <= 0) {
      return;
    }
    double between = 0;
    List<Value> values = new ArrayList<>();
    for (Map.Entry<String, int[]> group : groups.entrySet()) {
      int[] counts = group.getValue();
      double away = counts[1] / (double) counts[0] - mean;
      between += counts[0] * away * away / draws;
      values.add(new Value(group.getKey(), counts[0], counts[1]));
    }
    double explains = between / variance;
    if (explains > Math.max(LEAST, byChance(groups.size()) / draws)) {
      values.sort(Comparator.comparing((Value value) -> -value.stayed() / (double) value.draws()));
      drivers.add(new Driver(fact, explains, values));
    }
  }

  /**
   * What a fact without influence explains at most, times the draws: about the 99.9 per cent point
   * of chi-squared with one degree of freedom less than the groups, for some forty facts are looked
   * at.
   */
  private static double byChance(int groups) {
    double freedom = groups - 1.0;
    return freedom + 3 * Math.sqrt(2 * freedom) + 5;
  }

  /** The draws by word, or by third of the amounts. */
  private static Map<String, List<Drawn>> groups(FactDefinition fact, List<Drawn> drawn) {
    Map<String, List<Drawn>> groups = new LinkedHashMap<>();
    if (!fact.kind().isNumber()) {
      drawn.forEach(
          one -> groups.computeIfAbsent(one.text(fact.name()), k -> new ArrayList<>()).add(one));
      return groups;
    }
    List<Drawn> sorted = new ArrayList<>(drawn);
    sorted.sort(Comparator.comparingDouble(one -> one.amount(fact.name())));
    for (int part = 0; part < PARTS; part++) {
      List<Drawn> third =
          sorted.subList(part * sorted.size() / PARTS, (part + 1) * sorted.size() / PARTS);
      if (!third.isEmpty()) {
        String low = third.get(0).text(fact.name());
        String high = third.get(third.size() - 1).text(fact.name());
        String label =
            part == 0
                ? high + " or less"
                : part == PARTS - 1 ? low + " or more" : low + " to " + high;
        groups.computeIfAbsent(label, key -> new ArrayList<>()).addAll(third);
      }
    }
    return groups;
  }
}
