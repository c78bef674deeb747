/** A grid of characters on which the drawings are sketched for a terminal. */
@NullMarked
package underhold.report.drawing.text;

import org.jspecify.annotations.NullMarked;
