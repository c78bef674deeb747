package underhold.review.record;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What a signer states. */
public enum Statement {
  CHECKED("checked", "checked, no objection"),
  ACCEPTED_WITH_COMMENTS("accepted-with-comments", "accepted with the comments of this record"),
  NOT_ACCEPTED("not-accepted", "not accepted");

  private final String word;
  private final String meaning;

  Statement(String word, String meaning) {
    this.word = word;
    this.meaning = meaning;
  }

  /** The word in files and commands. */
  public String word() {
    return word;
  }

  /** In a sentence. */
  public String meaning() {
    return meaning;
  }

  /** All words. */
  public static List<String> words() {
    return Arrays.stream(values()).map(Statement::word).toList();
  }

  /** The statement of that word. */
  public static Optional<Statement> find(String word) {
    return Arrays.stream(values()).filter(one -> one.word.equals(word)).findFirst();
  }
}
