package underhold.report.dossier;

import underhold.review.record.ReviewRecord;

/**
 * The review that goes with a package.
 *
 * @param record the review
 * @param doubt why the record may not speak of this package, in sentences; empty where it does
 */
public record Reviewing(ReviewRecord record, String doubt) {}
