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

/** Sizes every option that the screening of one zone left, once, and keeps the sheets. */
final class QuickDesk implements Confirmation {
  private final SizingDesk desk;
  private final Site site;
  private final String zone;
  private final Map<SupportOption, QuickSizing> sizings = new EnumMap<>(SupportOption.class);

  QuickDesk(SizingDesk desk, Site site, String zone) {
    this.desk = desk;
    this.site = site;
    this.zone = zone;
  }

  @Override
  public List<Fact> facts(FactView view, Set<SupportOption> left) {
    List<Fact> facts = new ArrayList<>();
    for (SupportOption option : left) {
      desk.quick(site, zone, view, option)
          .ifPresent(
              sheet -> {
                sizings.put(option, new QuickSizing(option, sheet));
                facts.addAll(SizingFact.of(option, sheet, view.dictionary()));
              });
    }
    return facts;
  }

  /** The sheets made. */
  List<QuickSizing> sizings() {
    return List.copyOf(sizings.values());
  }
}
