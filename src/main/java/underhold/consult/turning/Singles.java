package underhold.consult.turning;

import java.util.ArrayList;
import java.util.List;
import underhold.site.Fact;
import underhold.site.FactValue;
import underhold.site.FactView;
import underhold.site.Origin;

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
    this.byFact =
        trying.base().view().all().parallelStream()
            .filter(was -> !was.definition().derived())
            .filter(was -> calculated.fact(was.name()).origin() != Origin.DERIVED)
            .map(this::of)
            .toList();
  }

  private List<Single> of(Fact was) {
    List<Single> singles = new ArrayList<>();
    for (FactValue value : grid.of(was)) {
      singles.add(new Single(was, value, trying));
    }
    return singles;
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
