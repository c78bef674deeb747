package underhold.report.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import underhold.advice.SupportOption;
import underhold.consult.Consultation;
import underhold.quantity.UnitSystem;
import underhold.report.drawing.bracket.BracketSection;
import underhold.report.drawing.monitoring.InfluenceSection;
import underhold.report.drawing.section.SectionDrawing;
import underhold.sizing.Sheet;

/** Parts are drawn at their size and place, and the words of a drawing give its dimensions. */
class DrawnTrueTest {
  private static final double LEAST = 0.01;
  private static final Pattern QUANTITY = Pattern.compile("-?\\d[\\d.]* [\\p{L}°/·\\d]+$");

  private static SvgCheck bracket(Consultation advised, Sheet sheet) {
    Drawn drawn =
        BracketSection.of(advised.site(), advised.zones().get(0).name(), sheet, UnitSystem.SI, "b");
    return new SvgCheck(drawn.figure().orElseThrow(() -> new AssertionError(drawn.why())));
  }

  private static double[] box(SvgCheck check, String group) {
    Element rect = (Element) check.group(group).getElementsByTagNameNS("*", "rect").item(0);
    double ratio = check.printedRatio() / 1000;
    return new double[] {
      (SvgCheck.number(rect, "x") + SvgCheck.number(rect, "width") / 2) * ratio,
      SvgCheck.number(rect, "width") * ratio
    };
  }

  private static double symbol(Sheet sheet, String step, String sign) {
    return sheet.step(step).orElseThrow().formula().symbols().stream()
        .filter(one -> one.sign().equals(sign))
        .findFirst()
        .orElseThrow()
        .amount()
        .si();
  }

  private static double result(Sheet sheet, String step) {
    return sheet.step(step).orElseThrow().result().si();
  }

  @Test
  @DisplayName(
      "a pair of mini piles stands as far apart as the sheet has it, with the forces that statics gives")
  void pair() {
    Consultation advised = DemoDrawings.advised("kestrel-road-platform");
    Sheet sheet =
        DemoDrawings.sheet(
            advised, SupportOption.BRACKET_PILES, "moment-path=paired", "pair-apart=1.5 m");
    SvgCheck check = bracket(advised, sheet);
    assertThat(box(check, "casing")[0] - box(check, "far-casing")[0]).isCloseTo(1.5, within(LEAST));
    assertThat(check.dimensions().get("apart").metres()).isCloseTo(1.5, within(LEAST));
    assertThat(box(check, "far-bond")[1]).isCloseTo(box(check, "bond")[1], within(1e-6));
    // moments about the near and the far pile: T = P e / L, N = P (1 + e / L)
    double load = result(sheet, "bracket-load");
    double arm = result(sheet, "eccentricity") / 1.5;
    assertThat(result(sheet, "far-pile")).isCloseTo(load * arm, within(load * 1e-6));
    assertThat(result(sheet, "near-pile")).isCloseTo(load * (1 + arm), within(load * 1e-6));
    assertThat(String.join(" ", check.texts()))
        .contains(
            sheet.step("near-pile").orElseThrow().result().in(UnitSystem.SI),
            sheet.step("far-pile").orElseThrow().result().in(UnitSystem.SI));
  }

  @Test
  @DisplayName(
      "casing and load of a bracket lie at their size and eccentricity, waler levels evenly")
  void bracket() {
    for (String demo : List.of("alder-row-party-wall", "kestrel-road-platform")) {
      Consultation advised = DemoDrawings.advised(demo);
      Sheet sheet = DemoDrawings.sheet(advised, SupportOption.BRACKET_PILES, "brace-levels=2");
      SvgCheck check = bracket(advised, sheet);
      double ratio = check.printedRatio() / 1000;
      double load = SvgCheck.number(check.group("load"), "data-x") * ratio;
      // e holds for a pile mislocated outwards; drawn is the pile as planned
      double planned = result(sheet, "eccentricity") - symbol(sheet, "eccentricity", "m");
      assertThat(load - box(check, "casing")[0]).as(demo).isCloseTo(planned, within(LEAST));
      double below =
          sheet.input("excavation-below-footing").orElseThrow().amount().orElseThrow().si();
      double[] walers = new double[2];
      for (int i = 0; i < 2; i++) {
        Element line =
            (Element) check.group("waler-" + (i + 1)).getElementsByTagNameNS("*", "line").item(0);
        walers[i] = SvgCheck.number(line, "y1") * ratio;
      }
      assertThat(walers[1] - walers[0]).as(demo).isCloseTo(below / 3, within(LEAST));
    }
    Sheet party =
        DemoDrawings.sheet(
            DemoDrawings.advised("alder-row-party-wall"), SupportOption.BRACKET_PILES);
    SvgCheck drawn = bracket(DemoDrawings.advised("alder-row-party-wall"), party);
    assertThat(box(drawn, "casing")[1])
        .isCloseTo(symbol(party, "eccentricity", "OD"), within(0.002));
  }

  @Test
  @DisplayName(
      "a pile too thin to be seen is drawn wider, and the note at it says so; no other does")
  void widened() {
    Consultation advised = DemoDrawings.advised("alder-row-party-wall");
    Sheet far =
        DemoDrawings.sheet(
            advised, SupportOption.BRACKET_PILES, "moment-path=paired", "pair-apart=6 m");
    Sheet single = DemoDrawings.sheet(advised, SupportOption.BRACKET_PILES);
    assertThat(String.join(" ", bracket(advised, far).texts()))
        .contains("drawn wider than to scale");
    assertThat(String.join(" ", bracket(advised, single).texts())).doesNotContain("wider");
  }

  @Test
  @DisplayName("influence lines rise at the slopes of their rules")
  void slopes() {
    // tan 30 degrees, 45 degrees, 1 on 1, 1.5 and 2 across to 1 up
    Map<String, Double> across =
        Map.of(
            "30 degrees from the vertical",
            Math.tan(Math.toRadians(30)),
            "45 degrees from the base",
            1.0,
            "1 on 1",
            1.0,
            "1 vertical on 1.5 horizontal",
            1.5,
            "1 on 2",
            2.0);
    Consultation advised = DemoDrawings.advised("orchard-line-box");
    Sheet sheet = DemoDrawings.sheet(advised, SupportOption.MONITOR);
    SvgCheck check =
        new SvgCheck(
            InfluenceSection.of(
                    advised.site(), advised.zones().get(0).name(), sheet, UnitSystem.SI, "i")
                .figure()
                .orElseThrow());
    List<String> found = new ArrayList<>();
    sheet.steps().stream()
        .filter(step -> step.id().startsWith("zone-"))
        .forEach(
            step ->
                across.forEach(
                    (title, slope) -> {
                      if (step.title().endsWith(title)) {
                        found.add(title);
                        assertThat(slope(check.group(step.id())))
                            .as(title)
                            .isCloseTo(slope, within(0.01));
                      }
                    }));
    assertThat(found).hasSizeGreaterThan(3);
  }

  private static double slope(Element group) {
    Element line = (Element) group.getElementsByTagNameNS("*", "line").item(0);
    return Math.abs(
        (SvgCheck.number(line, "x2") - SvgCheck.number(line, "x1"))
            / (SvgCheck.number(line, "y2") - SvgCheck.number(line, "y1")));
  }

  @Test
  @DisplayName("the section's core and screening zones rise 1 across and 2 across to 1 up")
  void zones() {
    Consultation advised = DemoDrawings.advised("alder-row-party-wall");
    SvgCheck check =
        new SvgCheck(
            SectionDrawing.of(
                    advised.site(),
                    advised.site().zones().get(0),
                    DemoDrawings.limits(),
                    UnitSystem.SI,
                    "s")
                .figure()
                .orElseThrow());
    assertThat(slope(check.group("influence-core"))).isCloseTo(1, within(0.01));
    assertThat(slope(check.group("influence-screening"))).isCloseTo(2, within(0.01));
  }

  @Test
  @DisplayName("every dimension measures what it says, and the words of the drawing say the same")
  void dimensions() {
    int read = 0;
    List<String> silent = new ArrayList<>();
    for (String demo : DemoDrawings.names()) {
      Consultation advised = DemoDrawings.advised(demo);
      UnitSystem units = advised.site().units();
      for (Drawn drawn : MoreDrawings.all(advised, units)) {
        for (Figure figure : drawn.figures()) {
          String words = String.join(" ", figure.equivalent());
          for (SvgCheck.Dimension one : new SvgCheck(figure).dimensions().values()) {
            Matcher quantity = QUANTITY.matcher(one.text());
            assertThat(quantity.find()).as(one.text()).isTrue();
            double written = SvgCheck.si(quantity.group(), underhold.quantity.Measure.LENGTH);
            assertThat(one.metres())
                .as(figure.id() + " " + one.name())
                .isCloseTo(written, within(LEAST + written * SvgCheck.PRINTED));
            if (!words.contains(quantity.group())) {
              silent.add(demo + " " + figure.id() + ": " + one.name() + " " + one.text());
            }
            read++;
          }
        }
      }
    }
    assertThat(read).isGreaterThan(60);
    assertThat(silent).isEmpty();
  }

  @Test
  @DisplayName("leaders of notes keep apart in every drawing of the demos")
  void leaders() {
    List<String> crossed = new ArrayList<>();
    for (String demo : DemoDrawings.names()) {
      Consultation advised = DemoDrawings.advised(demo);
      for (Drawn drawn : MoreDrawings.all(advised, advised.site().units())) {
        for (Figure figure : drawn.figures()) {
          new SvgCheck(figure)
              .crossingLeaders()
              .forEach(one -> crossed.add(demo + " " + figure.id() + ": " + one));
        }
      }
    }
    assertThat(crossed).isEmpty();
  }
}
