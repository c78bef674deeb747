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
import underhold.site.FactValue;

/**
 * Finds the unknown facts that drive the doubt: those by whose values the answer stays or goes. The
 * measure is the first-order share of variance: the variance of the means of the groups of draws
 * with equal values, over the variance of all draws.
 */
final class Drivers {
  private static final int MOST = 3;

  /**
   * A fact without influence explains about (values - 1) / draws by chance; this many times that
   * counts.
   */
  private static final double ABOVE_CHANCE = 3;

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
    Map<String, int[]> groups = new LinkedHashMap<>();
    int draws = 0;
    int stayed = 0;
    for (Drawn drawn : sample) {
      FactValue value = drawn.values().get(fact.name());
      if (value != null) {
        int[] counts = groups.computeIfAbsent(value.text(), key -> new int[2]);
        counts[0]++;
        counts[1] += drawn.stayed() ? 1 : 0;
        draws++;
        stayed += drawn.stayed() ? 1 : 0;
      }
    }
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
    if (explains > ABOVE_CHANCE * (groups.size() - 1) / draws) {
      values.sort(Comparator.comparing((Value value) -> -value.stayed() / (double) value.draws()));
      drivers.add(new Driver(fact, explains, values));
    }
  }
}
