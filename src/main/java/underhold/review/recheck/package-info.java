/** Runs a saved consultation again and tells what has changed, and whether its advice stands. */
@NullMarked
package underhold.review.recheck;

import org.jspecify.annotations.NullMarked;
