package underhold.consult;

import underhold.advice.Effect;
import underhold.advice.Finding;
import underhold.advice.OptionAdvice;

/** What one finding does to the standing of one option. */
public enum Bearing {
  /** It rules the option out. */
  RULES_OUT("rules out"),
  /** It counts in the option's score. */
  COUNTS("counts"),
  /** A stronger finding speaks of the same cause, so it does not count. */
  NOT_COUNTED("not counted"),
  /** It rests on an assumed fact: it warns, and never counts. */
  PERHAPS("perhaps"),
  /** It is not about the option. */
  NONE("none");

  private final String word;

  Bearing(String word) {
    this.word = word;
  }

  /** The bearing of a finding on an option. */
  public static Bearing of(Finding finding, OptionAdvice advice) {
    boolean speaks = finding.effect().scores() || finding.effect() == Effect.RULE_OUT;
    if (!speaks || !finding.rule().concerns(advice.option())) {
      return NONE;
    }
    if (finding.assumed()) {
      return PERHAPS;
    }
    if (finding.effect() == Effect.RULE_OUT) {
      return RULES_OUT;
    }
    return advice.uncounted().contains(finding) ? NOT_COUNTED : COUNTS;
  }

  /** The word in files. */
  public String word() {
    return word;
  }

  /** Whether it rests on what is known. */
  public boolean known() {
    return this == RULES_OUT || this == COUNTS || this == NOT_COUNTED;
  }
}
