package underhold.quantity;

import java.math.BigDecimal;

/** What was found at the head of a text where a number should stand. */
sealed interface NumberText {
  /**
   * A number was read.
   *
   * @param value the value, exact unless it is a fraction such as 1/3
   * @param typed the part of the text that was the number
   * @param rest what stands behind it, stripped
   */
  record Read(BigDecimal value, String typed, String rest) implements NumberText {}

  /** No number could be read, and why. */
  record Unreadable(RejectionCode code) implements NumberText {}
}
