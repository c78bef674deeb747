/**
 * Timber in bending, shear, bearing and compression by allowable stress, as used for box sheeting
 * of hand-dug pits and in cribs, with the published timber tables. Units: metres, kilonewtons,
 * kilopascals, days.
 */
@NullMarked
package underhold.mechanics.timber;

import org.jspecify.annotations.NullMarked;
