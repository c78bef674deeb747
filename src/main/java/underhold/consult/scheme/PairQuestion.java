package underhold.consult.scheme;

import java.util.List;
import underhold.advice.Rule;
import underhold.site.FactDefinition;

/**
 * What nobody stated of two zones and some rule between zones waits for.
 *
 * @param one a zone
 * @param other the other zone
 * @param fact what to find out
 * @param rules the rules that wait
 * @param holds whether one of them could rule the scheme out
 */
public record PairQuestion(
    String one, String other, FactDefinition fact, List<Rule> rules, boolean holds) {
  public PairQuestion {
    rules = List.copyOf(rules);
  }
}
