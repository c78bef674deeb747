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
 * @param scope of a drawing, the section past whose end it never moves
 */
record Piece(
    Element element, Kind kind, int page, int from, int height, int head, @Nullable Element scope) {

  /** How a piece stands to a page break. */
  enum Kind {
    /** It never parts from what follows. */
    HEADING,
    /** It stands whole on one page. */
    WHOLE,
    /** It runs on over the break. */
    RUNNING,
    /** A row that begins a table: it takes its title and head with it. */
    FIRST_ROW,
    /** A row of a table, with the note below it: the table may be parted before it. */
    ROW,
    /** A drawing, which may stand later than it was set. */
    DRAWING
  }
}
