package underhold.consult;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import underhold.advice.SupportOption;
import underhold.sizing.Check;
import underhold.sizing.Sheet;
import underhold.sizing.Verdict;

/**
 * The sizing of an option inside the advice, with the site's own settings.
 *
 * @param option the option
 * @param sheet its sheet
 */
public record QuickSizing(SupportOption option, Sheet sheet) {
  /** Whether the sheet holds numbers, or only asks. */
  public boolean complete() {
    return sheet.missing().isEmpty() && !sheet.checks().isEmpty();
  }

  /** Number of checks with that verdict. */
  public long count(Verdict verdict) {
    return sheet.checks().stream().filter(check -> check.verdict() == verdict).count();
  }

  /**
   * The check that governs: of those that fail the most used, else of those that refer, else of
   * those that pass; a check without capacity counts as most used.
   */
  public Optional<Check> governing() {
    for (Verdict verdict : List.of(Verdict.FAILS, Verdict.REFER, Verdict.PASSES)) {
      Optional<Check> most =
          sheet.checks().stream()
              .filter(check -> check.verdict() == verdict)
              .max(Comparator.comparingDouble(QuickSizing::use));
      if (most.isPresent()) {
        return most;
      }
    }
    return Optional.empty();
  }

  private static double use(Check check) {
    return check.utilisation().orElse(Double.MAX_VALUE);
  }
}
