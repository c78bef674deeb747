package underhold.consult.change;

import underhold.advice.Finding;
import underhold.consult.Bearing;

/**
 * A finding that bears on an option otherwise than before.
 *
 * @param finding as it is after the change; as it was where it is lost
 * @param before what it did to the option
 * @param after what it does now
 */
public record FindingChange(Finding finding, Bearing before, Bearing after) {
  /** What became of a finding. */
  public enum Kind {
    /** It rests on known facts now, and did not. */
    GAINED("gained"),
    /** It rested on known facts, and does not now. */
    LOST("lost"),
    /** It was there, and counts now. */
    COUNTS_NOW("counts now"),
    /** It is still there, but a stronger one of the same cause counts in its place. */
    COUNTS_NO_LONGER("counts no longer"),
    /** It would speak if an assumed fact were true. */
    PERHAPS_NOW("perhaps now"),
    /** It would have spoken if an assumed fact were true; now it would not. */
    PERHAPS_NO_LONGER("perhaps no longer");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** The word on screens and in files. */
    public String word() {
      return word;
    }
  }

  /** What became of it. */
  public Kind kind() {
    if (before.known() != after.known()) {
      return after.known() ? Kind.GAINED : Kind.LOST;
    }
    if (after.known()) {
      return after == Bearing.NOT_COUNTED ? Kind.COUNTS_NO_LONGER : Kind.COUNTS_NOW;
    }
    return after == Bearing.PERHAPS ? Kind.PERHAPS_NOW : Kind.PERHAPS_NO_LONGER;
  }
}
