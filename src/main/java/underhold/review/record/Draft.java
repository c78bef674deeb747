package underhold.review.record;

import java.util.Optional;

/**
 * What somebody wants to enter.
 *
 * @param kind what it does
 * @param by the name typed
 * @param role what the writer is in this job
 * @param target the part it speaks of
 * @param instead what an override puts in place
 * @param refers the entry answered or withdrawn
 * @param statement what is signed
 * @param text what is said
 * @param why the reason
 */
public record Draft(
    EntryKind kind,
    String by,
    Optional<String> role,
    Optional<String> target,
    Optional<String> instead,
    Optional<Integer> refers,
    Optional<String> statement,
    Optional<String> text,
    Optional<String> why) {

  /** An entry of that kind that says nothing yet. */
  public static Draft of(EntryKind kind, String by) {
    return new Draft(
        kind,
        by,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  /** The same by somebody of that role. */
  public Draft as(Optional<String> wanted) {
    return new Draft(kind, by, wanted, target, instead, refers, statement, text, why);
  }

  /** The same about that part. */
  public Draft on(String wanted) {
    return new Draft(kind, by, role, Optional.of(wanted), instead, refers, statement, text, why);
  }

  /** The same with what is put in place. */
  public Draft instead(String wanted) {
    return new Draft(kind, by, role, target, Optional.of(wanted), refers, statement, text, why);
  }

  /** The same about the entry of that number. */
  public Draft to(int wanted) {
    return new Draft(kind, by, role, target, instead, Optional.of(wanted), statement, text, why);
  }

  /** The same with what is signed. */
  public Draft stating(String wanted) {
    return new Draft(kind, by, role, target, instead, refers, Optional.of(wanted), text, why);
  }

  /** The same with what is said. */
  public Draft saying(String wanted) {
    return new Draft(kind, by, role, target, instead, refers, statement, Optional.of(wanted), why);
  }

  /** The same with the reason. */
  public Draft because(Optional<String> wanted) {
    return new Draft(kind, by, role, target, instead, refers, statement, text, wanted);
  }
}
