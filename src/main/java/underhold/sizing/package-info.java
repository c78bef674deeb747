/**
 * The calculation sheet and what it is made of: inputs with origin, steps that can be redone by
 * hand, checks, quantities, stages with hold points, cautions. Values are SI doubles with a
 * measure; text appears in either unit system when it is asked for.
 */
@NullMarked
package underhold.sizing;

import org.jspecify.annotations.NullMarked;
