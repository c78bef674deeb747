package underhold.report.html;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import underhold.report.document.Block;
import underhold.report.document.Document;
import underhold.report.document.Section;
import underhold.report.drawing.Figure;

/**
 * By what factor each drawing of a document is made smaller. A drawing to scale keeps its size
 * where it has room at all, for its scale is written on it. On paper charts are smaller than on
 * screen, and of two drawings that follow each other smaller still where that lets both stand on
 * one page.
 */
final class FigureScales {
  /** How small a chart stands on paper: its small letters are then 2 mm high. */
  private static final double CHART = 0.8;

  /** How much smaller than that it is made so that two drawings stand on one page. */
  private static final double LEAST = 0.93;

  /** Height of the title of a drawing with the blank around it [mm]. */
  private static final double TITLE = 9;

  /** How a drawing says that it is to scale. */
  private static final String TO_SCALE = ">Scale 1:";

  private final Medium medium;
  private final Map<String, Double> scales = new HashMap<>();

  private FigureScales(Medium medium) {
    this.medium = medium;
  }

  /** The factors by the ids of the drawings. */
  static Map<String, Double> of(Document document, Medium medium) {
    FigureScales all = new FigureScales(medium);
    document.sections().forEach(all::section);
    return all.scales;
  }

  /** Whether the drawing bears a scale. */
  static boolean toScale(Figure figure) {
    return figure.svg().contains(TO_SCALE);
  }

  private void section(Section section) {
    List<Figure> run = new ArrayList<>();
    for (Block block : section.blocks()) {
      if (block instanceof Block.Drawn drawn) {
        run.add(drawn.figure());
      } else {
        run(run);
        run.clear();
      }
    }
    run(run);
    section.parts().forEach(this::section);
  }

  private void run(List<Figure> run) {
    run.forEach(figure -> scales.put(figure.id(), fit(figure)));
    int i = 0;
    while (medium.paged() && i + 1 < run.size()) {
      i += together(List.of(run.get(i), run.get(i + 1))) ? 2 : 1;
    }
  }

  /** Whether both have room on one page, the charts among them smaller if need be. */
  private boolean together(List<Figure> both) {
    double charts = 0;
    double fixed = 0;
    for (Figure figure : both) {
      double height = Heading.height(figure) * fit(figure);
      charts += toScale(figure) ? 0 : height;
      fixed += toScale(figure) ? height : 0;
    }
    double room = medium.heightMillimetres() - TITLE - fixed;
    if (charts > room && charts * LEAST <= room) {
      double factor = room / charts;
      both.stream()
          .filter(figure -> !toScale(figure))
          .forEach(figure -> scales.put(figure.id(), fit(figure) * factor));
    }
    return charts * LEAST <= room;
  }

  private double fit(Figure figure) {
    double usual = medium.paged() && !toScale(figure) ? CHART : 1;
    return Math.min(
        usual,
        Math.min(
            medium.widthMillimetres() / figure.widthMillimetres(),
            medium.heightMillimetres() / Heading.height(figure)));
  }
}
