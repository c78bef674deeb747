package underhold.advice;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What a rule or a limit rests on. */
public enum Basis {
  STANDARD("standard"),
  PUBLISHED("published"),
  COMMON_PRACTICE("common practice"),
  JUDGEMENT("judgement"),
  FROM_MEMORY("from memory"),
  /** A limit set for a trial on the command line: nobody stands for it. No pack may claim it. */
  ON_TRIAL("on trial");

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

  /** The words that a pack may use. */
  static List<String> words() {
    return inPacks().map(Basis::word).toList();
  }

  /** Whether it claims a text that others can read. */
  boolean claimsSource() {
    return this == STANDARD || this == PUBLISHED;
  }

  private static Stream<Basis> inPacks() {
    return Arrays.stream(values()).filter(basis -> basis != ON_TRIAL);
  }

  /** The basis of that word, as a pack may use it. */
  public static Optional<Basis> find(String word) {
    return inPacks().filter(basis -> basis.word.equals(word)).findFirst();
  }
}
