package underhold.report.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import underhold.quantity.UnitSystem;
import underhold.report.drawing.SvgCheck.Dimension;
import underhold.report.drawing.section.SectionDrawing;
import underhold.report.drawing.section.SectionText;
import underhold.site.Site;
import underhold.site.SiteReader;
import underhold.site.Zone;

/** The section of a zone shows the facts of the site file, and what nobody knows as unknown. */
class SectionDrawingTest {
  private static Figure figure(Site site, UnitSystem units) {
    return SectionDrawing.of(site, site.zones().get(0), DemoDrawings.limits(), units, "section")
        .figures()
        .get(0);
  }

  private static SvgCheck drawn(Site site, UnitSystem units) {
    SvgCheck check = new SvgCheck(figure(site, units));
    check.sound();
    return check;
  }

  private static void measures(SvgCheck drawing, String name, double metres) {
    Map<String, Dimension> dimensions = drawing.dimensions();
    assertThat(dimensions).containsKey(name);
    assertThat(dimensions.get(name).metres())
        .as(name)
        .isCloseTo(metres, within(SvgCheck.RULE * drawing.printedRatio() / 1000));
    assertThat(dimensions.get(name).written())
        .as(name)
        .isCloseTo(metres, within(SvgCheck.PRINTED * metres));
  }

  /** The numbers stand in cases/demo/college-green-library.site.json and the Alder Row file. */
  @Test
  void depths_widths_and_gap_are_those_of_the_file() {
    SvgCheck alder = drawn(DemoDrawings.site("alder-row-party-wall"), UnitSystem.SI);
    measures(alder, "excavation-depth", 3.4);
    measures(alder, "founding-depth", 1.0);
    measures(alder, "excavation-below-footing", 3.4 - 1.0);
    measures(alder, "footing-width", 0.9);
    SvgCheck library = drawn(DemoDrawings.site("college-green-library"), UnitSystem.SI);
    measures(library, "gap", 14);
    measures(library, "excavation-depth", 6.5);
    SvgCheck feet = drawn(DemoDrawings.site("alder-row-party-wall"), UnitSystem.US);
    measures(feet, "excavation-depth", 3.4);
    assertThat(feet.dimensions().get("excavation-depth").text()).endsWith(" ft");
  }

  @Test
  void what_was_typed_is_shown_as_typed() {
    SvgCheck alder = drawn(DemoDrawings.site("alder-row-party-wall"), UnitSystem.SI);
    assertThat(alder.dimensions().get("founding-depth").text()).isEqualTo("1.0 m");
  }

  /** Alder Row: fill to 0.9 m, stiff clay below. */
  @Test
  void layers_lie_at_their_depths() {
    SvgCheck alder = drawn(DemoDrawings.site("alder-row-party-wall"), UnitSystem.SI);
    double surface = SvgCheck.number(alder.group("dim-excavation-depth"), "data-from");
    List<Double> tops =
        List.of("layer-1", "layer-2").stream()
            .map(name -> top(alder.group(name)))
            .map(top -> (top - surface) * alder.printedRatio() / 1000)
            .toList();
    assertThat(tops.get(0)).isCloseTo(0, within(0.001));
    assertThat(tops.get(1)).isCloseTo(0.9, within(0.001));
    assertThat(String.join(" ", alder.texts())).contains("stiff clay").contains("fill");
  }

  private static double top(Element group) {
    Element area = (Element) group.getElementsByTagNameNS("*", "path").item(0);
    double top = Double.MAX_VALUE;
    for (String point : area.getAttribute("d").split("[MLZ]")) {
      if (!point.isBlank()) {
        top = Math.min(top, Double.parseDouble(point.split(",")[1]));
      }
    }
    return top;
  }

  /** The rules compare the gap with 1 and 2 times the depth below the footing. */
  @Test
  void influence_lines_reach_the_multiples_of_the_rules_at_founding_level() {
    SvgCheck alder = drawn(DemoDrawings.site("alder-row-party-wall"), UnitSystem.SI);
    assertThat(reach(alder, "influence-core")).isCloseTo(1 * 2.4, within(0.002));
    assertThat(reach(alder, "influence-screening")).isCloseTo(2 * 2.4, within(0.002));
  }

  private static double reach(SvgCheck drawing, String name) {
    Element line = (Element) drawing.group(name).getElementsByTagNameNS("*", "line").item(0);
    return Math.abs(SvgCheck.number(line, "x2") - SvgCheck.number(line, "x1"))
        * drawing.printedRatio()
        / 1000;
  }

  @Test
  void an_unknown_depth_or_width_is_a_question_mark_and_no_number() {
    Site site =
        DemoDrawings.site(
            "alder-row-party-wall",
            "\"excavationDepth\": \"3.4 m\"",
            "\"excavationDepth\": \"unknown\"",
            "\"footingWidth\": \"0.9 m\"",
            "\"footingWidth\": \"unknown\"");
    Figure figure = figure(site, UnitSystem.SI);
    SvgCheck drawing = new SvgCheck(figure);
    drawing.sound();
    assertThat(drawing.dimensions().get("excavation-depth").text()).isEqualTo("?");
    assertThat(drawing.dimensions().get("footing-width").text()).isEqualTo("?");
    assertThat(drawing.dimensions()).doesNotContainKey("excavation-below-footing");
    assertThat(figure.svg()).doesNotContain("influence");
    assertThat(figure.equivalent())
        .contains("Width of the footing: not known.")
        .contains("Depth of the excavation below ground: not known.");
    for (Element dashed : drawing.elements("g")) {
      if (dashed.getAttribute("id").equals("section-dim-footing-width")) {
        assertThat(dashed.getElementsByTagNameNS("*", "line").getLength()).isGreaterThan(2);
      }
    }
    assertThat(drawing.texts()).anyMatch(text -> text.contains("(?)"));
  }

  @Test
  void a_site_without_any_depth_is_not_drawn_and_says_why() {
    Site site = DemoDrawings.site("first-visit-chapel-hill");
    Drawn drawn =
        SectionDrawing.of(
            site, site.zones().get(0), DemoDrawings.limits(), UnitSystem.SI, "section");
    assertThat(drawn.figures()).isEmpty();
    assertThat(drawn.why()).contains("founding depth").contains("depth of the excavation");
  }

  /** Sites of every shape: what a source does not tell is left out there. */
  @Test
  void every_zone_of_the_published_jobs_is_drawn_soundly_or_says_why_not() throws IOException {
    int drawn = 0;
    try (Stream<Path> files = Files.walk(Path.of("cases/published"))) {
      for (Path file : files.filter(path -> path.toString().endsWith(".site.json")).toList()) {
        Site site =
            SiteReader.read(file)
                .fold(
                    valid -> valid.site(),
                    invalid -> {
                      throw new AssertionError(file);
                    });
        for (Zone zone : site.zones()) {
          Drawn section =
              SectionDrawing.of(site, zone, DemoDrawings.limits(), site.units(), "section");
          assertThat(section.figures().isEmpty()).isEqualTo(!section.why().isEmpty());
          for (Figure figure : section.figures()) {
            new SvgCheck(figure).sound();
            drawn++;
          }
          SectionText.of(site, zone, DemoDrawings.limits(), site.units())
              .ifPresent(
                  text ->
                      assertThat(text.lines(80))
                          .as(zone.name())
                          .hasSizeLessThan(40)
                          .allMatch(line -> line.length() <= 80));
        }
      }
    }
    assertThat(drawn).isGreaterThan(5);
  }

  @Test
  void other_zones_are_named_with_the_distances_of_the_file() {
    Figure figure = figure(DemoDrawings.site("three-bridges-interchange"), UnitSystem.SI);
    assertThat(new SvgCheck(figure).texts()).contains("end of the cut", "platform edge", "3 m");
    assertThat(figure.equivalent())
        .anyMatch(line -> line.startsWith("Zone platform edge: 3 m away"));
  }
}
