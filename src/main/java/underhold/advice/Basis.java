package underhold.advice;

import java.util.Arrays;
import java.util.Optional;

/** What a rule or a limit rests on. */
public enum Basis {
  STANDARD("standard"),
  PUBLISHED("published"),
  COMMON_PRACTICE("common practice"),
  JUDGEMENT("judgement"),
  FROM_MEMORY("from memory");

  private final String word;

  Basis(String word) {
    this.word = word;
  }

  /** The word in files and on screens. */
  public String word() {
    return word;
  }

  /** The word with what the reader has to do about it. */
  public String notice() {
    return this == FROM_MEMORY ? "from memory, verify" : word;
  }

  /** The basis of that word. */
  public static Optional<Basis> find(String word) {
    return Arrays.stream(values()).filter(basis -> basis.word.equals(word)).findFirst();
  }
}
