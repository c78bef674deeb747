/**
 * Stability of an excavation and of the pier that holds its side: base heave, piping, vertical cut,
 * pier as a wall.
 */
@NullMarked
package underhold.mechanics.soil.stability;

import org.jspecify.annotations.NullMarked;
