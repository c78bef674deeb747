/**
 * Consultations in files: the site, the rules in short, and every finding, number and assumption of
 * the answer, so that it can be run again and compared. Amounts stand in inside units beside the
 * text that was shown.
 */
@NullMarked
package underhold.review.saved;

import org.jspecify.annotations.NullMarked;
