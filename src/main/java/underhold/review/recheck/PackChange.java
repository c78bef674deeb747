package underhold.review.recheck;

/**
 * A change of the rules.
 *
 * @param kind what kind of change
 * @param name the rule, the limit or the strength
 * @param was how it was; empty where it was not there or only its fingerprint was kept
 * @param now how it is; empty where it is no more or only its fingerprint is kept
 */
public record PackChange(Kind kind, String name, String was, String now) {
  /** The kinds of change, those that move answers first. */
  public enum Kind {
    RULE_ADDED("rule added"),
    RULE_REMOVED("rule removed"),
    RULE_CONDITIONS("rule, other conditions"),
    RULE_ACTION("rule, states something else"),
    LIMIT_VALUE("limit, other value"),
    LIMIT_ADDED("limit added"),
    LIMIT_REMOVED("limit removed"),
    STRENGTH("strength counts otherwise"),
    TIE("tie, other gap"),
    COST_ORDER("order of equal points"),
    RULE_BASIS("rule, other basis"),
    LIMIT_BASIS("limit, other basis"),
    RULE_SENTENCE("rule, other words"),
    RULE_REASON("rule, reason in other words"),
    RULE_SOURCES("rule, other sources"),
    LIMIT_NOTE("limit, other label, source, note or range"),
    SOURCES("bibliography"),
    CRITERIA("criteria of compare"),
    FILES("files differ in layout or comments only");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** The words on screens and in files. */
    public String word() {
      return word;
    }
  }
}
