package underhold.report.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import underhold.advice.SupportOption;
import underhold.consult.Consultation;
import underhold.consult.ZoneAdvice;
import underhold.quantity.UnitSystem;
import underhold.report.drawing.needles.NeedleElevation;
import underhold.report.drawing.pits.PitPlan;
import underhold.report.drawing.pits.PitPlanText;
import underhold.report.drawing.pits.PitSection;
import underhold.report.drawing.section.SectionDrawing;
import underhold.report.drawing.section.SectionText;
import underhold.report.drawing.text.Signs;
import underhold.site.Zone;
import underhold.sizing.Sheet;

/** Every drawing of every demo site is sound, in both unit systems, whatever its names are. */
class DrawingsTest {
  private static List<Figure> figures(Consultation advised, UnitSystem units) {
    List<Figure> figures = new ArrayList<>();
    for (ZoneAdvice advice : advised.zones()) {
      Zone zone = DemoDrawings.zone(advised, advice.name());
      figures.addAll(
          SectionDrawing.of(advised.site(), zone, DemoDrawings.limits(), units, "section")
              .figures());
      Optional<Sheet> pits = DemoDrawings.sheet(advised, advice, SupportOption.PITS);
      pits.ifPresent(
          sheet -> {
            figures.addAll(PitPlan.of(sheet, zone.name(), units, "plan").figures());
            figures.addAll(PitSection.of(advised.site(), zone, sheet, units, "pit").figures());
          });
      DemoDrawings.sheet(advised, advice, SupportOption.NEEDLES)
          .ifPresent(
              sheet ->
                  figures.addAll(
                      NeedleElevation.of(advised.site(), zone, sheet, units, "needle").figures()));
    }
    return figures;
  }

  @Test
  void every_drawing_of_every_demo_site_is_sound() {
    int drawn = 0;
    for (String name : DemoDrawings.names()) {
      for (UnitSystem units : UnitSystem.values()) {
        for (Figure figure : figures(DemoDrawings.advised(name), units)) {
          new SvgCheck(figure).sound();
          drawn++;
        }
      }
    }
    assertThat(drawn).isGreaterThan(20);
  }

  @Test
  void the_same_site_is_drawn_the_same_every_time() {
    Consultation advised = DemoDrawings.advised("alder-row-party-wall");
    assertThat(figures(advised, UnitSystem.SI)).isEqualTo(figures(advised, UnitSystem.SI));
  }

  @Test
  void hostile_and_endless_names_neither_break_nor_leave_the_paper() {
    String hostile = "</text><script>alert(1)</script> & \\\"'<![CDATA[ ]]> é 漢字 ";
    String name = (hostile + "x".repeat(200)).substring(0, 190);
    Consultation advised =
        DemoDrawings.advised("alder-row-party-wall", "\"party wall\"", "\"" + name + "\"");
    List<Figure> figures = figures(advised, UnitSystem.SI);
    assertThat(figures).hasSize(3);
    for (Figure figure : figures) {
      SvgCheck check = new SvgCheck(figure);
      check.sound();
      assertThat(check.elements("script")).isEmpty();
    }
    String whole = advised.zones().get(0).name();
    assertThat(figures.get(0).equivalent()).anyMatch(line -> line.contains(whole));
  }

  @Test
  void sketches_keep_to_their_columns_and_have_plain_signs_for_plain_terminals() {
    int sketched = 0;
    for (String name : DemoDrawings.names()) {
      Consultation advised = DemoDrawings.advised(name);
      for (ZoneAdvice advice : advised.zones()) {
        for (int columns : new int[] {40, 80, 110, 120}) {
          List<String> lines = new ArrayList<>();
          SectionText.of(
                  advised.site(),
                  DemoDrawings.zone(advised, advice.name()),
                  DemoDrawings.limits(),
                  UnitSystem.SI)
              .ifPresent(text -> lines.addAll(text.lines(columns)));
          DemoDrawings.sheet(advised, advice, SupportOption.PITS)
              .flatMap(sheet -> PitPlanText.of(sheet, UnitSystem.SI))
              .ifPresent(text -> lines.addAll(text.lines(columns)));
          for (String line : lines) {
            sketched++;
            assertThat(line.codePointCount(0, line.length())).isLessThanOrEqualTo(columns);
            assertThat(Signs.plain(line)).matches("[ -~]*").hasSameSizeAs(line);
          }
        }
      }
    }
    assertThat(sketched).isGreaterThan(200);
  }

  @Test
  void a_sketch_of_sixty_pits_breaks_into_strips() {
    Consultation advised = DemoDrawings.advised("alder-row-party-wall", "\"12 m\"", "\"90 m\"");
    List<String> lines =
        PitPlanText.of(DemoDrawings.sheet(advised, SupportOption.PITS), UnitSystem.SI)
            .orElseThrow()
            .lines(80);
    assertThat(lines.size()).isGreaterThan(8);
    assertThat(lines.stream().filter(line -> line.startsWith("┌"))).hasSizeGreaterThan(3);
    assertThat(String.join("\n", lines)).contains(" 60 ").contains("R1");
  }
}
