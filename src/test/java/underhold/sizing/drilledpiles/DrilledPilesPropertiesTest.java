package underhold.sizing.drilledpiles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;
import static underhold.sizing.drilledpiles.Piles.COLUMN;
import static underhold.sizing.drilledpiles.Piles.size;
import static underhold.sizing.drilledpiles.Piles.step;
import static underhold.sizing.drilledpiles.Piles.with;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.quantity.Seeds;
import underhold.quantity.UnitSystem;
import underhold.site.Site;
import underhold.site.SiteReader;
import underhold.site.SiteReading;
import underhold.site.Zone;
import underhold.sizing.Check;
import underhold.sizing.Sheet;
import underhold.sizing.SheetText;
import underhold.sizing.StepProof;
import underhold.sizing.Verdict;

/** Own properties. */
class DrilledPilesPropertiesTest {
  private static final List<String> SOILS =
      List.of(
          "rock",
          "decomposed-rock",
          "hard-clay-or-till",
          "cemented-sand",
          "dense-gravel",
          "dense-sand",
          "loose-sand",
          "mixed-fine-sand",
          "silt",
          "stiff-clay",
          "soft-clay",
          "cohesive-fill",
          "fill",
          "peat");

  private static String number(double value, String unit) {
    return String.format(Locale.ROOT, "%.4f %s", value, unit);
  }

  private static String column(double load, double dug, double strength) {
    return with(
        with(
            with(COLUMN, "1200 kN", number(load, "kN")),
            "\"excavationDepth\": \"5.5 m\"",
            "\"excavationDepth\": \"" + number(1.5 + dug, "m") + "\""),
        "120 kPa",
        number(strength, "kPa"));
  }

  private static double demand(Sheet sheet, String id) {
    return sheet.check(id).orElseThrow().demand().si();
  }

  @Property(tries = 25, seed = Seeds.BUILD)
  void whatever_the_ground_the_sheet_can_be_redone_and_is_finite(
      @ForAll @IntRange(min = 0, max = 13) int soil,
      @ForAll @IntRange(min = 0, max = 13) int below,
      @ForAll @DoubleRange(min = 10, max = 9000) double load,
      @ForAll @DoubleRange(min = 0, max = 20) double dug,
      @ForAll @DoubleRange(min = 2.5, max = 40) double boundary,
      @ForAll @IntRange(min = 0, max = 7) int choices) {
    String json =
        with(
            column(load, dug, 60),
            "\"stiff-clay\", \"unitWeight\": \"20 kN/m3\", \"undrainedStrength\": \"60.0000 kPa\" }",
            "\"%s\" }, { \"top\": \"%s\", \"soil\": \"%s\" }"
                .formatted(SOILS.get(soil), number(boundary, "m"), SOILS.get(below)));
    Sheet sheet =
        size(
            json,
            "base=" + ((choices & 1) == 0 ? "none" : "counted"),
            "beta-method=" + ((choices & 2) == 0 ? "1999" : "2010"),
            "rock-method=" + ((choices & 4) == 0 ? "jointed" : "normal"));
    assertThat(sheet.missing()).isEmpty();
    StepProof.redo(sheet);
    assertThat(sheet.checks())
        .extracting(Check::id)
        .contains(
            "pile-bond",
            "pile-structure",
            "pile-bared",
            "group-capacity",
            "group-loss",
            "head-settlement",
            "pile-length",
            "casing-joints");
    sheet.quantities().forEach(item -> assertThat(item.amount().si()).isNotNegative());
    sheet.checks().forEach(check -> assertThat(check.capacity().si()).isNotNegative());
  }

  @Test
  @DisplayName(
      "A layer that begins where a pile may end, but for a rounding error, is no piece of shaft: 30 digs, 40 tops each")
  void layers_that_end_with_the_pile() {
    for (int dig = 0; dig < 30; dig++) {
      double dug = 1 + dig * 0.1;
      for (int top = 0; top < 40; top++) {
        String layer = "{ \"top\": \"%s\", \"soil\": \"dense-sand\" }";
        Sheet sheet =
            size(
                with(
                    column(1200, dug, 60),
                    "\"60.0000 kPa\" }",
                    "\"60.0000 kPa\" }, "
                        + layer.formatted(number(1.5 + dug + 1.5 + top * 0.25, "m"))));
        assertThat(sheet.checks()).isNotEmpty();
      }
    }
  }

  @Property(tries = 8, seed = Seeds.BUILD)
  void more_load_never_asks_for_less_pile(
      @ForAll @DoubleRange(min = 50, max = 1500) double load,
      @ForAll @DoubleRange(min = 0, max = 1500) double more) {
    Sheet less = size(column(load, 3, 100), "group-factor=none");
    Sheet bigger = size(column(load + more, 3, 100), "group-factor=none");
    assertThat(step(bigger, "total-load")).isGreaterThanOrEqualTo(step(less, "total-load"));
    // in whole piles: the shaft of all piles together never shrinks by more than one pile's steps
    assertThat(piles(bigger)).isGreaterThanOrEqualTo(piles(less));
    assertThat(step(bigger, "group")).isGreaterThanOrEqualTo(step(bigger, "total-load") - 1e-6);
  }

  private static double piles(Sheet sheet) {
    return sheet.quantities().get(0).amount().si();
  }

  @Property(tries = 8, seed = Seeds.BUILD)
  void deeper_digging_never_strengthens_the_bared_pile_nor_raises_the_toe(
      @ForAll @DoubleRange(min = 0.5, max = 8) double dug,
      @ForAll @DoubleRange(min = 0, max = 6) double more) {
    Sheet shallow = size(column(800, dug, 100), "piles=12");
    Sheet deep = size(column(800, dug + more, 100), "piles=12");
    assertThat(deep.check("pile-bared").orElseThrow().capacity().si())
        .isLessThanOrEqualTo(shallow.check("pile-bared").orElseThrow().capacity().si() + 1e-6);
    assertThat(demand(deep, "pile-length"))
        .isGreaterThanOrEqualTo(demand(shallow, "pile-length") - 1e-3);
  }

  @Test
  @DisplayName("Own case: the same column in US units gives the same sheet")
  void us_units_give_the_same_sheet() {
    String us =
        COLUMN
            .replace("\"units\": \"SI\"", "\"units\": \"US\"")
            .replace("\"3 m\"", "\"9.842519685 ft\"")
            .replace("\"5.5 m\"", "\"18.04461942 ft\"")
            .replace("\"0 m\"", "\"0 ft\"")
            .replace("\"2 m\"", "\"6.56167979 ft\"")
            .replace("18 kN/m3", "114.5846 pcf")
            .replace("20 kN/m3", "127.3163 pcf")
            .replace("120 kPa", "2506.252 psf")
            .replace("1200 kN", "269.7707 kip")
            .replace("\"1.5 m\"", "\"4.921259843 ft\"")
            .replace("10 mm", "0.3937007874 in")
            .replace("\"3.5 m\"", "\"11.48293963 ft\"");
    Sheet one = size(COLUMN);
    Sheet other = size(us);
    assertThat(other.checks()).hasSameSizeAs(one.checks());
    for (int i = 0; i < one.checks().size(); i++) {
      Check a = one.checks().get(i);
      Check b = other.checks().get(i);
      assertThat(b.id()).isEqualTo(a.id());
      assertThat(b.verdict()).isEqualTo(a.verdict());
      // 0.01 %: the US figures are typed with ten figures at most
      assertThat(b.demand().si()).as(a.id()).isCloseTo(a.demand().si(), withPercentage(0.01));
      assertThat(b.capacity().si()).as(a.id()).isCloseTo(a.capacity().si(), withPercentage(0.01));
    }
    assertThat(String.join("\n", SheetText.lines(one, UnitSystem.US)))
        .contains("kip")
        .doesNotContain("NaN");
  }

  @Test
  void every_demo_site_gives_a_sheet_that_can_be_redone() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("cases/demo"))) {
      for (Path file :
          files.filter(one -> one.toString().endsWith(".site.json")).sorted().toList()) {
        Site site =
            SiteReader.read(read(file), "demo")
                .fold(
                    SiteReading.Valid::site,
                    invalid -> {
                      throw new AssertionError(invalid.problems().toString());
                    });
        for (Zone zone : site.zones()) {
          Sheet sheet = size(site, zone);
          StepProof.redo(sheet);
          assertThat(sheet.complete()).isEqualTo(sheet.missing().isEmpty());
          if (sheet.complete()) {
            assertThat(sheet.check("pile-length").orElseThrow().verdict())
                .as("no demo tells how deep its borings go")
                .isEqualTo(Verdict.REFER);
          } else {
            assertThat(sheet.steps()).isEmpty();
          }
        }
      }
    }
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }
}
