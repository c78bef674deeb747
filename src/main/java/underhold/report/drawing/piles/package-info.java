/** Drilled piles: where they stand in plan, and one of them against the ground. */
@NullMarked
package underhold.report.drawing.piles;

import org.jspecify.annotations.NullMarked;
