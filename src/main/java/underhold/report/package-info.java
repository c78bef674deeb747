/**
 * Views of a consultation, its site, its rules and the dictionary: plain text for a terminal and
 * trees for JSON. A view reads and never changes what it shows; the same input gives the same
 * characters.
 */
@NullMarked
package underhold.report;

import org.jspecify.annotations.NullMarked;
