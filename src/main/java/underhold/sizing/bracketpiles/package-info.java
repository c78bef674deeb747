/**
 * Mini piles outside an edge, carrying it on steel brackets: spacing, eccentricity and who carries
 * its moment, casing, joint, bond, bracket, seat, movement, preload, tests, stages. Units: metres,
 * kilonewtons, kilopascals.
 */
@NullMarked
package underhold.sizing.bracketpiles;

import org.jspecify.annotations.NullMarked;
