package underhold.report.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Element;
import underhold.advice.SupportOption;
import underhold.consult.Consultation;
import underhold.quantity.Measure;
import underhold.quantity.UnitSystem;
import underhold.report.drawing.SvgCheck.Dimension;
import underhold.report.drawing.needles.NeedleElevation;
import underhold.sizing.Sheet;

/** The elevation of a needle says what its sheet says. */
class NeedleElevationTest {
  private static final Consultation FERRY = DemoDrawings.advised("ferry-street-column");

  private static SvgCheck drawn(Sheet sheet, UnitSystem units) {
    SvgCheck check =
        new SvgCheck(
            NeedleElevation.of(FERRY.site(), FERRY.site().zones().get(0), sheet, units, "needle")
                .figures()
                .get(0));
    check.sound();
    return check;
  }

  private static double step(Sheet sheet, String id) {
    return sheet.step(id).orElseThrow().result().si();
  }

  private static double input(Sheet sheet, String name) {
    return sheet.input(name).orElseThrow().amount().orElseThrow().si();
  }

  private static void measures(SvgCheck drawing, Dimension dimension, double held) {
    assertThat(dimension.metres())
        .as(dimension.name())
        .isCloseTo(held, within(SvgCheck.RULE * drawing.printedRatio() / 1000));
    assertThat(dimension.written())
        .as(dimension.name())
        .isCloseTo(held, within(SvgCheck.PRINTED * held));
  }

  @ParameterizedTest
  @EnumSource(UnitSystem.class)
  void span_seats_and_excavation_measure_what_the_sheet_holds(UnitSystem units) {
    Sheet sheet = DemoDrawings.sheet(FERRY, SupportOption.NEEDLES, "load-position=0.4");
    SvgCheck drawing = drawn(sheet, units);
    Map<String, Dimension> dimensions = drawing.dimensions();
    measures(drawing, dimensions.get("near-distance"), step(sheet, "near-distance"));
    measures(drawing, dimensions.get("far-distance"), step(sheet, "far-distance"));
    measures(drawing, dimensions.get("span"), input(sheet, "seat-span"));
    measures(drawing, dimensions.get("excavation-width"), input(sheet, "excavation-width"));
    measures(drawing, dimensions.get("excavation-depth"), input(sheet, "excavation-depth"));
    measures(drawing, dimensions.get("seat-depth"), input(sheet, "seat-depth"));
    double side =
        sheet.step("seat-pressure").orElseThrow().formula().symbols().stream()
            .filter(symbol -> symbol.sign().equals("B"))
            .findFirst()
            .orElseThrow()
            .amount()
            .si();
    measures(drawing, dimensions.get("pad-1"), side);
    measures(drawing, dimensions.get("pad-2"), side);
  }

  @ParameterizedTest
  @EnumSource(UnitSystem.class)
  void the_peak_of_the_moment_times_its_scale_is_the_moment_of_the_sheet(UnitSystem units) {
    for (String arrangement : new String[] {"pair", "cantilever"}) {
      Sheet sheet = DemoDrawings.sheet(FERRY, SupportOption.NEEDLES, "arrangement=" + arrangement);
      SvgCheck drawing = drawn(sheet, units);
      Element moment = drawing.group("moment");
      double held = step(sheet, "needle-moment");
      Element path = (Element) moment.getElementsByTagNameNS("*", "path").item(0);
      String[] points = path.getAttribute("d").replaceAll("[MZ]", "").split("L");
      double base = Double.parseDouble(points[0].split(",")[1]);
      double tip = Double.parseDouble(points[1].split(",")[1]);
      assertThat(Math.abs(tip - base) * SvgCheck.number(moment, "data-per-millimetre"))
          .isCloseTo(held, within(SvgCheck.RULE * SvgCheck.number(moment, "data-per-millimetre")));
      assertThat(tip > base)
          .as("sags between seats, hogs over a fulcrum")
          .isEqualTo(sheet.step("overhang").isEmpty());
      String words =
          drawing.texts().stream()
              .filter(text -> text.startsWith("M = "))
              .findFirst()
              .orElseThrow();
      assertThat(SvgCheck.si(words.substring(4), Measure.MOMENT))
          .isCloseTo(held, within(SvgCheck.PRINTED * held));
      String bar =
          drawing.texts().stream()
              .filter(text -> text.startsWith("this bar"))
              .findFirst()
              .orElseThrow();
      double ten = SvgCheck.si(bar.substring(10, bar.indexOf(';')), Measure.MOMENT);
      assertThat(ten)
          .isCloseTo(10 * SvgCheck.number(moment, "data-per-millimetre"), within(1e-6 * ten));
    }
  }

  @Test
  void a_cantilever_has_its_overhang_back_span_and_tail() {
    Sheet sheet = DemoDrawings.sheet(FERRY, SupportOption.NEEDLES, "arrangement=cantilever");
    SvgCheck drawing = drawn(sheet, UnitSystem.US);
    measures(drawing, drawing.dimensions().get("overhang"), step(sheet, "overhang"));
    measures(drawing, drawing.dimensions().get("back-span"), step(sheet, "back-span"));
    String uplift = sheet.step("tail-uplift").orElseThrow().result().in(UnitSystem.US);
    assertThat(drawing.texts()).contains("U = " + uplift);
  }

  /** The line runs from the toe of the excavation to the setback of the sheet at seat level. */
  @Test
  void the_influence_line_has_the_slope_of_the_sheet() {
    Sheet sheet = DemoDrawings.sheet(FERRY, SupportOption.NEEDLES);
    SvgCheck drawing = drawn(sheet, UnitSystem.SI);
    Element line = (Element) drawing.group("influence").getElementsByTagNameNS("*", "line").item(1);
    double across = Math.abs(SvgCheck.number(line, "x2") - SvgCheck.number(line, "x1"));
    double up = Math.abs(SvgCheck.number(line, "y2") - SvgCheck.number(line, "y1"));
    double depth = input(sheet, "excavation-depth") - input(sheet, "seat-depth");
    assertThat(across / up).isCloseTo(step(sheet, "setback") / depth, within(0.001));
    assertThat(drawing.texts()).anyMatch(text -> text.contains("inside"));
  }

  @Test
  void a_sheet_that_still_asks_is_not_drawn() {
    Consultation alder = DemoDrawings.advised("alder-row-party-wall");
    Drawn drawn =
        NeedleElevation.of(
            alder.site(),
            alder.site().zones().get(0),
            DemoDrawings.sheet(alder, SupportOption.NEEDLES),
            UnitSystem.SI,
            "needle");
    assertThat(drawn.figures()).isEmpty();
    assertThat(drawn.why()).contains("span between seats");
  }
}
