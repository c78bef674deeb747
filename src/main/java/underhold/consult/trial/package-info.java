/**
 * Trials: one zone ranked again and again with a fact, a limit or a weight changed. It has no words
 * and sizes no more than it must, so that thousands can be run while somebody waits.
 */
@NullMarked
package underhold.consult.trial;

import org.jspecify.annotations.NullMarked;
