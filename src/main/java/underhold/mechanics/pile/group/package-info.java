/** Piles together: group effects, rigid caps, transfer beams, downdrag. */
@NullMarked
package underhold.mechanics.pile.group;

import org.jspecify.annotations.NullMarked;
