package underhold.review.record;

import java.util.Arrays;
import java.util.Optional;

/** What an entry of a review does. */
public enum EntryKind {
  /** The review begins. */
  START("start"),
  /** A remark; nobody has to answer. */
  COMMENT("comment"),
  /** A question that stays open until it is answered or withdrawn. */
  QUERY("query"),
  /** The answer to a query. */
  ANSWER("answer"),
  /** The reviewer judges otherwise than the program; the original stays and is always shown. */
  OVERRIDE("override"),
  /** An earlier entry no longer holds; it stays in the record. */
  WITHDRAW("withdraw"),
  /** A signature over everything before it. */
  SIGN("sign"),
  /** A new round, which the signatures before do not cover. */
  REOPEN("reopen");

  private final String word;

  EntryKind(String word) {
    this.word = word;
  }

  /** The word in files and on screens. */
  public String word() {
    return word;
  }

  /** The kind of that word. */
  public static Optional<EntryKind> find(String word) {
    return Arrays.stream(values()).filter(kind -> kind.word.equals(word)).findFirst();
  }

  /** Whether such an entry can be withdrawn. */
  boolean canBeWithdrawn() {
    return this == COMMENT || this == QUERY || this == ANSWER || this == OVERRIDE;
  }
}
