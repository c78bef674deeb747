/**
 * What a changed fact would do: the site with the change, and every difference between the answer
 * before and the answer after, zone by zone.
 */
@NullMarked
package underhold.consult.change;

import org.jspecify.annotations.NullMarked;
