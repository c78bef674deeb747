package underhold.report.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.advice.SupportOption;
import underhold.consult.Consultation;
import underhold.quantity.UnitSystem;
import underhold.report.drawing.chart.CheckChart;
import underhold.report.drawing.chart.LoadSettlementChart;
import underhold.report.drawing.piles.PilePlan;
import underhold.sizing.Sheet;

/** What holds of every chart and drawing, whichever site it is of. */
class MoreDrawingsTest {
  private static List<Figure> figures(Consultation advised, UnitSystem units) {
    return MoreDrawings.all(advised, units).stream()
        .flatMap(drawn -> drawn.figures().stream())
        .toList();
  }

  @Test
  @DisplayName(
      "every drawing of every demo, in both unit systems, is well-formed, on its paper, with words apart and ids its own")
  void sound() {
    Set<String> kinds = new LinkedHashSet<>();
    for (String name : DemoDrawings.names()) {
      for (UnitSystem units : UnitSystem.values()) {
        Set<String> ids = new LinkedHashSet<>();
        for (Figure figure : figures(DemoDrawings.advised(name), units)) {
          new SvgCheck(figure).sound();
          assertThat(ids.add(figure.id())).as(figure.id()).isTrue();
          kinds.add(figure.id().replaceFirst("^z\\d-", ""));
        }
      }
    }
    assertThat(kinds)
        .contains("ranking", "firmness", "curve", "resistance", "plan", "pile", "bond", "bracket")
        .contains("detail", "edge", "reach", "movement", "stages", "stages-2");
  }

  @Test
  @DisplayName("where a sheet asks, nothing is drawn and the reason names what it asks for")
  void withheld() {
    List<Drawn> drawn =
        MoreDrawings.all(DemoDrawings.advised("first-visit-chapel-hill"), UnitSystem.SI);
    List<String> reasons =
        drawn.stream().map(Drawn::why).filter(why -> !why.isEmpty()).distinct().toList();
    assertThat(reasons).isNotEmpty();
    assertThat(reasons).allSatisfy(why -> assertThat(why).startsWith("Not drawn").contains("asks"));
    assertThat(drawn.stream().flatMap(one -> one.figures().stream()).map(Figure::id))
        .containsExactlyInAnyOrder("z1-ranking", "z1-firmness", "stages");
  }

  @Test
  @DisplayName("the same consultation gives the same characters")
  void same_every_time() {
    Consultation advised = DemoDrawings.advised("orchard-line-box");
    assertThat(figures(advised, UnitSystem.US)).isEqualTo(figures(advised, UnitSystem.US));
  }

  @Test
  @DisplayName(
      "a hostile zone name stays words: no markup, no control signs, nothing off the paper")
  void hostile() {
    String name = "\\\"><script>alert(1)</script>&amp;]]> " + "wall ".repeat(18).strip();
    Consultation advised =
        DemoDrawings.advised("orchard-line-box", "\"name\": \"box\"", "\"name\": \"" + name + "\"");
    List<Figure> figures = figures(advised, UnitSystem.SI);
    assertThat(figures.size()).isGreaterThan(8);
    for (Figure figure : figures) {
      new SvgCheck(figure).sound();
      assertThat(figure.svg()).doesNotContain("<script").doesNotContain("\u202E");
    }
  }

  @Test
  @DisplayName("signs that turn or end text are shown as such, whoever hands them in")
  void control_signs() {
    Sheet sheet =
        DemoDrawings.sheet(
            DemoDrawings.advised("ferry-street-column"), SupportOption.DRILLED_PILES);
    String name = "\u202Eevil \u0000\uD800 zone\n" + "W".repeat(300);
    for (Drawn drawn :
        List.of(
            PilePlan.of(name, sheet, UnitSystem.SI, "p"),
            LoadSettlementChart.of(sheet, name, UnitSystem.SI, "c"),
            CheckChart.of(sheet, name, UnitSystem.SI, "k"))) {
      Figure figure = drawn.figure().orElseThrow();
      new SvgCheck(figure).sound();
      assertThat(figure.svg()).doesNotContain("\u202E").doesNotContain("\u0000");
    }
  }

  private static void sound(
      String demo, SupportOption option, String[] changes, String... settings) {
    Consultation advised = DemoDrawings.advised(demo, changes);
    String zone = advised.zones().get(0).name();
    Sheet sheet = DemoDrawings.sheet(advised, option, settings);
    List<Drawn> drawn = MoreDrawings.of(advised.site(), zone, option, sheet, UnitSystem.SI, "v-");
    assertThat(drawn)
        .allSatisfy(
            one -> {
              assertThat(one.why()).isEmpty();
              one.figures().forEach(figure -> new SvgCheck(figure).sound());
            });
  }

  @Test
  @DisplayName(
      "other ways to hold a wall of pits are drawn soundly: rakers, ties, drained, on rock")
  void other_walls() {
    String[] none = {};
    String[] rock = {"\"hard-clay-or-till\"", "\"rock\"", "\"220 kPa\"", "\"unknown\""};
    sound("orchard-line-box", SupportOption.EDGE_PITS, none, "brace-kind=raker");
    sound("orchard-line-box", SupportOption.EDGE_PITS, none, "brace-kind=tie", "water=drained");
    sound("orchard-line-box", SupportOption.EDGE_PITS, none, "first-brace=2 m");
    sound("orchard-line-box", SupportOption.EDGE_PITS, rock);
    Consultation wet = DemoDrawings.advised("orchard-line-box", "\"22 m\"", "\"10 m\"");
    Sheet sheet = DemoDrawings.sheet(wet, SupportOption.EDGE_PITS);
    Figure figure =
        MoreDrawings.of(
                wet.site(),
                wet.zones().get(0).name(),
                SupportOption.EDGE_PITS,
                sheet,
                UnitSystem.SI,
                "w-")
            .get(1)
            .figure()
            .orElseThrow();
    SvgCheck check = new SvgCheck(figure);
    check.sound();
    // water 1.5 m below the top of a wall 7.1 m high: 9.81 x 5.6 = 54.94 kPa at its base
    assertThat(check.group("pressure-water").getAttribute("data-base")).isEqualTo("54.94 kPa");
  }

  @Test
  @DisplayName(
      "other piles are drawn soundly: braced more, not bared, in rows, few, a couple, walers")
  void other_piles() {
    String[] none = {};
    sound("orchard-line-box", SupportOption.DRILLED_PILES, none, "brace-levels=3");
    sound("orchard-line-box", SupportOption.DRILLED_PILES, none, "bared=no", "rig=small");
    sound("orchard-line-box", SupportOption.DRILLED_PILES, none, "slab-layout=rows");
    sound("ferry-street-column", SupportOption.DRILLED_PILES, none, "piles=8", "base=counted");
    sound("kestrel-road-platform", SupportOption.BRACKET_PILES, none, "brace-levels=2");
    sound("kestrel-road-platform", SupportOption.BRACKET_PILES, none, "moment-path=paired");
    sound("alder-row-party-wall", SupportOption.BRACKET_PILES, none, "moment-path=couple");
  }

  @Test
  @DisplayName("the words of every figure give every amount with a unit")
  void words() {
    for (Figure figure :
        figures(DemoDrawings.advised("three-bridges-interchange"), UnitSystem.US)) {
      assertThat(figure.equivalent()).isNotEmpty();
      if (!figure.id().contains("ranking") && !figure.id().contains("firmness")) {
        assertThat(String.join("\n", figure.equivalent()))
            .doesNotContain(" m ")
            .doesNotContain("kPa");
      }
    }
  }
}
