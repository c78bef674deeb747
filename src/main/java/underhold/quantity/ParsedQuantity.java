package underhold.quantity;

import java.util.Optional;
import java.util.function.Function;

/** What became of a text that should be a quantity. */
public sealed interface ParsedQuantity {

  /** Handles both outcomes. */
  <R> R fold(Function<Parsed, R> parsed, Function<Rejected, R> rejected);

  /** The quantity, if the text was one. */
  default Optional<Quantity> toOptional() {
    return fold(parsed -> Optional.of(parsed.quantity()), rejected -> Optional.empty());
  }

  /** The text was a quantity of the measure asked for. */
  record Parsed(Quantity quantity) implements ParsedQuantity {
    @Override
    public <R> R fold(Function<Parsed, R> parsed, Function<Rejected, R> rejected) {
      return parsed.apply(this);
    }
  }

  /**
   * The text was not a quantity of the measure asked for.
   *
   * @param code why, for programs and tests
   * @param message why, for people; names what was typed and what is accepted
   * @param suggestion what to type instead: "type 4 ft or 4 m", "did you mean ft?"
   */
  record Rejected(RejectionCode code, String message, String suggestion) implements ParsedQuantity {
    @Override
    public <R> R fold(Function<Parsed, R> parsed, Function<Rejected, R> rejected) {
      return rejected.apply(this);
    }

    /** Message and suggestion in one line. */
    public String explanation() {
      return message + "; " + suggestion;
    }
  }
}
