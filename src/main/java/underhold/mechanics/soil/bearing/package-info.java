/**
 * Bearing capacity of shallow foundations: one class an author, with the factors of that author
 * only.
 */
@NullMarked
package underhold.mechanics.soil.bearing;

import org.jspecify.annotations.NullMarked;
