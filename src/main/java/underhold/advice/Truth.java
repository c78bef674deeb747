package underhold.advice;

/** Whether a condition holds: it may be open while a fact is unknown. */
public enum Truth {
  TRUE,
  FALSE,
  OPEN
}
