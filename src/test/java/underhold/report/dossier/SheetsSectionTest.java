package underhold.report.dossier;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import underhold.report.document.Anchors;
import underhold.report.document.Document;
import underhold.report.document.Section;
import underhold.sizing.Verdict;

/** Which sheets are set whole, and what the others still say. */
class SheetsSectionTest {
  static Stream<String> demos() {
    return Demos.names();
  }

  @ParameterizedTest
  @MethodSource("demos")
  @DisplayName("--sheets all sets every sheet whole; chosen one a zone, the others in short")
  void whole(String demo) {
    Material material = Demos.material(demo);
    List<String> all = anchors(material, WhichSheets.ALL);
    List<String> chosen = anchors(material, WhichSheets.CHOSEN);
    List<ZoneSheet> whole = WhichSheets.CHOSEN.of(material);
    assertThat(whole.stream().map(ZoneSheet::zone)).doesNotHaveDuplicates();
    for (ZoneSheet sheet : material.sheets()) {
      boolean set = whole.contains(sheet);
      sheet
          .sheet()
          .steps()
          .forEach(
              step -> {
                String anchor = sheet.anchor("step", step.id());
                assertThat(all).contains(anchor);
                assertThat(chosen.contains(anchor)).as(anchor).isEqualTo(set);
              });
      sheet.sheet().checks().stream()
          .filter(check -> check.verdict() != Verdict.PASSES)
          .forEach(check -> assertThat(chosen).contains(sheet.anchor("check", check.id())));
      assertThat(chosen).contains(sheet.anchor());
    }
  }

  @ParameterizedTest
  @MethodSource("demos")
  @DisplayName("Every word of the order of work on a sheet stands on it or in the stage plan")
  void order(String demo) {
    Material material = Demos.material(demo);
    Document document = Demos.whole(demo);
    String words = document.toString();
    for (ZoneSheet sheet : material.sheets()) {
      sheet
          .sheet()
          .stages()
          .forEach(
              stage -> {
                stage.work().forEach(work -> assertThat(words).contains(work.in(material.units())));
                stage
                    .holdPoints()
                    .forEach(
                        hold ->
                            assertThat(words)
                                .contains(Cells.sentence(hold.condition().in(material.units()))));
              });
    }
  }

  private static List<String> anchors(Material material, WhichSheets which) {
    Document document =
        Dossier.of(
            material, Commission.of(Audience.REVIEWER, Demos.DATE).with(which), Illustrations.NONE);
    assertThat(Anchors.problems(document)).isEmpty();
    Section sheets =
        document.sections().stream()
            .filter(section -> section.id().equals("sheets"))
            .findFirst()
            .orElseThrow();
    return Anchors.of(new Document("", "", List.of(), List.of(sheets)));
  }
}
