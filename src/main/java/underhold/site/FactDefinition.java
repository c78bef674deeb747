package underhold.site;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import underhold.quantity.Measure;

/**
 * What the dictionary says of one fact.
 *
 * @param index its place in the dictionary, from 0
 * @param name the name in files, rules and commands
 * @param label the name in sentences
 * @param scope where it is usually stated: once for the site, or zone by zone
 * @param group the heading under which it is listed
 * @param kind what sort of value it takes
 * @param question how the interview asks for it
 * @param why why it matters
 * @param values the words allowed, in order; empty for amounts
 * @param range the unit and limits of an amount; null for words
 * @param options the support options that hang on it, by id
 * @param unknown what it means while nobody knows it; null for derived facts
 * @param findOut how to find it out; may be empty
 * @param required whether a zone without it cannot be advised at all
 * @param derived whether it is never stated but always follows from others
 * @param askInstead the facts asked for in its place, because it follows from them; may be empty
 * @param core its place among the questions asked first, from 1; 0 for the others
 */
public record FactDefinition(
    int index,
    String name,
    String label,
    Scope scope,
    String group,
    FactKind kind,
    String question,
    String why,
    List<Allowed> values,
    @Nullable Range range,
    List<String> options,
    @Nullable Unknown unknown,
    String findOut,
    boolean required,
    boolean derived,
    List<String> askInstead,
    int core) {

  public FactDefinition {
    values = List.copyOf(values);
    options = List.copyOf(options);
    askInstead = List.copyOf(askInstead);
    if (kind.isNumber() == (range == null) || kind.isNumber() != values.isEmpty()) {
      throw new IllegalArgumentException(
          name + ": an amount has a range, every other fact a list of values");
    }
    if (derived == (unknown != null)) {
      throw new IllegalArgumentException(
          name + ": a fact is derived or the dictionary says what it means while unknown");
    }
  }

  /** Where a fact is usually stated. */
  public enum Scope {
    SITE,
    ZONE
  }

  /** A word allowed, and what it means. */
  public record Allowed(String value, String means) {}

  /**
   * The unit and the limits of an amount.
   *
   * @param measure what is measured
   * @param siUnit the unit suggested to users of SI
   * @param usUnit the unit suggested to users of US customary units
   * @param fine whether it is shown in small units (mm, in)
   * @param min least value accepted, in the inside unit
   * @param max greatest value accepted, in the inside unit
   * @param minText the least value as written in the dictionary
   * @param maxText the greatest value as written in the dictionary
   */
  public record Range(
      Measure measure,
      String siUnit,
      String usUnit,
      boolean fine,
      double min,
      double max,
      String minText,
      String maxText) {}

  /** The word of the dictionary, if it is one. */
  public Optional<Allowed> allowed(String value) {
    return values.stream().filter(a -> a.value().equals(value)).findFirst();
  }

  /** The range of an amount. */
  public Range requireRange() {
    if (range == null) {
      throw new IllegalStateException(name + " is not an amount");
    }
    return range;
  }
}
