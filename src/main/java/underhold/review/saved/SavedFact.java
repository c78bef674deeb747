package underhold.review.saved;

import underhold.site.Fact;

/**
 * A fact of a zone that has a value.
 *
 * @param name its name
 * @param label its name in sentences
 * @param value its value as a person reads it
 * @param origin stated, derived or assumed
 * @param how the note, the derivation or the reason of the assumption; may be empty
 */
public record SavedFact(String name, String label, String value, String origin, String how) {
  static SavedFact of(Fact fact) {
    return new SavedFact(
        fact.name(), fact.definition().label(), fact.text(), fact.origin().word(), fact.how());
  }

  /** Value and origin in a few words. */
  public String line() {
    return value + " (" + origin + ")";
  }
}
