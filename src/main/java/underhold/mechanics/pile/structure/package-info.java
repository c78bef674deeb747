/** Strength of the pile's own section: concrete, casing and core. */
@NullMarked
package underhold.mechanics.pile.structure;

import org.jspecify.annotations.NullMarked;
