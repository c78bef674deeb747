package underhold.advice;

/** What a rule states. */
public enum Effect {
  DERIVE("derive", "derive"),
  RULE_OUT("ruleOut", "rule out"),
  AGAINST("against", "against"),
  FOR("speakFor", "for"),
  REQUIRE("require", "require"),
  CAUTION("caution", "caution"),
  REFER("refer", "refer");

  private final String verb;
  private final String word;

  Effect(String verb, String word) {
    this.verb = verb;
    this.word = word;
  }

  /** The verb in a rule's action. */
  public String verb() {
    return verb;
  }

  /** The word on screens and in files. */
  public String word() {
    return word;
  }

  /** Whether it counts in the score of an option. */
  public boolean scores() {
    return this == FOR || this == AGAINST || this == REFER;
  }
}
