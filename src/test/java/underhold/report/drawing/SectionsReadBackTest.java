package underhold.report.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import underhold.advice.SupportOption;
import underhold.consult.Consultation;
import underhold.consult.ZoneAdvice;
import underhold.quantity.Measure;
import underhold.quantity.UnitSystem;
import underhold.report.drawing.bracket.BracketDetail;
import underhold.report.drawing.bracket.BracketSection;
import underhold.report.drawing.edgepits.EdgeWallSection;
import underhold.report.drawing.monitoring.InfluenceSection;
import underhold.report.drawing.piles.PileElevation;
import underhold.report.drawing.piles.PilePlan;
import underhold.sizing.Sheet;
import underhold.sizing.Step;

/** What a scale rule reads on the sections and plans is what their sheets say. */
class SectionsReadBackTest {
  /** A tick is good to two thousandths of a millimetre, which is 1 mm on site at 1:500. */
  private static final double SITE = 0.002;

  private static Consultation demo(String name) {
    return DemoDrawings.advised(name);
  }

  private static double result(Sheet sheet, String id) {
    return sheet.step(id).orElseThrow().result().si();
  }

  private static double symbol(Sheet sheet, String id, String sign) {
    return sheet.step(id).orElseThrow().formula().symbols().stream()
        .filter(one -> one.sign().equals(sign))
        .findFirst()
        .orElseThrow()
        .amount()
        .si();
  }

  private static SvgCheck check(Drawn drawn) {
    return new SvgCheck(drawn.figure().orElseThrow(() -> new AssertionError(drawn.why())));
  }

  private static void agree(SvgCheck check) {
    check.dimensions().values().stream()
        .filter(one -> !one.text().matches("^[a-z].*|.* x .*"))
        .forEach(
            one ->
                assertThat(one.metres())
                    .as(one.name())
                    .isCloseTo(one.written(), within(SITE + one.written() * SvgCheck.PRINTED)));
  }

  @Test
  @DisplayName("column piles stand at the places of the sheet's cap: squares of distances add up")
  void column_piles() {
    for (String name : List.of("ferry-street-column", "harbour-mill-columns")) {
      Sheet sheet = DemoDrawings.sheet(demo(name), SupportOption.DRILLED_PILES);
      SvgCheck check = check(PilePlan.of("zone", sheet, UnitSystem.SI, "p"));
      List<double[]> places = places(check);
      assertThat(places).hasSize((int) symbol(sheet, "pile-load", "n"));
      double middleX = places.stream().mapToDouble(at -> at[0]).average().orElseThrow();
      double middleY = places.stream().mapToDouble(at -> at[1]).average().orElseThrow();
      double along = places.stream().mapToDouble(at -> Math.pow(at[0] - middleX, 2)).sum();
      double across = places.stream().mapToDouble(at -> Math.pow(at[1] - middleY, 2)).sum();
      assertThat(along).isCloseTo(symbol(sheet, "pile-load", "Iy"), within(0.05));
      assertThat(across).isCloseTo(symbol(sheet, "pile-load", "Ix"), within(0.05));
      agree(check);
    }
  }

  private static List<double[]> places(SvgCheck check) {
    double ratio = check.printedRatio() / 1000;
    List<double[]> places = new ArrayList<>();
    for (int i = 1; i <= check.elements("g").size(); i++) {
      String name = "-pile-" + i;
      if (check.elements("g").stream().anyMatch(g -> g.getAttribute("id").endsWith(name))) {
        Element circle =
            (Element) check.group("pile-" + i).getElementsByTagNameNS("*", "ellipse").item(0);
        places.add(
            new double[] {
              SvgCheck.number(circle, "cx") * ratio, SvgCheck.number(circle, "cy") * ratio
            });
      }
    }
    return places;
  }

  @Test
  @DisplayName("piles under a box are as many as the bill, each in the middle of its share")
  void box_piles() {
    Sheet sheet = DemoDrawings.sheet(demo("orchard-line-box"), SupportOption.DRILLED_PILES);
    SvgCheck check = check(PilePlan.of("zone", sheet, UnitSystem.SI, "p"));
    List<double[]> places = places(check);
    double bill =
        sheet.quantities().stream()
            .filter(item -> item.name().equals("piles"))
            .findFirst()
            .orElseThrow()
            .amount()
            .si();
    assertThat(places).hasSize((int) bill);
    assertThat(places.get(1)[0] - places.get(0)[0])
        .isCloseTo(symbol(sheet, "pile-load", "sx"), within(0.005));
    Map<String, SvgCheck.Dimension> dimensions = check.dimensions();
    // the site: 38 m along, 26 m across
    assertThat(dimensions.get("structure-along").metres()).isCloseTo(38, within(0.01));
    assertThat(dimensions.get("structure-across").metres()).isCloseTo(26, within(0.01));
    agree(check);
  }

  @Test
  @DisplayName("a wall's piles stand in pairs from end to end")
  void wall_piles() {
    Sheet sheet = DemoDrawings.sheet(demo("alder-row-party-wall"), SupportOption.DRILLED_PILES);
    SvgCheck check = check(PilePlan.of("zone", sheet, UnitSystem.SI, "p"));
    List<double[]> places = places(check);
    // 12 m of wall, a needle every 2 m with one at each end: seven pairs
    assertThat(places).hasSize(14);
    assertThat(places.get(6)[0] - places.get(0)[0]).isCloseTo(12, within(0.005));
    assertThat(places.get(7)[1] - places.get(0)[1])
        .isCloseTo(symbol(sheet, "pile-load", "R"), within(0.005));
  }

  @Test
  @DisplayName("the pile's lengths, dug level and bracing lie where the sheet has them")
  void pile_elevation() {
    for (String name : List.of("ferry-street-column", "three-bridges-interchange")) {
      Consultation advised = demo(name);
      Sheet sheet = DemoDrawings.sheet(advised, SupportOption.DRILLED_PILES);
      SvgCheck check =
          check(
              PileElevation.of(
                  advised.site(), advised.zones().get(0).name(), sheet, UnitSystem.SI, "e"));
      Map<String, SvgCheck.Dimension> dimensions = check.dimensions();
      assertThat(dimensions.get("embedment").metres())
          .isCloseTo(result(sheet, "embedment"), within(SITE));
      double toe = symbol(sheet, "embedment", "zt");
      double cap = symbol(sheet, "dug-level", "zf");
      assertThat(dimensions.get("pile").metres()).isCloseTo(toe - cap, within(SITE));
      assertThat(dimensions.get("bared").metres())
          .isCloseTo(result(sheet, "dug-level") - cap, within(SITE));
      // one level of bracing 1.5 m below the cap by the setting first-brace
      Element brace = check.group("brace-1");
      Element casing = check.group("casing");
      Element box = (Element) casing.getElementsByTagNameNS("*", "rect").item(0);
      double below =
          (SvgCheck.number(brace, "data-y") - SvgCheck.number(box, "y"))
              * check.printedRatio()
              / 1000;
      assertThat(below).isCloseTo(1.5, within(0.005));
    }
  }

  @Test
  @DisplayName("e and the seat of a bracket measure what the sheet gives")
  void bracket_detail() {
    for (String name : List.of("kestrel-road-platform", "alder-row-party-wall")) {
      Sheet sheet = DemoDrawings.sheet(demo(name), SupportOption.BRACKET_PILES);
      SvgCheck check = check(BracketDetail.of("zone", sheet, UnitSystem.US, "b"));
      Map<String, SvgCheck.Dimension> dimensions = check.dimensions();
      assertThat(dimensions.get("eccentricity").metres())
          .isCloseTo(result(sheet, "eccentricity"), within(0.0005));
      assertThat(dimensions.get("seat").metres())
          .isCloseTo(
              sheet.input("seat-depth").orElseThrow().amount().orElseThrow().si(), within(0.0005));
      assertThat(dimensions.get("plate-depth").metres())
          .isCloseTo(symbol(sheet, "plate-moment", "d"), within(0.0005));
      assertThat(check.texts())
          .contains("P " + sheet.step("bracket-load").orElseThrow().result().in(UnitSystem.US));
    }
  }

  @Test
  @DisplayName("bond, fixity and excavation of a mini pile measure what the sheet gives")
  void bracket_section() {
    Consultation advised = demo("kestrel-road-platform");
    Sheet sheet = DemoDrawings.sheet(advised, SupportOption.BRACKET_PILES);
    Map<String, SvgCheck.Dimension> dimensions =
        check(
                BracketSection.of(
                    advised.site(), advised.zones().get(0).name(), sheet, UnitSystem.US, "b"))
            .dimensions();
    assertThat(dimensions.get("bond").metres())
        .isCloseTo(symbol(sheet, "bond-1", "L"), within(SITE));
    assertThat(dimensions.get("fixity").metres())
        .isCloseTo(symbol(sheet, "slenderness", "f"), within(SITE));
    // the site digs 6 ft below the edge
    assertThat(dimensions.get("excavation").metres()).isCloseTo(1.8288, within(SITE));
  }

  @Test
  @DisplayName("braces of the edge lie at their levels with the forces of the sheet")
  void edge_braces() {
    for (ZoneAdvice zone : edges()) {
      Consultation advised =
          demo(zone.name().equals("box") ? "orchard-line-box" : "three-bridges-interchange");
      Sheet sheet = DemoDrawings.sheet(advised, zone, SupportOption.EDGE_PITS).orElseThrow();
      SvgCheck check =
          check(EdgeWallSection.of(advised.site(), zone.name(), sheet, UnitSystem.SI, "w"));
      Element wall = (Element) check.group("wall").getElementsByTagNameNS("*", "rect").item(0);
      double top = SvgCheck.number(wall, "y");
      double ratio = check.printedRatio() / 1000;
      assertThat(SvgCheck.number(wall, "height") * ratio)
          .isCloseTo(result(sheet, "wall-height"), within(SITE));
      int level = 0;
      while (sheet.step("brace-" + (level + 1)).isPresent()) {
        level++;
        Element brace = check.group("brace-" + level);
        // first level 0.3 m below the structure, the others 1.5 m apart
        assertThat((SvgCheck.number(brace, "data-y") - top) * ratio)
            .isCloseTo(0.3 + 1.5 * (level - 1), within(SITE));
        String force = sheet.step("brace-" + level).orElseThrow().result().in(UnitSystem.SI);
        assertThat(String.join(" ", check.texts())).contains(force);
      }
      assertThat(level).isGreaterThan(2);
    }
  }

  private static List<ZoneAdvice> edges() {
    return List.of(
        demo("orchard-line-box").zones().get(0), demo("three-bridges-interchange").zones().get(1));
  }

  @Test
  @DisplayName(
      "the pressure diagram is as wide as the pressures, and its area is the sheet's force")
  void pressures() {
    ZoneAdvice zone = edges().get(0);
    Consultation advised = demo("orchard-line-box");
    Sheet sheet = DemoDrawings.sheet(advised, zone, SupportOption.EDGE_PITS).orElseThrow();
    SvgCheck check =
        check(EdgeWallSection.of(advised.site(), zone.name(), sheet, UnitSystem.SI, "w"));
    Element total = check.group("pressure-total");
    double top = SvgCheck.si(total.getAttribute("data-top"), Measure.PRESSURE);
    double base = SvgCheck.si(total.getAttribute("data-base"), Measure.PRESSURE);
    assertThat(top).isCloseTo(result(sheet, "pressure-top-design"), within(0.1));
    assertThat(base).isCloseTo(symbol(sheet, "joint-force", "p"), within(0.1));
    double height = result(sheet, "wall-height");
    assertThat((top + base) / 2 * height)
        .isCloseTo(
            result(sheet, "force-whole"), org.assertj.core.data.Percentage.withPercentage(0.1));
    double parts = 0;
    for (String part : List.of("soil", "surcharge-on-the-ground", "structure-s-share")) {
      parts +=
          SvgCheck.si(check.group("pressure-" + part).getAttribute("data-top"), Measure.PRESSURE);
    }
    assertThat(parts).isCloseTo(top, within(0.1));
    // half of 140 kPa by K = 1 - sin 24 deg
    assertThat(
            SvgCheck.si(
                check.group("pressure-structure-s-share").getAttribute("data-top"),
                Measure.PRESSURE))
        .isCloseTo(0.5 * 140 * (1 - Math.sin(Math.toRadians(24))), within(0.01));
  }

  @Test
  @DisplayName("each rule's bar is as long as its reach, and rules are told inside or outside")
  void reaches() {
    for (String name :
        List.of("alder-row-party-wall", "college-green-library", "ferry-street-column")) {
      Consultation advised = demo(name);
      Sheet sheet = DemoDrawings.sheet(advised, SupportOption.MONITOR);
      SvgCheck check =
          check(
              InfluenceSection.of(
                  advised.site(), advised.zones().get(0).name(), sheet, UnitSystem.SI, "i"));
      double ratio = check.printedRatio() / 1000;
      List<Step> rules =
          sheet.steps().stream().filter(step -> step.id().startsWith("zone-")).toList();
      assertThat(rules).hasSizeGreaterThan(7);
      for (Step rule : rules) {
        Element bar =
            (Element) check.group("bar-" + rule.id()).getElementsByTagNameNS("*", "rect").item(0);
        assertThat(SvgCheck.number(bar, "width") * ratio)
            .as(rule.id())
            .isCloseTo(rule.result().si(), within(SITE));
      }
      agree(check);
    }
  }
}
