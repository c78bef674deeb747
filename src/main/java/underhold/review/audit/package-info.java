/**
 * The audit of a rule pack: what its rules can, cannot and should not say. Conditions are boxes of
 * value sets, so reaching, implying and excluding are proved where they can be; what rests on
 * arithmetic is tried on sites, and every result names its method and what was tried.
 */
@NullMarked
package underhold.review.audit;

import org.jspecify.annotations.NullMarked;
