package underhold.report.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import underhold.quantity.UnitSystem;
import underhold.report.drawing.kit.Canvas;
import underhold.report.drawing.kit.Colours;
import underhold.report.drawing.kit.Dimensions;
import underhold.report.drawing.kit.DrawingScale;
import underhold.report.drawing.kit.Hatch;
import underhold.report.drawing.kit.Lettering;
import underhold.report.drawing.kit.Letters;
import underhold.report.drawing.kit.Notes;
import underhold.report.drawing.kit.Pen;
import underhold.report.drawing.kit.View;

/** Paper, hatches, letters, dimensions. */
class KitTest {
  private static final List<Color> INKS =
      List.of(Colours.INK, Colours.FINE, Colours.WATER, Colours.ALERT, Colours.NEW);

  /** Relative luminance, W3C, WCAG 2.2, definition; what is left of a colour in grey. */
  private static double luminance(Color colour) {
    return 0.2126 * linear(colour.getRed())
        + 0.7152 * linear(colour.getGreen())
        + 0.0722 * linear(colour.getBlue());
  }

  private static double linear(int channel) {
    double share = channel / 255.0;
    return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
  }

  @Test
  @DisplayName("W3C, WCAG 2.2, 1.4.3: words stand out by 4.5 to 1 from every tint, in grey too")
  void inks_stand_out_from_every_tint() {
    for (Hatch hatch : Hatch.values()) {
      for (Color ink : INKS) {
        double contrast = (luminance(hatch.tint()) + 0.05) / (luminance(ink) + 0.05);
        assertThat(contrast).as("%s on %s", ink, hatch).isGreaterThanOrEqualTo(4.5);
      }
    }
  }

  @Test
  void every_hatch_but_plain_differs_from_every_other_by_its_marks() {
    List<String> marks =
        java.util.Arrays.stream(Hatch.values())
            .filter(hatch -> hatch != Hatch.PLAIN)
            .map(KitTest::marks)
            .toList();
    assertThat(marks).doesNotHaveDuplicates().allMatch(path -> path.length() > 40);
  }

  private static String marks(Hatch hatch) {
    Canvas canvas = new Canvas("hatch", 60);
    canvas.hatch(hatch, new Rectangle2D.Double(5, 5, 40, 30));
    SvgCheck check = new SvgCheck(canvas.finish("Hatch", "A hatch.", List.of("hatch")));
    check.sound();
    List<org.w3c.dom.Element> paths = check.elements("path");
    assertThat(paths).as(hatch.name()).isNotEmpty();
    return paths.get(0).getAttribute("d") + paths.get(0).getParentNode().getNodeName();
  }

  @Test
  void marks_stay_inside_a_shape_of_any_form() {
    Canvas canvas = new Canvas("triangle", 60);
    View view = new View(new DrawingScale(100, "1:100"), 5, 5);
    for (Hatch hatch : Hatch.values()) {
      canvas.hatch(hatch, view.shape(0, 0, 5, 0, 0, 3));
    }
    for (Rectangle2D box : new SvgCheck(canvas.finish("T", "D.", List.of("t"))).boxes()) {
      assertThat(box.getMinX()).isGreaterThanOrEqualTo(5 - 0.01);
      assertThat(box.getMaxX()).isLessThanOrEqualTo(55 + 0.01);
      assertThat(box.getMaxY()).isLessThanOrEqualTo(35 + 0.01);
    }
  }

  @Test
  @DisplayName("ISO 5455 scales; US: architect's and engineer's scales (common practice)")
  void the_largest_usual_scale_that_fits_is_chosen() {
    assertThat(DrawingScale.fitting(5, 2, 100, 100, UnitSystem.SI).ratio()).isEqualTo(50);
    assertThat(DrawingScale.fitting(5.01, 2, 100, 100, UnitSystem.SI).ratio()).isEqualTo(100);
    assertThat(DrawingScale.fitting(1, 20, 100, 100, UnitSystem.SI).ratio()).isEqualTo(200);
    assertThat(DrawingScale.fitting(4.8, 2, 100, 100, UnitSystem.US).label())
        .isEqualTo("1:48 (1/4 in = 1 ft)");
    assertThat(DrawingScale.fitting(4.8, 2, 100, 100, UnitSystem.US).paper(0.3048))
        .isCloseTo(25.4 / 4, within(1e-9));
  }

  @Test
  void crowded_dimensions_step_outwards_instead_of_running_into_each_other() {
    Canvas canvas = new Canvas("crowd", 120);
    View view = new View(new DrawingScale(100, "1:100"), 20, 20);
    Dimensions below = new Dimensions(canvas, view, Dimensions.Side.BELOW, 30);
    Dimensions left = new Dimensions(canvas, view, Dimensions.Side.LEFT, 14);
    for (int i = 0; i < 12; i++) {
      below.add("narrow", 0.2 * i, 0.2 * (i + 1), 0, "0.2 m");
    }
    left.add("one", 1, 1.1, 0, "0.1 m").add("other", 1.1, 1.2, 0, "0.1 m");
    double outermost = below.draw();
    left.draw();
    assertThat(outermost).isGreaterThan(30 + Dimensions.ROW);
    SvgCheck check = new SvgCheck(canvas.finish("Crowd", "Dimensions.", List.of("crowd")));
    check.sound();
    assertThat(check.dimensions()).hasSize(14).containsKeys("narrow", "narrow-2");
  }

  @Test
  void notes_of_one_place_do_not_overlap() {
    Canvas canvas = new Canvas("notes", 120);
    Notes notes = new Notes(canvas, 70, 5, 40);
    for (int i = 0; i < 8; i++) {
      notes.add(20, 30, "note number " + i + " with words enough to need a second line");
    }
    notes.draw();
    new SvgCheck(canvas.finish("Notes", "Notes.", List.of("notes"))).sound();
  }

  @Test
  void words_too_long_are_cut_on_paper_and_told_in_full() {
    Canvas canvas = new Canvas("cut", 60);
    String words = "a name that is much too long for the paper it has to stand on";
    String fit = canvas.fit(words, 30, Letters.NOTE);
    assertThat(fit).endsWith("…").hasSizeLessThan(words.length());
    assertThat(Letters.NOTE.width(fit)).isLessThanOrEqualTo(30);
    canvas.text(fit, 5, 10, Letters.NOTE);
    assertThat(canvas.finish("Cut", "Cut.", List.of("x")).equivalent())
        .contains("In full: " + words);
  }

  @Test
  void no_number_and_its_unit_are_parted_and_no_sign_is_lost() {
    for (double wide : new double[] {14, 20, 33}) {
      List<String> lines =
          Lettering.wrap("stiff clay from 0.9 m down to 12 ft", wide, Letters.NOTE);
      assertThat(String.join("", lines).replace(" ", "")).isEqualTo("stiffclayfrom0.9mdownto12ft");
      assertThat(lines).noneMatch(line -> line.strip().equals("m") || line.strip().equals("ft"));
    }
  }

  @Test
  void control_signs_halves_and_turned_writing_are_not_drawn() {
    assertThat(Lettering.clean("a\u0000b\u202Ec\uD800d\uFFFFe\nf")).isEqualTo("a?b?c?d?e f");
  }

  @Test
  void pens_of_one_weight_differ_by_dash_or_are_named_in_words() {
    assertThat(Pen.OUTLINE.width()).isGreaterThan(Pen.MEDIUM.width());
    assertThat(Pen.MEDIUM.width()).isGreaterThan(Pen.THIN.width());
    Map<String, String> data = Map.of("hostile", "\"><script>");
    Canvas canvas = new Canvas("pens", 60);
    canvas.group("all", data, () -> canvas.line(Pen.CENTRE, 5, 5, 50, 5));
    Figure figure = canvas.finish("Pens", "Pens.", List.of("pens"));
    new SvgCheck(figure).sound();
    assertThat(figure.svg()).doesNotContain("<script");
  }
}
