/**
 * Movement of structures: distortion, deflection and strain, the damage they go with, how far an
 * excavation is felt, and vibration. Pure calculators and printed tables.
 *
 * <p>Units: metres, metres per second, hertz; strains, ratios and slopes are plain numbers (0.00075
 * is 0.075 %). A case outside a method's range is answered with {@link
 * underhold.mechanics.soil.Outcome.OutOfRange}; an input that no structure can have is refused with
 * {@link java.lang.IllegalArgumentException}. Every limit carries its {@link
 * underhold.mechanics.movement.Citation}.
 */
@NullMarked
package underhold.mechanics.movement;

import org.jspecify.annotations.NullMarked;
