/**
 * From options to a scheme: for each zone one method, chosen so that together they serve the whole
 * site best, not each zone alone. Rules between zones read two zones with the methods tried for
 * them; what nobody stated of the two warns and asks, and never scores.
 */
@NullMarked
package underhold.consult.scheme;

import org.jspecify.annotations.NullMarked;
