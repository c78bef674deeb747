/**
 * A document as such: sections of paragraphs, tables, workings and drawings, without a word about
 * how it is set. Each format has its own writer, and all formats say the same.
 */
@NullMarked
package underhold.report.document;

import org.jspecify.annotations.NullMarked;
