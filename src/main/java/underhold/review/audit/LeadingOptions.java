package underhold.review.audit;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import underhold.advice.Condition;
import underhold.advice.Confirmation;
import underhold.advice.Effect;
import underhold.advice.Rule;
import underhold.advice.SupportOption;
import underhold.consult.trial.Outcome;
import underhold.consult.trial.Trials;
import underhold.site.Site;

/**
 * Options that never lead, and sites on which nothing is left: no option, no referral. Leaders are
 * those of the rules, before sheets take points away.
 */
final class LeadingOptions implements Analysis {
  static final String NAME = "leaders";
  private static final String LEFT = "ordinaryOptionsLeft";

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public Section run(Bench bench) {
    Section.Gathering found =
        new Section.Gathering(
            NAME, "Does every option lead somewhere, and is no site left with nothing?");
    Map<SupportOption, Integer> leads = new EnumMap<>(SupportOption.class);
    RandomSites sites = bench.randomSites(7);
    int none = 0;
    int waiting = 0;
    Optional<Site> nothing = Optional.empty();
    for (int i = 0; i < bench.effort().tries() || (leads.size() < 7 && i < most(bench)); i++) {
      Site site = sites.next();
      Outcome outcome = new Trials(bench.rules(), site, Confirmation.NONE).of(site.zones().get(0));
      found.tried(1);
      outcome.leader().ifPresent(leader -> leads.merge(leader, 1, Integer::sum));
      none += outcome.leader().isEmpty() ? 1 : 0;
      waiting += waits(outcome) ? 1 : 0;
      if (nothing.isEmpty() && leftWithNothing(outcome)) {
        nothing = Optional.of(site);
      }
    }
    for (SupportOption option : SupportOption.values()) {
      neverLeads(option, leads, bench, found);
    }
    left(nothing, bench, found);
    found.note(
        "Leads by the rules alone, of "
            + sum(leads, none)
            + " random sites: "
            + leads(leads)
            + "; no clear choice "
            + none
            + ".");
    found.note(
        waiting
            + " of them have every option but referral ruled out or held; a hold waits for a fact, so where all facts that it reads are known there is none.");
    return found.done();
  }

  private static int most(Bench bench) {
    return bench.effort().tries() * 10;
  }

  private static int sum(Map<SupportOption, Integer> leads, int none) {
    return leads.values().stream().mapToInt(Integer::intValue).sum() + none;
  }

  private static String leads(Map<SupportOption, Integer> leads) {
    return String.join(
        ", ", leads.entrySet().stream().map(e -> e.getKey().id() + " " + e.getValue()).toList());
  }

  private static boolean waits(Outcome outcome) {
    return outcome.placings().entrySet().stream()
        .filter(placing -> placing.getKey() != SupportOption.REFER)
        .allMatch(placing -> placing.getValue().state() != Outcome.State.IN_RANK);
  }

  /** Every ordinary option ruled out, and the referral not spoken for or not in rank. */
  private static boolean leftWithNothing(Outcome outcome) {
    boolean any =
        outcome.placings().entrySet().stream()
            .anyMatch(
                placing -> placing.getKey() != SupportOption.REFER && placing.getValue().usable());
    Outcome.Placing refer = outcome.of(SupportOption.REFER);
    return !any && (!refer.spokenFor() || refer.state() != Outcome.State.IN_RANK);
  }

  private static void neverLeads(
      SupportOption option,
      Map<SupportOption, Integer> leads,
      Bench bench,
      Section.Gathering found) {
    boolean spoken =
        bench.pack().rules().stream()
            .anyMatch(
                rule ->
                    Speaking.speaksFor(rule)
                        && rule.action().options().contains(option)
                        && !bench.reasoning().closed(rule).isEmpty());
    if (!spoken) {
      found.result(Method.PROVED);
      found.defect(
          Defect.proved(
              NAME,
              List.of(option.id()),
              option.id() + " can never lead: no rule that can fire speaks for it."));
      return;
    }
    found.result(leads.containsKey(option) ? Method.SHOWN : Method.SAMPLED);
    if (!leads.containsKey(option)) {
      found.defect(
          new Defect(
              NAME,
              List.of(option.id()),
              option.id() + " leads on none of the sites tried.",
              Method.SAMPLED,
              Optional.empty()));
    }
  }

  /** With no ordinary option left a rule always refers, and nothing keeps a referral back. */
  private static void left(Optional<Site> nothing, Bench bench, Section.Gathering found) {
    boolean refers =
        bench.pack().rules().stream()
            .filter(rule -> rule.effect() == Effect.REFER && rule.phase() == Rule.Phase.SETTLE)
            .anyMatch(LeadingOptions::wheneverNothingIsLeft);
    boolean keptBack =
        bench.pack().rules().stream()
            .filter(rule -> rule.effect() == Effect.RULE_OUT || rule.hold() != Rule.Hold.NEVER)
            .anyMatch(rule -> rule.action().options().contains(SupportOption.REFER));
    if (refers && !keptBack) {
      found.result(Method.PROVED);
      found.note(
          "Where every other option is ruled out a rule always refers, and no rule keeps a referral back: no site is left with nothing.");
      return;
    }
    found.result(Method.SAMPLED);
    nothing.ifPresentOrElse(
        site ->
            found.defect(
                Defect.shown(
                    NAME,
                    List.of(SupportOption.REFER.id()),
                    "Every option is ruled out and nothing refers.",
                    Method.SAMPLED,
                    site)),
        () ->
            found.defect(
                new Defect(
                    NAME,
                    List.of(SupportOption.REFER.id()),
                    "Nothing ensures a referral where every other option is ruled out; none of the sites tried shows it.",
                    Method.SAMPLED,
                    Optional.empty())));
  }

  private static boolean wheneverNothingIsLeft(Rule rule) {
    return rule.conditions().size() == 1
        && rule.conditions().get(0).fact().equals(LEFT)
        && rule.conditions().get(0).operator() == Condition.Operator.IS
        && rule.conditions().get(0).words().equals(List.of("no"));
  }
}
