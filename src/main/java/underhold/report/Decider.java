package underhold.report;

import underhold.advice.Finding;

/** Who decides about a caution: judgement, by the cause that the rule names. */
public enum Decider {
  COMPETENT_PERSON("the competent person on site"),
  ENGINEER_OF_RECORD("the engineer of record"),
  NEIGHBOUR("the owner of the neighbouring property, with the engineer of record");

  private final String words;

  Decider(String words) {
    this.words = words;
  }

  /** Who, in words. */
  public String words() {
    return words;
  }

  /** Who decides about what a caution says. */
  public static Decider of(Finding finding) {
    return switch (finding.rule().cause()) {
      case "contamination",
          "services",
          "obstructions",
          "programme",
          "drilling",
          "bracing",
          "people in pits",
          "jacked load" ->
          COMPETENT_PERSON;
      case "rights", "water", "live use", "noise" -> NEIGHBOUR;
      default -> ENGINEER_OF_RECORD;
    };
  }
}
