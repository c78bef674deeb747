/**
 * Review of the rules themselves: the rule pack is tried on published jobs, and what it puts first
 * is held against what was done there.
 */
@NullMarked
package underhold.review;

import org.jspecify.annotations.NullMarked;
