package underhold.consult.change;

import java.util.List;
import java.util.Optional;
import underhold.consult.QuickSizing;

/**
 * The sheet of an option before and after.
 *
 * @param before the sizing before; empty where the option was not sized
 * @param after the sizing now
 * @param checks the checks whose verdict is another, where both sheets hold numbers
 */
public record SheetChange(
    Optional<QuickSizing> before, Optional<QuickSizing> after, List<CheckChange> checks) {
  public SheetChange {
    checks = List.copyOf(checks);
  }

  /** What there is of a sheet. */
  public enum State {
    /** There is no sheet: the option is ruled out, or there is nothing to size. */
    NONE("not sized"),
    /** The sheet only asks. */
    ASKS("asks"),
    /** The sheet holds numbers. */
    COMPLETE("complete");

    private final String word;

    State(String word) {
      this.word = word;
    }

    /** The word in files. */
    public String word() {
      return word;
    }
  }

  public State stateBefore() {
    return state(before);
  }

  public State stateAfter() {
    return state(after);
  }

  private static State state(Optional<QuickSizing> sizing) {
    return sizing.map(one -> one.complete() ? State.COMPLETE : State.ASKS).orElse(State.NONE);
  }

  /** Whether it became complete, or ceased to be, or was sized at all. */
  public boolean stateChanged() {
    return stateBefore() != stateAfter();
  }
}
