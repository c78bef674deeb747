/**
 * Turning points: the smallest changes of the facts of a zone that put another option first, or
 * that bring an option back that is ruled out.
 */
@NullMarked
package underhold.consult.turning;

import org.jspecify.annotations.NullMarked;
