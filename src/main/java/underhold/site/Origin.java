package underhold.site;

import java.util.Locale;

/** Where the value of a fact comes from. Only stated and derived values may score. */
public enum Origin {
  /** The user stated it. */
  STATED,
  /** It follows from stated facts by a calculation or a rule. */
  DERIVED,
  /** A worst-case default of the dictionary: it may warn and ask, never score. */
  ASSUMED,
  /** Nobody knows. */
  UNKNOWN;

  /** Whether an answer may rest on it. */
  public boolean isKnown() {
    return this == STATED || this == DERIVED;
  }

  /** The word used on screens and in files. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
