package underhold.advice;

import java.util.List;

/**
 * A safety rule that may yet rule an option out, because facts are unknown.
 *
 * @param rule the rule
 * @param open the open conditions' facts, by name
 * @param ask the facts to find out, by name, deciding ones first
 * @param explanation in words
 */
public record Hold(Rule rule, List<String> open, List<String> ask, String explanation) {
  public Hold {
    open = List.copyOf(open);
    ask = List.copyOf(ask);
  }
}
