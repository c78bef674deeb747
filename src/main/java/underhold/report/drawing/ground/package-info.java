/** The ground of a zone as layers to draw. */
@NullMarked
package underhold.report.drawing.ground;

import org.jspecify.annotations.NullMarked;
