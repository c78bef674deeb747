package underhold.review.saved;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import underhold.consult.firmness.Firmness;

/**
 * How often each option came first when weights, limits and open facts were drawn.
 *
 * @param draws how many draws
 * @param seed where they started, as a text
 * @param firsts in how many draws each option came first, by its id
 */
public record SavedFirmness(int draws, String seed, List<First> firsts) {
  public SavedFirmness {
    firsts = List.copyOf(firsts);
  }

  /** How often an option came first. */
  public record First(String option, int times) {}

  static SavedFirmness of(Firmness firmness) {
    Map<String, Integer> sorted = new TreeMap<>();
    firmness.firsts().forEach((option, times) -> sorted.put(option.id(), times));
    return new SavedFirmness(
        firmness.draws(),
        String.valueOf(firmness.seed()),
        sorted.entrySet().stream().map(e -> new First(e.getKey(), e.getValue())).toList());
  }

  /** In words. */
  public String line() {
    return String.join(
        ", ", firsts.stream().map(first -> first.option() + " " + first.times()).toList());
  }
}
