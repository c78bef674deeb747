/**
 * Two options set against each other, criterion by criterion: what speaks for and against each,
 * what they share, and which of the two a criterion favours.
 */
@NullMarked
package underhold.consult.contrast;

import org.jspecify.annotations.NullMarked;
