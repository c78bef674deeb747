/**
 * Statics of a needle: reactions, moment and elastic deflection of a prismatic beam on two
 * supports, or over a fulcrum with its tail held down. Units: metres, kilonewtons, kilopascals.
 */
@NullMarked
package underhold.mechanics.beam;

import org.jspecify.annotations.NullMarked;
