/**
 * Paper, pens, hatches, letters, dimensions and scales of the drawings. Knows no site and no sheet;
 * paper is in millimetres from the upper left corner, the world in metres with depth downwards.
 */
@NullMarked
package underhold.report.drawing.kit;

import org.jspecify.annotations.NullMarked;
