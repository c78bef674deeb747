package underhold.consult;

import underhold.advice.Ranking;
import underhold.advice.Screening;

/**
 * The answer to one zone without its open questions: what many sites are tried on. Screening and
 * ranking are those of the whole answer.
 *
 * @param zone the zone's name
 * @param screening what the rules said
 * @param ranking the options in rank order
 */
public record Weighed(String zone, Screening screening, Ranking ranking) {}
