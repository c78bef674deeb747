package underhold.site;

import org.jspecify.annotations.Nullable;

/**
 * What a site file says of one fact.
 *
 * @param value the value; null where the file says {@code "unknown"}
 * @param note the user's note; may be empty
 */
public record StatedFact(@Nullable FactValue value, String note) {
  /** Somebody said that it is not known. */
  public static StatedFact unknown(String note) {
    return new StatedFact(null, note);
  }
}
