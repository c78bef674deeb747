/**
 * One ordered plan of stages for a scheme, from the survey to the removal of temporary works: what
 * must be seen or measured before going on and who releases it, what ground is open and what
 * carries in each stage, and how long it takes. A plan in which anything stands on nothing is not
 * made: {@link underhold.consult.stage.PlanChecker} goes through every order that the plan allows.
 * Times are working days from day 0.
 */
@NullMarked
package underhold.consult.stage;

import org.jspecify.annotations.NullMarked;
