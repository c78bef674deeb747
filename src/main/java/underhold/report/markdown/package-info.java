/**
 * A document as Markdown that reads well as plain text and compares well: one sentence or one row a
 * line, the same document always the same characters.
 */
@NullMarked
package underhold.report.markdown;

import org.jspecify.annotations.NullMarked;
