package underhold.consult.stage;

import java.util.List;

/**
 * What carries places once it is accepted.
 *
 * @param name what it is
 * @param carries the places it can carry
 * @param temporary whether it is taken away again
 */
public record Support(String name, List<Place> carries, boolean temporary) {
  public Support {
    carries = List.copyOf(carries);
  }
}
