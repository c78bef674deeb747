package underhold.site;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One fact of one zone.
 *
 * @param definition what the dictionary says of it
 * @param origin where the value comes from
 * @param value the value; null exactly where the origin is {@link Origin#UNKNOWN}
 * @param how a stated fact's note, a derived fact's derivation, the reason of an assumption; may be
 *     empty
 */
public record Fact(
    FactDefinition definition, Origin origin, @Nullable FactValue value, String how) {
  public Fact {
    if ((value == null) != (origin == Origin.UNKNOWN)) {
      throw new IllegalArgumentException(
          definition.name() + ": a fact is unknown exactly where it has no value");
    }
  }

  /** A fact nobody knows. */
  public static Fact unknown(FactDefinition definition) {
    return new Fact(definition, Origin.UNKNOWN, null, "");
  }

  public String name() {
    return definition.name();
  }

  public Optional<FactValue> maybe() {
    return Optional.ofNullable(value);
  }

  /** The value as a person reads it; {@code unknown} where there is none. */
  public String text() {
    return value == null ? "unknown" : value.text();
  }
}
