/**
 * Stress in an elastic half-space under surface loads (Boussinesq), used for checks and for
 * settlement.
 */
@NullMarked
package underhold.mechanics.soil.stress;

import org.jspecify.annotations.NullMarked;
