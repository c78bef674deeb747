/** Independent pieces of one answer, done on all processors. */
@NullMarked
package underhold.threads;

import org.jspecify.annotations.NullMarked;
