/**
 * Reads the numbers of a calculation sheet for drawings. A drawing takes what the sheet holds and
 * reckons nothing anew.
 */
@NullMarked
package underhold.report.drawing.numbers;

import org.jspecify.annotations.NullMarked;
