package underhold.report.dossier;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import underhold.advice.SupportOption;
import underhold.quantity.UnitSystem;
import underhold.report.document.Prose;
import underhold.sizing.SheetInput;

/** Which steps take an input: by its name, never because two numbers are the same. */
class UsesTest {
  static Stream<String> demos() {
    return Demos.names();
  }

  private static String uses(ZoneSheet sheet, String input) {
    SheetInput found = sheet.sheet().input(input).orElseThrow();
    return new Uses(sheet, UnitSystem.SI).after(Prose.empty(), found).toString();
  }

  @ParameterizedTest
  @MethodSource("demos")
  @DisplayName("a half of a lost pile is not the half of a step of jacking")
  void same_value(String demo) {
    Demos.material(demo).sheets().stream()
        .filter(sheet -> sheet.option() == SupportOption.DRILLED_PILES && sheet.sheet().complete())
        .forEach(
            sheet -> {
              for (String share : new String[] {"loss-share-slab", "loss-share-wall"}) {
                assertThat(uses(sheet, share)).doesNotContain("jack-");
              }
              assertThat(uses(sheet, "lock-off")).doesNotContain("jack-");
            });
  }

  @Test
  @DisplayName("the water stated is led to the step that takes it, with its reason")
  void water() {
    ZoneSheet harbour =
        Demos.material("harbour-mill-columns.site.json").sheets().stream()
            .filter(sheet -> sheet.option() == SupportOption.DRILLED_PILES)
            .findFirst()
            .orElseThrow();
    assertThat(uses(harbour, "ground-water")).contains("water-after-digging");
    assertThat(harbour.sheet().step("water-after-digging").orElseThrow().note().in(UnitSystem.SI))
        .contains("lowering is not allowed", "keep the head stated");
    assertThat(uses(harbour, "loss-overstress")).contains("loss-capacity");
  }
}
