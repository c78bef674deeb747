/** Drawings of underpinning pits: the row in plan with its rounds, and one pit in section. */
@NullMarked
package underhold.report.drawing.pits;

import org.jspecify.annotations.NullMarked;
