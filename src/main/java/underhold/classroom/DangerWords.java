package underhold.classroom;

import java.util.List;
import java.util.Locale;
import underhold.advice.Effect;
import underhold.advice.Rule;
import underhold.advice.RulePack;

/** The words for dangers: the causes of which the rules warn, with hyphens. */
public final class DangerWords {
  private DangerWords() {}

  /** All of them, whatever the case, so that the list gives nothing away. */
  public static List<String> of(RulePack pack) {
    return pack.rules().stream()
        .filter(rule -> rule.effect() == Effect.CAUTION && rule.phase() != Rule.Phase.SCHEME)
        .map(rule -> word(rule.cause()))
        .distinct()
        .sorted()
        .toList();
  }

  /** A cause as a word: {@code people-in-pits}. */
  static String word(String cause) {
    return cause.strip().toLowerCase(Locale.ROOT).replace(' ', '-');
  }
}
