package underhold.sizing.edgepits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static underhold.sizing.edgepits.EdgeSites.layer;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.site.GroundProfile;
import underhold.site.Site;
import underhold.sizing.Amount;
import underhold.sizing.Check;
import underhold.sizing.Formula;
import underhold.sizing.Phrase;
import underhold.sizing.Sheet;
import underhold.sizing.SheetBuilder;
import underhold.sizing.Source;
import underhold.sizing.Verdict;
import underhold.sizing.drilledpiles.PrimaryPiles;

/** Days, boards and piles that stand behind an edge, held to hand calculations. */
class EdgeDiggingByHandTest {
  @Test
  @DisplayName(
      "own reading of the calendar: days to a tenth, each pit done after it begins, the last with the calendar of all pits")
  void days_of_the_pits() {
    Sheet sheet = EdgeSites.size(EdgeSites.box());
    double last = 0;
    int pits = 0;
    for (var stage : sheet.stages()) {
      if (!stage.title().startsWith("Pits, round")) {
        continue;
      }
      for (var pit : stage.work()) {
        double first = pit.amounts().get("first").si();
        double done = pit.amounts().get("done").si();
        assertThat(done).isGreaterThan(first);
        assertThat(done * 10).isCloseTo(Math.rint(done * 10), within(1e-9));
        last = Math.max(last, done);
        pits++;
      }
    }
    assertThat(pits).isEqualTo(8);
    double calendar =
        sheet.time().stream()
            .filter(one -> one.name().equals("calendar, all pits"))
            .findFirst()
            .orElseThrow()
            .amount()
            .si();
    assertThat(last).isCloseTo(calendar, within(0.1 + 1e-9));
  }

  @Test
  @DisplayName(
      "own hand calculation: boards beside the wall see half of 80 kPa over 0.9 m, 36 kN/m, and the clay's own 80 kPa of strength")
  void boards_see_load_and_ground() {
    assertThat(taken(EdgeSites.size(EdgeSites.box()), "working line load"))
        .isNotEmpty()
        .allSatisfy(one -> assertThat(one).isCloseTo(36, within(1e-9)));
    Site clay =
        EdgeSites.with(
            EdgeSites.box(), new GroundProfile(List.of(layer("stiff-clay", 0, 19, 80, 24))));
    assertThat(taken(EdgeSites.size(clay), "undrained strength"))
        .hasSizeGreaterThan(2)
        .allSatisfy(one -> assertThat(one).isCloseTo(80, within(1e-9)));
  }

  @Test
  @DisplayName(
      "own hand calculation: clay of 220 kPa does not press, fill of 28 deg over it does, tan^2(45 - 14): boards and soil type go by the fill that the approach pits meet")
  void boards_see_the_worst_layer_from_the_working_level_down() {
    Site site =
        EdgeSites.with(
            EdgeSites.box(),
            new GroundProfile(
                List.of(layer("fill", 0, 19, 0, 28), layer("stiff-clay", 2, 21, 220, 24))));
    Sheet sheet = EdgeSites.size(site);
    Formula pressure = sheet.step("approach-soil-pressure").orElseThrow().formula();
    assertThat(pressure.siText()).contains("tan(45 - {f} / 2)^2");
    assertThat(pressure.symbols())
        .anySatisfy(
            one -> {
              assertThat(one.sign()).isEqualTo("f");
              assertThat(one.amount().si()).isCloseTo(28, within(1e-9));
            });
    double stress =
        pressure.symbols().stream()
            .filter(one -> one.sign().equals("s"))
            .findFirst()
            .orElseThrow()
            .amount()
            .si();
    double angle = Math.tan(Math.toRadians(31));
    assertThat(sheet.step("approach-soil-pressure").orElseThrow().result().si())
        .isCloseTo(angle * angle * stress, within(1e-6));
    assertThat(sheet.step("approach-osha-floor").orElseThrow().formula().symbols())
        .as("fill is soil of type C")
        .anyMatch(one -> one.meaning().endsWith("of type C"));
    assertThat(sheet.cautions())
        .filteredOn(one -> one.hazard().equals("soil above the structure's underside"))
        .singleElement()
        .satisfies(one -> assertThat(one.advice().template()).contains("fill from 0"));
    assertThat(EdgeSites.size(site, "working-level=3 m").cautions())
        .as("from a bench at the underside no layer above is met")
        .noneMatch(one -> one.hazard().equals("soil above the structure's underside"));
  }

  private static List<Double> taken(Sheet sheet, String meaning) {
    return sheet.steps().stream()
        .flatMap(step -> step.formula().symbols().stream())
        .filter(one -> one.meaning().equals(meaning))
        .map(Formula.Symbol::amount)
        .map(Amount::si)
        .toList();
  }

  @Test
  @DisplayName("judgement of the method: the worst verdict governs, among equals the fullest check")
  void the_check_of_the_piles_that_governs() {
    assertThat(governs(check("a", 0.5, Verdict.FAILS), check("b", 0.9, Verdict.FAILS)))
        .isEqualTo("b");
    assertThat(governs(check("a", 0.9, Verdict.FAILS), check("b", 0.5, Verdict.FAILS)))
        .isEqualTo("a");
    assertThat(governs(check("a", 0.9, Verdict.FAILS), check("b", 1.1, Verdict.REFER)))
        .isEqualTo("b");
    assertThat(governs(check("a", 1.1, Verdict.REFER), check("b", 0.9, Verdict.FAILS)))
        .isEqualTo("a");
    assertThat(governs(check("a", 1.2, Verdict.FAILS), check("b", 1.9, Verdict.REFER)))
        .isEqualTo("a");
    assertThat(governs(check("a", 1.9, Verdict.REFER), check("b", 1.2, Verdict.FAILS)))
        .isEqualTo("b");
  }

  private record Filled(String id, double use, Verdict otherwise) {}

  private static Filled check(String id, double use, Verdict otherwise) {
    return new Filled(id, use, otherwise);
  }

  private static String governs(Filled... checks) {
    SheetBuilder sheet = SheetBuilder.titled("Piles", "drilled-piles");
    for (Filled one : checks) {
      sheet.verdict(
          one.id(),
          one.id(),
          Amount.force(1000 * one.use()),
          Amount.force(1000),
          one.use() <= 1 ? Verdict.PASSES : one.otherwise(),
          Source.statics(),
          Phrase.of(""));
    }
    PrimaryPiles piles = new PrimaryPiles(12, 640, 7680, 0.24, 16, 8, 1.5, 1, 40, List.of());
    return new PileSummary(sheet.build(), piles).governing().map(Check::id).orElseThrow();
  }
}
