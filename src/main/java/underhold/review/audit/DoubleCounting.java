package underhold.review.audit;

import java.util.List;
import underhold.advice.Rule;
import underhold.advice.SupportOption;

/**
 * Rules that speak the same way of one option under different causes although the facts of the one
 * imply the facts of the other: one observation then counts twice.
 */
final class DoubleCounting implements Analysis {
  static final String NAME = "double";

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public Section run(Bench bench) {
    Section.Gathering found = new Section.Gathering(NAME, "Does one observation count twice?");
    List<Rule> rules = bench.pack().rules().stream().filter(Speaking::scores).toList();
    for (Rule one : rules) {
      for (Rule other : rules) {
        List<SupportOption> shared = Speaking.shared(one, other);
        if (one == other
            || shared.isEmpty()
            || !Speaking.sameWay(one, other)
            || Speaking.sameCause(one, other)) {
          continue;
        }
        found.result(Method.PROVED);
        boolean both = bench.reasoning().implies(other, one);
        if (bench.reasoning().implies(one, other)
            && !(both && one.id().compareTo(other.id()) > 0)) {
          found.defect(
              Defect.proved(
                  NAME,
                  Speaking.ids(one, other),
                  "Wherever "
                      + Speaking.of(one)
                      + " counts as "
                      + one.cause()
                      + ", "
                      + Speaking.of(other)
                      + " counts as "
                      + other.cause()
                      + " as well, "
                      + (Speaking.speaksFor(one) ? "for " : "against ")
                      + Speaking.options(shared)
                      + "."));
        }
      }
    }
    return found.done();
  }
}
