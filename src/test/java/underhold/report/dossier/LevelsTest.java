package underhold.report.dossier;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import underhold.advice.SupportOption;
import underhold.consult.Sized;
import underhold.consult.SizingDesk;
import underhold.consult.stage.PlanStage;
import underhold.consult.stage.StageKind;
import underhold.quantity.UnitSystem;
import underhold.report.Figures;
import underhold.report.MovementLevels;
import underhold.report.Stages;
import underhold.report.markdown.MarkdownWriter;
import underhold.site.Site;
import underhold.site.SiteReader;
import underhold.site.SiteReading;
import underhold.sizing.Amount;
import underhold.sizing.Sheet;
import underhold.sizing.monitoring.MovementLimit;

/** Levels of movement: one limit governs, and every page tells the same. */
class LevelsTest {
  private static final String LIBRARY = "college-green-library.site.json";

  static Stream<String> demos() {
    return Demos.names();
  }

  private static String text(String demo, Audience audience) {
    return MarkdownWriter.text(
            audience == Audience.REVIEWER
                ? Demos.whole(demo)
                : Demos.document(Demos.material(demo), audience))
        .replaceAll("\n> ", " ")
        .replaceAll("\\s+", " ");
  }

  private static Sheet watching(Material material, ZonePart zone) {
    return ((Sized.Done)
            new SizingDesk().size(material.site(), zone.advice(), SupportOption.MONITOR, List.of()))
        .sheet();
  }

  @ParameterizedTest
  @EnumSource(Audience.class)
  @DisplayName(
      "a listed building of which 15 mm is stated stops at a quarter inch, on every page of every package")
  void the_stricter_limit_governs(Audience audience) {
    // 0.25 in = 6.35 mm: Technical Policy and Procedure Notice 10/88, by an engineer's page
    String text = text(LIBRARY, audience);
    assertThat(text)
        .contains("Stated: `15 mm`. The limit that governs is 6.35 mm: historic structures")
        .contains("Notice 10/88")
        .contains("; stop at 6.35 mm")
        .doesNotContain("stop at 15 mm", "no more than `15 mm`");
    if (audience == Audience.CLIENT) {
      assertThat(text).contains("It may move by no more than 6.35 mm, the limit that governs");
    }
  }

  @ParameterizedTest
  @MethodSource("demos")
  @DisplayName("the limit of the words is that of the sheet of watching, in every zone")
  void one_source(String demo) {
    Material material = Demos.material(demo);
    for (ZonePart zone : material.zones()) {
      Sheet sheet = watching(material, zone);
      Optional<MovementLimit> governing =
          MovementLevels.of(material.site(), zone.advice()).governing();
      if (sheet.complete() && governing.isPresent()) {
        assertThat(sheet.step("movement-limit").orElseThrow().result().si())
            .isCloseTo(governing.get().metres(), within(1e-12));
      }
    }
  }

  @Test
  @DisplayName("stages that jack name the limit of lift, the others do not")
  void limit_of_lift() {
    Material material = Demos.material("harbour-mill-columns.site.json");
    var plan = material.madePlan().orElseThrow();
    for (PlanStage stage : plan.stages()) {
      boolean jacks = stage.kind() == StageKind.LOAD || stage.kind() == StageKind.ACCEPT;
      String words = Stages.watch(plan, stage);
      if (jacks) {
        assertThat(words).endsWith("; stop at 12 mm; while jacks lift, at 2 mm of upward movement");
      } else {
        assertThat(words).doesNotContain("upward");
      }
    }
    assertThat(text("harbour-mill-columns.site.json", Audience.SITE))
        .contains("While jacks lift, work also stops at 2 mm of upward movement");
    // the needles and the brackets have theirs, edge pits that of their piles
    for (String demo : List.of("kestrel-road-platform.site.json", "orchard-line-box.site.json")) {
      assertThat(text(demo, Audience.SITE)).contains("of upward movement |");
    }
  }

  @ParameterizedTest
  @CsvSource({
    "kestrel-road-platform, stop, 0.3 in",
    "alder-row-party-wall, stop, 10 mm",
    "orchard-line-box, stop, 5 mm",
    "three-bridges-interchange, stop, 5 mm",
    "three-bridges-interchange, action, 4 mm",
    "college-green-library, alert, 3.175 mm"
  })
  @DisplayName("a level that the method's own sheet expects to be passed is told before work")
  void expected(String demo, String level, String amount) {
    String site = demo + ".site.json";
    for (Audience audience : Audience.values()) {
      assertThat(text(site, audience))
          .contains(
              "the "
                  + level
                  + " level of "
                  + amount
                  + " will be passed even if all goes as foreseen");
    }
  }

  @ParameterizedTest
  @CsvSource({
    "alder-row-party-wall, 1.414 mm, 1.25 mm",
    "college-green-library, 1.414 mm, 1.25 mm",
    "willow-quay-warehouse, 0.05568 in, 0.04921 in"
  })
  @DisplayName("a difference that cannot be read to its alert level is told to be so, everywhere")
  void differences(String demo, String accuracy, String alert) {
    assertThat(text(demo + ".site.json", Audience.SITE))
        .contains(
            "A difference of two readings is good to "
                + accuracy
                + " only, coarser than the alert level between neighbours, "
                + alert)
        .contains("read slope over a longer distance");
  }

  @Test
  @DisplayName("small limits stand in the figures in which they were chosen")
  void figures() {
    assertThat(Figures.asTyped(Amount.thickness(0.001), UnitSystem.US))
        .isEqualTo("1 mm (0.03937 in)");
    assertThat(Figures.asTyped(Amount.thickness(0.001), UnitSystem.SI)).isEqualTo("1 mm");
    assertThat(Figures.asTyped(Amount.thickness(0.25 * 0.0254), UnitSystem.US))
        .isEqualTo("0.25 in");
    assertThat(Figures.asTyped(Amount.thickness(0.0123), UnitSystem.SI)).isEqualTo("12.3 mm");
  }

  @ParameterizedTest
  @EnumSource(Audience.class)
  @DisplayName("a movement that the site states as predicted is told beside a method that carries")
  void predicted(Audience audience) {
    // Harbour Mill states 35 mm without underpinning; its levels end at 12 mm
    assertThat(text("harbour-mill-columns.site.json", audience))
        .contains("The site states that 35 mm is predicted without underpinning")
        .contains("the stop level of 12 mm is passed");
  }

  @Test
  @DisplayName(
      "a protected structure without a stated limit has the levels of the one that governs")
  void protected_without_a_limit() throws IOException {
    String file = Files.readString(Path.of("cases/demo/college-green-library.site.json"));
    String open =
        file.replaceFirst("\"movementLimit\": \"[^\"]*\"", "\"movementLimit\": \"unknown\"");
    assertThat(open).isNotEqualTo(file);
    Site site = ((SiteReading.Valid) SiteReader.read(open, "college.site.json")).site();
    String text =
        MarkdownWriter.text(Demos.document(Demos.material(site), Audience.SITE)).replace("\n", " ");

    // 6.35 mm for historic structures: half of it, four fifths, all of it
    assertThat(text)
        .contains("3.175 mm (50 % of the limit)", "5.08 mm (80 % of the limit)")
        .contains("6.35 mm (100 % of the limit)", "until one is agreed the levels are shares")
        .doesNotContain("of the limit agreed", "| stop | 100 % of the limit");
  }

  @Test
  @DisplayName("the limit of a historic structure is the same in the facts and on the sheets")
  void one_historic_limit() {
    Material material = Demos.material("college-green-library.site.json");
    double predicted = 0.004; // stated: 4 mm
    double ratio =
        material.zones().get(0).advice().view().amount("forecastRatio").orElseThrow().si();

    assertThat(predicted / ratio)
        .isCloseTo(
            MovementLimit.governing(material.zones().get(0).advice().view()).orElseThrow().metres(),
            within(1e-6));
  }
}
