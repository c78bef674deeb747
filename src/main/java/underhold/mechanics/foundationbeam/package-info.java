/**
 * A pile bent in the ground: beam on an elastic foundation (Hetenyi) and ultimate lateral
 * resistance of short and long piles (Broms). Units: metres, kilonewtons, kilopascals, radians.
 */
@NullMarked
package underhold.mechanics.foundationbeam;

import org.jspecify.annotations.NullMarked;
