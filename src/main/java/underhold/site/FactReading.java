package underhold.site;

import java.util.function.Function;
import java.util.function.Supplier;

/** What became of a text typed as the value of a fact. */
public sealed interface FactReading {
  /** Handles all outcomes. */
  <R> R fold(Function<FactValue, R> accepted, Supplier<R> notKnown, Function<Rejected, R> rejected);

  /** The text is a value that the dictionary allows. */
  record Accepted(FactValue value) implements FactReading {
    @Override
    public <R> R fold(
        Function<FactValue, R> accepted, Supplier<R> notKnown, Function<Rejected, R> rejected) {
      return accepted.apply(value);
    }
  }

  /** The text says that nobody knows. */
  record NotKnown() implements FactReading {
    @Override
    public <R> R fold(
        Function<FactValue, R> accepted, Supplier<R> notKnown, Function<Rejected, R> rejected) {
      return notKnown.get();
    }
  }

  /**
   * The text is no value of this fact.
   *
   * @param code why, for programs and tests
   * @param message why, and what is allowed
   * @param suggestion what to type instead; may be empty
   */
  record Rejected(SiteProblem.Code code, String message, String suggestion) implements FactReading {
    @Override
    public <R> R fold(
        Function<FactValue, R> accepted, Supplier<R> notKnown, Function<Rejected, R> rejected) {
      return rejected.apply(this);
    }

    /** Message and suggestion in one line. */
    public String explanation() {
      return suggestion.isEmpty() ? message : message + "; " + suggestion;
    }
  }
}
