/**
 * Makes cases for the classroom to order: kinds of site from the trade, drawn by a seed, tried by
 * the rules until one has the leader that is wanted, for the facts that are wanted, as firmly as is
 * wanted, and then told in stages and words. Amounts are texts with units, as a user would type
 * them; numbers beside them are in the inside units of their measures.
 */
@NullMarked
package underhold.classroom.making;

import org.jspecify.annotations.NullMarked;
