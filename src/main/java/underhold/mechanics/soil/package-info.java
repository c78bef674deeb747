/**
 * Soil mechanics: pure calculators, one published method a class.
 *
 * <p>Units: metres, kilopascals, kilonewtons, kilonewtons per cubic metre, degrees; the unit is in
 * every name. A calculator takes and returns records, answers a case outside its valid range with
 * {@link underhold.mechanics.soil.Outcome.OutOfRange}, and never returns NaN or infinity. An input
 * that no ground can have is a programming error and is refused with {@link
 * java.lang.IllegalArgumentException}.
 *
 * <p>Basis tags used in the Javadoc: <em>cited</em> (the source, or a secondary digest of it, was
 * seen; a digest is named as such), <em>from memory, verify</em> (widely known form, the page was
 * not seen), <em>common practice</em> (no source), <em>derived</em> (worked out here from the
 * formula named), <em>judgement</em> (ours).
 */
@NullMarked
package underhold.mechanics.soil;

import org.jspecify.annotations.NullMarked;
