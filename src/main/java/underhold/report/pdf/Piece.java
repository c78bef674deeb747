package underhold.report.pdf;

import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;

/**
 * One piece of a page that is set: what a page break may part from its neighbours.
 *
 * @param element what it is of
 * @param kind how it stands to a page break
 * @param page the number of the page on which it was set, from 0
 * @param from how far below the top of that page it begins [dots]
 * @param height its height, the blank above and below it included [dots]
 * @param head the height of the head of its table, repeated on every page; 0 of anything else
 *     [dots]
 * @param lines the lines between which it may run on over a page break; 1 where it stands whole
 * @param tied whether it never parts from the piece after it
 * @param scope of a drawing, the section past whose end it never moves
 */
record Piece(
    Element element,
    Kind kind,
    int page,
    int from,
    int height,
    int head,
    int lines,
    boolean tied,
    @Nullable Element scope) {
  /** Lines of words that never stand alone before or after a page break. */
  private static final int KEPT = 2;

  /** How a piece stands to a page break. */
  enum Kind {
    /** A heading, or words that lead what follows. */
    HEADING,
    /** It stands whole on one page. */
    WHOLE,
    /** It runs on over the break: a paragraph, or the first item of a list with its list. */
    RUNNING,
    /** An item of a list after the first, which may be parted from it by a break but no drawing. */
    ITEM,
    /** A row that begins a table: it takes its title and head with it. */
    FIRST_ROW,
    /** A row of a table, with the note below it: the table may be parted before it. */
    ROW,
    /** A drawing, which may stand later than it was set. */
    DRAWING
  }

  /** Whether a drawing may stand before it, below other words of the page. */
  boolean free() {
    return kind != Kind.ITEM && kind != Kind.ROW;
  }

  /** The least of it that stands before a page break [dots]. */
  int least() {
    return lines < 2 * KEPT ? height : KEPT * height / lines;
  }

  /** What of it comes after a page break where there is so much room before [dots]. */
  int rest(int room) {
    if (lines < 2 * KEPT) {
      return height - room;
    }
    int before = Math.min(room * lines / Math.max(1, height), lines - KEPT);
    return (lines - before) * height / lines;
  }
}
