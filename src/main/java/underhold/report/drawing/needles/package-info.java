/** Drawings of needle beams in elevation, with their load and moment. */
@NullMarked
package underhold.report.drawing.needles;

import org.jspecify.annotations.NullMarked;
