/** Piles under shear and moment at the head. */
@NullMarked
package underhold.mechanics.pile.lateral;

import org.jspecify.annotations.NullMarked;
