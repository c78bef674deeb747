/** Earth, surcharge and water pressure on a wall, and their resultants. */
@NullMarked
package underhold.mechanics.soil.pressure;

import org.jspecify.annotations.NullMarked;
