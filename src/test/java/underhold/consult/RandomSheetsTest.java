package underhold.consult;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.advice.SupportOption;
import underhold.quantity.Measure;
import underhold.quantity.UnitSystem;
import underhold.site.FactDictionary;
import underhold.site.FactView;
import underhold.site.Site;
import underhold.site.ZoneViews;
import underhold.sizing.BillItem;
import underhold.sizing.Check;
import underhold.sizing.Guesses;
import underhold.sizing.Sheet;
import underhold.sizing.SheetText;
import underhold.sizing.StepProof;
import underhold.sizing.Verdict;

/**
 * Every sheet on random sites. An amount that is not finite cannot be made at all ({@link
 * underhold.sizing.Amount} refuses it), so a sheet that comes back holds none.
 */
class RandomSheetsTest {
  private static final int SITES = 10_000;

  /** Every how many sites the steps are redone and the text is read; they take longest. */
  private static final int LOOKED_AT = 25;

  private final SizingDesk desk = new SizingDesk();

  @Test
  @DisplayName("10,000 random sites: every sheet is whole or asks, without NaN or negative amounts")
  void random_sites_never_break_a_sheet() {
    Map<SupportOption, Integer> complete = new ConcurrentHashMap<>();
    List<Site> sites = SizingSites.random(SITES, 20261125L);
    IntStream.range(0, SITES)
        .parallel()
        .forEach(
            number -> {
              Site site = sites.get(number);
              String zone = site.zones().get(0).name();
              FactView view = ZoneViews.known(site, site.zones().get(0), FactDictionary.standard());
              for (SupportOption option : SupportOption.values()) {
                Optional<Sheet> sheet = desk.quick(site, zone, view, option);
                if (sheet.isPresent()) {
                  look(sheet.get(), number);
                  if (number % LOOKED_AT == 1) {
                    assertThat(failed(desk.quick(site, zone, view, option, Guesses.TAKEN)))
                        .isEqualTo(failed(sheet));
                  }
                  complete.merge(option, sheet.get().complete() ? 1 : 0, Integer::sum);
                }
              }
            });
    System.out.println("sheets sized to the end, of " + SITES + " random sites: " + complete);
    assertThat(complete).hasSize(6);
    assertThat(complete.values()).allSatisfy(count -> assertThat(count).isGreaterThan(SITES / 100));
  }

  /** The checks that fail, which guesses taken as they are must not change. */
  private static List<Check> failed(Optional<Sheet> sheet) {
    return sheet.stream()
        .flatMap(one -> one.checks().stream())
        .filter(check -> check.verdict() == Verdict.FAILS)
        .toList();
  }

  private static void look(Sheet sheet, int number) {
    assertThat(sheet.complete()).isEqualTo(!sheet.steps().isEmpty());
    noneNegative(sheet.quantities());
    noneNegative(sheet.time());
    if (number % LOOKED_AT == 0) {
      StepProof.redo(sheet);
      for (UnitSystem system : UnitSystem.values()) {
        assertThat(SheetText.lines(sheet, system))
            .noneMatch(line -> line.contains("NaN") || line.contains("Infinity"));
      }
    }
  }

  private static void noneNegative(List<BillItem> items) {
    for (BillItem item : items) {
      Measure measure = item.amount().measure();
      assertThat(item.amount().si()).as(item.name() + ", " + measure).isNotNegative();
    }
  }
}
