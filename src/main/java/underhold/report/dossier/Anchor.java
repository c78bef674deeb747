package underhold.report.dossier;

import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import underhold.advice.SupportOption;

/**
 * The anchors of a package. They are made from the place of a zone, and from names of the program,
 * never from what a user typed.
 */
final class Anchor {
  private static final Pattern NEW_WORD = Pattern.compile("(?<=[a-z0-9])(?=[A-Z])");
  private static final Pattern BETWEEN = Pattern.compile("[^a-z0-9]+");
  private static final Pattern ENDS = Pattern.compile("^-+|-+$");

  private Anchor() {}

  /** Parts joined by hyphens, each in lower-case letters and digits. */
  static String of(Object... parts) {
    return Stream.of(parts)
        .map(part -> slug(String.valueOf(part)))
        .collect(Collectors.joining("-"));
  }

  static String slug(String text) {
    String words = NEW_WORD.matcher(text).replaceAll("-").toLowerCase(Locale.ROOT);
    return ENDS.matcher(BETWEEN.matcher(words).replaceAll("-")).replaceAll("");
  }

  /** What the ids of drawings begin with: whose they are, apart from all other anchors. */
  static String figures(Object... whose) {
    return "figure-" + of(whose);
  }

  /** A fact of the whole site (0) or of a zone. */
  static String fact(int zone, String name) {
    return of("fact", zone, name);
  }

  /** A rule that fired in a zone, in the trace. */
  static String trace(int zone, String rule) {
    return of("trace", zone, rule);
  }

  /** A rule that nearly fired in a zone, in the trace. */
  static String near(int zone, String rule) {
    return of("near", zone, rule);
  }

  /** A rule as it is written. */
  static String rule(String rule) {
    return of("rule", rule);
  }

  /** What a rule says of an option in a zone. */
  static String reason(int zone, SupportOption option, String rule) {
    return of("reason", zone, option.id(), rule);
  }

  /** A condition that a rule sets in a zone. */
  static String condition(int zone, String rule) {
    return of("condition", zone, rule);
  }

  /** A caution that a rule gives in a zone. */
  static String caution(int zone, String rule) {
    return of("caution", zone, rule);
  }

  /** What a rule says between zones, by its place in the list. */
  static String between(int place, String rule) {
    return of("between", place, rule);
  }

  /** A value assumed in a zone. */
  static String assumed(int zone, String fact) {
    return of("assumed", zone, fact);
  }

  /** An open question of a zone. */
  static String question(int zone, String fact) {
    return of("question", zone, fact);
  }

  static String sheet(int zone, SupportOption option) {
    return of("sheet", zone, option.id());
  }

  /** A stage of the plan by its number. */
  static String stage(int number) {
    return of("stage", number);
  }

  /** A source of the rules by its key. */
  static String source(String key) {
    return of("source", key);
  }
}
