/**
 * Masonry that spans a gap by arching, and bearing on masonry. Units: metres, kilonewtons,
 * kilopascals.
 */
@NullMarked
package underhold.mechanics.masonry;

import org.jspecify.annotations.NullMarked;
