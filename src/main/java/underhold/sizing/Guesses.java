package underhold.sizing;

/**
 * What is done about inputs that nobody stated. Either way the same checks fail; only which of the
 * others pass and which refer to the engineer differs.
 */
public enum Guesses {
  /** Each is tried at other values, and a check that moves refers to the engineer: for sheets. */
  TRIED,
  /** They are taken as they are: for trials of many sites, which ask only what fails. */
  TAKEN
}
