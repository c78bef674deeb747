/**
 * Hostile input: what a broken disk, a bad editor, a slip of the hand or an ill-meaning stranger
 * could put into a file or a command line, and the doors it could come in by.
 */
@NullMarked
package underhold.hostile;

import org.jspecify.annotations.NullMarked;
