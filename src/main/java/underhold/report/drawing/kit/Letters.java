package underhold.report.drawing.kit;

import java.awt.Color;

/**
 * How words are lettered; none smaller than 8 points, which is 2.82 mm.
 *
 * @param size font size [mm]
 * @param bold whether bold
 * @param anchor which end of the words stands at the place given
 * @param colour their colour
 */
public record Letters(double size, boolean bold, Anchor anchor, Color colour) {
  /** Heading of a drawing. */
  public static final Letters TITLE = new Letters(4.0, true, Anchor.START, Colours.INK);

  /** Names of parts. */
  public static final Letters LABEL = new Letters(3.0, true, Anchor.START, Colours.INK);

  /** Notes. */
  public static final Letters NOTE = new Letters(2.9, false, Anchor.START, Colours.INK);

  /** Dimensions and levels. */
  public static final Letters DIMENSION = new Letters(2.85, false, Anchor.MIDDLE, Colours.INK);

  /** Where the place given stands in the words. */
  public enum Anchor {
    START("start", 0),
    MIDDLE("middle", 0.5),
    END("end", 1);

    private final String word;
    private final double share;

    Anchor(String word, double share) {
      this.word = word;
      this.share = share;
    }

    String word() {
      return word;
    }

    double share() {
      return share;
    }
  }

  public Letters middle() {
    return new Letters(size, bold, Anchor.MIDDLE, colour);
  }

  public Letters end() {
    return new Letters(size, bold, Anchor.END, colour);
  }

  public Letters start() {
    return new Letters(size, bold, Anchor.START, colour);
  }

  public Letters in(Color other) {
    return new Letters(size, bold, anchor, other);
  }

  public Letters heavy() {
    return new Letters(size, true, anchor, colour);
  }

  /** Width of the words [mm]; see {@link Lettering#width}. */
  public double width(String words) {
    return Lettering.width(words, size, bold);
  }

  /** From one line of words to the next [mm]. */
  public double line() {
    return size * 1.25;
  }
}
