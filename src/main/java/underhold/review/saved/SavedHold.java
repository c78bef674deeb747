package underhold.review.saved;

import java.util.List;

/**
 * A safety rule that holds an option.
 *
 * @param rule its id
 * @param ask the facts to find out
 * @param explanation in words
 */
public record SavedHold(String rule, List<String> ask, String explanation) {
  public SavedHold {
    ask = List.copyOf(ask);
  }
}
