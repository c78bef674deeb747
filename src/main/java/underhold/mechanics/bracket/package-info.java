/**
 * A steel bracket between a pile and the edge of a structure: welds, plates, prying, anchors in
 * concrete, seat and shims, and the statics of who resists the moment. Units: metres, kilonewtons,
 * kilopascals.
 */
@NullMarked
package underhold.mechanics.bracket;

import org.jspecify.annotations.NullMarked;
