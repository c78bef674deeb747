/**
 * Mini piles with brackets: the pile in section beside the edge, and its head at a larger scale.
 */
@NullMarked
package underhold.report.drawing.bracket;

import org.jspecify.annotations.NullMarked;
