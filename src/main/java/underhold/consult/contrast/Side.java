package underhold.consult.contrast;

import java.util.List;
import underhold.advice.Finding;
import underhold.advice.OptionAdvice;
import underhold.advice.Standing;
import underhold.advice.Strength;
import underhold.advice.SupportOption;

/**
 * One of two options compared.
 *
 * @param advice what is advised of it
 */
public record Side(OptionAdvice advice) {
  public SupportOption option() {
    return advice.option();
  }

  /** Whether it is ruled out, so that points cannot bring it back. */
  public boolean ruledOut() {
    return advice.standing() == Standing.RULED_OUT;
  }

  /** What must come first before it works, by rules about it. */
  public List<Finding> first() {
    return advice.conditions().stream()
        .filter(finding -> finding.strength().filter(Strength.DECISIVE::equals).isPresent())
        .filter(finding -> !finding.rule().action().options().isEmpty())
        .toList();
  }
}
