/** Flow of ground water. Units as in {@link underhold.mechanics.soil}; permeability in m/s. */
@NullMarked
package underhold.mechanics.soil.seepage;

import org.jspecify.annotations.NullMarked;
