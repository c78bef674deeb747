package underhold.consult.turning;

import java.util.List;
import underhold.site.Fact;
import underhold.site.FactView;
import underhold.site.Origin;
import underhold.threads.AllProcessors;

/**
 * Every single change of a zone: each fact that can be stated and does not follow from others by
 * calculation, each value tried.
 */
final class Singles {
  private final Trying trying;
  private final Grid grid;
  private final List<List<Single>> byFact;

  Singles(Trying trying) {
    this.trying = trying;
    this.grid = new Grid(trying.trials(), trying.changes());
    FactView calculated = trying.calculated();
    List<Fact> changed =
        trying.base().view().all().stream()
            .filter(was -> !was.definition().derived())
            .filter(was -> calculated.fact(was.name()).origin() != Origin.DERIVED)
            .toList();
    this.byFact = AllProcessors.each(changed, this::of);
  }

  private List<Single> of(Fact was) {
    return AllProcessors.each(grid.of(was), value -> new Single(was, value, trying));
  }

  Grid grid() {
    return grid;
  }

  /** The changes fact by fact, amounts by size. */
  List<List<Single>> byFact() {
    return byFact;
  }

  /** All changes. */
  List<Single> all() {
    return byFact.stream().flatMap(List::stream).toList();
  }
}
