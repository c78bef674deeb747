package underhold.site;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;

/**
 * What a calculation looked at in a view, so that it need not be done again for another view in
 * which all of that is the same. It holds for calculations that depend on nothing else.
 */
public final class FactReads {
  private final Map<String, Fact> known = new LinkedHashMap<>();
  private final Map<String, Fact> assumed = new LinkedHashMap<>();

  void note(Fact fact) {
    known.put(fact.name(), fact);
  }

  /** Notes a fact that was read with the worse value assumed. */
  public void noteAssumed(Fact fact) {
    assumed.put(fact.name(), fact);
  }

  /**
   * Whether all that was looked at is the same in another view.
   *
   * @param view the other view
   * @param cautious the same with the worse values assumed; asked for only where needed
   */
  public boolean same(FactView view, Supplier<FactView> cautious) {
    for (Map.Entry<String, Fact> read : known.entrySet()) {
      if (!view.fact(read.getKey()).equals(read.getValue())) {
        return false;
      }
    }
    return assumed.entrySet().stream()
        .allMatch(read -> cautious.get().fact(read.getKey()).equals(read.getValue()));
  }
}
