package underhold.classroom;

import java.util.Optional;

/**
 * What is taken for true from a stage on, until a later one shows how it is.
 *
 * @param zone the zone it is stated for; empty for the whole site
 * @param fact the fact
 * @param value what is believed, as the site file would state it
 */
public record Believed(Optional<String> zone, String fact, String value) {
  /** Where it is stated. */
  public FactPlace place() {
    return new FactPlace(zone.orElse(""), fact);
  }
}
