package underhold.consult.change;

import java.util.Objects;
import java.util.Optional;
import underhold.site.FactDefinition;
import underhold.site.FactValue;
import underhold.site.StatedFact;

/**
 * One fact stated otherwise, in one place.
 *
 * @param fact the fact
 * @param zone the zone where it is stated; empty for the whole site
 * @param before what was stated there; empty where nobody stated it
 * @param after what is stated there now
 */
public record ChangedFact(
    FactDefinition fact, Optional<String> zone, Optional<StatedFact> before, StatedFact after) {
  /** Whether the same was stated there already. */
  public boolean already() {
    return before
        .filter(stated -> Objects.equals(stated.value(), after.value()))
        .isPresent();
  }

  /** What was stated, as a person reads it. */
  public String textBefore() {
    return before.map(ChangedFact::text).orElse("not stated");
  }

  /** What is stated now, as a person reads it. */
  public String textAfter() {
    return text(after);
  }

  private static String text(StatedFact stated) {
    FactValue value = stated.value();
    return value == null ? "unknown" : value.text();
  }
}
