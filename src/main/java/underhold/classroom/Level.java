package underhold.classroom;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** How much a case asks of its student. */
public enum Level {
  FIRST("first", "one thing decides"),
  SECOND("second", "one thing decides, and it is not the first that meets the eye"),
  THIRD("third", "facts are open, change or pull two ways");

  private final String word;
  private final String means;

  Level(String word, String means) {
    this.word = word;
    this.means = means;
  }

  /** The word in files. */
  public String word() {
    return word;
  }

  /** What it means. */
  public String means() {
    return means;
  }

  /** The level of that word. */
  public static Optional<Level> find(String word) {
    return Arrays.stream(values()).filter(level -> level.word.equals(word)).findFirst();
  }

  static List<String> words() {
    return Arrays.stream(values()).map(Level::word).toList();
  }
}
