/**
 * Sizes needle beams: a pair under a column, a row through a wall, or needles that cantilever from
 * one side with their tails held down. It takes span and load from the site, chooses the lightest
 * rolled section that passes, and sizes seats, jacks and pick-up, each step to be redone by hand.
 */
@NullMarked
package underhold.sizing.needles;

import org.jspecify.annotations.NullMarked;
