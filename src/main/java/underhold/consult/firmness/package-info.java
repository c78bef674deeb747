/**
 * How firm the first place is: in how many of a number of draws an option comes first, over weights
 * that keep the order of the strengths, over facts that nobody knows, and over limits within their
 * plausible ranges.
 */
@NullMarked
package underhold.consult.firmness;

import org.jspecify.annotations.NullMarked;
