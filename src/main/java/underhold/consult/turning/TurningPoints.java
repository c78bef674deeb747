package underhold.consult.turning;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import underhold.consult.trial.Outcome;

/**
 * The turning points of a zone.
 *
 * @param goal the option asked for; null where any other option may come first
 * @param base how the zone stands as it is
 * @param singles single changes, the smallest first
 * @param pairs changes of two facts together
 * @param triples changes of three facts together
 * @param tried how many single changes were tried
 * @param complete whether every combination that could turn the answer was tried, or enough found
 */
public record TurningPoints(
    @Nullable Goal goal,
    Outcome base,
    List<TurningPoint> singles,
    List<TurningPoint> pairs,
    List<TurningPoint> triples,
    int tried,
    boolean complete) {
  public TurningPoints {
    singles = List.copyOf(singles);
    pairs = List.copyOf(pairs);
    triples = List.copyOf(triples);
  }

  /** All of them. */
  public List<TurningPoint> all() {
    return Stream.of(singles, pairs, triples).flatMap(List::stream).toList();
  }
}
