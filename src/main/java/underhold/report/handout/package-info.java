/**
 * Handouts of a case for the classroom: the sheet of a student, made of nothing but what that
 * student knows, and the trainer's key with the trace of the rules.
 */
@NullMarked
package underhold.report.handout;

import org.jspecify.annotations.NullMarked;
