package underhold.consult;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.advice.SupportOption;
import underhold.site.FactDictionary;
import underhold.site.FactView;
import underhold.site.Site;
import underhold.site.StatedFact;
import underhold.site.Zone;
import underhold.site.ZoneViews;
import underhold.sizing.Guesses;
import underhold.sizing.Sheet;

class SheetMemoryTest {
  private final SizingDesk desk = new SizingDesk();

  @Test
  @DisplayName("A sheet that was kept is the sheet that would be made: 300 pairs of random sites")
  void a_kept_sheet_is_the_sheet_that_would_be_made() {
    List<Site> sites = SizingSites.random(300, 20261126L);
    int kept = 0;
    for (Site site : sites) {
      Zone zone = site.zones().get(0);
      FactView base = view(site, zone);
      for (String fact : List.of("utilities", "footingWidth", "standUp", "insideAccess")) {
        FactView other = view(site, without(zone, fact));
        for (SupportOption option : SupportOption.values()) {
          SheetMemory memory = new SheetMemory(Guesses.TRIED);
          int[] made = {0};
          Function<FactView, Optional<Sheet>> maker =
              noting -> {
                made[0]++;
                return desk.quick(site, zone.name(), noting, option);
              };
          memory.sheet(option, base, maker);
          Optional<Sheet> remembered = memory.sheet(option, other, maker);
          kept += made[0] == 1 ? 1 : 0;
          if (made[0] == 1) {
            assertThat(remembered).isEqualTo(desk.quick(site, zone.name(), other, option));
          }
        }
      }
    }
    assertThat(kept).as("sheets kept").isGreaterThan(300);
  }

  private static FactView view(Site site, Zone zone) {
    return ZoneViews.known(site, zone, FactDictionary.standard());
  }

  private static Zone without(Zone zone, String fact) {
    Map<String, StatedFact> facts = new java.util.LinkedHashMap<>(zone.facts());
    facts.remove(fact);
    return new Zone(zone.name(), facts, zone.ground(), zone.note());
  }
}
