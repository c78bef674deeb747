package underhold.classroom;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import underhold.advice.Effect;
import underhold.advice.Rule;
import underhold.advice.RulePack;

/** The words for dangers: the causes of which the rules warn, with hyphens. */
public final class DangerWords {
  private DangerWords() {}

  /**
   * All of them with what the rules warn of, whatever the case, so that the list gives nothing
   * away.
   */
  public static List<Named> of(RulePack pack) {
    Map<String, String> found = new TreeMap<>();
    pack.rules().stream()
        .filter(rule -> rule.effect() == Effect.CAUTION && rule.phase() != Rule.Phase.SCHEME)
        .forEach(rule -> found.merge(word(rule.cause()), rule.sentence(), (one, two) -> one));
    return found.entrySet().stream()
        .map(entry -> new Named(entry.getKey(), entry.getValue()))
        .toList();
  }

  /** A cause as a word: {@code people-in-pits}. */
  static String word(String cause) {
    return cause.strip().toLowerCase(Locale.ROOT).replace(' ', '-');
  }
}
