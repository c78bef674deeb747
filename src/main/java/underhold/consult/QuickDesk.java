package underhold.consult;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import underhold.advice.Confirmation;
import underhold.advice.SupportOption;
import underhold.site.Fact;
import underhold.site.FactView;
import underhold.site.Site;
import underhold.site.ZoneViews;
import underhold.sizing.Guesses;
import underhold.sizing.Sheet;

/** Sizes every option that the screening of one zone left. */
final class QuickDesk implements Confirmation {
  private final SizingDesk desk;
  private final Site site;
  private final String zone;
  private final Guesses guesses;
  private final SheetMemory memory = new SheetMemory();
  private final Map<SupportOption, QuickSizing> last = new EnumMap<>(SupportOption.class);

  QuickDesk(SizingDesk desk, Site site, String zone) {
    this(desk, site, zone, Guesses.TRIED);
  }

  QuickDesk(SizingDesk desk, Site site, String zone, Guesses guesses) {
    this.desk = desk;
    this.site = site;
    this.zone = zone;
    this.guesses = guesses;
  }

  @Override
  public List<Fact> facts(FactView view, Set<SupportOption> left) {
    Supplier<FactView> cautious = new Cautious(view);
    List<Fact> facts = new ArrayList<>();
    last.clear();
    for (SupportOption option : left) {
      memory
          .sheet(option, view, cautious, noting -> desk.quick(site, zone, noting, option, guesses))
          .ifPresent(sheet -> note(option, sheet, view, facts));
    }
    return facts;
  }

  private void note(SupportOption option, Sheet sheet, FactView view, List<Fact> facts) {
    last.put(option, new QuickSizing(option, sheet));
    facts.addAll(SizingFact.of(option, sheet, view.dictionary()));
  }

  /** The sheets of the view sized last. */
  List<QuickSizing> sizings() {
    return List.copyOf(last.values());
  }

  /** Made once, and only if it is asked for. */
  private static final class Cautious implements Supplier<FactView> {
    private final FactView known;
    private FactView made;
    private boolean ready;

    Cautious(FactView known) {
      this.known = known;
      this.made = known;
    }

    @Override
    public FactView get() {
      if (!ready) {
        made = ZoneViews.cautious(known);
        ready = true;
      }
      return made;
    }
  }
}
