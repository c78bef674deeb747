/**
 * The review of a saved consultation: who said what of which part of it, what was overridden and
 * what it was before, and who signed. Entries are only added; each carries the fingerprint of the
 * one before, so that a later change shows. Names are typed, not proved, and nothing here is an
 * electronic signature in the legal sense.
 */
@NullMarked
package underhold.review.record;

import org.jspecify.annotations.NullMarked;
