package underhold.review.record;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import underhold.review.file.Fingerprint;
import underhold.review.file.RecordTree;
import underhold.site.PlainText;

/**
 * One entry of a review. What its kind does not need is left out.
 *
 * @param number its number, from 1
 * @param round the round it belongs to, from 1
 * @param when when it was written, UTC, to the second
 * @param by the name that its writer typed
 * @param role what the writer is in this job
 * @param kind what it does: a word of {@link EntryKind}
 * @param target the part of the consultation it speaks of
 * @param original what the consultation says there
 * @param instead what an override puts beside it
 * @param refers the number of the entry that is answered or withdrawn
 * @param statement what is signed: a word of {@link Statement}
 * @param reviewed the fingerprint of the consultation as it was found when signing
 * @param text what is said
 * @param why the reason of an override, a withdrawal, a new round, or of signing while queries are
 *     open
 * @param before the fingerprint of the entry before; of the first that of what is reviewed
 * @param hash the fingerprint of all the above
 */
public record Entry(
    int number,
    int round,
    Instant when,
    String by,
    Optional<String> role,
    String kind,
    Optional<String> target,
    Optional<String> original,
    Optional<String> instead,
    Optional<Integer> refers,
    Optional<String> statement,
    Optional<String> reviewed,
    Optional<String> text,
    Optional<String> why,
    String before,
    String hash) {
  private static final String HASH = "hash";

  public Entry {
    EntryKind known =
        EntryKind.find(kind)
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "there is no kind of entry " + PlainText.quoted(kind)));
    boolean complete =
        switch (known) {
          case START -> true;
          case COMMENT, QUERY -> target.isPresent() && text.isPresent();
          case ANSWER -> refers.isPresent() && text.isPresent();
          case OVERRIDE ->
              target.isPresent() && original.isPresent() && instead.isPresent() && why.isPresent();
          case WITHDRAW -> refers.isPresent() && why.isPresent();
          case SIGN ->
              role.isPresent()
                  && reviewed.isPresent()
                  && statement.flatMap(Statement::find).isPresent();
          case REOPEN -> why.isPresent();
        };
    if (!complete) {
      throw new IllegalArgumentException(
          "entry " + number + " lacks what every " + kind + " has, or states what nobody can");
    }
  }

  /** What it does. */
  public EntryKind does() {
    return EntryKind.find(kind).orElseThrow();
  }

  /** The same with its own fingerprint. */
  Entry hashed() {
    return new Entry(
        number,
        round,
        when,
        by,
        role,
        kind,
        target,
        original,
        instead,
        refers,
        statement,
        reviewed,
        text,
        why,
        before,
        fingerprint());
  }

  /** The fingerprint of all but the fingerprint itself. */
  String fingerprint() {
    Map<String, Object> tree = RecordTree.of(this);
    tree.remove(HASH);
    return Fingerprint.ofTree(tree);
  }

  /** Number and kind, for messages. */
  String name() {
    return "entry " + number + " (" + kind + " by " + PlainText.shown(by) + ")";
  }
}
