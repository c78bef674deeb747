/**
 * Sizing of edge pits: drilled piles carry the structure, and hand-dug pits side by side form the
 * wall that holds the edge of the excavation where no other wall can be built under the structure.
 */
@NullMarked
package underhold.sizing.edgepits;

import org.jspecify.annotations.NullMarked;
