package underhold.site;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;

/** What a calculation looked at in a view, in the order in which it first did. */
public final class FactReads {
  private final List<Read> reads = new ArrayList<>();
  private final Set<Integer> seen = new HashSet<>();

  /**
   * One look at a fact.
   *
   * @param fact the fact as it was
   * @param assumed whether it was looked at with the worse value assumed
   */
  record Read(Fact fact, boolean assumed) {}

  void note(Fact fact) {
    if (seen.add(fact.definition().index())) {
      reads.add(new Read(fact, false));
    }
  }

  /** Notes a fact that was read with the worse value assumed. */
  public void noteAssumed(Fact fact) {
    if (seen.add(-1 - fact.definition().index())) {
      reads.add(new Read(fact, true));
    }
  }

  /**
   * Whether all that was looked at is the same in another view.
   *
   * @param view the other view
   * @param cautious the same with the worse values assumed; asked for only where needed
   */
  public boolean same(FactView view, Supplier<FactView> cautious) {
    return reads.stream()
        .allMatch(
            read -> {
              FactView other = read.assumed() ? cautious.get() : view;
              return other.fact(read.fact().definition().index()).equals(read.fact());
            });
  }

  /** All that was looked at. */
  List<Read> all() {
    return reads;
  }
}
