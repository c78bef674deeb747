package underhold.consult.scheme;

/** What comes of asking for the scheme of a site. */
public sealed interface SchemeOutcome {

  /** A scheme. */
  record Made(Scheme scheme) implements SchemeOutcome {}

  /**
   * None.
   *
   * @param reason why, and what to do
   */
  record NotMade(String reason) implements SchemeOutcome {}
}
