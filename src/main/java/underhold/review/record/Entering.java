package underhold.review.record;

import java.util.List;
import java.util.stream.Stream;

/** What became of an entry that somebody wanted to make. */
public sealed interface Entering {

  /** The record with the entry at its end. */
  record Done(ReviewFile file) implements Entering {}

  /**
   * Nothing was entered, for at least one reason.
   *
   * @param typed what is wrong with what was typed
   * @param state what stands against it in the record or the consultation
   */
  record Refused(List<String> typed, List<String> state) implements Entering {
    public Refused {
      typed = List.copyOf(typed);
      state = List.copyOf(state);
      if (typed.isEmpty() && state.isEmpty()) {
        throw new IllegalArgumentException("an entry is refused for at least one reason");
      }
    }

    /** All reasons. */
    public List<String> problems() {
      return Stream.concat(state.stream(), typed.stream()).toList();
    }
  }
}
