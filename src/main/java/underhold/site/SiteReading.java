package underhold.site;

import java.util.List;
import java.util.function.Function;

/** What became of a text or file that should be a site. */
public sealed interface SiteReading {
  /** Handles both outcomes. */
  <R> R fold(Function<Valid, R> valid, Function<Invalid, R> invalid);

  /**
   * A valid site.
   *
   * @param site the site
   * @param savedState the state of the file when it was read; {@link SavedState#NO_FILE} for a text
   */
  record Valid(Site site, SavedState savedState) implements SiteReading {
    @Override
    public <R> R fold(Function<Valid, R> valid, Function<Invalid, R> invalid) {
      return valid.apply(this);
    }
  }

  /** No valid site, and all that is wrong with it, in the order of the file. */
  record Invalid(List<SiteProblem> problems) implements SiteReading {
    public Invalid {
      problems = List.copyOf(problems);
      if (problems.isEmpty()) {
        throw new IllegalArgumentException("a site is invalid because of at least one problem");
      }
    }

    @Override
    public <R> R fold(Function<Valid, R> valid, Function<Invalid, R> invalid) {
      return invalid.apply(this);
    }
  }
}
