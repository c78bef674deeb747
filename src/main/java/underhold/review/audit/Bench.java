package underhold.review.audit;

import java.util.List;
import underhold.advice.PlainRules;
import underhold.advice.RulePack;
import underhold.site.FactDictionary;

/**
 * What the analyses of an audit work with.
 *
 * @param pack the rules
 * @param rules the same to be read without the engine
 * @param dictionary the facts of a zone
 * @param reasoning what follows from the conditions
 * @param trying the values and sites to try
 * @param cases the sites on which the pack is audited
 * @param notes what engineers have written down
 * @param effort how much is tried, and from which seed
 */
record Bench(
    RulePack pack,
    PlainRules rules,
    FactDictionary dictionary,
    Reasoning reasoning,
    Trying trying,
    List<AuditSite> cases,
    AuditNotes notes,
    Effort effort) {

  static Bench of(RulePack pack, List<AuditSite> cases, AuditNotes notes, Effort effort) {
    FactDictionary dictionary = FactDictionary.standard();
    return new Bench(
        pack,
        new PlainRules(pack, dictionary),
        dictionary,
        new Reasoning(pack, dictionary),
        new Trying(pack),
        List.copyOf(cases),
        notes,
        effort);
  }

  Witnesses witnesses() {
    return new Witnesses(reasoning, rules, trying, effort.seed());
  }

  RandomSites randomSites(int salt) {
    return new RandomSites(pack, trying, effort.seed() + salt);
  }
}
