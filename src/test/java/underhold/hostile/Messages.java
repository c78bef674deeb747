package underhold.hostile;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import underhold.site.SiteProblem;
import underhold.site.SiteProblem.Code;

/** What a message must be: short, printable, and pointing to the place. */
public final class Messages {
  private static final int LONGEST = 2000;

  /** Problems of a file as a whole, which has no place. */
  private static final Set<Code> OF_THE_WHOLE =
      Set.of(Code.NOT_A_FILE, Code.TOO_LARGE, Code.NOT_UTF8, Code.TOO_MANY);

  private Messages() {}

  /** What is wrong with the problems of a file that was refused, or was read with problems. */
  static Optional<String> wrong(List<SiteProblem> problems, String file) {
    for (SiteProblem problem : problems) {
      String text = problem.text();
      if (!text.startsWith(file + ":")) {
        return Optional.of("a message does not name the file: " + visible(text));
      }
      boolean placed = problem.line() > 0 || !problem.place().isEmpty();
      if (!placed && !OF_THE_WHOLE.contains(problem.code())) {
        return Optional.of("a message does not name the place: " + visible(text));
      }
    }
    return wrong(problems.stream().map(SiteProblem::text).toList());
  }

  /** What is wrong with the messages; there must be one. */
  static Optional<String> wrong(List<String> messages) {
    if (messages.stream().anyMatch(String::isBlank)) {
      return Optional.of("a message says nothing");
    }
    for (String message : messages) {
      if (message.length() > LONGEST) {
        return Optional.of("a message is too long: " + visible(message.substring(0, 300)));
      }
      Optional<String> wrong = wrong(message);
      if (wrong.isPresent()) {
        return wrong;
      }
    }
    return Optional.empty();
  }

  /** What is wrong with a line that is printed. */
  static Optional<String> wrong(String line) {
    return unprintable(line, false)
        ? Optional.of("holds what could move the cursor: " + visible(line))
        : Optional.empty();
  }

  /** Whether a page or line holds signs that could steer a terminal or deceive its reader. */
  public static boolean unprintable(String text, boolean linesAllowed) {
    return text.codePoints().anyMatch(point -> !(linesAllowed && point == '\n') && steers(point));
  }

  private static boolean steers(int point) {
    return Character.isISOControl(point)
        || Character.getType(point) == Character.SURROGATE
        || (point >= 0x2028 && point <= 0x202E)
        || (point >= 0x2066 && point <= 0x2069);
  }

  /** The text as a test may print it. */
  public static String visible(String text) {
    StringBuilder shown = new StringBuilder();
    text.codePoints()
        .limit(400)
        .forEach(
            point -> {
              if (steers(point)) {
                shown.append(String.format(java.util.Locale.ROOT, "<%04X>", point));
              } else {
                shown.appendCodePoint(point);
              }
            });
    return shown.toString();
  }
}
