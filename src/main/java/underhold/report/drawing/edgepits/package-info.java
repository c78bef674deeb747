/**
 * The wall of pits at the edge of an excavation under a structure, with its pressures and braces.
 */
@NullMarked
package underhold.report.drawing.edgepits;

import org.jspecify.annotations.NullMarked;
