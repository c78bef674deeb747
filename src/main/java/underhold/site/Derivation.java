package underhold.site;

import org.jspecify.annotations.Nullable;

/**
 * One way in which a fact follows from others.
 *
 * @param target the name of the fact
 * @param rule the calculation
 */
record Derivation(String target, Rule rule) {

  /** A calculation from other facts. */
  @FunctionalInterface
  interface Rule {
    /** The value; null where the facts it needs are not all known. */
    @Nullable Derived from(Inputs inputs);
  }
}
