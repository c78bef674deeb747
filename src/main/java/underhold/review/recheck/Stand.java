package underhold.review.recheck;

/** Whether advice still stands, the best first. */
public enum Stand {
  /** Nothing is otherwise. */
  IDENTICAL("identical"),
  /** Something is otherwise, and nothing that what leads rests on is worse. */
  STANDS("stands"),
  /** The same leads, but something that it rests on is worse. */
  LOOK_AGAIN("look again"),
  /** Something else leads, or nothing. */
  FALLEN("no longer stands");

  private final String word;

  Stand(String word) {
    this.word = word;
  }

  /** The word on screens and in files. */
  public String word() {
    return word;
  }

  /** Whether whoever relied on the advice may go on. */
  public boolean holds() {
    return this == IDENTICAL || this == STANDS;
  }

  Stand worst(Stand other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
