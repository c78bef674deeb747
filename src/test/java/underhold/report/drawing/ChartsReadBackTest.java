package underhold.report.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import underhold.advice.Effect;
import underhold.advice.OptionAdvice;
import underhold.advice.SupportOption;
import underhold.consult.Consultation;
import underhold.consult.ZoneAdvice;
import underhold.consult.firmness.Firmness;
import underhold.consult.stage.PlanStage;
import underhold.consult.stage.StagePlan;
import underhold.quantity.UnitSystem;
import underhold.report.drawing.chart.BondChart;
import underhold.report.drawing.chart.CheckChart;
import underhold.report.drawing.chart.FirmnessChart;
import underhold.report.drawing.chart.LoadSettlementChart;
import underhold.report.drawing.chart.PileResistanceChart;
import underhold.report.drawing.chart.RankingChart;
import underhold.report.drawing.chart.StageChart;
import underhold.sizing.Amount;
import underhold.sizing.Check;
import underhold.sizing.Sheet;
import underhold.sizing.Verdict;

/**
 * What a reader measures on a chart is what the answer and the sheets say. Places are turned into
 * values by the axis's own ticks, not by what drew them.
 */
class ChartsReadBackTest {
  private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");

  /** Places are written to a thousandth of a millimetre, values to four figures. */
  private static final double PLACE = 0.003;

  /** A straight scale by two of its ticks. */
  private record Scale(double from, double fromAt, double to, double toAt) {
    double value(double at) {
      return from + (at - fromAt) / (toAt - fromAt) * (to - from);
    }

    double perMillimetre() {
      return Math.abs((to - from) / (toAt - fromAt));
    }
  }

  /** The level axis: numbers alone, all on the lowest line that has two of them. */
  private static Scale level(SvgCheck check) {
    return axis(check, "middle", "y", "x", 0);
  }

  /** The axis going down: numbers alone, ending at the same place. */
  private static Scale down(SvgCheck check) {
    return axis(check, "end", "x", "y", 0.9);
  }

  private static Scale axis(SvgCheck check, String anchor, String same, String along, double feet) {
    Map<Double, TreeMap<Double, Double>> lines = new TreeMap<>();
    for (Element text : check.elements("text")) {
      if (text.getAttribute("text-anchor").equals(anchor)
          && NUMBER.matcher(text.getTextContent()).matches()) {
        lines
            .computeIfAbsent(SvgCheck.number(text, same), key -> new TreeMap<>())
            .put(SvgCheck.number(text, along) - feet, Double.parseDouble(text.getTextContent()));
      }
    }
    TreeMap<Double, Double> most =
        lines.values().stream().reduce((a, b) -> b.size() >= a.size() ? b : a).orElseThrow();
    assertThat(most).hasSizeGreaterThan(1);
    return new Scale(
        most.firstEntry().getValue(), most.firstKey(), most.lastEntry().getValue(), most.lastKey());
  }

  private static double width(Element group) {
    NodeList rects = group.getElementsByTagNameNS("*", "rect");
    return rects.getLength() == 0 ? 0 : SvgCheck.number((Element) rects.item(0), "width");
  }

  private static Consultation demo(String name) {
    return DemoDrawings.advised(name);
  }

  @Test
  @DisplayName("bars of a ranking are as long as its points, on the side they count")
  void ranking() {
    for (String name : DemoDrawings.names()) {
      Consultation advised = demo(name);
      for (ZoneAdvice zone : advised.zones()) {
        SvgCheck check = new SvgCheck(RankingChart.of(zone, advised.pack(), "r"));
        Scale scale = level(check);
        for (OptionAdvice advice : zone.ranking().options()) {
          double plus = scale.perMillimetre() * width(check.group("for-" + advice.option().id()));
          double minus =
              scale.perMillimetre() * width(check.group("against-" + advice.option().id()));
          assertThat(plus - minus).isCloseTo(advice.score(), within(0.02));
          assertThat(plus > 0.5)
              .isEqualTo(counts(advice, Effect.FOR) || counts(advice, Effect.REFER));
          assertThat(minus > 0.5).isEqualTo(counts(advice, Effect.AGAINST));
        }
      }
    }
  }

  private static boolean counts(OptionAdvice advice, Effect effect) {
    return advice.findings(effect).stream().anyMatch(one -> !advice.uncounted().contains(one));
  }

  @Test
  @DisplayName("bars of firmness are shares of the draws, and all shares make a hundred")
  void firmness() {
    ZoneAdvice zone = demo("alder-row-party-wall").zones().get(0);
    Firmness firmness = zone.firmness().orElseThrow();
    SvgCheck check = new SvgCheck(FirmnessChart.of(zone, "f").orElseThrow());
    Scale scale = level(check);
    double sum = 0;
    for (SupportOption option : firmness.byFirsts()) {
      double share = scale.perMillimetre() * width(check.group("share-" + option.id()));
      assertThat(share).isCloseTo(100.0 * firmness.first(option) / firmness.draws(), within(0.02));
      sum += share;
    }
    if (firmness.none() > 0) {
      sum += scale.perMillimetre() * width(check.group("share-none"));
    }
    assertThat(sum).isCloseTo(100, within(0.1));
    assertThat(check.texts()).anyMatch(text -> text.contains("not a probability"));
    assertThat(firmness.runnerUp()).isPresent();
    assertThat(check.texts()).anyMatch(text -> text.endsWith("%, next"));
  }

  @Test
  @DisplayName("the curve passes at the working load through the settlement of the sheet")
  void curve() {
    for (String name : new String[] {"ferry-street-column", "three-bridges-interchange"}) {
      Consultation advised = demo(name);
      UnitSystem units = advised.site().units();
      Sheet sheet = DemoDrawings.sheet(advised, SupportOption.DRILLED_PILES);
      SvgCheck check =
          new SvgCheck(LoadSettlementChart.of(sheet, "zone", units, "c").figure().orElseThrow());
      Scale loads = level(check);
      Scale down = down(check);
      for (int percent : new int[] {25, 100, 200}) {
        Element dot =
            (Element)
                check.group("point-" + percent).getElementsByTagNameNS("*", "ellipse").item(0);
        double load = loads.value(SvgCheck.number(dot, "cx"));
        double settlement = down.value(SvgCheck.number(dot, "cy"));
        Amount working = sheet.step("pile-load").orElseThrow().result();
        Amount told = sheet.step("settlement-" + percent).orElseThrow().result();
        assertThat(load)
            .isCloseTo(
                shown(working, units) * percent / 100, within(PLACE * loads.perMillimetre() * 2));
        assertThat(settlement)
            .isCloseTo(shown(told, units), within(PLACE * down.perMillimetre() * 2));
      }
      Element line =
          (Element) check.group("working-load").getElementsByTagNameNS("*", "line").item(0);
      assertThat(loads.value(SvgCheck.number(line, "x1")))
          .isCloseTo(
              shown(sheet.step("pile-load").orElseThrow().result(), units),
              within(PLACE * loads.perMillimetre() * 2));
    }
  }

  @Test
  @DisplayName("the limit of settlement is drawn at its value")
  void limit() {
    Consultation advised = demo("ferry-street-column");
    Sheet sheet = DemoDrawings.sheet(advised, SupportOption.DRILLED_PILES);
    SvgCheck check =
        new SvgCheck(
            LoadSettlementChart.of(sheet, "zone", UnitSystem.US, "c").figure().orElseThrow());
    Element line = (Element) check.group("limit").getElementsByTagNameNS("*", "line").item(0);
    // the site states 0.4 in
    assertThat(down(check).value(SvgCheck.number(line, "y1"))).isCloseTo(0.4, within(0.001));
  }

  private static double shown(Amount amount, UnitSystem units) {
    return amount.measure().requireUnit(amount.unit(units)).fromInside(amount.si());
  }

  @Test
  @DisplayName("each piece of a drilled pile lies at its depth, as wide as its unit resistance")
  void resistance() {
    Consultation advised = demo("three-bridges-interchange");
    Sheet sheet = DemoDrawings.sheet(advised, SupportOption.DRILLED_PILES);
    String zone = advised.zones().get(0).name();
    SvgCheck check =
        new SvgCheck(
            PileResistanceChart.of(advised.site(), zone, sheet, UnitSystem.SI, "p")
                .figure()
                .orElseThrow());
    Scale depth = down(check);
    Scale unit = level(check);
    double sum = 0;
    for (int i = 1; sheet.step("side-" + i).isPresent(); i++) {
      var step = sheet.step("side-" + i).orElseThrow();
      Element bar = (Element) check.group("side-" + i).getElementsByTagNameNS("*", "rect").item(0);
      double top = depth.value(SvgCheck.number(bar, "y"));
      double low = depth.value(SvgCheck.number(bar, "y") + SvgCheck.number(bar, "height"));
      double pressure = unit.perMillimetre() * SvgCheck.number(bar, "width");
      assertThat(step.note().in(UnitSystem.SI))
          .startsWith("From " + Amount.length(rounded(top)).in(UnitSystem.SI));
      // the area of the bar times the circumference of the 609.6 mm hole is the force
      sum += pressure * (low - top) * Math.PI * 0.6096;
    }
    assertThat(sum)
        .isCloseTo(
            sheet.step("side-total").orElseThrow().result().si(),
            org.assertj.core.data.Percentage.withPercentage(0.2));
  }

  private static double rounded(double metres) {
    return Math.round(metres * 1000) / 1000.0;
  }

  @Test
  @DisplayName("the bond of a mini pile lies between the depths of its check")
  void bond() {
    Consultation advised = demo("alder-row-party-wall");
    Sheet sheet = DemoDrawings.sheet(advised, SupportOption.BRACKET_PILES);
    SvgCheck check =
        new SvgCheck(
            BondChart.of(advised.site(), advised.zones().get(0).name(), sheet, UnitSystem.SI, "b")
                .figure()
                .orElseThrow());
    Scale depth = down(check);
    Element bar = (Element) check.group("bond-1").getElementsByTagNameNS("*", "rect").item(0);
    var amounts = sheet.check("pile-bond").orElseThrow().note().amounts();
    double top = SvgCheck.number(bar, "y");
    assertThat(depth.value(top)).isCloseTo(amounts.get("f").si(), within(0.002));
    assertThat(depth.value(top + SvgCheck.number(bar, "height")))
        .isCloseTo(amounts.get("t").si(), within(0.002));
  }

  @Test
  @DisplayName("stages begin and last on the chart as in the schedule; critical ones are full")
  void stages() {
    StagePlan plan = MoreDrawings.plan(demo("three-bridges-interchange")).orElseThrow();
    int drawn = 0;
    int number = 0;
    for (Figure figure : StageChart.of(plan, "s")) {
      SvgCheck check = new SvgCheck(figure);
      Scale days = level(check);
      int here = 0;
      for (Element group : check.elements("g")) {
        here += group.getAttribute("id").contains("-stage-") ? 1 : 0;
      }
      assertThat(here).isLessThanOrEqualTo(40);
      for (int i = 0; i < here; i++) {
        PlanStage stage = plan.stages().get(number++);
        Element group = check.group("stage-" + number);
        Element bar = (Element) group.getElementsByTagNameNS("*", "rect").item(0);
        double start = days.value(SvgCheck.number(bar, "x"));
        double length = days.perMillimetre() * SvgCheck.number(bar, "width");
        assertThat(start).isCloseTo(plan.schedule().start(stage.id()), within(0.1));
        // a bar shorter than 0.3 mm could not be seen and is drawn that long
        assertThat(length)
            .isCloseTo(Math.max(stage.time().days(), 0.3 * days.perMillimetre()), within(0.1));
        boolean full = bar.getAttribute("style").isEmpty() && !white(bar);
        assertThat(full).as(stage.title()).isEqualTo(plan.schedule().isCritical(stage.id()));
        assertThat(group.getElementsByTagNameNS("*", "path").getLength() > 0)
            .isEqualTo(!stage.holds().isEmpty());
        drawn++;
      }
    }
    assertThat(drawn).isEqualTo(plan.stages().size()).isGreaterThan(40);
  }

  private static boolean white(Element bar) {
    return bar.getAttribute("fill")
        .toLowerCase(java.util.Locale.ROOT)
        .matches("#fff(fff)?|white|rgb\\(255, *255, *255\\)");
  }

  @Test
  @DisplayName("a check's bar ends where it should against 100 %, and its verdict is written")
  void checks() {
    Consultation advised = demo("ferry-street-column");
    Sheet sheet = DemoDrawings.sheet(advised, SupportOption.DRILLED_PILES);
    SvgCheck check =
        new SvgCheck(CheckChart.of(sheet, "zone", UnitSystem.US, "k").figure().orElseThrow());
    Scale share = level(check);
    for (Check one : sheet.checks()) {
      double use = one.utilisation().isPresent() ? one.utilisation().getAsDouble() : 9;
      double bar = share.perMillimetre() * width(check.group("check-" + one.id()));
      assertThat(bar).as(one.id()).isCloseTo(Math.min(150, 100 * use), within(0.02));
    }
    for (Verdict verdict : Verdict.values()) {
      long wanted = sheet.checks().stream().filter(one -> one.verdict() == verdict).count();
      assertThat(check.texts().stream().filter(text -> text.endsWith(", " + verdict.label())))
          .hasSize((int) wanted);
    }
  }
}
