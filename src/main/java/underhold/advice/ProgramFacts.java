package underhold.advice;

import underhold.site.FactDefinition;

/** The facts that the program itself makes between the phases of a screening. */
final class ProgramFacts {
  private static final String SIZING = "sizing";
  private static final String OPTIONS_LEFT = "ordinaryOptionsLeft";

  private ProgramFacts() {}

  /** Whether the program makes it: what the sheets say, and whether any option is left. */
  static boolean makes(FactDefinition fact) {
    return fact.group().equals(SIZING) || fact.name().equals(OPTIONS_LEFT);
  }

  /** Whether it can be known to a rule of that phase. */
  static boolean known(FactDefinition fact, Rule.Phase phase) {
    return switch (phase) {
      case DERIVE, SCREEN -> !makes(fact);
      case CONFIRM -> !fact.name().equals(OPTIONS_LEFT);
      case SETTLE, SCHEME -> true;
    };
  }
}
