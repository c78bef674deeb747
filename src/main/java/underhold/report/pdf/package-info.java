/** Sets a document as a PDF file: pages of paper with bookmarks, its own letters, and a footer. */
@NullMarked
package underhold.report.pdf;

import org.jspecify.annotations.NullMarked;
