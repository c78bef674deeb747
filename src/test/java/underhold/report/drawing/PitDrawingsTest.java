package underhold.report.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Element;
import underhold.advice.SupportOption;
import underhold.consult.Consultation;
import underhold.quantity.UnitSystem;
import underhold.report.drawing.SvgCheck.Dimension;
import underhold.report.drawing.pits.PitPlan;
import underhold.report.drawing.pits.PitSection;
import underhold.sizing.Sheet;
import underhold.sizing.StageDetail.PitRound;

/** The drawings of pits say what the sheet says, measured on paper and read from their words. */
class PitDrawingsTest {
  private static final String ALDER = "alder-row-party-wall";
  private static final String[] LONG = {"\"12 m\"", "\"90 m\""};

  private static Sheet sheet(String... changes) {
    return DemoDrawings.sheet(DemoDrawings.advised(ALDER, changes), SupportOption.PITS);
  }

  private static List<PitRound> rounds(Sheet sheet) {
    return sheet.stages().stream()
        .map(stage -> stage.detail())
        .filter(PitRound.class::isInstance)
        .map(PitRound.class::cast)
        .toList();
  }

  private static List<SvgCheck> plan(Sheet sheet, UnitSystem units) {
    Drawn drawn = PitPlan.of(sheet, "place", units, "plan");
    List<SvgCheck> checks = new ArrayList<>();
    drawn.figures().forEach(figure -> checks.add(new SvgCheck(figure)));
    checks.forEach(SvgCheck::sound);
    return checks;
  }

  @ParameterizedTest
  @EnumSource(UnitSystem.class)
  void every_width_and_the_whole_wall_measure_on_paper_what_the_sheet_holds(UnitSystem units) {
    Sheet sheet = sheet();
    SvgCheck plan = plan(sheet, units).get(0);
    Map<String, Dimension> drawn = plan.dimensions();
    double ratio = plan.printedRatio();
    for (PitRound round : rounds(sheet)) {
      for (int i = 0; i < round.pits().size(); i++) {
        Dimension pit = drawn.get("pit-" + round.pits().get(i));
        double held = round.widthsMetres().get(i);
        assertThat(pit.metres()).isCloseTo(held, within(SvgCheck.RULE * ratio / 1000));
        assertThat(pit.written()).isCloseTo(held, within(SvgCheck.PRINTED * held));
      }
    }
    Dimension wall = drawn.get("wall");
    assertThat(wall.metres()).isCloseTo(12, within(SvgCheck.RULE * ratio / 1000));
    assertThat(wall.written()).isCloseTo(12, within(SvgCheck.PRINTED * 12));
    assertThat(drawn).hasSize(rounds(sheet).stream().mapToInt(r -> r.pits().size()).sum() + 1);
  }

  @Test
  void numbers_run_along_the_wall_and_each_has_the_round_of_the_sheet() {
    Sheet sheet = sheet();
    SvgCheck plan = plan(sheet, UnitSystem.SI).get(0);
    List<PitRound> rounds = rounds(sheet);
    double reached = 0;
    int number = 1;
    for (Element group : plan.elements("g")) {
      if (group.getAttribute("data-number").isEmpty()) {
        continue;
      }
      assertThat(group.getAttribute("data-number")).isEqualTo(String.valueOf(number));
      Element box = (Element) group.getElementsByTagNameNS("*", "rect").item(0);
      assertThat(SvgCheck.number(box, "x")).isGreaterThan(reached);
      reached = SvgCheck.number(box, "x");
      int round = Integer.parseInt(group.getAttribute("data-round"));
      assertThat(rounds.get(round - 1).pits()).contains(number);
      assertThat(group.getTextContent())
          .contains(String.valueOf(number))
          .matches("(?s).*(R|round )" + round + ".*");
      number++;
    }
    assertThat(number - 1).isEqualTo(rounds.stream().mapToInt(r -> r.pits().size()).sum());
  }

  @ParameterizedTest
  @EnumSource(UnitSystem.class)
  void a_long_wall_lies_in_strips_and_no_pit_is_lost_or_drawn_twice(UnitSystem units) {
    Sheet sheet = sheet(LONG);
    int count = rounds(sheet).stream().mapToInt(round -> round.pits().size()).sum();
    assertThat(count).isGreaterThan(60);
    Map<String, Dimension> all = new TreeMap<>();
    int drawn = 0;
    for (SvgCheck part : plan(sheet, units)) {
      drawn += part.dimensions().size();
      all.putAll(part.dimensions());
    }
    assertThat(drawn).isEqualTo(count);
    assertThat(all).hasSize(count);
    double together = all.values().stream().mapToDouble(Dimension::metres).sum();
    assertThat(together).isCloseTo(90, within(0.02));
  }

  @ParameterizedTest
  @EnumSource(UnitSystem.class)
  void the_section_of_a_pit_has_the_depths_and_widths_of_its_sheet(UnitSystem units) {
    Consultation advised = DemoDrawings.advised(ALDER);
    Sheet sheet = sheet();
    Drawn drawn = PitSection.of(advised.site(), advised.site().zones().get(0), sheet, units, "pit");
    SvgCheck section = new SvgCheck(drawn.figures().get(0));
    section.sound();
    Map<String, Dimension> dimensions = section.dimensions();
    for (String input :
        List.of(
            "founding-depth",
            "pit-depth",
            "excavation-below-footing",
            "footing-width",
            "approach-width",
            "dry-pack-gap")) {
      double held = sheet.input(input).orElseThrow().amount().orElseThrow().si();
      assertThat(dimensions).containsKey(input);
      assertThat(dimensions.get(input).metres())
          .as(input)
          .isCloseTo(held, within(SvgCheck.RULE * section.printedRatio() / 1000));
      assertThat(dimensions.get(input).written())
          .as(input)
          .isCloseTo(held, within(SvgCheck.PRINTED * held));
    }
  }

  @Test
  void water_in_the_pit_is_drawn_at_its_level_and_deep_water_is_only_told() {
    Consultation wet = DemoDrawings.advised(ALDER, "7.5 m", "3.0 m");
    Sheet sheet = DemoDrawings.sheet(wet, SupportOption.PITS);
    SvgCheck section =
        new SvgCheck(
            PitSection.of(wet.site(), wet.site().zones().get(0), sheet, UnitSystem.SI, "pit")
                .figures()
                .get(0));
    Element water = (Element) section.group("water").getElementsByTagNameNS("*", "line").item(0);
    double ground = SvgCheck.number(section.group("dim-founding-depth"), "data-from");
    double level = (SvgCheck.number(water, "y1") - ground) * section.printedRatio() / 1000;
    assertThat(level).isCloseTo(3.0, within(0.001));
    Consultation dry = DemoDrawings.advised(ALDER);
    Figure deep =
        PitSection.of(dry.site(), dry.site().zones().get(0), sheet(), UnitSystem.SI, "pit")
            .figures()
            .get(0);
    assertThat(deep.svg()).doesNotContain("pit-water\"");
    assertThat(deep.equivalent()).anyMatch(line -> line.contains("-3.8 m"));
  }

  @Test
  void a_sheet_that_still_asks_is_not_drawn_and_says_what_it_asks() {
    Consultation advised = DemoDrawings.advised(ALDER, "\"wallLength\": \"12 m\",", "");
    Sheet sheet = DemoDrawings.sheet(advised, SupportOption.PITS);
    Drawn plan = PitPlan.of(sheet, "place", UnitSystem.SI, "plan");
    Drawn section =
        PitSection.of(advised.site(), advised.site().zones().get(0), sheet, UnitSystem.SI, "pit");
    assertThat(plan.figures()).isEmpty();
    assertThat(plan.why()).contains("length of wall");
    assertThat(section.figures()).isEmpty();
    assertThat(section.why()).isEqualTo(plan.why());
  }

  @Test
  void the_words_of_the_plan_name_every_pit_once() {
    List<String> words =
        PitPlan.of(sheet(), "place", UnitSystem.SI, "plan").figures().get(0).equivalent();
    List<Integer> named = new ArrayList<>();
    words.stream()
        .filter(line -> line.matches("R\\d+: .*"))
        .forEach(
            line -> {
              for (String word : line.substring(line.indexOf(':')).split("\\D+")) {
                if (!word.isEmpty()) {
                  named.add(Integer.valueOf(word));
                }
              }
            });
    int count = rounds(sheet()).stream().mapToInt(round -> round.pits().size()).sum();
    assertThat(named).hasSize(count).doesNotHaveDuplicates();
    assertThat(named).allMatch(pit -> pit >= 1 && pit <= count);
  }
}
