/**
 * Drilled-in piles that carry a structure while the ground below it is dug away: axial resistance
 * below the dug level, the bared pile as a column, the group with any one pile lost, settlement,
 * transfer of the load, work and quantities. Working stresses with their factors shown.
 */
@NullMarked
package underhold.sizing.drilledpiles;

import org.jspecify.annotations.NullMarked;
