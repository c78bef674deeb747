package underhold.report.html;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import underhold.report.document.Block;
import underhold.report.document.Document;
import underhold.report.document.Section;
import underhold.report.drawing.Figure;

class DrawingMarkupTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<script>1</script>",
        "<image href=\"#a\"/>",
        "<rect onclick=\"x\"/>",
        "<use href=\"http://example.invalid/a.svg\"/>",
        "<rect fill=\"url(http://example.invalid/a)\"/>",
        "<style>@import 'x'</style>",
        "<foreignObject/>",
        "<b xmlns=\"http://www.w3.org/1999/xhtml\"/>",
        "<rect"
      })
  @DisplayName("A drawing that fetches, runs or breaks is refused by name")
  void refuses(String inside) {
    assertThatThrownBy(() -> markup(inside, Medium.SCREEN))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("\"plan\"");
  }

  @Test
  @DisplayName("The ids of two drawings never meet, and what refers to them follows")
  void ids() {
    String markup =
        markup("<clipPath id=\"c\"/><g clip-path=\"url(#c)\"/><use href=\"#c\"/>", Medium.SCREEN);
    assertThat(markup)
        .contains("id=\"plan-c\"")
        .contains("url(#plan-c)")
        .contains("href=\"#plan-c\"");
  }

  @Test
  @DisplayName("It is named and described on screen, and fits the paper in print")
  void named() {
    assertThat(markup("<g/>", Medium.SCREEN))
        .contains("role=\"img\"")
        .contains(">Plan &lt;of&gt; the pits</title>")
        .contains(">four pits; 1.2 m wide</desc>");
    assertThat(markup("<g/>", new Medium(true, "", 100, 100)))
        .contains("width: 100.0mm; height: 50.0mm");
  }

  private static String markup(String inside, Medium medium) {
    String svg =
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 2 1\">" + inside + "</svg>";
    Figure figure =
        new Figure("plan", "Plan <of> the pits", svg, 200, 100, List.of("four pits", "1.2 m wide"));
    Section section = Section.of("a", "A", List.of(new Block.Drawn(figure)));
    Document document = new Document("t", "s", List.of(), List.of(section));
    return DrawingMarkup.of(figure, "plan", medium, FigureScales.of(document, medium).get("plan"));
  }
}
