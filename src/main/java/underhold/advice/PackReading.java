package underhold.advice;

import java.util.List;
import java.util.function.Function;

/** What reading a rule pack gives: the pack, or everything that is wrong with it. */
public sealed interface PackReading {
  /** Goes on with the pack or with the problems. */
  <R> R fold(Function<RulePack, R> read, Function<List<PackProblem>, R> refused);

  /** A pack in order. */
  record Read(RulePack pack) implements PackReading {
    @Override
    public <R> R fold(Function<RulePack, R> read, Function<List<PackProblem>, R> refused) {
      return read.apply(pack);
    }
  }

  /** A pack that is refused; it has at least one problem. */
  record Refused(List<PackProblem> problems) implements PackReading {
    public Refused {
      problems = List.copyOf(problems);
      if (problems.isEmpty()) {
        throw new IllegalArgumentException("a pack is refused for a reason");
      }
    }

    @Override
    public <R> R fold(Function<RulePack, R> read, Function<List<PackProblem>, R> refused) {
      return refused.apply(problems);
    }
  }
}
