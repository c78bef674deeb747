/**
 * Hand-dug underpinning pits under a continuous foundation: width, order of digging, sheeting,
 * bearing, the pier as a retaining wall, dry pack, quantities, stages. Units: metres, kilonewtons,
 * kilopascals, degrees, hours.
 */
@NullMarked
package underhold.sizing.pits;

import org.jspecify.annotations.NullMarked;
