package underhold.review.audit;

import java.util.List;
import java.util.Optional;
import underhold.advice.Effect;
import underhold.advice.Rule;
import underhold.advice.SupportOption;
import underhold.site.Site;

/**
 * Rules that state opposite things of one option on the same facts. For and against under different
 * causes is how the ranking weighs, and a rule-out beside a for is normal: those are counted. For
 * and against under one cause, a for that speaks only where its option is ruled out, and rules that
 * derive different values of one fact together are suspicious.
 */
final class OppositeRules implements Analysis {
  static final String NAME = "opposites";

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public Section run(Bench bench) {
    Section.Gathering found =
        new Section.Gathering(NAME, "Do rules state opposite things on the same facts?");
    Witnesses witnesses = bench.witnesses();
    List<Rule> rules = bench.pack().rules();
    int weighed = 0;
    int outAndFor = 0;
    for (Rule one : rules) {
      for (Rule other : rules) {
        if (one == other || one.phase() == Rule.Phase.SCHEME) {
          continue;
        }
        if (one.effect() == Effect.DERIVE && other.effect() == Effect.DERIVE) {
          if (one.id().compareTo(other.id()) < 0) {
            derived(one, other, bench, witnesses, found);
          }
          continue;
        }
        List<SupportOption> shared = Speaking.shared(one, other);
        if (!Speaking.speaksFor(one) || shared.isEmpty()) {
          continue;
        }
        if (other.effect() == Effect.AGAINST) {
          if (apart(one, other, bench)) {
            found.result(Method.PROVED);
          } else if (Speaking.sameCause(one, other)) {
            sameCause(one, other, shared, bench, witnesses, found);
          } else {
            found.result(Method.PROVED);
            weighed++;
          }
        } else if (other.effect() == Effect.RULE_OUT) {
          found.result(Method.PROVED);
          if (other.action().options().containsAll(one.action().options())
              && bench.reasoning().implies(one, other)) {
            found.defect(
                Defect.proved(
                    NAME,
                    Speaking.ids(one, other),
                    Speaking.of(one)
                        + " speaks only where "
                        + Speaking.of(other)
                        + " rules out what it speaks for."));
          } else if (!apart(one, other, bench)) {
            outAndFor++;
          }
        }
      }
    }
    pairs(bench, found);
    found.tried(witnesses.drained());
    found.note(
        weighed
            + " pairs of a for and an against of one option under different causes can fire together, and "
            + outAndFor
            + " pairs of a for and a rule-out: that is how an option is weighed.");
    return found.done();
  }

  /** Whether they are seen to exclude each other; under one cause every way is followed. */
  private static boolean apart(Rule one, Rule other, Bench bench) {
    Reasoning reasoning = bench.reasoning();
    boolean seen = reasoning.narrowed(reasoning.closed(one).and(reasoning.closed(other))).isEmpty();
    return seen || (Speaking.sameCause(one, other) && reasoning.exclude(one, other));
  }

  private static void sameCause(
      Rule one,
      Rule other,
      List<SupportOption> shared,
      Bench bench,
      Witnesses witnesses,
      Section.Gathering found) {
    Box both = bench.reasoning().needs(one).and(bench.reasoning().needs(other));
    Optional<Site> site =
        witnesses.find(one.id() + " and " + other.id(), both, bench.effort().tries());
    found.result(Method.SAMPLED);
    String text =
        Speaking.of(one)
            + " and "
            + Speaking.of(other)
            + " speak of "
            + Speaking.options(shared)
            + " under one cause, "
            + one.cause()
            + ", and fire together"
            + (site.isPresent() ? "." : " by their conditions; none of the sites tried shows it.");
    found.defect(new Defect(NAME, Speaking.ids(one, other), text, Method.SAMPLED, site));
  }

  private static void derived(
      Rule one, Rule other, Bench bench, Witnesses witnesses, Section.Gathering found) {
    boolean differ =
        Reasoning.target(one).equals(Reasoning.target(other))
            && !Reasoning.value(one).equals(Reasoning.value(other));
    if (!differ) {
      return;
    }
    Box both = bench.reasoning().needs(one).and(bench.reasoning().needs(other));
    if (bench.reasoning().alternatives(both).isEmpty()) {
      found.result(Method.PROVED);
      return;
    }
    Optional<Site> site =
        witnesses.find(one.id() + " and " + other.id(), both, bench.effort().tries());
    found.result(Method.SAMPLED);
    if (site.isPresent()) {
      found.defect(
          Defect.shown(
              NAME,
              Speaking.ids(one, other),
              Speaking.of(one)
                  + " and "
                  + Speaking.of(other)
                  + " derive different values together.",
              Method.SAMPLED,
              site.get()));
    }
  }

  private static void pairs(Bench bench, Section.Gathering found) {
    for (Rule one : bench.pack().pairRules()) {
      for (Rule other : bench.pack().pairRules()) {
        if (one.effect() == Effect.FOR && other.effect() == Effect.AGAINST) {
          found.result(Method.PROVED);
          if (Speaking.sameCause(one, other)
              && !bench.reasoning().box(one).and(bench.reasoning().box(other)).isEmpty()) {
            found.defect(
                Defect.proved(
                    NAME,
                    Speaking.ids(one, other),
                    Speaking.of(one)
                        + " and "
                        + Speaking.of(other)
                        + " speak of one pair of zones under one cause and fire together."));
          }
        }
      }
    }
  }
}
