/** The pile as a column where the ground beside it is dug away. */
@NullMarked
package underhold.mechanics.pile.column;

import org.jspecify.annotations.NullMarked;
