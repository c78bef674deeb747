package underhold.consult.change;

import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
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
  /** Whether the same was stated there already, or nothing where nothing is stated now. */
  public boolean already() {
    return same(before.map(StatedFact::value).orElse(null), after.value());
  }

  /** An amount is the same however it is typed. */
  private static boolean same(@Nullable FactValue one, @Nullable FactValue other) {
    return one instanceof FactValue.Amount was && other instanceof FactValue.Amount is
        ? was.quantity().si() == is.quantity().si()
        : Objects.equals(one, other);
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
