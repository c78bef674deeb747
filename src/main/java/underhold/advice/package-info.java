/**
 * The rule pack and what it says of a zone: rules read as data, fired by one of two engines that
 * share nothing but the facts, their findings, the ranking of the support options and its
 * explanation.
 *
 * <p>A rule is one sentence with a header, plain conditions and one action that states a finding.
 * Rules match on {@link underhold.advice.ZoneFacts}, a class the build writes from the fact
 * dictionary. Amounts are compared in the inside unit of their measure.
 */
@NullMarked
package underhold.advice;

import org.jspecify.annotations.NullMarked;
