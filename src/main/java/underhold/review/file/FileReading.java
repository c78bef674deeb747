package underhold.review.file;

import java.util.List;
import java.util.Optional;
import underhold.site.SavedState;
import underhold.site.SiteProblem;

/**
 * What a file held.
 *
 * @param content its content; empty where there are problems
 * @param text its text; empty where it could not be read
 * @param state the state of the file when it was read
 * @param problems all that is wrong with it, in the order of the file
 */
public record FileReading<T>(
    Optional<T> content, String text, SavedState state, List<SiteProblem> problems) {
  public FileReading {
    problems = List.copyOf(problems);
  }

  /** The problems in one line each. */
  public List<String> messages() {
    return problems.stream().map(SiteProblem::text).toList();
  }
}
