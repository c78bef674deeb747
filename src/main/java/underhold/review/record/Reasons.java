package underhold.review.record;

import java.util.ArrayList;
import java.util.List;

/** Why an entry cannot be made: what was typed, and what stands against it. */
final class Reasons {
  private final List<String> typed = new ArrayList<>();
  private final List<String> state = new ArrayList<>();

  /** Something typed is wrong. */
  void typed(String reason) {
    typed.add(reason);
  }

  /** The record or the consultation does not allow it. */
  void state(String reason) {
    state.add(reason);
  }

  boolean isEmpty() {
    return typed.isEmpty() && state.isEmpty();
  }

  Entering.Refused refused() {
    return new Entering.Refused(typed, state);
  }
}
