package underhold.shell;

/**
 * What became of a typed answer.
 *
 * @param kind what sort of reply it is
 * @param text what is to be said; may be empty
 */
record Reply(Kind kind, String text) {
  /** The sorts of replies. */
  enum Kind {
    /** The answer was taken; the site may have changed. */
    TAKEN,
    /** The answer was not understood or cannot be; the question stands. */
    REFUSED,
    /** The user asked why the question matters. */
    EXPLAIN,
    /** The question before stands again. */
    BACK,
    /** The user wants to stop here. */
    STOP
  }

  static Reply taken(String text) {
    return new Reply(Kind.TAKEN, text);
  }

  static Reply refused(String text) {
    return new Reply(Kind.REFUSED, text);
  }
}
