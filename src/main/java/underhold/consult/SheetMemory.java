package underhold.consult;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import underhold.advice.SupportOption;
import underhold.site.FactMemory;
import underhold.site.FactView;
import underhold.sizing.Guesses;
import underhold.sizing.Sheet;
import underhold.sizing.drilledpiles.DrilledPiles;
import underhold.sizing.edgepits.PileSizer;

/** Sheets of one zone, kept for trials that change nothing that a sheet looks at. */
final class SheetMemory {
  private final Map<SupportOption, FactMemory<Optional<Sheet>>> kept =
      new EnumMap<>(SupportOption.class);
  private final FactMemory<DrilledPiles.Sized> piles;

  /**
   * No sheet yet.
   *
   * @param guesses where guesses are taken as they are the sheets are for trials, which ask only
   *     what fails and show no word of them
   */
  SheetMemory(Guesses guesses) {
    piles = guesses == Guesses.TAKEN ? FactMemory.ofValues() : FactMemory.ofWords();
    for (SupportOption option : SupportOption.values()) {
      kept.put(option, guesses == Guesses.TAKEN ? FactMemory.ofValues() : FactMemory.ofWords());
    }
  }

  /**
   * The sheet of a view: kept from an earlier one, or made.
   *
   * @param make makes a sheet, looking at nothing but the view
   */
  Optional<Sheet> sheet(
      SupportOption option, FactView view, Function<FactView, Optional<Sheet>> make) {
    return Objects.requireNonNull(kept.get(option)).of(view, make);
  }

  /** Sizes piles in the ground of the zone once for their own sheet and for that of edge pits. */
  PileSizer piles(PileSizer sizer) {
    return (facts, ground, guesses) -> piles.of(facts, view -> sizer.sized(view, ground, guesses));
  }
}
