/** Settlement of a pile head under load. */
@NullMarked
package underhold.mechanics.pile.settlement;

import org.jspecify.annotations.NullMarked;
