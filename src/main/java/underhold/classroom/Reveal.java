package underhold.classroom;

import java.util.List;
import java.util.Optional;

/**
 * Facts that become known together.
 *
 * @param zone the zone they are stated for; empty for the whole site
 * @param facts their names
 */
public record Reveal(Optional<String> zone, List<String> facts) {
  public Reveal {
    facts = List.copyOf(facts);
  }

  /** Each of them with its place. */
  public List<FactPlace> places() {
    return facts.stream().map(fact -> new FactPlace(zone.orElse(""), fact)).toList();
  }
}
