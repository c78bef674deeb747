package underhold.shell;

import java.io.BufferedReader;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** Where typed lines come from. */
interface Lines {
  /**
   * Shows a prompt and reads a line.
   *
   * @param words what may well be typed, for completion
   * @return the line; empty at the end of the input
   * @throws Interrupted if the user pressed Ctrl-C
   */
  Optional<String> read(String prompt, List<String> words);

  /**
   * Lets Ctrl-C do something else than end the program, while no line is read.
   *
   * @return takes this back; where the lines come from no terminal, Ctrl-C is left as it is
   */
  default Runnable onInterrupt(Runnable action) {
    return () -> {};
  }

  /** The user pressed Ctrl-C. */
  final class Interrupted extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Interrupted() {
      super("interrupted", null, false, false);
    }
  }

  /** Lines of a file or pipe, read plainly. */
  static Lines of(BufferedReader reader, java.util.function.Consumer<String> prompts) {
    return (prompt, words) -> {
      prompts.accept(prompt);
      try {
        return Optional.ofNullable(reader.readLine());
      } catch (IOException e) {
        return Optional.empty(); // an input that is closed, or broken, has ended
      }
    };
  }
}
