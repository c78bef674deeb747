package underhold.report.html;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.report.document.Block;
import underhold.report.document.Document;
import underhold.report.document.Section;
import underhold.report.drawing.Figure;

class FigureScalesTest {
  /** Room of 180 mm by 250 mm. */
  private static final Medium PAPER = new Medium(true, "", 180, 250);

  @Test
  @DisplayName("On screen every drawing has its size; on paper charts are a fifth smaller")
  void charts() {
    Figure chart = figure("chart", 170, 100, "");
    assertThat(scales(Medium.SCREEN, chart)).containsEntry("chart", 1.0);
    assertThat(scales(PAPER, chart)).containsEntry("chart", 0.8);
  }

  @Test
  @DisplayName("A drawing to scale keeps its size, beside charts as well, where it has room at all")
  void toScale() {
    Figure plan = figure("plan", 180, 150, "<text>Scale 1:100</text>");
    Figure chart = figure("chart", 170, 115, "");
    Map<String, Double> scales = scales(PAPER, plan, chart);
    assertThat(scales).containsEntry("plan", 1.0);
    // 150 mm and 92 mm want 242 mm and a title: 91 mm are left for the chart
    assertThat(scales.get("chart")).isCloseTo((250 - 9 - 150) / 115.0, within(1e-9));

    Figure tall = figure("tall", 170, 300, "<text>Scale 1:100</text>");
    assertThat(scales(PAPER, tall).get("tall")).isCloseTo(250 / 300.0, within(1e-9));
  }

  @Test
  @DisplayName("Charts that cannot share a page stay as they are")
  void apart() {
    assertThat(scales(PAPER, figure("one", 170, 250, ""), figure("two", 170, 150, "")))
        .containsEntry("one", 0.8)
        .containsEntry("two", 0.8);
  }

  private static Map<String, Double> scales(Medium medium, Figure... figures) {
    List<Block> blocks = new ArrayList<>();
    for (Figure figure : figures) {
      blocks.add(new Block.Drawn(figure));
    }
    return FigureScales.of(
        new Document("t", "s", List.of(), List.of(Section.of("a", "A", blocks))), medium);
  }

  private static Figure figure(String id, double width, double height, String inside) {
    return new Figure(
        id,
        id,
        "<svg xmlns=\"http://www.w3.org/2000/svg\">" + inside + "</svg>",
        width,
        height,
        List.of("words"));
  }
}
