/** Settlement: elastic, semi-empirical in sand, and one-dimensional consolidation with time. */
@NullMarked
package underhold.mechanics.soil.settlement;

import org.jspecify.annotations.NullMarked;
