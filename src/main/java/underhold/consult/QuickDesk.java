package underhold.consult;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import underhold.advice.Confirmation;
import underhold.advice.SupportOption;
import underhold.site.Fact;
import underhold.site.FactView;
import underhold.site.Site;
import underhold.sizing.Guesses;
import underhold.sizing.Sheet;
import underhold.sizing.edgepits.PileSizer;

/** Sizes every option that the screening of one zone left. Several threads may ask at once. */
final class QuickDesk implements Confirmation {
  private final SizingDesk desk;
  private final Site site;
  private final String zone;
  private final Guesses guesses;
  private final SheetMemory memory;
  private final PileSizer piles;
  private volatile Map<SupportOption, QuickSizing> last = Map.of();

  QuickDesk(SizingDesk desk, Site site, String zone) {
    this(desk, site, zone, Guesses.TRIED);
  }

  QuickDesk(SizingDesk desk, Site site, String zone, Guesses guesses) {
    this.desk = desk;
    this.site = site;
    this.zone = zone;
    this.guesses = guesses;
    this.memory = new SheetMemory(guesses);
    this.piles = memory.piles(SizingDesk.piles(site));
  }

  @Override
  public List<Fact> facts(FactView view, Set<SupportOption> left) {
    List<Fact> facts = new ArrayList<>();
    Map<SupportOption, QuickSizing> made = new EnumMap<>(SupportOption.class);
    for (SupportOption option : left) {
      memory
          .sheet(option, view, noting -> desk.quick(site, zone, noting, option, guesses, piles))
          .ifPresent(sheet -> note(option, sheet, view, made, facts));
    }
    last = made;
    return facts;
  }

  private static void note(
      SupportOption option,
      Sheet sheet,
      FactView view,
      Map<SupportOption, QuickSizing> made,
      List<Fact> facts) {
    made.put(option, new QuickSizing(option, sheet));
    facts.addAll(SizingFact.of(option, sheet, view.dictionary()));
  }

  /** The sheets of the view sized last. */
  List<QuickSizing> sizings() {
    return List.copyOf(last.values());
  }
}
