package underhold.review.audit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import underhold.advice.Effect;
import underhold.advice.Rule;
import underhold.advice.SupportOption;
import underhold.site.FactDictionary;

/**
 * Rules that say nothing which others do not say already: identical ones, and those whose
 * conditions imply others of the same effect, option and cause that are at least as strong. A
 * narrower rule that is stronger refines and is none; duties and cautions are shadowed only by an
 * equally strong one with the same reason, for each has words of its own.
 */
final class ShadowedRules implements Analysis {
  static final String NAME = "shadowed";

  /** Rules that cover another together; more are not tried. */
  private static final int MOST_TOGETHER = 12;

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public Section run(Bench bench) {
    Section.Gathering found =
        new Section.Gathering(NAME, "Does every rule say something that others do not?");
    Set<String> told = new HashSet<>();
    int refining = 0;
    for (Rule rule : bench.pack().all()) {
      found.result(Method.PROVED);
      List<Rule> others =
          bench.pack().all().stream()
              .filter(other -> other != rule && covers(other, rule))
              .toList();
      Optional<Rule> one = others.stream().filter(o -> implies(rule, o, bench)).findFirst();
      if (one.isPresent()) {
        boolean same = implies(one.get(), rule, bench) && covers(rule, one.get());
        List<String> about = Speaking.ids(rule, one.get());
        if (told.add(about.toString())) {
          found.defect(Defect.proved(NAME, about, text(rule, one.get(), same)));
        }
      } else {
        together(rule, others, bench).ifPresent(found::defect);
      }
      refining += refines(rule, bench) ? 1 : 0;
    }
    found.note(
        refining
            + " rules fire only where a weaker one of the same cause fires too: they refine it, and the stronger counts.");
    return found.done();
  }

  private static String text(Rule rule, Rule other, boolean same) {
    return same
        ? Speaking.of(rule)
            + " and "
            + Speaking.of(other)
            + " fire on the same facts and say the same."
        : "Wherever "
            + Speaking.of(rule)
            + " fires, "
            + Speaking.of(other)
            + " fires too and says at least as much"
            + (Speaking.scores(rule) ? " of the same cause: the first never counts." : ".");
  }

  /** Whether the first says all that the second does, when both fire. */
  private static boolean covers(Rule other, Rule rule) {
    if (other.effect() != rule.effect()
        || other.phase() != rule.phase()
        || !Objects.equals(other.action().fact(), rule.action().fact())
        || !Objects.equals(other.action().value(), rule.action().value())) {
      return false;
    }
    boolean options =
        other.action().options().isEmpty()
            ? other.effect() != Effect.REQUIRE && other.effect() != Effect.CAUTION
                || rule.action().options().isEmpty()
            : !rule.action().options().isEmpty()
                && other.action().options().containsAll(rule.action().options());
    return options
        && switch (rule.effect()) {
          case DERIVE -> true;
          case RULE_OUT -> rule.hold() == Rule.Hold.NEVER || rule.hold() == other.hold();
          case FOR, AGAINST, REFER ->
              Speaking.sameCause(rule, other) && Speaking.atLeastAsStrong(other, rule);
          case REQUIRE, CAUTION ->
              Speaking.equallyStrong(other, rule) && rule.because().equals(other.because());
        };
  }

  private static boolean implies(Rule rule, Rule other, Bench bench) {
    if (rule.phase() == Rule.Phase.SCHEME) {
      Reasoning reasoning = bench.reasoning();
      return reasoning.box(rule).within(reasoning.box(other), FactDictionary.pairs());
    }
    return rule.effect() == Effect.DERIVE
        ? bench.reasoning().box(rule).within(bench.reasoning().box(other), bench.dictionary())
        : bench.reasoning().implies(rule, other);
  }

  private static Optional<Defect> together(Rule rule, List<Rule> others, Bench bench) {
    FactDictionary dictionary = UnreachableRules.dictionary(rule, bench);
    Box box = bench.reasoning().box(rule);
    List<Rule> near =
        others.stream()
            .filter(other -> !bench.reasoning().box(other).and(box).isEmpty())
            .filter(other -> box.facts().containsAll(bench.reasoning().box(other).facts()))
            .limit(MOST_TOGETHER)
            .toList();
    if (near.size() < 2
        || !box.minus(near.stream().map(bench.reasoning()::box).toList(), dictionary).isEmpty()) {
      return Optional.empty();
    }
    List<Rule> all = new ArrayList<>(near);
    all.add(rule);
    return Optional.of(
        Defect.proved(
            NAME,
            Speaking.ids(all.toArray(Rule[]::new)),
            Speaking.of(rule)
                + " fires only where one of "
                + String.join(", ", near.stream().map(Rule::id).toList())
                + " fires, which say at least as much."));
  }

  private static boolean refines(Rule rule, Bench bench) {
    return rule.effect().scores()
        && bench.pack().rules().contains(rule)
        && bench.pack().rules().stream()
            .anyMatch(
                other ->
                    other != rule
                        && Speaking.sameWay(rule, other)
                        && Speaking.sameCause(rule, other)
                        && !shared(rule, other).isEmpty()
                        && !Speaking.atLeastAsStrong(other, rule)
                        && bench.reasoning().implies(rule, other));
  }

  private static List<SupportOption> shared(Rule rule, Rule other) {
    return Speaking.shared(rule, other);
  }
}
