/** Side and base resistance of bored piles, and the factors taken on them. */
@NullMarked
package underhold.mechanics.pile.axial;

import org.jspecify.annotations.NullMarked;
