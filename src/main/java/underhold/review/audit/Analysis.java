package underhold.review.audit;

/** One question that the audit asks of a pack. */
interface Analysis {
  /** Its name in commands. */
  String name();

  Section run(Bench bench);
}
