/**
 * The order of digging underpinning pits along a wall: which pits may be open together, in which
 * rounds, on which day. Units: metres and working days. Pits are numbered from 0 inside, from 1 in
 * every text.
 */
@NullMarked
package underhold.sizing.pits.order;

import org.jspecify.annotations.NullMarked;
