package underhold.advice;

/**
 * Why a rule pack is refused.
 *
 * @param file the file of the pack
 * @param line the line, from 1; 0 where none applies
 * @param message what is wrong and what is allowed
 */
public record PackProblem(String file, int line, String message) {
  /** The problem in one line. */
  public String text() {
    return file + (line > 0 ? ":" + line : "") + ": " + message;
  }
}
