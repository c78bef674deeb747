/**
 * Mechanics of bored (drilled) piles: what several of its parts share.
 *
 * <p>Pure calculators, one published method a class. Units: metres, kilopascals, kilonewtons,
 * kilonewtons per cubic metre, degrees; the unit is in every name. Basis tags as in {@link
 * underhold.mechanics.soil}.
 */
@NullMarked
package underhold.mechanics.pile;

import org.jspecify.annotations.NullMarked;
