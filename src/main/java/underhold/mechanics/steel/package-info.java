/**
 * Rolled steel sections and their strength: AISC 360 (allowable and factored) and EN 1993, one
 * method a class. Units: metres, kilonewtons, kilopascals. The needle's own statics are in {@code
 * mechanics.beam}.
 */
@NullMarked
package underhold.mechanics.steel;

import org.jspecify.annotations.NullMarked;
