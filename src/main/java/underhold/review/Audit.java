package underhold.review;

import underhold.advice.RulePack;
import underhold.consult.Consultant;

/**
 * An audit of the rules.
 *
 * @param pack the rules
 * @param publishedJobs how they agree with published jobs
 */
public record Audit(RulePack pack, AgreementTable publishedJobs) {
  /** Audits the rules a consultant answers by. */
  public static Audit of(Consultant consultant) {
    return new Audit(consultant.pack(), AgreementTable.of(consultant, PublishedJobs.builtIn()));
  }
}
