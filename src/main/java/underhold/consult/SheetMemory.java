package underhold.consult;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import underhold.advice.SupportOption;
import underhold.site.FactReads;
import underhold.site.FactView;
import underhold.sizing.Sheet;

/** Sheets of one zone, kept for trials that change nothing that a sheet looks at. */
final class SheetMemory {
  private static final int KEPT = 6;

  private final Map<SupportOption, List<Kept>> kept = new EnumMap<>(SupportOption.class);

  private record Kept(FactReads reads, Optional<Sheet> sheet) {}

  /** A way to make a sheet that looks at nothing but the view. */
  interface Maker {
    Optional<Sheet> sheet(FactView view);
  }

  /** The sheet of a view: kept from an earlier one, or made. */
  Optional<Sheet> sheet(
      SupportOption option, FactView view, Supplier<FactView> cautious, Maker maker) {
    List<Kept> earlier = kept.computeIfAbsent(option, key -> new ArrayList<>());
    for (Kept one : earlier) {
      if (one.reads.same(view, cautious)) {
        return one.sheet;
      }
    }
    FactReads reads = new FactReads();
    Optional<Sheet> made = maker.sheet(view.noting(reads));
    if (earlier.size() == KEPT) {
      earlier.remove(KEPT - 1); // the first one, of the untried zone, serves most trials
    }
    earlier.add(new Kept(reads, made));
    return made;
  }
}
