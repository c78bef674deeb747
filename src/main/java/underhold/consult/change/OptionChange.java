package underhold.consult.change;

import java.util.List;
import underhold.advice.Hold;
import underhold.advice.SupportOption;

/**
 * One option before and after.
 *
 * @param option the option
 * @param before how it stood
 * @param after how it stands now
 * @param findings the findings that bear on it otherwise than before
 * @param holdsGained the rules that hold it now and did not
 * @param holdsLost the rules that held it and do not now
 * @param sheet its sheet
 */
public record OptionChange(
    SupportOption option,
    Place before,
    Place after,
    List<FindingChange> findings,
    List<Hold> holdsGained,
    List<Hold> holdsLost,
    SheetChange sheet) {
  public OptionChange {
    findings = List.copyOf(findings);
    holdsGained = List.copyOf(holdsGained);
    holdsLost = List.copyOf(holdsLost);
  }

  /** Whether rank, standing, score and tie are what they were. */
  public boolean placed() {
    return before.equals(after);
  }

  /** Whether there is anything to tell beside its place. */
  public boolean detailed() {
    return !findings.isEmpty()
        || !holdsGained.isEmpty()
        || !holdsLost.isEmpty()
        || !sheet.checks().isEmpty()
        || sheet.stateChanged();
  }
}
