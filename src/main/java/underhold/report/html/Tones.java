package underhold.report.html;

import underhold.report.document.Block.Tone;

/** The sign, the word and the class of a tone, so that colour alone carries nothing. */
public final class Tones {
  private Tones() {}

  /** A sign that differs in shape; empty for what has no tone. */
  public static String sign(Tone tone) {
    return switch (tone) {
      case PLAIN -> "";
      case GOOD -> "✓";
      case DOUBT -> "?";
      case BAD -> "✗";
      case CAUTION -> "!";
    };
  }

  /** The tone in a word, for whoever does not see the sign. */
  public static String word(Tone tone) {
    return switch (tone) {
      case PLAIN -> "";
      case GOOD -> "in order:";
      case DOUBT -> "in doubt:";
      case BAD -> "not in order:";
      case CAUTION -> "caution:";
    };
  }

  /** The name of its style. */
  public static String style(Tone tone) {
    return switch (tone) {
      case PLAIN -> "plain";
      case GOOD -> "good";
      case DOUBT -> "doubt";
      case BAD -> "bad";
      case CAUTION -> "caution";
    };
  }
}
