package underhold.review.audit;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import underhold.advice.Effect;
import underhold.advice.Rule;
import underhold.site.FactDefinition;
import underhold.site.FactDictionary;
import underhold.site.Site;

/**
 * Rules that no site can fire. That one cannot is proved by sets; that one can is shown by a site.
 * Facts that sheets make are taken to be as wanted, and rules between zones are held only to what
 * each fact can be.
 */
final class UnreachableRules implements Analysis {
  static final String NAME = "unreachable";
  private static final Set<String> MADE_LATER = Set.of("sizing");

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public Section run(Bench bench) {
    Section.Gathering found = new Section.Gathering(NAME, "Can every rule fire on some site?");
    Witnesses witnesses = bench.witnesses();
    for (Rule rule : bench.pack().rules()) {
      zoneRule(rule, bench, witnesses, found);
    }
    for (Rule rule : bench.pack().pairRules()) {
      found.result(Method.PROVED);
      if (bench.reasoning().box(rule).isEmpty()) {
        found.defect(impossible(rule, "its conditions exclude each other"));
      }
    }
    found.tried(witnesses.drained());
    found.note(
        "A rule that can fire is shown by a site that fires it; what sheets find is taken as wanted, and of the "
            + bench.pack().pairRules().size()
            + " rules between zones only the conditions are held to what each fact can be.");
    return found.done();
  }

  private static void zoneRule(
      Rule rule, Bench bench, Witnesses witnesses, Section.Gathering found) {
    Reasoning reasoning = bench.reasoning();
    if (reasoning.box(rule).isEmpty()) {
      found.result(Method.PROVED);
      found.defect(impossible(rule, "its conditions exclude each other, or what a fact can be"));
      return;
    }
    Box wanted = tried(rule, bench);
    Reasoning.Alternatives ways = reasoning.alternatives(wanted);
    if (ways.isEmpty()) {
      found.result(Method.PROVED);
      found.defect(
          impossible(
              rule,
              "no facts that a site can have together meet its conditions ("
                  + reasoning.box(rule).text()
                  + ")"));
      return;
    }
    Optional<Site> site = witnesses.find(rule.id() + " fires", wanted, bench.effort().tries() * 4);
    found.result(site.isPresent() ? Method.SHOWN : Method.SAMPLED);
    if (site.isEmpty()) {
      found.defect(
          new Defect(
              NAME,
              List.of(rule.id()),
              rule.id()
                  + " may be unreachable through what its facts follow from: none of the sites tried fires it.",
              Method.SAMPLED,
              Optional.empty()));
    }
  }

  /** What a site must show: the conditions without those on facts that are made later. */
  private static Box tried(Rule rule, Bench bench) {
    Box box = bench.reasoning().needs(rule);
    for (String fact : box.facts()) {
      FactDefinition definition = bench.dictionary().require(fact);
      if (MADE_LATER.contains(definition.group()) || fact.equals("ordinaryOptionsLeft")) {
        box = box.without(fact);
      }
    }
    if (rule.effect() == Effect.DERIVE) {
      box = box.with(Reasoning.target(rule), FactSet.words(Set.of(Reasoning.value(rule))));
    }
    return box;
  }

  private static Defect impossible(Rule rule, String why) {
    return Defect.proved(NAME, List.of(rule.id()), rule.id() + " can never fire: " + why + ".");
  }

  static FactDictionary dictionary(Rule rule, Bench bench) {
    return rule.phase() == Rule.Phase.SCHEME ? FactDictionary.pairs() : bench.dictionary();
  }
}
