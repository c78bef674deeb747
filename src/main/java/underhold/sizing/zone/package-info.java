/**
 * What the sizing of any method takes from a zone: its facts as given values with their origin, its
 * layers as soils, inputs within ranges, and the rule that no check passes on what nobody stated.
 */
@NullMarked
package underhold.sizing.zone;

import org.jspecify.annotations.NullMarked;
