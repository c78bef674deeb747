package underhold.review.recheck;

import java.util.List;

/**
 * A zone run again.
 *
 * @param zone its name
 * @param was what was recommended, in a few words
 * @param now what is recommended now
 * @param stand whether that stands
 * @param differences what is otherwise, the most important first
 */
public record ZoneRecheck(
    String zone, String was, String now, Stand stand, List<Difference> differences) {
  public ZoneRecheck {
    differences = List.copyOf(differences);
  }
}
