/**
 * Many zones one after the other: site files, folders of them, or a table with one zone a row, each
 * answered as the advice on it would be and kept as one line of a table. Nothing here grows with
 * the number of zones.
 */
@NullMarked
package underhold.consult.screening;

import org.jspecify.annotations.NullMarked;
