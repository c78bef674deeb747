package underhold.advice;

import org.jspecify.annotations.Nullable;

/**
 * One entry of the bibliography.
 *
 * @param key the key in rules
 * @param title author or body and title
 * @param kind what sort of source it is
 * @param year year or edition; null if unknown
 * @param read {@code in whole}, {@code in part} or {@code not read}
 * @param extent what was read; may be empty
 */
public record Source(
    String key, String title, String kind, @Nullable String year, String read, String extent) {

  /** What {@code read} says of a source nobody of us has read. */
  static final String NOT_READ = "not read";

  /** Whether it is cited from memory only. */
  public boolean fromMemory() {
    return read.equals(NOT_READ);
  }

  /** The citation, with the place in the source. */
  public String cite(String place) {
    StringBuilder text = new StringBuilder(title);
    if (year != null && !title.contains(year)) {
      text.append(", ").append(year);
    }
    if (!place.isEmpty()) {
      text.append(", ").append(place);
    }
    if (fromMemory()) {
      text.append(" (from memory, verify)");
    }
    return text.toString();
  }
}
