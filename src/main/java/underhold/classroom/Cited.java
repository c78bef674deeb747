package underhold.classroom;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Collectors;
import underhold.advice.Effect;
import underhold.advice.Finding;
import underhold.advice.OptionAdvice;
import underhold.site.Origin;

/** Findings in words, with their rules and sources. */
public final class Cited {
  private Cited() {}

  /** The reason of a finding with its rule, its source, and what that is worth. */
  public static String words(Finding finding) {
    return words(finding, finding.reason());
  }

  /** The same with other words for the reason. */
  public static String words(Finding finding, String reason) {
    String basis = finding.rule().basis().notice();
    return reason
        + assumed(finding)
        + " ["
        + finding.rule().id()
        + ", "
        + (finding.source().isEmpty() ? basis : finding.source() + ", " + basis)
        + "]";
  }

  /** What was assumed, where a finding rests on what nobody has stated. */
  private static String assumed(Finding finding) {
    String facts =
        finding.facts().stream()
            .filter(fact -> fact.origin() == Origin.ASSUMED)
            .map(fact -> fact.label() + " " + fact.value())
            .collect(Collectors.joining(", "));
    return facts.isEmpty() ? "" : " (assumed, for nobody has said: " + facts + ")";
  }

  /** The finding with that effect that counts most for an option. */
  public static Optional<Finding> strongest(OptionAdvice option, Effect effect) {
    return option.findings(effect).stream()
        .filter(finding -> !option.uncounted().contains(finding))
        .min(Comparator.comparing(finding -> finding.strength().map(Enum::ordinal).orElse(-1)));
  }
}
