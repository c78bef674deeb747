package underhold.classroom;

import java.util.Comparator;
import java.util.Optional;
import underhold.advice.Effect;
import underhold.advice.Finding;
import underhold.advice.OptionAdvice;

/** Findings in words, with their rules and sources. */
public final class Cited {
  private Cited() {}

  /** The reason of a finding with its rule, its source, and what that is worth. */
  public static String words(Finding finding) {
    return words(finding, finding.reason());
  }

  /** The same with other words for the reason. */
  static String words(Finding finding, String reason) {
    String basis = finding.rule().basis().notice();
    return reason
        + " ["
        + finding.rule().id()
        + ", "
        + (finding.source().isEmpty() ? basis : finding.source() + ", " + basis)
        + "]";
  }

  /** The finding with that effect that counts most for an option. */
  public static Optional<Finding> strongest(OptionAdvice option, Effect effect) {
    return option.findings(effect).stream()
        .filter(finding -> !option.uncounted().contains(finding))
        .min(Comparator.comparing(finding -> finding.strength().map(Enum::ordinal).orElse(-1)));
  }
}
