/**
 * Sets a document as one HTML file that needs no network and no script, and as the pages that the
 * PDF writer prints. Templates escape all words; only drawings, the style and the signs of a
 * formula are markup.
 */
@NullMarked
package underhold.report.html;

import org.jspecify.annotations.NullMarked;
