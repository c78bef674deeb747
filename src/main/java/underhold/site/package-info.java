/**
 * What is known of a site: the dictionary of facts, sites and zones, the site file and its
 * problems, and the facts that follow from others.
 *
 * <p>Amounts are held in the inside unit of their {@link underhold.quantity.Measure} and keep the
 * text the user typed.
 */
@NullMarked
package underhold.site;

import org.jspecify.annotations.NullMarked;
