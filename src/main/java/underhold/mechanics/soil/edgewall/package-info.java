/**
 * A wall of underpinning pits as the retaining edge of an excavation, where piles carry the
 * structure: pressure behind it, sliding with whatever share of the structure's load still stands
 * on it, props at several levels stage by stage, dowels into rock, a wedge on a joint. Units:
 * metres, kN per metre run, kPa; depths are counted down from the top of the wall.
 */
@NullMarked
package underhold.mechanics.soil.edgewall;

import org.jspecify.annotations.NullMarked;
