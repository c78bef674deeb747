/**
 * Plain and lightly reinforced concrete by ACI 318-19. Units: metres, kilonewtons, kilopascals;
 * strips are one metre long unless a width is given.
 */
@NullMarked
package underhold.mechanics.concrete;

import org.jspecify.annotations.NullMarked;
