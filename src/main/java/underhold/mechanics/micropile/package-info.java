/**
 * Drilled, grouted mini piles (micropiles): sections, capacity of cased, uncased and bond lengths,
 * threaded joints, buckling, corrosion, spacing, load tests, shortening. Allowable stress unless
 * said otherwise. Units: metres, kilonewtons, kilopascals.
 */
@NullMarked
package underhold.mechanics.micropile;

import org.jspecify.annotations.NullMarked;
