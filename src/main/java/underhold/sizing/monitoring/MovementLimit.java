package underhold.sizing.monitoring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import underhold.mechanics.movement.HistoricMovement;
import underhold.quantity.Quantity;
import underhold.site.FactView;
import underhold.sizing.Basis;
import underhold.sizing.Source;

/**
 * A limit of movement that may govern a structure. Of several the strictest governs, and every
 * level that is told is a share of that one.
 *
 * @param words whose limit it is
 * @param metres the limit, m
 * @param source who says so
 * @param binds whether it was stated for the site or set by an authority; above another an engineer
 *     decides
 */
public record MovementLimit(String words, double metres, Source source, boolean binds) {
  private static final String UNPROTECTED = "none";
  private static final Source STATED = new Source("limit as stated for the site", Basis.SITE_FACT);

  /** The limits that bind a structure on stated facts, as far as any does. */
  public static List<MovementLimit> binding(FactView facts) {
    List<MovementLimit> limits = new ArrayList<>();
    facts
        .amount("movementLimit")
        .map(Quantity::si)
        .map(MovementLimit::stated)
        .ifPresent(limits::add);
    if (facts.word("heritage").filter(word -> !word.equals(UNPROTECTED)).isPresent()) {
      limits.add(historic());
    }
    return limits;
  }

  /** The strictest of {@link #binding}; empty where none binds. */
  public static Optional<MovementLimit> governing(FactView facts) {
    return strictest(binding(facts));
  }

  /** The strictest of some; the first of equals. */
  static Optional<MovementLimit> strictest(List<MovementLimit> limits) {
    return limits.stream().min(Comparator.comparingDouble(MovementLimit::metres));
  }

  static MovementLimit stated(double metres) {
    return new MovementLimit("stated for the site", metres, STATED, true);
  }

  static MovementLimit assumed(double metres) {
    return new MovementLimit("assumed until it is agreed", metres, Source.judgement(), false);
  }

  static MovementLimit historic() {
    return new MovementLimit(
        "historic structures, vertical or horizontal",
        HistoricMovement.LIMIT_METRES,
        Sources.of(HistoricMovement.CITATION),
        true);
  }
}
