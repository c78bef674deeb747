/** Drawings to scale of what was advised and sized, as SVG with a text that says the same. */
@NullMarked
package underhold.report.drawing;

import org.jspecify.annotations.NullMarked;
