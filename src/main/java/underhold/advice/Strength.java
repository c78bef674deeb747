package underhold.advice;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** How much a finding counts, or how loudly it must be told. */
public enum Strength {
  DECISIVE,
  MAJOR,
  MODERATE,
  MINOR;

  /** The word in rules and on screens. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The strength of that word. */
  public static Optional<Strength> find(String word) {
    return Arrays.stream(values()).filter(strength -> strength.word().equals(word)).findFirst();
  }
}
