package underhold.consult.firmness;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import underhold.advice.SupportOption;
import underhold.site.FactDefinition;

/**
 * The first-rank acceptability of the options of a zone: how often each comes first when weights,
 * unknown facts and limits are drawn at random. The form is that of stochastic multicriteria
 * acceptability analysis (Lahdelma and Salminen, SMAA-2, Operations Research 49 (3), 2001, from
 * memory, verify) with ordinal information on the weights.
 *
 * @param leader the option that leads with what is known; null where there is no clear choice
 * @param draws how many draws
 * @param seed the seed of the draws: the same seed, the same draws
 * @param firsts in how many draws each option came first; those that never did are left out
 * @param weights in how many draws the answer stayed when the weights alone were drawn
 * @param facts in how many draws the answer stayed when the unknown facts alone were drawn
 * @param limits in how many draws the answer stayed when the limits alone were drawn
 * @param factsDrawn how many unknown facts were drawn
 * @param limitsDrawn how many limits were drawn
 * @param drivers the unknown facts that drive the doubt, the strongest first
 */
public record Firmness(
    @Nullable SupportOption leader,
    int draws,
    long seed,
    Map<SupportOption, Integer> firsts,
    int weights,
    int facts,
    int limits,
    int factsDrawn,
    int limitsDrawn,
    List<Driver> drivers) {
  private static final double HUNDRED = 100;

  public Firmness {
    EnumMap<SupportOption, Integer> copy = new EnumMap<>(SupportOption.class);
    copy.putAll(firsts);
    firsts = copy;
    drivers = List.copyOf(drivers);
  }

  /**
   * An unknown fact, and how often the answer stays for each of its values.
   *
   * @param fact the fact
   * @param explains the share of the doubt that goes with it, from 0 to 1
   * @param values its values drawn
   */
  public record Driver(FactDefinition fact, double explains, List<Value> values) {
    public Driver {
      values = List.copyOf(values);
    }
  }

  /**
   * A value that was drawn.
   *
   * @param value as text of the dictionary
   * @param draws in how many draws
   * @param stayed in how many of these the answer stayed
   */
  public record Value(String value, int draws, int stayed) {}

  /** In how many draws an option came first. */
  public int first(SupportOption option) {
    Integer count = firsts.get(option);
    return count == null ? 0 : count;
  }

  /** In how many draws there was no clear choice. */
  public int none() {
    return draws - firsts.values().stream().mapToInt(Integer::intValue).sum();
  }

  /** In how many draws the answer stayed what it is: the same leader, or none. */
  public int stayed() {
    return leader == null ? none() : first(leader);
  }

  /** A count as so many in a hundred, rounded to the nearest. */
  public int perHundred(int count) {
    return (int) Math.round(HUNDRED * count / draws);
  }

  /** The options by how often they came first, the most first. */
  public List<SupportOption> byFirsts() {
    List<SupportOption> options = new ArrayList<>(firsts.keySet());
    options.sort(Comparator.comparing((SupportOption option) -> -first(option)));
    return options;
  }

  /** The option other than the leader that came first most often. */
  public Optional<SupportOption> runnerUp() {
    return byFirsts().stream().filter(option -> option != leader).findFirst();
  }
}
