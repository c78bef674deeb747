/**
 * A document as JSON: its blocks, each with its type, and beside them the data it was made from.
 */
@NullMarked
package underhold.report.json;

import org.jspecify.annotations.NullMarked;
