/**
 * The commands. A command reads its words, asks one service, prints a view and gives an exit
 * status; one place turns what went wrong into messages and exit codes.
 */
@NullMarked
package underhold.shell;

import org.jspecify.annotations.NullMarked;
